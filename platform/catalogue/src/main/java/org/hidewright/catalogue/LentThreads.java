package org.hidewright.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import org.hidewright.api.calculator.Budget;

/** A budget whose searches run side by side on threads that end with them and keep no program alive. */
final class LentThreads implements Budget {
    private final Budget budget;

    LentThreads(Budget budget) {
        this.budget = budget;
    }

    @Override
    public int workers() {
        return budget.workers();
    }

    @Override
    public long seed() {
        return budget.seed();
    }

    @Override
    public double spent(long tried) {
        return budget.spent(tried);
    }

    @Override
    public void sideBySide(List<? extends Runnable> searches) {
        AtomicReference<Throwable> failed = new AtomicReference<>();
        List<Thread> lent = new ArrayList<>();
        for (Runnable search : searches.subList(1, searches.size())) {
            Thread thread = new Thread(() -> run(search, failed), "bundles searching");
            thread.setDaemon(true);
            thread.start();
            lent.add(thread);
        }
        run(searches.get(0), failed);
        boolean interrupted = false;
        for (Thread thread : lent) {
            interrupted |= !joined(thread);
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
        if (failed.get() instanceof Error error) {
            throw error;
        } else if (failed.get() instanceof RuntimeException exception) {
            throw exception;
        }
    }

    private static void run(Runnable search, AtomicReference<Throwable> failed) {
        try {
            search.run();
        } catch (RuntimeException | Error e) {
            failed.compareAndSet(null, e);
        }
    }

    /** Whether nobody interrupted the wait, in which the thread is waited for all the same: its budget ends it. */
    private static boolean joined(Thread thread) {
        boolean undisturbed = true;
        while (true) {
            try {
                thread.join();
                return undisturbed;
            } catch (InterruptedException e) {
                undisturbed = false;
            }
        }
    }
}
