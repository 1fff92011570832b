package org.hidewright.api.geometry;

import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;

/** Arcs as a maker gives them: by three places, or by a chord and its rise. */
public final class Arcs {
    private Arcs() {}

    /**
     * The arc from a start over a place between to an end.
     *
     * @throws IllegalArgumentException if the three places are in one line, or two of them are the same
     */
    public static Segment.Arc through(Point start, Point via, Point end) {
        Vector toVia = Vector.between(start, via);
        Vector toEnd = Vector.between(start, end);
        double cross = toVia.cross(toEnd);
        if (!(Math.abs(cross) > 1e-12 * toVia.length() * toEnd.length())) {
            throw new IllegalArgumentException(
                    "no arc goes through " + start + ", " + via + " and " + end + "; they are in one line");
        }
        double via2 = toVia.dot(toVia);
        double end2 = toEnd.dot(toEnd);
        Point centre = start.plus(
                (toEnd.y() * via2 - toVia.y() * end2) / (2 * cross),
                (toVia.x() * end2 - toEnd.x() * via2) / (2 * cross));
        return Segment.arc(start, centre, Vector.between(centre, start).turnTo(Vector.between(centre, end), cross));
    }

    /**
     * The arc over a chord that rises so high above its middle.
     *
     * @param riseMm positive to the left of the chord, going from start to end; not 0
     * @throws IllegalArgumentException if the rise is 0 or both ends are the same
     */
    public static Segment.Arc over(Point start, Point end, double riseMm) {
        Vector chord = Vector.between(start, end);
        Point middle = chord.times(0.5).from(start);
        return through(start, chord.unit().left().times(riseMm).from(middle), end);
    }
}
