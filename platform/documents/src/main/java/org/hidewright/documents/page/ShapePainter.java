package org.hidewright.documents.page;

import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.DimensionLine;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.drawing.Shape;

/** Inks shapes that are already in their size on paper; texts are set elsewhere. */
final class ShapePainter {
    private ShapePainter() {}

    static void paint(Shape shape, DrawingCanvas canvas) {
        if (shape instanceof Path path) {
            paint(path, canvas);
        } else if (shape instanceof Circle circle) {
            paint(circle, canvas);
        } else if (shape instanceof DimensionLine dimension) {
            DimensionPainter.paint(dimension, canvas);
        }
    }

    private static void paint(Path path, DrawingCanvas canvas) {
        RoleLine look = RoleLine.of(path.role());
        canvas.moveTo(path.segments().get(0).start());
        path.segments().forEach(canvas::along);
        if (path.isClosed()) {
            canvas.target().close();
        }
        ink(look, path.isClosed(), canvas.target());
        if (look.arrows() && !path.isClosed()) {
            Segment first = path.segments().get(0);
            Segment last = path.segments().get(path.segments().size() - 1);
            Arrowhead.paint(canvas, first.start(), heading(first, true), Tone.INK);
            Arrowhead.paint(canvas, last.end(), heading(last, false), Tone.INK);
        }
    }

    private static void ink(RoleLine look, boolean closed, Canvas canvas) {
        if (closed && look.fill() != null) {
            canvas.fillAndStroke(look.fill(), look.line());
        } else {
            canvas.stroke(look.line());
        }
    }

    /** Where the line runs out of the segment, at its start or its end. */
    private static double heading(Segment segment, boolean atStart) {
        if (segment instanceof Segment.Arc arc) {
            double radial = atStart ? arc.startAngle() : arc.startAngle() + arc.sweep();
            double forward = radial + Math.copySign(Math.PI / 2, arc.sweep());
            return atStart ? forward + Math.PI : forward;
        }
        if (segment instanceof Segment.Cubic cubic) {
            return atStart
                    ? cubic.control1().directionTo(cubic.start())
                    : cubic.control2().directionTo(cubic.end());
        }
        return atStart
                ? segment.end().directionTo(segment.start())
                : segment.start().directionTo(segment.end());
    }

    /** A hole is a thin full circle with its centre crossed, so that a punch can be set on it. */
    private static void paint(Circle circle, DrawingCanvas canvas) {
        boolean hole = circle.role() == Role.INNER_CUT;
        RoleLine look = hole ? new RoleLine(Line.solid(0.3, Tone.INK), null, false) : RoleLine.of(circle.role());
        canvas.circle(circle.centre(), circle.diameter());
        ink(look, true, canvas.target());
        if (hole) {
            double arm = circle.diameter() / 4;
            cross(canvas, circle.centre(), arm);
        }
    }

    private static void cross(DrawingCanvas canvas, Point centre, double arm) {
        canvas.moveTo(centre.plus(-arm, 0));
        canvas.lineTo(centre.plus(arm, 0));
        canvas.moveTo(centre.plus(0, -arm));
        canvas.lineTo(centre.plus(0, arm));
        canvas.target().stroke(Line.solid(0.15, Tone.INK));
    }
}
