package org.hidewright.window.model;

import java.util.concurrent.Executor;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.work.Bench;
import org.hidewright.core.workshop.Stock;

/**
 * Where projects are worked out.
 *
 * @param catalogue what is installed
 * @param stock what can be taken from the workshop
 * @param work the one thread calculators are called on
 * @param window the thread of the window
 */
public record WorkPlace(Catalogue catalogue, Stock stock, Executor work, Executor window) {
    /** A bench with what is there now: bundles come and go. */
    public Bench bench() {
        return new Bench(catalogue, stock);
    }
}
