package org.hidewright.api.geometry;

import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;

/**
 * The spot of a cubic nearest to a place. Where the way to the place is square to the curve, (B(t) - p) · B'(t) = 0, a
 * polynomial of degree 5; its roots are parted by Descartes' rule of signs on its Bernstein coefficients, so that none is
 * overlooked however near to each other they are.
 */
final class NearestOnCubic {
    /** Roots nearer to each other than this are one. */
    private static final double SAME = 1e-12;
    /** C(3, i) C(2, j) / C(5, i + j). */
    private static final double[][] SHARE = new double[4][3];

    static {
        double[] three = {1, 3, 3, 1};
        double[] two = {1, 2, 1};
        double[] five = {1, 5, 10, 10, 5, 1};
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 3; j++) {
                SHARE[i][j] = three[i] * two[j] / five[i + j];
            }
        }
    }

    private final CubicStretch curve;
    private final Point place;
    private double best;
    private double least = Double.POSITIVE_INFINITY;

    private NearestOnCubic(CubicStretch curve, Point place) {
        this.curve = curve;
        this.place = place;
        offer(0);
        offer(1);
    }

    static double parameter(CubicStretch curve, Point place) {
        NearestOnCubic nearest = new NearestOnCubic(curve, place);
        nearest.part(inside(leaning(curve.cubic(), place)), 0, 1);
        return nearest.best;
    }

    private void offer(double t) {
        double distance = place.distanceTo(curve.at(t));
        if (distance < least) {
            least = distance;
            best = t;
        }
    }

    private static double[] leaning(Segment.Cubic cubic, Point place) {
        Point[] control = {cubic.start(), cubic.control1(), cubic.control2(), cubic.end()};
        double[] leaning = new double[6];
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 3; j++) {
                Vector out = Vector.between(place, control[i]);
                Vector step = Vector.between(control[j], control[j + 1]);
                leaning[i + j] += SHARE[i][j] * out.dot(step);
            }
        }
        return leaning;
    }

    /**
     * The same polynomial, but for a factor, divided by t, or by 1 - t, where it is nothing at that end because a handle has no length: the ends
     * are offered anyway, and a root there would hide those between.
     */
    private static double[] inside(double[] f) {
        int degree = f.length - 1;
        if (degree == 0 || f[0] != 0 && f[degree] != 0) {
            return f;
        }
        int first = f[0] == 0 ? 1 : 0;
        double[] divided = new double[degree];
        for (int i = 0; i < degree; i++) {
            divided[i] = f[i + first] / (first == 1 ? i + 1 : degree - i);
        }
        return inside(divided);
    }

    private void part(double[] f, double from, double to) {
        int changes = 0;
        for (int i = 1; i < f.length; i++) {
            changes += f[i - 1] < 0 == f[i] < 0 ? 0 : 1;
        }
        if (changes == 0) {
            return;
        }
        if (changes == 1) {
            if (f[0] < 0) {
                offer(from + (to - from) * SignChange.between(0, 1, t -> value(f, t)));
            }
            return;
        }
        if (to - from < SAME) {
            offer(from);
            return;
        }
        double[] first = new double[f.length];
        double[] second = f.clone();
        for (int level = 0; level < f.length; level++) {
            first[level] = second[0];
            for (int i = 0; i < f.length - 1 - level; i++) {
                second[i] = (second[i] + second[i + 1]) / 2;
            }
        }
        // what is left in the triangle, from its last row up, are the coefficients of the second half
        double middle = (from + to) / 2;
        part(first, from, middle);
        part(second, middle, to);
    }

    /** By De Casteljau’s halving of what lies between two coefficients, which divides by nothing. */
    private static double value(double[] f, double t) {
        double[] level = f.clone();
        for (int left = f.length - 1; left > 0; left--) {
            for (int i = 0; i < left; i++) {
                level[i] += t * (level[i + 1] - level[i]);
            }
        }
        return level[0];
    }
}
