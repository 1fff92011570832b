package org.hidewright.core.search;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongSupplier;
import org.hidewright.api.calculator.Budget;

/** What a search may spend, of time or of tries, until somebody stops it. */
public abstract class SearchBudget implements Budget {
    private final int workers;
    private final long seed;
    private final AtomicLong most = new AtomicLong();
    private volatile boolean stopped;

    private SearchBudget(int workers, long seed) {
        this.workers = workers;
        this.seed = seed;
    }

    /**
     * A budget of time, from now on.
     *
     * @param nanos a clock that only goes forward, in nanoseconds
     */
    public static SearchBudget ofTime(Duration time, LongSupplier nanos, int workers, long seed) {
        long from = nanos.getAsLong();
        double whole = Math.max(1, time.toNanos());
        return new SearchBudget(workers, seed) {
            @Override
            double used(long tried) {
                return (nanos.getAsLong() - from) / whole;
            }
        };
    }

    /** A budget of tries, for one worker, so that the same search is made each time. */
    public static SearchBudget ofTries(long tries, long seed) {
        return new SearchBudget(1, seed) {
            @Override
            double used(long tried) {
                return (double) tried / tries;
            }
        };
    }

    abstract double used(long tried);

    /** Ends the search; what it has found until now is kept. */
    public void stop() {
        stopped = true;
    }

    /** Whether it was stopped before its end. */
    public boolean stopped() {
        return stopped;
    }

    /** One after another, where nobody lends threads. */
    @Override
    public void sideBySide(List<? extends Runnable> searches) {
        searches.forEach(Runnable::run);
    }

    @Override
    public int workers() {
        return workers;
    }

    @Override
    public long seed() {
        return seed;
    }

    @Override
    public double spent(long tried) {
        if (tried > most.get()) {
            most.accumulateAndGet(tried, Math::max);
        }
        return stopped ? 1 : used(tried);
    }

    /** The most tries that any of its workers has made until now. */
    public long tried() {
        return most.get();
    }
}
