package net.example.stranger;

import java.util.concurrent.CountDownLatch;
import org.osgi.framework.BundleActivator;
import org.osgi.framework.BundleContext;

/** Starts well, and does not come back from its stop until it is interrupted. */
public final class HangsAtStop implements BundleActivator {
    @Override
    public void start(BundleContext context) {}

    @Override
    public void stop(BundleContext context) throws InterruptedException {
        new CountDownLatch(1).await();
    }
}
