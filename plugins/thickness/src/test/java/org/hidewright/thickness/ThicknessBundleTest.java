package org.hidewright.thickness;

import java.util.Set;
import org.hidewright.testkit.BundleContract;

class ThicknessBundleTest extends BundleContract {
    ThicknessBundleTest() {
        super(Thickness.class);
    }

    /** What is skived is to be thicker than what is left of it, and of the ways to give readings one is taken. */
    @Override
    protected Set<String> refusedTogether() {
        return Set.of("readings-none", "skive-target-not-thinner", "stack-skived-thicker");
    }
}
