package org.hidewright.api.benchwork;

import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Curve;

/**
 * A flap that goes over the mouth of a piece and closes on its front: it is of one leather with the back, above its height.
 * Millimetres.
 *
 * @param fold what it takes from the back over the top to the front
 * @param down from there to the middle of the closure
 * @param end from the middle of the closure to the end of the flap
 */
public record Flap(double fold, double down, double end) {
    /** A back without a flap. */
    public static final Flap NONE = new Flap(0, 0, 0);

    /** How far down the front a closure sits, as a part of its height: common practice. */
    private static final double DOWN = 0.3;

    /** Leather beyond what a closure needs: common practice. */
    private static final double BEYOND = 4;

    /** Of the corners of a flap that is wide and long enough: common practice. */
    private static final double RADIUS = 18;

    /**
     * A flap that reaches far enough for its closure, and so that the front has leather above what is set in it.
     *
     * @param height of the front
     * @param leather thickness of the flap
     * @param fold what it takes over the top
     */
    public static Flap closedBy(Closure closure, double height, double leather, double fold) {
        return new Flap(
                fold, Math.max(DOWN * height, closure.leastToEnd() + 2 * leather), closure.leastToEnd() + BEYOND);
    }

    /** What the back is longer than the front. */
    public double length() {
        return fold + down + end;
    }

    /** Of its corners, on a piece of that width. */
    public double radius(double width) {
        return Math.min(width / 3, Math.min(RADIUS, (down + end) / 2));
    }

    /**
     * The back with the flap above it, as {@link Panels} draws it.
     *
     * @param height below the flap
     * @param corners radius of the two lower corners
     */
    public Curve back(double width, double height, double corners) {
        return Panels.flapped(width, height, corners, length(), radius(width));
    }

    /** Cuts the closure into the middle of the flap and where that lies on the front when the flap is down. */
    public Fastened close(Closure closure, Piece back, Piece front, double width, double height) throws NoRoom {
        return closure.fasten(
                "closure",
                "Closure",
                back,
                Point.of(width / 2, height + fold + down),
                Math.PI / 2,
                front,
                Point.of(width / 2, height - down));
    }
}
