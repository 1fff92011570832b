package org.hidewright.edges;

/** What every edge is sorted into before anything is done to it. */
public enum EdgeGroup {
    BEFORE_GLUE_UP,
    FLUSH_AFTER_STITCHING,
    BURIED
}
