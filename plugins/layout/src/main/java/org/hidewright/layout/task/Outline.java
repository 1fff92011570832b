package org.hidewright.layout.task;

import java.util.Arrays;

/** A closed line of straight stretches that does not cross itself: what the knife or the edge of a sheet follows. */
public final class Outline {
    private final double[] x;
    private final double[] y;

    /**
     * @param x corners in order, in either direction; the first may be repeated at the end, corners may follow themselves
     * @throws IllegalArgumentException when fewer than three corners differ, or a number is none
     */
    public Outline(double[] x, double[] y) {
        if (x.length != y.length) {
            throw new IllegalArgumentException(
                    "An outline has as many x as y: here " + x.length + " and " + y.length + ".");
        }
        double[] keptX = new double[x.length];
        double[] keptY = new double[x.length];
        int kept = 0;
        for (int corner = 0; corner < x.length; corner++) {
            if (!Double.isFinite(x[corner]) || !Double.isFinite(y[corner])) {
                throw new IllegalArgumentException("Corner " + (corner + 1) + " of the outline is no number.");
            }
            if (kept == 0 || keptX[kept - 1] != x[corner] || keptY[kept - 1] != y[corner]) {
                keptX[kept] = x[corner];
                keptY[kept] = y[corner];
                kept++;
            }
        }
        while (kept > 1 && keptX[0] == keptX[kept - 1] && keptY[0] == keptY[kept - 1]) {
            kept--;
        }
        if (kept < 3) {
            throw new IllegalArgumentException("An outline needs three corners that differ: here " + kept + ".");
        }
        this.x = Arrays.copyOf(keptX, kept);
        this.y = Arrays.copyOf(keptY, kept);
    }

    public static Outline rectangle(double left, double low, double right, double high) {
        return new Outline(new double[] {left, right, right, left}, new double[] {low, low, high, high});
    }

    public int corners() {
        return x.length;
    }

    public double x(int corner) {
        return x[corner];
    }

    public double y(int corner) {
        return y[corner];
    }

    /** The area within, whichever way the outline runs. */
    public double area() {
        return Math.abs(twiceArea() / 2);
    }

    /** Whether the corners run clockwise. */
    public boolean clockwise() {
        return twiceArea() < 0;
    }

    /** Positive when the corners run counter-clockwise. */
    private double twiceArea() {
        double twice = 0;
        for (int here = 0, before = x.length - 1; here < x.length; before = here++) {
            twice += (x[before] - x[0]) * (y[here] - y[0]) - (x[here] - x[0]) * (y[before] - y[0]);
        }
        return twice;
    }

    /** The outline turned about the origin, counter-clockwise, and then moved. */
    public Outline moved(double radians, double dx, double dy) {
        double cos = Turning.cos(radians);
        double sin = Turning.sin(radians);
        double[] toX = new double[x.length];
        double[] toY = new double[x.length];
        for (int corner = 0; corner < x.length; corner++) {
            toX[corner] = cos * x[corner] - sin * y[corner] + dx;
            toY[corner] = sin * x[corner] + cos * y[corner] + dy;
        }
        return new Outline(toX, toY);
    }

    public double[] xs() {
        return x.clone();
    }

    public double[] ys() {
        return y.clone();
    }
}
