package org.hidewright.layout.engine;

import java.util.Collections;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import org.hidewright.api.calculator.Budget;

/** Work of which it does not matter who does it, shared among the workers of a budget. */
final class Shared {
    private Shared() {}

    /** Does the work for each number from nought; all is done when it returns. */
    static void among(Budget budget, int count, IntConsumer work) {
        AtomicInteger next = new AtomicInteger();
        Runnable worker = () -> {
            for (int number = next.getAndIncrement(); number < count; number = next.getAndIncrement()) {
                work.accept(number);
            }
        };
        budget.sideBySide(Collections.nCopies(budget.workers(), worker));
    }
}
