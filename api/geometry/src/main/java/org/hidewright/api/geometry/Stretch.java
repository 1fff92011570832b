package org.hidewright.api.geometry;

import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;

/** One segment with what calculations need of it. Its parameter runs from 0 at the start to 1 at the end. */
abstract class Stretch {
    /** Shorter than this is no length: a place, a gap that does not count. */
    static final double NOTHING_MM = 1e-7;

    private double length = Double.NaN;
    private Box box;

    static Stretch of(Segment segment) {
        if (segment instanceof Segment.Line line) {
            return new LineStretch(line);
        }
        if (segment instanceof Segment.Arc arc) {
            return new ArcStretch(arc);
        }
        return new CubicStretch((Segment.Cubic) segment);
    }

    /** Whether two places are nearer to each other than a distance. */
    static boolean within(double mm, Point one, Point other) {
        return one.distanceTo(other) < mm;
    }

    /** A share of a stretch, kept from 0 to 1; 0 for what is no number. */
    static double inside(double share) {
        return share > 0 ? Math.min(1, share) : 0;
    }

    abstract Segment segment();

    abstract Point at(double t);

    /** First derivative by the parameter. */
    abstract Vector velocity(double t);

    /** Second derivative by the parameter. */
    abstract Vector acceleration(double t);

    /** Length from one parameter to a larger one. */
    abstract double length(double from, double to);

    abstract Stretch part(double from, double to);

    abstract Stretch reversed();

    /** The parameter of the place nearest to a point. */
    abstract double nearest(Point point);

    /** Half the area swept from the origin: the stretch's share in the area of a closed curve. */
    abstract double sweptArea();

    /** A box round the part between two parameters, possibly a little too large. */
    abstract Box boxAround(double from, double to);

    /** By how much the part between two parameters may leave its chord. */
    abstract double sagitta(double from, double to);

    /** By how much, at most, the part between two parameters points away from its chord; π where it has none. */
    abstract double swing(double from, double to);

    /** At least the sum of all its turning, to the left and to the right. */
    abstract double turning();

    Point start() {
        return segment().start();
    }

    Point end() {
        return segment().end();
    }

    final Box box() {
        if (box == null) {
            box = segment().bounds();
        }
        return box;
    }

    final double length() {
        if (Double.isNaN(length)) {
            length = length(0, 1);
        }
        return length;
    }

    /** The direction one goes in, of length 1. */
    Vector tangent(double t) {
        return velocity(t).unit();
    }

    /** One over the radius of the circle that fits best, positive where it turns left. */
    double curvature(double t) {
        Vector velocity = velocity(t);
        double speed = velocity.length();
        return velocity.cross(acceleration(t)) / (speed * speed * speed);
    }

    /** The parameter at a length from the start; 0 before it, 1 past the end. */
    abstract double parameterAt(double lengthMm);

    /** The place beside the curve at a distance, positive to the left. */
    Point beside(double t, double distanceMm) {
        return tangent(t).left().times(distanceMm).from(at(t));
    }

    double distanceTo(Point point) {
        return at(nearest(point)).distanceTo(point);
    }
}
