package net.example.fieldkit;

import java.util.Set;
import org.hidewright.testkit.BundleContract;

class StrapPadContractTest extends BundleContract {
    StrapPadContractTest() {
        super(StrapPad.class);
    }

    /** A wide strap and a narrow pad. */
    @Override
    protected Set<String> refusedTogether() {
        return Set.of("no-room");
    }
}
