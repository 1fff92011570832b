package org.hidewright.layout;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.geometry.Curve;
import org.hidewright.layout.task.Outline;

/** A closed curve as straight stretches that stay within {@link #OFF} of it. */
final class Flattened {
    /** Millimetres by which a stretch may leave the curve: a fifth of the width of a scratched line. */
    static final double OFF = 0.02;

    private Flattened() {}

    static Outline of(Curve closed) {
        List<Point> corners = new ArrayList<>();
        for (Segment segment : closed.segments()) {
            corners.add(segment.start());
            if (segment instanceof Segment.Arc arc) {
                arc(arc, corners);
            } else if (segment instanceof Segment.Cubic cubic) {
                cubic(cubic, corners);
            }
        }
        return new Outline(
                corners.stream().mapToDouble(Point::x).toArray(),
                corners.stream().mapToDouble(Point::y).toArray());
    }

    /** The rise of a chord over an angle a is r (1 - cos(a/2)). */
    private static void arc(Segment.Arc arc, List<Point> corners) {
        double widest = 2 * Math.acos(Math.max(0, 1 - OFF / arc.radius()));
        int stretches = (int) Math.max(1, Math.ceil(Math.abs(arc.sweep()) / widest));
        for (int stretch = 1; stretch < stretches; stretch++) {
            corners.add(arc.centre().towards(arc.startAngle() + arc.sweep() * stretch / stretches, arc.radius()));
        }
    }

    /** A chord over a step h leaves the curve by no more than h²/8 of its greatest second derivative, which is at an end. */
    private static void cubic(Segment.Cubic cubic, List<Point> corners) {
        double bend = 6
                * Math.max(
                        bend(cubic.start(), cubic.control1(), cubic.control2()),
                        bend(cubic.control1(), cubic.control2(), cubic.end()));
        int stretches = (int) Math.max(1, Math.ceil(Math.sqrt(bend / 8 / OFF)));
        for (int stretch = 1; stretch < stretches; stretch++) {
            corners.add(cubic.at((double) stretch / stretches));
        }
    }

    private static double bend(Point one, Point middle, Point other) {
        return Math.hypot(one.x() - 2 * middle.x() + other.x(), one.y() - 2 * middle.y() + other.y());
    }
}
