package org.hidewright.thickness;

/** How the leather hangs. */
public enum Temper {
    SOFT,
    MEDIUM,
    FIRM
}
