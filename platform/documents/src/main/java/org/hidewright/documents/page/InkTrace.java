package org.hidewright.documents.page;

import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.DimensionLine;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.drawing.Shape;

/** Goes along everything a drawing inks, in steps no longer than a millimetre. */
final class InkTrace {
    private static final double STEP = 1;

    /** Hears of a place with ink. */
    interface Ink {
        void at(double x, double y);
    }

    private final Ink ink;

    InkTrace(Ink ink) {
        this.ink = ink;
    }

    /** Along the lines of a shape; the letters of a label are where its page sets them, see {@link #box}. */
    void follow(Shape shape) {
        if (shape instanceof Path path) {
            path.segments().forEach(this::segment);
        } else if (shape instanceof Circle circle) {
            Point right = circle.centre().towards(0, circle.diameter() / 2);
            segment(Segment.arc(right, circle.centre(), 2 * Math.PI));
        } else if (shape instanceof DimensionLine line) {
            segment(Segment.line(line.from(), line.lineStart()));
            segment(Segment.line(line.lineStart(), line.lineEnd()));
            segment(Segment.line(line.lineEnd(), line.to()));
        }
    }

    /** The whole of a box, such as that of a text. */
    void box(Box box) {
        for (double y = box.minY(); y <= box.maxY() + STEP; y += STEP) {
            for (double x = box.minX(); x <= box.maxX() + STEP; x += STEP) {
                ink.at(Math.min(x, box.maxX()), Math.min(y, box.maxY()));
            }
        }
    }

    private void segment(Segment segment) {
        int steps = (int) Math.ceil(atMost(segment) / STEP) + 1;
        for (int i = 0; i <= steps; i++) {
            Point point = at(segment, (double) i / steps);
            ink.at(point.x(), point.y());
        }
    }

    /** A length the segment does not exceed. */
    private static double atMost(Segment segment) {
        if (segment instanceof Segment.Arc arc) {
            return arc.radius() * Math.abs(arc.sweep());
        }
        if (segment instanceof Segment.Cubic cubic) { // it moves no faster than three times its longest control leg
            return 3
                    * Math.max(
                            cubic.start().distanceTo(cubic.control1()),
                            Math.max(
                                    cubic.control1().distanceTo(cubic.control2()),
                                    cubic.control2().distanceTo(cubic.end())));
        }
        return segment.start().distanceTo(segment.end());
    }

    private static Point at(Segment segment, double t) {
        if (segment instanceof Segment.Arc arc) {
            return arc.centre().towards(arc.startAngle() + t * arc.sweep(), arc.radius());
        }
        if (segment instanceof Segment.Cubic cubic) {
            return cubic.at(t);
        }
        return Point.of(
                segment.start().x() * (1 - t) + segment.end().x() * t,
                segment.start().y() * (1 - t) + segment.end().y() * t);
    }
}
