package org.hidewright.window.piece;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Path;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.drawing.Shape;
import org.hidewright.core.item.PartInPlace;
import org.hidewright.window.look.Inks;

/** Parts as they will look: in the colour of their leather, with their edges, holes, folds and stitches in thread. */
final class Likeness {
    private static final int THREAD = 0xF2E6CF;
    private static final double THREAD_MM = 0.8;
    /** A stitch dips into its holes: what is seen of it is this much of the way from one to the next. */
    private static final double SEEN = 0.7;

    private static final double EDGE = 0.62;
    private static final double CREASE = 0.8;

    private final GC gc;
    private final Inks inks;
    private final Sheet sheet;

    Likeness(GC gc, Inks inks, Sheet sheet) {
        this.gc = gc;
        this.inks = inks;
        this.sheet = sheet;
        gc.setAntialias(SWT.ON);
    }

    void draw(List<PartInPlace> parts) {
        parts.forEach(this::draw);
    }

    private void draw(PartInPlace part) {
        int leather = LeatherColour.of(part.part().leather());
        List<Shape> shapes = part.drawing().shapes();
        for (Shape shape : shapes) {
            if (shape.role() == Role.CUT) {
                path(shape, leather, LeatherColour.shade(leather, EDGE), 1.2);
            }
        }
        for (Shape shape : shapes) {
            if (shape.role() == Role.FOLD) {
                path(shape, -1, LeatherColour.shade(leather, CREASE), 2.5);
            } else if (shape.role() == Role.INNER_CUT) {
                path(shape, inks.palette().paper(), LeatherColour.shade(leather, EDGE), 1);
            }
        }
        stitches(shapes);
    }

    private void path(Shape shape, int inside, int edge, double pixels) {
        Path path = new Path(gc.getDevice());
        if (shape instanceof Circle circle) {
            double radius = circle.diameter() / 2 * sheet.factor() * sheet.pixelsPerMm();
            path.addArc(
                    (float) (sheet.x(circle.centre()) - radius),
                    (float) (sheet.y(circle.centre()) - radius),
                    (float) (2 * radius),
                    (float) (2 * radius),
                    0,
                    360);
        } else if (shape instanceof org.hidewright.api.drawing.Path line) {
            follow(path, line);
        }
        if (inside >= 0) {
            gc.setBackground(inks.color(inside));
            gc.fillPath(path);
        }
        gc.setForeground(inks.color(edge));
        gc.setLineStyle(SWT.LINE_SOLID);
        gc.setLineWidth((int) Math.max(1, Math.round(pixels)));
        gc.drawPath(path);
        path.dispose();
    }

    private void follow(Path path, org.hidewright.api.drawing.Path line) {
        Point start = line.segments().get(0).start();
        path.moveTo(x(start), y(start));
        for (Segment segment : line.segments()) {
            if (segment instanceof Segment.Cubic cubic) {
                path.cubicTo(
                        x(cubic.control1()),
                        y(cubic.control1()),
                        x(cubic.control2()),
                        y(cubic.control2()),
                        x(cubic.end()),
                        y(cubic.end()));
            } else if (segment instanceof Segment.Arc arc) {
                int steps = 24;
                for (int i = 1; i <= steps; i++) {
                    Point on = arc.centre().towards(arc.startAngle() + arc.sweep() * i / steps, arc.radius());
                    path.lineTo(x(on), y(on));
                }
            } else {
                path.lineTo(x(segment.end()), y(segment.end()));
            }
        }
        if (line.isClosed()) {
            path.close();
        }
    }

    /** Holes that follow each other lie on one line, which their stitches follow. */
    private void stitches(List<Shape> shapes) {
        gc.setForeground(inks.color(THREAD));
        gc.setLineWidth((int) Math.max(1, Math.round(THREAD_MM * sheet.factor() * sheet.pixelsPerMm())));
        gc.setLineCap(SWT.CAP_FLAT);
        List<Point> holes = new ArrayList<>();
        for (Shape shape : shapes) {
            if (shape.role() == Role.STITCH_HOLE && shape instanceof Circle hole) {
                holes.add(hole.centre());
            } else {
                thread(holes);
                holes.clear();
            }
        }
        thread(holes);
    }

    private void thread(List<Point> holes) {
        for (int i = 1; i < holes.size(); i++) {
            Point from = holes.get(i - 1);
            Point to = holes.get(i);
            double length = from.distanceTo(to);
            Point begin = from.towards(from.directionTo(to), length * (1 - SEEN) / 2);
            Point end = from.towards(from.directionTo(to), length * (1 + SEEN) / 2);
            gc.drawLine(Math.round(x(begin)), Math.round(y(begin)), Math.round(x(end)), Math.round(y(end)));
        }
    }

    private float x(Point place) {
        return (float) sheet.x(place);
    }

    private float y(Point place) {
        return (float) sheet.y(place);
    }
}
