package org.hidewright.thickness;

/** What a maker means to do to the leather. */
public enum LeatherUse {
    BURNISHING,
    TOOLING,
    WET_FORMING,
    TURNED_EDGES,
    PAINTED_EDGES,
    FOLDING,
    SKIVING_THIN,
    DYEING
}
