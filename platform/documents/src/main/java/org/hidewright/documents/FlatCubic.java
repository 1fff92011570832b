package org.hidewright.documents;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;

/** A cubic curve as a chain of lines. */
public final class FlatCubic {
    private FlatCubic() {}

    /**
     * Places on the curve, its ends among them, at equal steps of its parameter, so that no place of the curve is farther
     * than this from the chain.
     *
     * <p>Between two places at a step h, a curve leaves its chord by at most h²/8 times the largest second derivative, which
     * for a cubic is the larger of its values at the ends.
     */
    public static List<Point> of(Segment.Cubic cubic, double near) {
        double most = Math.max(
                bend(cubic.start(), cubic.control1(), cubic.control2()),
                bend(cubic.control1(), cubic.control2(), cubic.end()));
        int steps = Math.max(1, (int) Math.ceil(Math.sqrt(most / (8 * near))));
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            points.add(cubic.at((double) i / steps));
        }
        return points;
    }

    private static double bend(Point a, Point b, Point c) {
        return 6 * Math.hypot(a.x() - 2 * b.x() + c.x(), a.y() - 2 * b.y() + c.y());
    }
}
