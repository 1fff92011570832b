package org.hidewright.liddedpouch;

import java.util.Set;
import org.hidewright.testkit.BundleContract;

class LiddedPouchBundleTest extends BundleContract {
    LiddedPouchBundleTest() {
        super(LiddedPouch.class);
    }

    /** How much of a short thing stands out. */
    @Override
    protected Set<String> refusedTogether() {
        return Set.of("stands-out-too-far");
    }
}
