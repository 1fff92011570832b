package net.example.stranger;

import org.osgi.framework.BundleActivator;
import org.osgi.framework.BundleContext;

/** Does not start: something in it went wrong, and something else because of that. */
public final class Throws implements BundleActivator {
    @Override
    public void start(BundleContext context) {
        throw new IllegalStateException("wrapped", new IllegalArgumentException("a knot\n   in it"));
    }

    @Override
    public void stop(BundleContext context) {}
}
