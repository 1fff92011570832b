package org.hidewright.api.geometry;

/** How a line beside a corner goes round it on the outer side. */
public enum Corner {
    /** By an arc round the corner, as far from it as from the edges. */
    ROUND,
    /** On to a point, as the edges would meet; a corner whose point would be more than four distances away is rounded. */
    POINTED
}
