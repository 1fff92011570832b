package org.hidewright.api.item;

/** A face of leather. */
public enum Face {
    /** The outer face. */
    GRAIN,
    /** The inner face. */
    FLESH
}
