package org.hidewright.catalogue;

import java.util.concurrent.locks.LockSupport;

/** A thread that works one call after another until it is left. */
final class Worker extends Thread {
    private static final int LOOKS = Runtime.getRuntime().availableProcessors() > 1 ? 2000 : 0;

    private volatile Call<?> next;
    private volatile boolean left;

    Worker() {
        super("bundles");
        setDaemon(true);
    }

    /** Gives it a call; to be used by one thread at a time, and not before the call before is done. */
    void take(Call<?> call) {
        next = call;
        LockSupport.unpark(this);
    }

    /** Gives it up. What it is doing may end when it is interrupted, or never. */
    void leave() {
        left = true;
        interrupt();
        setPriority(MIN_PRIORITY);
    }

    @Override
    public void run() {
        while (!left) {
            Call<?> call = next;
            for (int look = 0; call == null && look < LOOKS; look++) {
                Thread.onSpinWait();
                call = next;
            }
            if (call == null) {
                LockSupport.park(this);
            } else {
                next = null;
                call.work();
                Thread.interrupted(); // what one call leaves behind is not the next one's
            }
        }
    }
}
