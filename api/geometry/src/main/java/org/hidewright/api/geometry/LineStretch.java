package org.hidewright.api.geometry;

import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;

final class LineStretch extends Stretch {
    private final Segment.Line line;
    private final Vector along;

    LineStretch(Segment.Line line) {
        this.line = line;
        this.along = Vector.between(line.start(), line.end());
    }

    @Override
    double swing(double from, double to) {
        return 0;
    }

    @Override
    double turning() {
        return 0;
    }

    @Override
    Segment segment() {
        return line;
    }

    @Override
    Point at(double t) {
        return t == 1 ? line.end() : along.times(t).from(line.start());
    }

    @Override
    Vector velocity(double t) {
        return along;
    }

    @Override
    Vector acceleration(double t) {
        return new Vector(0, 0);
    }

    @Override
    double length(double from, double to) {
        return (to - from) * along.length();
    }

    @Override
    double parameterAt(double lengthMm) {
        return inside(lengthMm / along.length());
    }

    @Override
    Stretch part(double from, double to) {
        return new LineStretch(Segment.line(at(from), at(to)));
    }

    @Override
    Stretch reversed() {
        return new LineStretch(Segment.line(line.end(), line.start()));
    }

    @Override
    double nearest(Point point) {
        return inside(Vector.between(line.start(), point).dot(along) / along.dot(along));
    }

    @Override
    double sweptArea() {
        Point a = line.start();
        Point b = line.end();
        return (a.x() * b.y() - b.x() * a.y()) / 2;
    }

    @Override
    Box boxAround(double from, double to) {
        return Box.around(at(from), at(to));
    }

    @Override
    double sagitta(double from, double to) {
        return 0;
    }
}
