package org.hidewright.api.geometry;

import java.util.Objects;
import org.hidewright.api.drawing.Point;

/** A place on a curve. */
public final class Spot {
    private final Point point;
    private final double along;
    private final double direction;
    private final double curvature;
    private final int segment;

    Spot(Point point, double along, double direction, double curvature, int segment) {
        this.point = point;
        this.along = along;
        this.direction = direction;
        this.curvature = curvature;
        this.segment = segment;
    }

    /** Where it lies. */
    public Point point() {
        return point;
    }

    /** Length of the curve from its start to here, millimetres. */
    public double along() {
        return along;
    }

    /** The direction the curve goes in here, radians from the x axis, -π to π. At a corner, that of the segment it is on. */
    public double direction() {
        return direction;
    }

    /** One over the radius of the circle that fits best here, 1/mm; positive where the curve turns left, 0 on a line. */
    public double curvature() {
        return curvature;
    }

    /** Which of the curve’s segments, from 0. */
    public int segment() {
        return segment;
    }

    /** The place beside the curve, square to it; a positive distance is to the left. */
    public Point beside(double distanceMm) {
        return point.towards(direction + Math.PI / 2, distanceMm);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Spot spot
                && point.equals(spot.point)
                && along == spot.along
                && direction == spot.direction
                && segment == spot.segment;
    }

    @Override
    public int hashCode() {
        return Objects.hash(point, along);
    }

    @Override
    public String toString() {
        return "Spot[" + point + " at " + along + " mm, segment " + segment + "]";
    }
}
