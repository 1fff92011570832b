package org.hidewright.documents.dxf;

import java.util.List;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.drawing.Shape;
import org.hidewright.documents.FlatCubic;

/**
 * Shapes as entities: lines, arcs, circles and texts in every release; cubic curves as splines where the release has them,
 * else as lines that leave the curve by no more than {@link #NEAR_MM}.
 */
final class DxfEntities {
    private static final double NEAR_MM = 0.005;

    private final DxfTags tags;
    private final boolean splines;
    private final String owner;

    /** @param owner handle of the block they are in; empty in a release without handles */
    DxfEntities(DxfTags tags, boolean splines, String owner) {
        this.tags = tags;
        this.splines = splines;
        this.owner = owner;
    }

    void add(Shape shape) {
        if (shape instanceof Path path) {
            path.segments().forEach(segment -> segment(segment, path.role()));
        } else if (shape instanceof Circle circle) {
            start("CIRCLE", "AcDbCircle", circle.role());
            tags.place(10, circle.centre().x(), circle.centre().y()).add(40, circle.diameter() / 2);
        } else if (shape instanceof Label label) {
            label(label);
        }
    }

    private void start(String type, String subclass, Role role) {
        tags.add(0, type);
        if (owner.isEmpty()) {
            tags.add(8, DxfLayer.name(role));
        } else {
            tags.add(5, tags.handle())
                    .add(330, owner)
                    .add(100, "AcDbEntity")
                    .add(8, DxfLayer.name(role))
                    .add(100, subclass);
        }
    }

    private void segment(Segment segment, Role role) {
        if (segment instanceof Segment.Arc arc) {
            arc(arc, role);
        } else if (segment instanceof Segment.Cubic cubic) {
            if (splines) {
                spline(cubic, role);
            } else {
                polyline(FlatCubic.of(cubic, NEAR_MM), role);
            }
        } else {
            start("LINE", "AcDbLine", role);
            tags.place(10, segment.start().x(), segment.start().y())
                    .place(11, segment.end().x(), segment.end().y());
        }
    }

    /** Always counter-clockwise, in degrees; a whole turn is a circle. */
    private void arc(Segment.Arc arc, Role role) {
        if (Math.abs(arc.sweep()) > 2 * Math.PI - 1e-9) {
            add(Circle.of(role, arc.centre(), 2 * arc.radius()));
            return;
        }
        double end = arc.startAngle() + arc.sweep();
        start("ARC", "AcDbCircle", role);
        tags.place(10, arc.centre().x(), arc.centre().y()).add(40, arc.radius());
        if (!owner.isEmpty()) {
            tags.add(100, "AcDbArc");
        }
        tags.add(50, degrees(arc.sweep() > 0 ? arc.startAngle() : end))
                .add(51, degrees(arc.sweep() > 0 ? end : arc.startAngle()));
    }

    private static double degrees(double radians) {
        double degrees = Math.toDegrees(radians) % 360;
        return degrees < 0 ? degrees + 360 : degrees;
    }

    /** A cubic curve is a spline of degree 3 whose knots are its ends, four times each. */
    private void spline(Segment.Cubic cubic, Role role) {
        start("SPLINE", "AcDbSpline", role);
        tags.add(210, 0.0).add(220, 0.0).add(230, 1.0); // it lies in the plane of the drawing
        tags.add(70, 8)
                .add(71, 3)
                .add(72, 8)
                .add(73, 4)
                .add(74, 0)
                .add(42, 1e-6)
                .add(43, 1e-6);
        for (int knot : new int[] {0, 0, 0, 0, 1, 1, 1, 1}) {
            tags.add(40, (double) knot);
        }
        for (Point point : List.of(cubic.start(), cubic.control1(), cubic.control2(), cubic.end())) {
            tags.place(10, point.x(), point.y());
        }
    }

    private void polyline(List<Point> points, Role role) {
        tags.add(0, "POLYLINE").add(8, DxfLayer.name(role)).add(66, 1).place(10, 0, 0);
        for (Point point : points) {
            tags.add(0, "VERTEX").add(8, DxfLayer.name(role)).place(10, point.x(), point.y());
        }
        tags.add(0, "SEQEND").add(8, DxfLayer.name(role));
    }

    private void label(Label label) {
        start("TEXT", "AcDbText", label.role());
        Point at = label.at();
        tags.place(10, at.x(), at.y())
                .add(40, label.height())
                .words(1, label.text())
                .add(50, degrees(label.turn()))
                .add(72, (int) Math.round(2 * label.anchor().along()))
                .place(11, at.x(), at.y());
        if (!owner.isEmpty()) {
            tags.add(100, "AcDbText");
        }
        tags.add(73, 1 + (int) Math.round(2 * label.anchor().up()));
    }
}
