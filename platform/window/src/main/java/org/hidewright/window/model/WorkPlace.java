package org.hidewright.window.model;

import java.util.concurrent.Executor;
import java.util.function.Supplier;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.work.Bench;
import org.hidewright.core.workshop.Stock;

/**
 * Where projects are worked out.
 *
 * @param catalogue what is installed
 * @param inUse what can be taken from the workshop, which changes while it is open
 * @param work the one thread calculators are called on
 * @param window the thread of the window
 */
public record WorkPlace(Catalogue catalogue, Supplier<Stock> inUse, Executor work, Executor window) {
    /** What can be taken from the workshop now. */
    public Stock stock() {
        return inUse.get();
    }

    /** A bench with what is there now: bundles come and go. */
    public Bench bench() {
        return new Bench(catalogue, stock());
    }
}
