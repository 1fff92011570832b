package org.hidewright.api.geometry;

import org.hidewright.api.drawing.Point;

/** A direction with a length, in the plane. */
record Vector(double x, double y) {

    static Vector between(Point from, Point to) {
        return new Vector(to.x() - from.x(), to.y() - from.y());
    }

    double length() {
        return Math.sqrt(x * x + y * y); // millimetres neither overflow nor vanish; hypot is ten times slower
    }

    double dot(Vector other) {
        return x * other.x + y * other.y;
    }

    /** Positive when the other one is to the left. */
    double cross(Vector other) {
        return x * other.y - y * other.x;
    }

    Vector times(double factor) {
        return new Vector(x * factor, y * factor);
    }

    Vector unit() {
        return times(1 / length());
    }

    /** Turned by a right angle to the left. */
    Vector left() {
        return new Vector(-y, x);
    }

    double angle() {
        return Math.atan2(y, x);
    }

    /** By how much one has to turn to go on along the other, -π to π. */
    double turnTo(Vector other) {
        return Math.atan2(cross(other), dot(other));
    }

    /** By how much one has to turn to that side to go on along the other, 0 to 2π with the sign of the side. */
    double turnTo(Vector other, double side) {
        double turn = turnTo(other);
        return turn * side < 0 ? turn + Math.copySign(2 * Math.PI, side) : turn;
    }

    Point from(Point place) {
        return place.plus(x, y);
    }
}
