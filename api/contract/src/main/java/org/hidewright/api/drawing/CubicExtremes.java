package org.hidewright.api.drawing;

/** Where one coordinate of a cubic Bézier curve turns round: the roots of its derivative between 0 and 1. */
final class CubicExtremes {
    private CubicExtremes() {}

    static double at(double p0, double p1, double p2, double p3, double t) {
        double u = 1 - t;
        return u * u * u * p0 + 3 * u * u * t * p1 + 3 * u * t * t * p2 + t * t * t * p3;
    }

    /** B'(t)/3 = a t² + b t + c. */
    static double[] of(double p0, double p1, double p2, double p3) {
        double a = -p0 + 3 * p1 - 3 * p2 + p3;
        double b = 2 * (p0 - 2 * p1 + p2);
        double c = p1 - p0;
        double root = Math.sqrt(Math.max(0, b * b - 4 * a * c));
        double q = -0.5 * (b + Math.copySign(root, b)); // the form without cancellation
        double first = q / a;
        double second = c / q;
        boolean firstInside = first > 0 && first < 1;
        if (second > 0 && second < 1) {
            return firstInside ? new double[] {first, second} : new double[] {second};
        }
        return firstInside ? new double[] {first} : new double[0];
    }
}
