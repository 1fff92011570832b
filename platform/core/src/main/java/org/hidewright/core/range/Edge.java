package org.hidewright.core.range;

import java.util.function.DoublePredicate;

/** Finds by bisection where something ends that holds at one place and not at a higher one. */
final class Edge {
    /** An edge is found to within this share of what lay between the two places. */
    private static final double FOUND = 1e-7;

    private Edge() {}

    /**
     * Where it ends.
     *
     * @param low where it holds
     * @param high where it does not
     */
    static double between(double low, double high, DoublePredicate holds) {
        double last = low;
        double first = high;
        double enough = enough(low, high);
        while (first - last > enough) {
            double middle = last + (first - last) / 2;
            if (holds.test(middle)) {
                last = middle;
            } else {
                first = middle;
            }
        }
        return last + (first - last) / 2;
    }

    /** How near the two places have to come; between neighbouring numbers none lies. */
    private static double enough(double low, double high) {
        return Math.max(FOUND * (high - low), 2 * Math.ulp(Math.max(Math.abs(low), Math.abs(high))));
    }
}
