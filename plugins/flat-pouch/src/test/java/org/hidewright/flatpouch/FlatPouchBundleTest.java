package org.hidewright.flatpouch;

import java.util.Set;
import org.hidewright.testkit.BundleContract;

class FlatPouchBundleTest extends BundleContract {
    FlatPouchBundleTest() {
        super(FlatPouch.class);
    }

    /** How much of a short thing stands out. */
    @Override
    protected Set<String> refusedTogether() {
        return Set.of("stands-out-too-far");
    }
}
