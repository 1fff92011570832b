package org.hidewright.api.geometry;

import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;

/**
 * Lays a piece somewhere else without changing its size: shifted, turned, or turned over.
 *
 * <p>A place (x, y) goes to (c x - m s y + dx, s x + m c y + dy) with c and s the cosine and sine of the turn and m = -1
 * when it is turned over.
 */
public final class Motion {
    private final double cos;
    private final double sin;
    private final int over;
    private final double dx;
    private final double dy;

    private Motion(double cos, double sin, int over, double dx, double dy) {
        this.cos = cos;
        this.sin = sin;
        this.over = over;
        this.dx = dx;
        this.dy = dy;
    }

    /** Left where it is. */
    public static Motion none() {
        return new Motion(1, 0, 1, 0, 0);
    }

    /** To the right and up by so many millimetres. */
    public static Motion shift(double dxMm, double dyMm) {
        return new Motion(1, 0, 1, dxMm, dyMm);
    }

    /** Turned round a centre, radians, positive counter-clockwise. */
    public static Motion turn(Point centre, double angleRad) {
        return fixing(centre, Math.cos(angleRad), Math.sin(angleRad), 1);
    }

    /**
     * Turned over along the line through two places, as a page is.
     *
     * @throws IllegalArgumentException if both places are the same
     */
    public static Motion mirror(Point one, Point other) {
        if (one.equals(other)) {
            throw new IllegalArgumentException("a line to turn over along needs two places");
        }
        double twice = 2 * one.directionTo(other);
        return fixing(one, Math.cos(twice), Math.sin(twice), -1);
    }

    private static Motion fixing(Point kept, double cos, double sin, int over) {
        Motion loose = new Motion(cos, sin, over, 0, 0);
        Point moved = loose.apply(kept);
        return new Motion(cos, sin, over, kept.x() - moved.x(), kept.y() - moved.y());
    }

    /** This one first, then another. */
    public Motion then(Motion next) {
        Point origin = next.apply(Point.of(dx, dy));
        double turnedSin = next.over * sin;
        return new Motion(
                next.cos * cos - next.sin * turnedSin,
                next.sin * cos + next.cos * turnedSin,
                over * next.over,
                origin.x(),
                origin.y());
    }

    /** Whether left becomes right. */
    public boolean turnsOver() {
        return over == -1;
    }

    /** Where a point comes to lie. */
    public Point apply(Point point) {
        double x = point.x();
        double y = over * point.y();
        return Point.of(cos * x - sin * y + dx, sin * x + cos * y + dy);
    }

    /** The segment moved, from where its start went to where its end went. */
    public Segment apply(Segment segment) {
        if (segment instanceof Segment.Arc arc) {
            return Segment.arc(apply(arc.start()), apply(arc.centre()), over * arc.sweep());
        }
        if (segment instanceof Segment.Cubic cubic) {
            return Segment.cubic(
                    apply(cubic.start()), apply(cubic.control1()), apply(cubic.control2()), apply(cubic.end()));
        }
        return Segment.line(apply(segment.start()), apply(segment.end()));
    }
}
