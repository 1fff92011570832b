package org.hidewright.api.geometry;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;

/** Part of an ellipse that may lie turned, followed by cubics of a 64th of a turn: to a millionth of a millimetre at sizes of the bench. */
final class EllipseArc {
    private static final int PARTS = 64;

    private final Point centre;
    private final double radiusX;
    private final double radiusY;
    private final double cos;
    private final double sin;

    private EllipseArc(Point centre, double radiusX, double radiusY, double turned) {
        this.centre = centre;
        this.radiusX = radiusX;
        this.radiusY = radiusY;
        this.cos = Math.cos(turned);
        this.sin = Math.sin(turned);
    }

    /** The whole of an upright one, from its right end round to the left. */
    static List<Segment> whole(Point centre, double radiusX, double radiusY) {
        Point end = centre.plus(radiusX, 0);
        return new EllipseArc(centre, radiusX, radiusY, 0).cubics(end, end, 0, 2 * Math.PI);
    }

    /**
     * From a place to another by the rules of SVG 1.1, appendix F.6: radii too small for both are made as large as they must be.
     *
     * @param turned the angle from the x axis to the first radius, radians
     * @param left whether it runs counter-clockwise with y up
     */
    static List<Segment> between(
            Point start, Point end, double radiusX, double radiusY, double turned, boolean large, boolean left) {
        double halfX = (start.x() - end.x()) / 2;
        double halfY = (start.y() - end.y()) / 2;
        // the half of the chord where the ellipse is the circle of radius 1
        double u = (Math.cos(turned) * halfX + Math.sin(turned) * halfY) / radiusX;
        double v = (Math.cos(turned) * halfY - Math.sin(turned) * halfX) / radiusY;
        double half = Math.hypot(u, v);
        double grown = Math.max(1, half);
        u /= grown;
        v /= grown;
        half /= grown;
        double off = Math.sqrt(Math.max(0, 1 - half * half)) / half * (large == left ? -1 : 1);
        double from = Math.atan2(v - off * -u, u - off * v);
        double sweep = 2 * Math.asin(Math.min(1, half));
        sweep = (large ? 2 * Math.PI - sweep : sweep) * (left ? 1 : -1);
        EllipseArc arc = new EllipseArc(Point.of(0, 0), radiusX * grown, radiusY * grown, turned);
        Point middle = Point.of((start.x() + end.x()) / 2, (start.y() + end.y()) / 2);
        Point toCentre = arc.place(off * v, off * -u);
        return new EllipseArc(middle.plus(toCentre.x(), toCentre.y()), arc.radiusX, arc.radiusY, turned)
                .cubics(start, end, from, sweep);
    }

    /** The ends are given, so that nothing gapes by a last digit. */
    private List<Segment> cubics(Point start, Point end, double from, double sweep) {
        int parts = (int) Math.max(1, Math.ceil(Math.abs(sweep) / (2 * Math.PI / PARTS) - 1e-9));
        double step = sweep / parts;
        double handle = 4.0 / 3 * Math.tan(step / 4);
        List<Segment> cubics = new ArrayList<>();
        Point pen = start;
        for (int part = 1; part <= parts; part++) {
            double before = from + (part - 1) * step;
            double after = from + part * step;
            Point next = part == parts ? end : at(after, 0);
            cubics.add(Segment.cubic(pen, at(before, handle), at(after, -handle), next));
            pen = next;
        }
        return cubics;
    }

    /** The place at an angle of the circle it comes from, so far on along the line that touches there. */
    private Point at(double angle, double along) {
        return place(Math.cos(angle) - along * Math.sin(angle), Math.sin(angle) + along * Math.cos(angle));
    }

    private Point place(double u, double v) {
        double x = radiusX * u;
        double y = radiusY * v;
        return centre.plus(cos * x - sin * y, sin * x + cos * y);
    }
}
