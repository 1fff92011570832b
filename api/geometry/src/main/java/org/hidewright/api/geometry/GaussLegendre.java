package org.hidewright.api.geometry;

import java.util.function.DoubleUnaryOperator;

/**
 * Sums up a smooth function by Gauss-Legendre quadrature, halving the interval until both ways agree.
 *
 * <p>Nodes are the roots of the Legendre polynomial, found by Newton's method (Abramowitz and Stegun 25.4.29).
 */
final class GaussLegendre {
    private static final int NODES = 16;
    private static final double[] AT = new double[NODES];
    private static final double[] WEIGHT = new double[NODES];

    static {
        for (int i = 0; i < NODES; i++) {
            double x = Math.cos(Math.PI * (i + 0.75) / (NODES + 0.5));
            double slope = 1;
            for (int step = 0; step < 10; step++) {
                double before = 1;
                double value = x;
                for (int n = 2; n <= NODES; n++) {
                    double next = ((2 * n - 1) * x * value - (n - 1) * before) / n;
                    before = value;
                    value = next;
                }
                slope = NODES * (x * value - before) / (x * x - 1);
                x -= value / slope;
            }
            AT[i] = x;
            WEIGHT[i] = 2 / ((1 - x * x) * slope * slope);
        }
    }

    private GaussLegendre() {}

    static double sum(DoubleUnaryOperator f, double from, double to) {
        return halved(f, from, to, once(f, from, to));
    }

    private static double halved(DoubleUnaryOperator f, double from, double to, double whole) {
        double middle = (from + to) / 2;
        double first = once(f, from, middle);
        double second = once(f, middle, to);
        if (Math.abs(first + second - whole) > 1e-12 * Math.abs(whole) + 1e-15) {
            return halved(f, from, middle, first) + halved(f, middle, to, second);
        }
        return first + second;
    }

    private static double once(DoubleUnaryOperator f, double from, double to) {
        double half = (to - from) / 2;
        double middle = (from + to) / 2;
        double sum = 0;
        for (int i = 0; i < NODES; i++) {
            sum += WEIGHT[i] * f.applyAsDouble(middle + half * AT[i]);
        }
        return sum * half;
    }
}
