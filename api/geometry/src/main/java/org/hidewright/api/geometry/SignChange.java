package org.hidewright.api.geometry;

import java.util.function.DoubleUnaryOperator;

/** Where a continuous function goes from one sign to the other, by the Illinois rule (Dowell and Jarratt 1971, from memory). */
final class SignChange {
    private static final int MOST_STEPS = 80;
    private static final double SAME = 1e-15;

    private SignChange() {}

    /**
     * The place between two at which the function is nothing.
     *
     * @param f of different signs at both
     */
    static double between(double from, double to, DoubleUnaryOperator f) {
        double near = from;
        double far = to;
        double atNear = f.applyAsDouble(near);
        double atFar = f.applyAsDouble(far);
        // the place last found is the near one; the far one is kept while the sign stays, and halved so that it moves
        // too
        for (int step = 0; step < MOST_STEPS && Math.abs(far - near) > SAME && atNear != 0; step++) {
            double next = (atFar * near - atNear * far) / (atFar - atNear);
            double atNext = f.applyAsDouble(next);
            if (Math.signum(atNext) == Math.signum(atNear)) {
                atFar /= 2;
            } else {
                far = near;
                atFar = atNear;
            }
            near = next;
            atNear = atNext;
        }
        return near;
    }
}
