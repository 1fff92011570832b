package org.hidewright.straps;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.DimensionLine;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.drawing.Shape;
import org.hidewright.api.measure.Length;

/** A drawing as lines of text, a line a shape, places to a hundredth of a millimetre. */
final class DrawnLines {
    private DrawnLines() {}

    static String place(Point at) {
        return String.format(Locale.ROOT, "%.2f %.2f", at.x(), at.y()).replace("-0.00", "0.00");
    }

    /** The corners of a path from its start on, each arc with its centre. */
    static String corners(Shape shape) {
        List<String> corners = new ArrayList<>();
        List<Segment> segments = ((Path) shape).segments();
        corners.add(place(segments.get(0).start()));
        for (Segment segment : segments) {
            String round = segment instanceof Segment.Arc arc ? "round " + place(arc.centre()) + " to " : "";
            corners.add(round + place(segment.end()));
        }
        return String.join(", ", corners);
    }

    static List<String> paths(Drawing drawing, Role role) {
        return drawing.shapes().stream()
                .filter(shape -> shape.role() == role && shape instanceof Path)
                .map(DrawnLines::corners)
                .toList();
    }

    static List<String> labels(Drawing drawing) {
        return drawing.shapes().stream()
                .filter(Label.class::isInstance)
                .map(Label.class::cast)
                .map(label -> label.words() + " at " + place(label.at()))
                .toList();
    }

    static List<String> holes(Drawing drawing) {
        return drawing.shapes().stream()
                .filter(Circle.class::isInstance)
                .map(Circle.class::cast)
                .map(circle -> place(circle.centre()) + " ⌀ " + circle.diameter())
                .toList();
    }

    static List<String> dimensions(Drawing drawing) {
        return drawing.shapes().stream()
                .filter(DimensionLine.class::isInstance)
                .map(DimensionLine.class::cast)
                .map(line -> String.format(
                        Locale.ROOT,
                        "%s to %s beside %.0f: %.2f",
                        place(line.from()),
                        place(line.to()),
                        line.offset(),
                        ((Length) line.words()).mm()))
                .toList();
    }
}
