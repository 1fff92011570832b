package org.hidewright.api.geometry;

import java.util.List;
import java.util.stream.Stream;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;

/** A cubic Bézier curve, also as the polynomial a t³ + b t² + c t + start. */
final class CubicStretch extends Stretch {
    /** Of the length of the control polygon, for a whole parameter. */
    private static final double SLOW = 0.2;

    private final Segment.Cubic cubic;
    private final Vector a;
    private final Vector b;
    private final Vector c;
    private final double size;
    private double[] slowest;

    CubicStretch(Segment.Cubic cubic) {
        this.cubic = cubic;
        Point p0 = cubic.start();
        Point p1 = cubic.control1();
        Point p2 = cubic.control2();
        Point p3 = cubic.end();
        this.c = Vector.between(p0, p1).times(3);
        this.b = new Vector(3 * (p0.x() - 2 * p1.x() + p2.x()), 3 * (p0.y() - 2 * p1.y() + p2.y()));
        this.a = new Vector(p3.x() - 3 * p2.x() + 3 * p1.x() - p0.x(), p3.y() - 3 * p2.y() + 3 * p1.y() - p0.y());
        this.size = p0.distanceTo(p1) + p1.distanceTo(p2) + p2.distanceTo(p3);
    }

    Segment.Cubic cubic() {
        return cubic;
    }

    @Override
    Segment segment() {
        return cubic;
    }

    /** A curve turns no more than its control polygon does. */
    @Override
    double turning() {
        double turning = 0;
        Vector before = null;
        for (Vector leg : legs()) {
            turning += before == null ? 0 : Math.abs(before.turnTo(leg));
            before = leg;
        }
        return turning;
    }

    /** A curve points nowhere that its control polygon does not point to, or between. */
    @Override
    double swing(double from, double to) {
        Vector chord = Vector.between(at(from), at(to));
        double third = (to - from) / 3;
        Vector first = velocity(from).times(third);
        Vector last = velocity(to).times(third);
        Vector middle = new Vector(chord.x() - first.x() - last.x(), chord.y() - first.y() - last.y());
        return Math.max(swing(chord, first), Math.max(swing(chord, middle), swing(chord, last)));
    }

    private double swing(Vector chord, Vector leg) {
        if (!(chord.length() > 0)) {
            return Math.PI;
        }
        return leg.length() > 1e-12 * size ? Math.abs(chord.turnTo(leg)) : 0;
    }

    /** The legs of the control polygon that have a length. */
    private List<Vector> legs() {
        return Stream.of(
                        Vector.between(cubic.start(), cubic.control1()),
                        Vector.between(cubic.control1(), cubic.control2()),
                        Vector.between(cubic.control2(), cubic.end()))
                .filter(leg -> leg.length() > 1e-9 * size)
                .toList();
    }

    private double x(double t) {
        return ((a.x() * t + b.x()) * t + c.x()) * t + cubic.start().x();
    }

    private double y(double t) {
        return ((a.y() * t + b.y()) * t + c.y()) * t + cubic.start().y();
    }

    @Override
    Point at(double t) {
        return t == 0 ? cubic.start() : t == 1 ? cubic.end() : Point.of(x(t), y(t));
    }

    @Override
    Vector velocity(double t) {
        return new Vector((3 * a.x() * t + 2 * b.x()) * t + c.x(), (3 * a.y() * t + 2 * b.y()) * t + c.y());
    }

    @Override
    Vector acceleration(double t) {
        return new Vector(6 * a.x() * t + 2 * b.x(), 6 * a.y() * t + 2 * b.y());
    }

    /** Where a handle has no length the curve still leaves in a direction: that of the next control point. */
    @Override
    Vector tangent(double t) {
        Vector velocity = velocity(t);
        if (velocity.length() > 1e-9 * size) {
            return velocity.unit();
        }
        Vector bend = acceleration(t).times(Math.copySign(1, 0.5 - t));
        if (bend.length() > 1e-9 * size) {
            return bend.unit();
        }
        return Vector.between(cubic.start(), cubic.end()).unit();
    }

    @Override
    double length(double from, double to) {
        double sum = 0;
        double start = from;
        for (double slow : slowest()) {
            double end = Math.min(to, Math.max(from, slow));
            sum += GaussLegendre.sum(t -> velocity(t).length(), start, end);
            start = end;
        }
        return sum + GaussLegendre.sum(t -> velocity(t).length(), start, to);
    }

    @Override
    double parameterAt(double lengthMm) {
        double along = Math.min(length(), Math.max(0, lengthMm));
        return SignChange.between(0, 1, t -> length(0, t) - along);
    }

    /**
     * Where the curve all but stops, in order: there its speed has a kink, and sums on either side of it are summed apart.
     * At a least speed the acceleration is square to the velocity, which is a polynomial of the third degree.
     */
    private double[] slowest() {
        if (slowest == null) {
            slowest = new CubicRoots(18 * a.dot(a), 18 * a.dot(b), 4 * b.dot(b) + 6 * a.dot(c), 2 * b.dot(c))
                    .inside()
                    .filter(t -> velocity(t).length() < SLOW * size)
                    .toArray();
        }
        return slowest;
    }

    /** De Casteljau's points, by blossoming at both ends of the part. */
    @Override
    CubicStretch part(double from, double to) {
        double third = (to - from) / 3;
        Point start = at(from);
        Point end = at(to);
        return new CubicStretch(Segment.cubic(
                start,
                velocity(from).times(third).from(start),
                velocity(to).times(-third).from(end),
                end));
    }

    @Override
    Stretch reversed() {
        return new CubicStretch(Segment.cubic(cubic.end(), cubic.control2(), cubic.control1(), cubic.start()));
    }

    @Override
    double nearest(Point point) {
        return NearestOnCubic.parameter(this, point);
    }

    /** By Green's theorem, in closed form. */
    @Override
    double sweptArea() {
        Point p0 = cubic.start();
        Point p1 = cubic.control1();
        Point p2 = cubic.control2();
        Point p3 = cubic.end();
        return (6 * cross(p0, p1)
                        + 3 * cross(p0, p2)
                        + cross(p0, p3)
                        + 3 * cross(p1, p2)
                        + 3 * cross(p1, p3)
                        + 6 * cross(p2, p3))
                / 20;
    }

    private static double cross(Point a, Point b) {
        return a.x() * b.y() - b.x() * a.y();
    }

    @Override
    Box boxAround(double from, double to) {
        Segment.Cubic part = part(from, to).cubic;
        return Box.around(part.start(), part.control1(), part.control2(), part.end());
    }

    /** The control points are never less far from the chord than the curve. */
    @Override
    double sagitta(double from, double to) {
        Segment.Cubic part = part(from, to).cubic;
        LineStretch chord = new LineStretch(Segment.line(part.start(), part.end()));
        return Math.max(chord.distanceTo(part.control1()), chord.distanceTo(part.control2()));
    }

    /** Where it turns round in x or y, or bends over, in order: between these it does not cross itself. */
    double[] turningPoints() {
        return Stream.of(
                        new CubicRoots(0, 3 * a.x(), 2 * b.x(), c.x()),
                        new CubicRoots(0, 3 * a.y(), 2 * b.y(), c.y()),
                        new CubicRoots(0, 3 * b.cross(a), 3 * c.cross(a), c.cross(b)))
                .flatMapToDouble(CubicRoots::inside)
                .sorted()
                .toArray();
    }
}
