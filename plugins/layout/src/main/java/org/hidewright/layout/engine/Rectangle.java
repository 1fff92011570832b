package org.hidewright.layout.engine;

import java.util.Optional;
import org.hidewright.layout.task.Outline;

/** A strip or a panel: an upright rectangle, to whose edges parts may come up flush. Its length may change. */
final class Rectangle implements Ground {
    /** Share of the part's box that counts as outside as soon as anything does. */
    private static final double STEP = 1e-4;

    private static final double WEIGHT = 2;

    /**
     * What a part may seem to reach over an edge, as a share of its diameter, without lying off: a part as wide as the sheet does so by
     * the last digit of a sum. It is moved back before it is told ({@link Forms#flush}).
     */
    static final double ROUNDING = 1e-13;

    private final double minX;
    private final double minY;
    private final double maxY;
    private double maxX;

    Rectangle(double minX, double minY, double maxX, double maxY) {
        this.minX = minX;
        this.minY = minY;
        this.maxX = maxX;
        this.maxY = maxY;
    }

    /** The rectangle that an outline is; empty where it is none, or not upright. */
    static Optional<Rectangle> of(Outline outline) {
        double[] x = outline.xs();
        double[] y = outline.ys();
        boolean upright = x.length == 4
                && (x[0] == x[1] && y[1] == y[2] && x[2] == x[3] && y[3] == y[0]
                        || y[0] == y[1] && x[1] == x[2] && y[2] == y[3] && x[3] == x[0]);
        return upright
                ? Optional.of(new Rectangle(
                        Math.min(x[0], x[2]), Math.min(y[0], y[2]), Math.max(x[0], x[2]), Math.max(y[0], y[2])))
                : Optional.empty();
    }

    /** A strip from x = 0, as long as it need be. */
    static Rectangle strip(double height) {
        return new Rectangle(0, 0, Double.MAX_VALUE, height);
    }

    void length(double length) {
        maxX = minX + length;
    }

    @Override
    public double minX() {
        return minX;
    }

    @Override
    public double minY() {
        return minY;
    }

    @Override
    public double maxX() {
        return maxX;
    }

    @Override
    public double maxY() {
        return maxY;
    }

    @Override
    public double outside(Turned part, double x, double y) {
        double left = part.minX + x;
        double right = part.maxX + x;
        double low = part.minY + y;
        double high = part.maxY + y;
        double over = ROUNDING * part.form.diameter;
        if (left >= minX - over && right <= maxX + over && low >= minY - over && high <= maxY + over) {
            return 0;
        }
        double width = Math.max(0, Math.min(right, maxX) - Math.max(left, minX));
        double tall = Math.max(0, Math.min(high, maxY) - Math.max(low, minY));
        double whole = (right - left) * (high - low);
        double off = whole - width * tall;
        if (off >= whole) {
            // wholly off: the farther, the worse
            double away = Math.max(Math.max(minX - right, left - maxX), Math.max(minY - high, low - maxY));
            off = whole + Math.max(0, away) * part.form.diameter;
        }
        return WEIGHT * Math.sqrt(off + STEP * whole) * Meeting.scale(part.form, part.form);
    }
}
