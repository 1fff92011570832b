package org.hidewright.documents.page;

import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;

/** The canvas of a page seen from a drawing, whose y runs up and whose origin stands at a place on the sheet. */
record DrawingCanvas(Canvas target, double originX, double originY) {
    /** Arcs are drawn as curves of at most this turn; their error is below 5 millionths of the radius. */
    private static final double MOST_TURN = Math.PI / 4;

    double x(Point point) {
        return originX + point.x();
    }

    double y(Point point) {
        return originY - point.y();
    }

    void moveTo(Point point) {
        target.moveTo(x(point), y(point));
    }

    void lineTo(Point point) {
        target.lineTo(x(point), y(point));
    }

    private void curveTo(Point control1, Point control2, Point end) {
        target.curveTo(x(control1), y(control1), x(control2), y(control2), x(end), y(end));
    }

    void along(Segment segment) {
        if (segment instanceof Segment.Arc arc) {
            arc(arc.centre(), arc.radius(), arc.startAngle(), arc.sweep());
        } else if (segment instanceof Segment.Cubic cubic) {
            curveTo(cubic.control1(), cubic.control2(), cubic.end());
        } else {
            lineTo(segment.end());
        }
    }

    void circle(Point centre, double diameter) {
        moveTo(centre.towards(0, diameter / 2));
        arc(centre, diameter / 2, 0, 2 * Math.PI);
        target.close();
    }

    private void arc(Point centre, double radius, double startAngle, double sweep) {
        int steps = (int) Math.ceil(Math.abs(sweep) / MOST_TURN - 1e-9);
        double step = sweep / steps;
        double reach = radius * 4 / 3 * Math.tan(step / 4);
        for (int i = 0; i < steps; i++) {
            double from = startAngle + i * step;
            double to = from + step;
            Point start = centre.towards(from, radius);
            Point end = centre.towards(to, radius);
            curveTo(start.towards(from + Math.PI / 2, reach), end.towards(to - Math.PI / 2, reach), end);
        }
    }
}
