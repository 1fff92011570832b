package org.hidewright.api.drawing;

/** Which point of a text sits at its place. */
public enum Anchor {
    /** The upper left corner. */
    TOP_LEFT(0, 1),
    /** The middle of the upper edge. */
    TOP(0.5, 1),
    /** The upper right corner. */
    TOP_RIGHT(1, 1),
    /** The middle of the left edge. */
    LEFT(0, 0.5),
    /** The middle. */
    CENTRE(0.5, 0.5),
    /** The middle of the right edge. */
    RIGHT(1, 0.5),
    /** The lower left corner. */
    BOTTOM_LEFT(0, 0),
    /** The middle of the lower edge. */
    BOTTOM(0.5, 0),
    /** The lower right corner. */
    BOTTOM_RIGHT(1, 0);

    private final double along;
    private final double up;

    Anchor(double along, double up) {
        this.along = along;
        this.up = up;
    }

    /** Share of the text's length before the place: 0, one half or 1. */
    public double along() {
        return along;
    }

    /** Share of the capitals' height below the place: 0 at the foot of the letters, 1 at the top of a capital. */
    public double up() {
        return up;
    }
}
