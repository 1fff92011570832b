package org.hidewright.command;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.hidewright.core.search.SearchBudget;

/**
 * The way a maker ends a search before its time, Ctrl+C: the search that runs is stopped, those to come end as they begin, and the program
 * stays until what was found is kept and printed, which is when this is closed.
 */
final class BreakOff implements AutoCloseable {
    /** As long as code that does not heed the end of its budget is waited for, and a little for the file. */
    private static final int SECONDS_TO_END = 8;

    private final CountDownLatch ended = new CountDownLatch(1);
    private final Thread hook = new Thread(this::stop, "end of a search");
    private boolean broken;
    private SearchBudget running;

    BreakOff() {
        Runtime.getRuntime().addShutdownHook(hook);
    }

    /** The same budget, which ends when the maker breaks off. */
    synchronized SearchBudget stopping(SearchBudget budget) {
        running = budget;
        if (broken) {
            budget.stop();
        }
        return budget;
    }

    private synchronized void stopRunning() {
        broken = true;
        if (running != null) {
            running.stop();
        }
    }

    private void stop() {
        stopRunning();
        try {
            if (!ended.await(SECONDS_TO_END, TimeUnit.SECONDS)) {
                return; // its bundle does not come back, and nobody should wait for that
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void close() {
        ended.countDown();
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException ending) {
            return; // the hook runs, and has just been told that there is nothing to wait for
        }
    }
}
