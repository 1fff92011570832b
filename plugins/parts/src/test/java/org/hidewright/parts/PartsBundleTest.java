package org.hidewright.parts;

import java.util.Set;
import org.hidewright.testkit.BundleContract;

class PartsBundleTest extends BundleContract {
    PartsBundleTest() {
        super(Parts.class);
    }

    /** Parts that are drawn, what is drawn on them by their names and measures, and how often one is cut in all. */
    @Override
    protected Set<String> refusedTogether() {
        return Set.of(
                "addition-no-room",
                "corner-too-round",
                "edge-too-long",
                "no-room-for-line",
                "none-cut",
                "not-on-a-part",
                "runs-differ",
                "work-on-nothing");
    }
}
