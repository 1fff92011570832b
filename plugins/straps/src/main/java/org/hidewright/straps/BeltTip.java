package org.hidewright.straps;

/** How the end of a belt is shaped. */
enum BeltTip {
    SQUARE,
    POINT,
    ROUND,
    /** Curved sides that meet in a point. */
    ENGLISH
}
