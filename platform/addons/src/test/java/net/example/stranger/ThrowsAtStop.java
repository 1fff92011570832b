package net.example.stranger;

import org.osgi.framework.BundleActivator;
import org.osgi.framework.BundleContext;

/** Starts well, and breaks when it is stopped: the framework takes it away all the same. */
public final class ThrowsAtStop implements BundleActivator {
    @Override
    public void start(BundleContext context) {}

    @Override
    public void stop(BundleContext context) {
        throw new IllegalStateException("a knot at the end");
    }
}
