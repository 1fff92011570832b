package org.hidewright.api.item;

/** A face of leather. */
public enum Face {
    GRAIN,
    FLESH
}
