package org.hidewright.layout.engine;

import java.util.Arrays;

/** The cheapest layout of all parts that any of several searches has found so far; of several the one whose last sheet carries least. */
final class BestWhole {
    private Stack[] stacks;
    private volatile double cost = Double.POSITIVE_INFINITY;
    private double last;

    /** Infinite as long as there is none. */
    double cost() {
        return cost;
    }

    synchronized void offer(Stack[] whole, double itsCost) {
        double itsLast = Arrays.stream(whole)
                .mapToDouble(Stack::area)
                .filter(area -> area > 0)
                .min()
                .orElse(0);
        if (itsCost < cost || itsCost == cost && itsLast < last) {
            stacks = whole.clone();
            last = itsLast;
            cost = itsCost;
        }
    }

    /** What lies on each sheet. */
    synchronized Stack[] take() {
        return stacks.clone();
    }
}
