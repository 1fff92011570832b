package org.hidewright.layout.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Runs searches side by side and waits for all; what one throws, the caller gets. */
final class Workers {
    private Workers() {}

    static void run(List<? extends Runnable> searches) {
        if (searches.size() == 1) {
            searches.get(0).run();
            return;
        }
        ExecutorService threads = Executors.newFixedThreadPool(searches.size());
        try {
            List<Callable<Object>> calls = new ArrayList<>();
            for (Runnable search : searches) {
                calls.add(Executors.callable(search));
            }
            for (Future<Object> done : threads.invokeAll(calls)) {
                done.get();
            }
        } catch (ExecutionException failed) {
            throw new IllegalStateException("A search for a layout failed: " + failed.getCause(), failed.getCause());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        } finally {
            threads.shutdownNow();
        }
    }
}
