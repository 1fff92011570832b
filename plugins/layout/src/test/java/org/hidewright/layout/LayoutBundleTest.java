package org.hidewright.layout;

import java.util.Set;
import org.hidewright.testkit.BundleContract;

class LayoutBundleTest extends BundleContract {
    LayoutBundleTest() {
        super(CuttingLayout.class);
    }

    /** Rows of a layout name pieces and sheets, and lie on one another where they are put by chance. */
    @Override
    protected Set<String> refusedTogether() {
        return Set.of(
                "layout-no-such-piece",
                "layout-no-such-sheet",
                "layout-off-sheet",
                "layout-overlap",
                "layout-turned");
    }
}
