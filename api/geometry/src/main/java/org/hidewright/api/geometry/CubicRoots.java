package org.hidewright.api.geometry;

import java.util.ArrayList;
import java.util.List;

/** The roots between 0 and 1 of a polynomial a t³ + b t² + c t + d at which it changes its sign. */
final class CubicRoots {
    private final double a;
    private final double b;
    private final double c;
    private final double d;

    CubicRoots(double a, double b, double c, double d) {
        this.a = a;
        this.b = b;
        this.c = c;
        this.d = d;
    }

    private double at(double t) {
        return ((a * t + b) * t + c) * t + d;
    }

    /** In order. Between the places where the slope is nothing it only rises or only falls, so that halving finds all. */
    List<Double> inside() {
        List<Double> bounds = new ArrayList<>(List.of(0.0));
        double inner = b * b - 3 * a * c;
        if (inner > 0) {
            double q = -(b + Math.copySign(Math.sqrt(inner), b)); // the form without cancellation
            double one = q / (3 * a);
            double other = c / q;
            for (double t : new double[] {Math.min(one, other), Math.max(one, other)}) {
                if (t > 0 && t < 1) {
                    bounds.add(t);
                }
            }
        }
        bounds.add(1.0);
        List<Double> roots = new ArrayList<>();
        for (int i = 1; i < bounds.size(); i++) {
            if (at(bounds.get(i - 1)) * at(bounds.get(i)) < 0) {
                roots.add(between(bounds.get(i - 1), bounds.get(i)));
            }
        }
        return roots;
    }

    private double between(double from, double to) {
        double low = from;
        double high = to;
        boolean falls = at(from) > 0;
        for (int step = 0; step < 60; step++) {
            double middle = (low + high) / 2;
            if ((at(middle) > 0) == falls) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
