package org.hidewright.documents.dxf;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;

/**
 * The vertices of a polyline, and how far each stretch bulges: by the tangent of a quarter of the angle of its arc, positive
 * where that runs counter-clockwise (DXF Reference, LWPOLYLINE and VERTEX, group 42).
 */
final class Bulges {
    private record Vertex(Point place, double bulge) {}

    private final List<Vertex> vertices = new ArrayList<>();

    void add(double x, double y, double bulge) {
        vertices.add(new Vertex(Point.of(x, y), bulge));
    }

    /** @param closed whether a last stretch leads back to the first vertex */
    List<Segment> segments(boolean closed) {
        List<Segment> segments = new ArrayList<>();
        for (int i = 0; i < (closed ? vertices.size() : vertices.size() - 1); i++) {
            Vertex start = vertices.get(i);
            Point end = vertices.get((i + 1) % vertices.size()).place();
            if (start.place().distanceTo(end) > 0) {
                segments.add(segment(start.place(), end, start.bulge()));
            }
        }
        return segments;
    }

    private static Segment segment(Point start, Point end, double bulge) {
        if (Math.abs(bulge) < 1e-12) {
            return Segment.line(start, end);
        }
        // the centre lies left of the middle by half the chord over the tangent of half the angle
        double off = (1 - bulge * bulge) / (4 * bulge);
        double dx = end.x() - start.x();
        double dy = end.y() - start.y();
        Point centre = Point.of((start.x() + end.x()) / 2 - off * dy, (start.y() + end.y()) / 2 + off * dx);
        return Segment.arc(start, centre, 4 * Math.atan(bulge));
    }
}
