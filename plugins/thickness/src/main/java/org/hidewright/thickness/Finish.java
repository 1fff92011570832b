package org.hidewright.thickness;

/** What lies on the face of the leather. */
public enum Finish {
    /** Bare, or dyed through and clear: water goes in. */
    NATURAL,
    /** Covered with pigment, resin or foil. */
    PIGMENTED,
    /** Stuffed with wax or oil, pull-up. */
    WAXED,
    /** Nap on either face: suede or a split without grain. */
    SUEDE
}
