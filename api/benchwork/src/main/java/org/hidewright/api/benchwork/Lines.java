package org.hidewright.api.benchwork;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.geometry.Curve;

/** Open lines from place to place. */
public final class Lines {
    private Lines() {}

    /** A straight line from one point to another, in millimetres. */
    public static Curve straight(double fromX, double fromY, double toX, double toY) {
        return through(Point.of(fromX, fromY), Point.of(toX, toY));
    }

    /**
     * Straight from each place to the next.
     *
     * @throws IllegalArgumentException if there are fewer than two, or one follows on itself
     */
    public static Curve through(Point... places) {
        List<Segment> segments = new ArrayList<>();
        for (int i = 1; i < places.length; i++) {
            segments.add(Segment.line(places[i - 1], places[i]));
        }
        return Curve.open(segments);
    }
}
