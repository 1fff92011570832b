package org.hidewright.api.geometry;

/** What evenly spaced marks do at a corner of their line. */
public enum AtCorners {
    /** A mark on every corner. */
    MARK,
    /** No mark on a corner: it is spanned by one gap, half of it on either side. */
    SPAN,
    /** Corners are passed over as if the line were straight there. */
    PASS
}
