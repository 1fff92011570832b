package org.hidewright.layout.open;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.concurrent.atomic.LongAdder;
import org.hidewright.api.calculator.Budget;

/**
 * A budget that counts what the threads of its search allocate on the heap.
 *
 * @param bytes gains what was allocated, as soon as a thread has done its search
 */
record CountedBudget(Budget budget, LongAdder bytes) implements Budget {
    CountedBudget(Budget budget) {
        this(budget, new LongAdder());
    }

    @Override
    public long seed() {
        return budget.seed();
    }

    @Override
    public int workers() {
        return budget.workers();
    }

    @Override
    public double spent(long tried) {
        return budget.spent(tried);
    }

    @Override
    public void sideBySide(List<? extends Runnable> searches) {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        budget.sideBySide(searches.stream()
                .map(search -> (Runnable) () -> {
                    long before = threads.getCurrentThreadAllocatedBytes();
                    search.run();
                    bytes.add(threads.getCurrentThreadAllocatedBytes() - before);
                })
                .toList());
    }
}
