package net.example.stranger;

import org.osgi.framework.BundleActivator;
import org.osgi.framework.BundleContext;

/** Does not start and does not say why. */
public final class ThrowsSilently implements BundleActivator {
    @Override
    public void start(BundleContext context) {
        throw new StackOverflowError();
    }

    @Override
    public void stop(BundleContext context) {}
}
