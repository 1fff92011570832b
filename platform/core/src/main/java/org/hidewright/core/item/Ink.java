package org.hidewright.core.item;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Shape;
import org.hidewright.api.geometry.Curve;

/** Where something is drawn on a part, closely enough that no letters find room between two places of one line. */
final class Ink {
    private static final double STEP_MM = 0.8;

    private final List<Point> places = new ArrayList<>();

    Ink(Drawing drawing) {
        drawing.shapes().forEach(this::trace);
    }

    private void trace(Shape shape) {
        if (shape instanceof Path path) {
            Curve curve = Curve.of(path);
            int steps = (int) Math.ceil(curve.length() / STEP_MM);
            for (int i = 0; i <= steps; i++) {
                places.add(curve.at(curve.length() * i / steps).point());
            }
        } else if (shape instanceof Circle circle) {
            places.add(circle.centre());
            int steps = (int) Math.ceil(Math.PI * circle.diameter() / STEP_MM);
            for (int i = 0; i < steps; i++) {
                places.add(circle.centre().towards(2 * Math.PI * i / steps, circle.diameter() / 2));
            }
        } else if (shape instanceof Label label) {
            trace(label.bounds());
        }
    }

    private void trace(Box letters) {
        int across = (int) Math.ceil(letters.width() / STEP_MM);
        int up = (int) Math.ceil(letters.height() / STEP_MM);
        for (int i = 0; i <= across; i++) {
            for (int j = 0; j <= up; j++) {
                places.add(Point.of(
                        letters.minX() + letters.width() * i / across, letters.minY() + letters.height() * j / up));
            }
        }
    }

    /** Whether nothing is drawn so near to a place. */
    boolean isClear(Point middle, double halfX, double halfY) {
        return places.stream()
                .noneMatch(
                        point -> Math.abs(point.x() - middle.x()) < halfX && Math.abs(point.y() - middle.y()) < halfY);
    }
}
