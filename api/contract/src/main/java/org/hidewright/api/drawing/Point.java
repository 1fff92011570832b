package org.hidewright.api.drawing;

import java.util.List;

/** A place on the sheet: millimetres to the right and millimetres up. */
public final class Point extends Value {
    private final double x;
    private final double y;

    private Point(double x, double y) {
        this.x = finite(x, "x");
        this.y = finite(y, "y");
    }

    /** @throws IllegalArgumentException if a coordinate is not finite */
    public static Point of(double xMm, double yMm) {
        return new Point(xMm, yMm);
    }

    /** The place at a distance and a direction (radians from the x axis, counter-clockwise) from this one. */
    public Point towards(double directionRad, double distanceMm) {
        return new Point(x + distanceMm * Math.cos(directionRad), y + distanceMm * Math.sin(directionRad));
    }

    /** The point that lies so far to the right and up, in millimetres. */
    public Point plus(double dxMm, double dyMm) {
        return new Point(x + dxMm, y + dyMm);
    }

    /** To the right, in millimetres. */
    public double x() {
        return x;
    }

    /** Up, in millimetres. */
    public double y() {
        return y;
    }

    /** How far another lies away, in millimetres. */
    public double distanceTo(Point other) {
        double dx = other.x - x;
        double dy = other.y - y;
        return Math.sqrt(dx * dx + dy * dy); // millimetres neither overflow nor vanish; hypot is ten times slower
    }

    /** Direction from here to another place, radians from the x axis, counter-clockwise, -π to π. */
    public double directionTo(Point other) {
        return Math.atan2(other.y - y, other.x - x);
    }

    @Override
    List<Object> parts() {
        return List.of(x, y);
    }
}
