package org.hidewright.layout;

/** How a part may lie on the leather. */
public enum Lies {
    /** The direction drawn on it along the backbone, either way round. */
    ALONG_BACKBONE,
    /** The direction drawn on it square to the backbone. */
    ACROSS_BACKBONE,
    /** At any angle. */
    AT_ANY_ANGLE,
    /** As it is drawn, or half a turn from it. */
    AS_DRAWN
}
