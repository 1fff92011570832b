package org.hidewright.testkit;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.api.declaration.Values;

/**
 * Where calculators are asked, as a host asks them: on a thread of its own, not longer than the host waits, and never again once
 * one did not come back.
 */
final class Bench {
    /** The host leaves a calculation to itself after so long. */
    static final int WAITS_S = 5;

    private final Set<String> lost = new HashSet<>();
    private ExecutorService hands = hands();

    private static ExecutorService hands() {
        return Executors.newSingleThreadExecutor(work -> {
            Thread thread = new Thread(work, "bench");
            thread.setDaemon(true);
            return thread;
        });
    }

    /** What comes of a question; not ended where this calculator did not come back before either. */
    Told ask(RecordCalculator calculator, Values asked) {
        WorkingTaken working = working(calculator);
        String id = calculator.declaration().id();
        if (lost.contains(id)) {
            return new Told(asked, Optional.empty(), working, Optional.empty(), false);
        }
        try {
            return work(() -> now(calculator, asked));
        } catch (TimeoutException e) {
            lost.add(id);
            hands.shutdownNow();
            hands = hands();
            return new Told(asked, Optional.empty(), working, Optional.empty(), false);
        }
    }

    /** Asks on the thread it is called on. */
    static Told now(RecordCalculator calculator, Values asked) {
        WorkingTaken working = working(calculator);
        try {
            Outcome<Values> outcome = calculator.work(asked, working);
            return new Told(asked, Optional.of(outcome), working, Optional.empty(), true);
        } catch (Throwable thrown) { // whatever a bundle throws, the host takes it down as well
            return new Told(asked, Optional.empty(), working, Optional.of(thrown), true);
        }
    }

    private static WorkingTaken working(RecordCalculator calculator) {
        return new WorkingTaken(
                calculator.declaration().formulas(), calculator.declaration().sources());
    }

    /**
     * Does something on the bench’s own thread.
     *
     * @throws TimeoutException if it takes longer than the host waits
     */
    <T> T work(Callable<T> what) throws TimeoutException {
        Future<T> future = hands.submit(what);
        try {
            return future.get(WAITS_S, TimeUnit.SECONDS);
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        } catch (TimeoutException e) {
            future.cancel(true);
            throw e;
        }
    }
}
