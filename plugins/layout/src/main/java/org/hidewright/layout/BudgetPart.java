package org.hidewright.layout;

import java.util.List;
import org.hidewright.api.calculator.Budget;

/**
 * A part of a budget, for one search after another.
 *
 * @param before tries that a worker made before it
 * @param from the share of the whole budget that is spent when this part begins
 * @param to the share at which it ends
 */
record BudgetPart(Budget whole, long before, double from, double to) implements Budget {
    @Override
    public int workers() {
        return whole.workers();
    }

    @Override
    public void sideBySide(List<? extends Runnable> searches) {
        whole.sideBySide(searches);
    }

    @Override
    public long seed() {
        return whole.seed();
    }

    @Override
    public double spent(long tried) {
        return Math.max(0, (whole.spent(before + tried) - from) / (to - from));
    }
}
