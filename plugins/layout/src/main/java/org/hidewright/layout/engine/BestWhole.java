package org.hidewright.layout.engine;

/** The cheapest layout of all parts that any of several searches has found so far. */
final class BestWhole {
    private Stack[] stacks;
    private volatile double cost = Double.POSITIVE_INFINITY;

    /** Infinite as long as there is none. */
    double cost() {
        return cost;
    }

    synchronized void offer(Stack[] whole, double itsCost) {
        if (itsCost < cost) {
            stacks = whole.clone();
            cost = itsCost;
        }
    }

    /** What lies on each sheet. */
    synchronized Stack[] take() {
        return stacks.clone();
    }
}
