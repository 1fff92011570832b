package org.hidewright.core.catalogue;

import java.util.function.BooleanSupplier;
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

    /**
     * Lets code of a bundle work for as long as it may, which it has to ask itself; time to come back is counted from when it may
     * no longer.
     *
     * @param may whether it may go on; asked from time to time
     * @throws BundleFault as for a call
     */
    void run(String bundle, Runnable code, BooleanSupplier may);
}
