package org.hidewright.straps;

import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;

/**
 * A drawing of something long whose dull middle is left out, so that both ends stay large enough to read.
 *
 * @param from where the part left out begins
 * @param to where it ends; as {@code from} where nothing is left out
 * @param gapMm how far apart the two ends are drawn
 */
record LongStrap(double from, double to, double gapMm) {
    private static final double GAP_MM = 8;
    private static final double WORTH_LEAVING_OUT_MM = 30;

    /** Leaves out what lies between two places if that is worth it. */
    static LongStrap without(double from, double to) {
        return to - from > WORTH_LEAVING_OUT_MM ? new LongStrap(from, to, GAP_MM) : new LongStrap(from, from, 0);
    }

    boolean broken() {
        return to > from;
    }

    /** Whether a place is drawn. */
    boolean shows(double place) {
        return place <= from || place >= to;
    }

    /** Where a place is drawn. */
    double x(double place) {
        return place <= from ? place : place - (to - from) + gapMm;
    }

    /** Adds the wavy line along which a strap is broken off, from the pen to another place. */
    static void wave(Path.Builder outline, Point end) {
        Point start = outline.pen();
        double rise = end.y() - start.y();
        double swing = Math.min(Math.abs(rise) / 2, 3);
        outline.cubicTo(start.plus(swing, rise / 3), start.plus(-swing, 2 * rise / 3), end);
    }
}
