package net.example.stranger;

import java.util.concurrent.CountDownLatch;
import org.osgi.framework.BundleActivator;
import org.osgi.framework.BundleContext;

/** Starts and does not come back until it is interrupted, which it tells by a property of the system. */
public final class Hangs implements BundleActivator {
    /** Of the system, since the bundle has a class of its own. */
    public static final String INTERRUPTED = "net.example.stranger.interrupted";

    @Override
    public void start(BundleContext context) {
        try {
            new CountDownLatch(1).await();
        } catch (InterruptedException e) {
            System.setProperty(INTERRUPTED, "true");
        }
    }

    @Override
    public void stop(BundleContext context) {}
}
