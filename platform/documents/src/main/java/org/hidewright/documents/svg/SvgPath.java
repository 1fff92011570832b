package org.hidewright.documents.svg;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.hidewright.documents.PlainDecimal;

/** Path data (SVG 1.1, chapter 8.3) of a line whose y runs up; arcs stay arcs. */
final class SvgPath {
    /** An arc of a whole turn ends where it starts, which path data cannot say; it is written in parts below this. */
    private static final double MOST_TURN = 1.5 * Math.PI;

    private SvgPath() {}

    static String data(Path path) {
        List<String> steps = new ArrayList<>();
        steps.add("M " + at(path.segments().get(0).start()));
        path.segments().forEach(segment -> steps.add(step(segment)));
        if (path.isClosed()) {
            steps.add("Z");
        }
        return String.join(" ", steps);
    }

    static String at(Point point) {
        return PlainDecimal.of(point.x()) + " " + PlainDecimal.of(-point.y());
    }

    private static String step(Segment segment) {
        if (segment instanceof Segment.Arc arc) {
            int parts = (int) Math.ceil(Math.abs(arc.sweep()) / MOST_TURN);
            List<String> steps = new ArrayList<>();
            for (int i = 1; i <= parts; i++) {
                Point end = i == parts
                        ? arc.end()
                        : arc.centre().towards(arc.startAngle() + arc.sweep() * i / parts, arc.radius());
                steps.add(arc(arc, Math.abs(arc.sweep()) / parts > Math.PI, end));
            }
            return String.join(" ", steps);
        }
        if (segment instanceof Segment.Cubic cubic) {
            return "C " + at(cubic.control1()) + " " + at(cubic.control2()) + " " + at(cubic.end());
        }
        return "L " + at(segment.end());
    }

    private static String arc(Segment.Arc arc, boolean large, Point end) {
        String radius = PlainDecimal.of(arc.radius());
        String flags = (large ? "1" : "0") + " " + (arc.sweep() > 0 ? "0" : "1"); // y runs down here
        return "A " + radius + " " + radius + " 0 " + flags + " " + at(end);
    }
}
