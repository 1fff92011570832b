package org.hidewright.core.item;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Shape;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Motion;

/** Drawings laid out in rows under each other, the highest first, so that none lies on another. */
final class SideBySide {
    private static final double GAP_MM = 12;
    /** Rows are about this much wider than high. */
    private static final double FORMAT = 1.6;

    private SideBySide() {}

    /** How each drawing is shifted, in the order they are given. */
    static List<Motion> shifts(List<Drawing> drawings) {
        List<Box> boxes = drawings.stream().map(Drawing::bounds).toList();
        double area = boxes.stream()
                .mapToDouble(box -> (box.width() + GAP_MM) * (box.height() + GAP_MM))
                .sum();
        double across = Math.max(
                Math.sqrt(area * FORMAT),
                boxes.stream().mapToDouble(Box::width).max().orElse(0));
        List<Integer> order = new ArrayList<>();
        List<Motion> shifts = new ArrayList<>();
        for (int i = 0; i < boxes.size(); i++) {
            order.add(i);
            shifts.add(Motion.none());
        }
        order.sort(Comparator.comparingDouble(i -> -boxes.get(i).height()));
        double x = 0;
        double y = 0;
        double rowHeight = 0;
        for (int i : order) {
            Box box = boxes.get(i);
            if (x > 0 && x + box.width() > across) {
                x = 0;
                y -= rowHeight + GAP_MM;
                rowHeight = 0;
            }
            shifts.set(i, Motion.shift(x - box.minX(), y - box.maxY()));
            x += box.width() + GAP_MM;
            rowHeight = Math.max(rowHeight, box.height());
        }
        return List.copyOf(shifts);
    }

    /** A drawing of lines, circles and labels, shifted. */
    static Drawing shifted(Drawing drawing, Motion shift) {
        return Drawing.of(
                drawing.shapes().stream().map(shape -> shifted(shape, shift)).toList());
    }

    private static Shape shifted(Shape shape, Motion shift) {
        if (shape instanceof Circle circle) {
            return Circle.of(circle.role(), shift.apply(circle.centre()), circle.diameter());
        }
        if (shape instanceof Label label) {
            return Label.of(label.text(), shift.apply(label.at()), label.anchor(), label.height())
                    .turned(label.turn());
        }
        return Curve.of((Path) shape).moved(shift).path(shape.role());
    }
}
