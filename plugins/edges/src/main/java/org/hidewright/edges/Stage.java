package org.hidewright.edges;

/** When a step is done, seen from the seam. */
public enum Stage {
    BEFORE_GLUE_UP,
    GLUE_AND_STITCH,
    AFTER_STITCHING
}
