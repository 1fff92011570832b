package org.hidewright.documents;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.drawing.Shape;

/** Gives lines of direction their points, drawn as lines, for files whose readers do not know what a direction is. */
public final class ArrowLines {
    private static final double LENGTH_MM = 3;
    private static final double HALF_ANGLE = Math.toRadians(15);

    private ArrowLines() {}

    /** The shapes of a drawing with four short lines more for each line of direction: two at either end. */
    public static List<Shape> in(Drawing drawing) {
        List<Shape> shapes = new ArrayList<>();
        for (Shape shape : drawing.shapes()) {
            shapes.add(shape);
            if (shape.role() == Role.DIRECTION && shape instanceof Path path && !path.isClosed()) {
                List<Segment> segments = path.segments();
                Segment first = segments.get(0);
                Segment last = segments.get(segments.size() - 1);
                point(first.start(), first.start().directionTo(first.end()), shapes);
                point(last.end(), last.end().directionTo(last.start()), shapes);
            }
        }
        return shapes;
    }

    /** @param back where the line comes from */
    private static void point(Point tip, double back, List<Shape> shapes) {
        for (double side : new double[] {-HALF_ANGLE, HALF_ANGLE}) {
            shapes.add(Path.line(Role.DIRECTION, tip, tip.towards(back + side, LENGTH_MM)));
        }
    }
}
