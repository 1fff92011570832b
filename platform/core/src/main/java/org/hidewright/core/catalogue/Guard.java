package org.hidewright.core.catalogue;

import java.util.function.Supplier;

/**
 * Calls the code of bundles, which may be anybody’s, so that what it does wrong stays with it. The core keeps no clock and
 * starts no thread; whoever runs it on a machine does.
 */
public interface Guard {
    /**
     * Calls code of a bundle.
     *
     * @param bundle its symbolic name
     * @throws BundleFault if it throws anything, does not come back in time, or is not called any more
     */
    <T> T call(String bundle, Supplier<T> code);
}
