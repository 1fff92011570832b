package org.hidewright.distribution.planted;

import org.osgi.framework.BundleActivator;
import org.osgi.framework.BundleContext;

/** The activator of a bundle that breaks down while it starts. */
public final class BreaksDown implements BundleActivator {

    @Override
    public void start(BundleContext context) {
        throw new IllegalStateException("the edge paint ran out");
    }

    @Override
    public void stop(BundleContext context) {
        // never started
    }
}
