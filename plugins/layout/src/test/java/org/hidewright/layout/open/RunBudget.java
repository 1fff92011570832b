package org.hidewright.layout.open;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.LongToDoubleFunction;
import org.hidewright.api.calculator.Budget;

/** What a search in a test or a benchmark may spend, on threads of its own. */
public record RunBudget(long seed, int workers, LongToDoubleFunction spending) implements Budget {
    /** So many tries for each worker. */
    public static RunBudget ofTries(long seed, int workers, long tries) {
        return new RunBudget(seed, workers, tried -> (double) tried / tries);
    }

    @Override
    public double spent(long tried) {
        return spending.applyAsDouble(tried);
    }

    @Override
    public void sideBySide(List<? extends Runnable> searches) {
        ExecutorService threads = Executors.newFixedThreadPool(searches.size());
        try {
            CompletableFuture.allOf(searches.stream()
                            .map(search -> CompletableFuture.runAsync(search, threads))
                            .toArray(CompletableFuture<?>[]::new))
                    .join();
        } finally {
            threads.shutdownNow();
        }
    }
}
