package org.hidewright.api.benchwork;

import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.item.OnPart;

/** A round patch glued behind a hole, so that what is set in it does not tear out of thin leather. */
public final class Reinforcement {
    /** Its diameter in diameters of the hole, at least: two of leather beside it, as beside any hole (common practice). */
    public static final double DIAMETERS = 5;

    private Reinforcement() {}

    /**
     * The patch round its own middle, with its hole; its edge is skived to nothing so that it does not show.
     *
     * @param hole diameter of the hole it holds
     * @param flange diameter of what is set in it, which it must reach beyond by 3 mm
     */
    public static Piece patch(String id, String name, double hole, double flange, double leather) throws NoRoom {
        double diameter = Math.max(DIAMETERS * hole, flange + 6);
        return Piece.of(id, name, Outlines.circle(Point.of(0, 0), diameter), leather);
    }

    /** Its hole. */
    public static OnPart hole(Piece patch, double diameter) throws NoRoom {
        return patch.hole("middle", Point.of(0, 0), diameter);
    }
}
