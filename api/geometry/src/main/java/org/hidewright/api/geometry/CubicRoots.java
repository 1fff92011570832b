package org.hidewright.api.geometry;

import java.util.stream.DoubleStream;

/**
 * The roots between 0 and 1 of a polynomial a t³ + b t² + c t + d at which it changes its sign.
 *
 * <p>Between the places where its slope is nothing it only rises or only falls, so that none is overlooked.
 */
record CubicRoots(double a, double b, double c, double d) {

    /** In order. */
    DoubleStream inside() {
        double[] bounds = level();
        DoubleStream.Builder roots = DoubleStream.builder();
        for (int i = 1; i < bounds.length; i++) {
            if (Math.signum(at(bounds[i - 1])) * Math.signum(at(bounds[i])) < 0) {
                roots.add(SignChange.between(bounds[i - 1], bounds[i], this::at));
            }
        }
        return roots.build();
    }

    private double at(double t) {
        return ((a * t + b) * t + c) * t + d;
    }

    /** Where the slope is nothing, and 0 and 1. Roots that are no numbers fall away by the comparisons. */
    private double[] level() {
        double q = -(b + Math.copySign(Math.sqrt(b * b - 3 * a * c), b)); // the form without cancellation
        return DoubleStream.of(0, q / (3 * a), c / q, 1)
                .filter(t -> t >= 0 && t <= 1)
                .sorted()
                .toArray();
    }
}
