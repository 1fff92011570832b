package org.hidewright.layout;

/** Which way the backbone of the animal runs on a sheet as it is drawn; leather stretches least along it. */
public enum Backbone {
    /** From left to right. */
    ACROSS_THE_SHEET,
    /** From the lower to the upper edge. */
    UP_THE_SHEET
}
