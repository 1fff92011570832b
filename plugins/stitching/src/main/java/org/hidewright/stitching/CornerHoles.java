package org.hidewright.stitching;

import org.hidewright.api.geometry.AtCorners;

/** What stitch holes do at a corner. */
public enum CornerHoles {
    /** A hole on the corner. */
    MARK(AtCorners.MARK),
    /** None: one stitch goes round it. */
    SPAN(AtCorners.SPAN),
    /** As it comes. */
    PASS(AtCorners.PASS);

    private final AtCorners spacing;

    CornerHoles(AtCorners spacing) {
        this.spacing = spacing;
    }

    AtCorners spacing() {
        return spacing;
    }
}
