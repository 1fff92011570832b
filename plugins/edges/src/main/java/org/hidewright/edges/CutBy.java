package org.hidewright.edges;

/** What cut the edge. */
public enum CutBy {
    KNIFE,
    LASER
}
