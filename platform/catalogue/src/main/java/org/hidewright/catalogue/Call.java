package org.hidewright.catalogue;

import java.util.concurrent.locks.LockSupport;
import java.util.function.Supplier;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.core.catalogue.BundleFault;

/** One call of a bundle: given by one thread, worked by another, awaited by the first. */
final class Call<T> {
    /** Most calls are done while the caller looks on; putting it to sleep and waking it would take longer than the call. */
    private static final int LOOKS = Runtime.getRuntime().availableProcessors() > 1 ? 2000 : 0;

    private static final int LONGEST = 300;

    private final Supplier<T> code;
    private final Thread caller = Thread.currentThread();
    private T value;
    private Object fault;
    private boolean outOfMemory;
    private volatile boolean done;

    Call(Supplier<T> code) {
        this.code = code;
    }

    /** Does the call on this thread; whatever it throws is kept as words. */
    void work() {
        try {
            value = code.get();
        } catch (StackOverflowError e) {
            fault = Phrase.of("fault-stack");
        } catch (OutOfMemoryError e) {
            outOfMemory = true;
        } catch (Throwable e) {
            fault = words(e);
        }
        done = true;
        LockSupport.unpark(caller);
    }

    /** What an exception says, as one line. Asking it runs code of the bundle as well, and so belongs to the call. */
    private static String words(Throwable thrown) {
        String said;
        try {
            said = String.valueOf(thrown.toString());
        } catch (Throwable worse) {
            said = thrown.getClass().getName();
        }
        String line = said.replaceAll("\\s+", " ").strip();
        return line.length() > LONGEST ? line.substring(0, LONGEST) + "…" : line;
    }

    /** Whether the call is done before this many nanoseconds have passed. */
    boolean await(long nanos) {
        for (int look = 0; look < LOOKS && !done; look++) {
            Thread.onSpinWait();
        }
        long until = System.nanoTime() + nanos;
        boolean interrupted = false;
        while (!done) {
            long left = until - System.nanoTime();
            if (left <= 0) {
                break;
            }
            LockSupport.parkNanos(this, left);
            interrupted |= Thread.interrupted(); // or it could not sleep; the limit holds all the same
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
        return done;
    }

    boolean outOfMemory() {
        return outOfMemory;
    }

    /** @throws BundleFault if the call threw anything */
    T result() {
        if (fault != null) {
            throw BundleFault.once(fault);
        }
        return value;
    }
}
