package org.hidewright.layout.task;

import java.util.ArrayList;
import java.util.List;

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
        List<Integer> kept = new ArrayList<>();
        for (int corner = 0; corner < x.length; corner++) {
            if (!Double.isFinite(x[corner]) || !Double.isFinite(y[corner])) {
                throw new IllegalArgumentException("Corner " + (corner + 1) + " of the outline is no number.");
            }
            int last = kept.isEmpty() ? -1 : kept.get(kept.size() - 1);
            if (last < 0 || x[last] != x[corner] || y[last] != y[corner]) {
                kept.add(corner);
            }
        }
        while (kept.size() > 1
                && x[kept.get(0)] == x[kept.get(kept.size() - 1)]
                && y[kept.get(0)] == y[kept.get(kept.size() - 1)]) {
            kept.remove(kept.size() - 1);
        }
        if (kept.size() < 3) {
            throw new IllegalArgumentException("An outline needs three corners that differ: here " + kept.size() + ".");
        }
        this.x = kept.stream().mapToDouble(corner -> x[corner]).toArray();
        this.y = kept.stream().mapToDouble(corner -> y[corner]).toArray();
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
