package org.hidewright.straps;

import java.util.Set;
import org.hidewright.testkit.BundleContract;

class StrapsBundleTest extends BundleContract {
    StrapsBundleTest() {
        super(StrapLayout.class);
    }

    /** Lengths of one strap, and sections that name each other. */
    @Override
    protected Set<String> refusedTogether() {
        return Set.of(
                "bend-legs-too-short",
                "bend-skive-too-thick",
                "bend-web-too-thick",
                "feature-not-crossed",
                "keeper-corner-too-large",
                "ramp-too-long",
                "strap-flat-bar-turn",
                "strap-thicker-than-strap",
                "strap-unknown-section",
                "strip-legs-longer-than-strip");
    }
}
