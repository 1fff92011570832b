package org.hidewright.catalogue;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.core.catalogue.BundleFault;
import org.hidewright.core.catalogue.Guard;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;

/**
 * Calls the code of bundles on threads of its own, within a limit of time. A thread cannot be ended by force: one that
 * does not come back is left to itself, does not keep the program alive, and its bundle is not called again.
 */
@Component(service = Guard.class)
public final class ThreadGuard implements Guard {
    private static final int SECONDS = 5;

    private final int seconds;
    private final Map<String, Phrase> leftAlone = new ConcurrentHashMap<>();
    private final ConcurrentLinkedDeque<Worker> idle = new ConcurrentLinkedDeque<>();

    @Activate
    public ThreadGuard() {
        this(Integer.getInteger("hidewright.call-limit", SECONDS));
    }

    ThreadGuard(int seconds) {
        this.seconds = seconds;
    }

    @Override
    public <T> T call(String bundle, Supplier<T> code) {
        Phrase before = leftAlone.get(bundle);
        if (before != null) {
            throw BundleFault.forGood(Phrase.of("fault-earlier", before));
        }
        Call<T> call = new Call<>(code);
        Worker worker = idle.pollFirst();
        if (worker == null) {
            worker = new Worker();
            worker.start();
        }
        worker.take(call);
        if (call.await(TimeUnit.SECONDS.toNanos(seconds))) {
            idle.addFirst(worker);
        } else {
            worker.leave();
            throw forGood(bundle, Phrase.of("fault-late", seconds));
        }
        if (call.outOfMemory()) {
            throw forGood(bundle, Phrase.of("fault-memory"));
        }
        return call.result();
    }

    private BundleFault forGood(String bundle, Phrase words) {
        leftAlone.putIfAbsent(bundle, words);
        return BundleFault.forGood(words);
    }
}
