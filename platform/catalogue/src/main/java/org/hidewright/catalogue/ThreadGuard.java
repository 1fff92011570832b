package org.hidewright.catalogue;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.core.catalogue.BundleFault;
import org.hidewright.core.catalogue.Guard;
import org.osgi.framework.BundleContext;
import org.osgi.framework.BundleEvent;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;

/**
 * Calls the code of bundles on threads of its own, within a limit of time. A thread cannot be ended by force: one that
 * does not come back is left to itself, does not keep the program alive, and its bundle is not called again.
 *
 * <p>When a bundle goes, the threads that called it go too, and with them what it has left on them, such as a thread-local value
 * that would hold its class loader.
 */
@Component(service = Guard.class)
public final class ThreadGuard implements Guard {
    private static final int SECONDS = 5;

    private final int seconds;
    private final Map<String, Phrase> leftAlone = new ConcurrentHashMap<>();
    private volatile ConcurrentLinkedDeque<Worker> idle = new ConcurrentLinkedDeque<>();

    @Activate
    public ThreadGuard(BundleContext context) {
        this();
        context.addBundleListener(event -> {
            if (event.getType() == BundleEvent.UNINSTALLED) {
                renew();
            }
        });
    }

    /** A guard that knows of no bundles that go. */
    public ThreadGuard() {
        this(Integer.getInteger("hidewright.call-limit", SECONDS));
    }

    ThreadGuard(int seconds) {
        this.seconds = seconds;
    }

    @Override
    public <T> T call(String bundle, Supplier<T> code) {
        return call(bundle, code, () -> false);
    }

    @Override
    public void run(String bundle, Runnable code, BooleanSupplier may) {
        call(
                bundle,
                () -> {
                    code.run();
                    return null;
                },
                may);
    }

    private <T> T call(String bundle, Supplier<T> code, BooleanSupplier may) {
        Phrase before = leftAlone.get(bundle);
        if (before != null) {
            throw BundleFault.forGood(Phrase.of("fault-earlier", before));
        }
        Call<T> call = new Call<>(code);
        ConcurrentLinkedDeque<Worker> from = idle;
        Worker worker = from.pollFirst();
        if (worker == null) {
            worker = new Worker();
            worker.start();
        }
        worker.take(call);
        boolean done = call.await(TimeUnit.SECONDS.toNanos(seconds));
        while (!done && may.getAsBoolean()) {
            done = call.await(TimeUnit.SECONDS.toNanos(seconds));
        }
        if (done) {
            from.addFirst(worker);
            if (from != idle) {
                end(from);
            }
        } else {
            worker.leave();
            throw forGood(bundle, Phrase.of("fault-late", seconds));
        }
        if (call.outOfMemory()) {
            throw forGood(bundle, Phrase.of("fault-memory"));
        }
        return call.result();
    }

    /** Takes new threads from now on; those that are at work end when they come back. */
    void renew() {
        ConcurrentLinkedDeque<Worker> before = idle;
        idle = new ConcurrentLinkedDeque<>();
        end(before);
    }

    private static void end(ConcurrentLinkedDeque<Worker> workers) {
        for (Worker worker = workers.pollFirst(); worker != null; worker = workers.pollFirst()) {
            worker.leave();
        }
    }

    private BundleFault forGood(String bundle, Phrase words) {
        leftAlone.putIfAbsent(bundle, words);
        return BundleFault.forGood(words);
    }
}
