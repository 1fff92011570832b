package org.hidewright.fasteners;

import java.util.Set;
import org.hidewright.testkit.BundleContract;

class FastenersBundleTest extends BundleContract {
    FastenersBundleTest() {
        super(Rivet.class);
    }

    /** Two measures of one stack or fitting, and what a length or a ring has room for. */
    @Override
    protected Set<String> refusedTogether() {
        return Set.of(
                "magnet-prongs-wider-than-it",
                "ring-no-room",
                "row-heads-meet",
                "row-no-room",
                "stack-ends-swapped",
                "stud-head-no-wider");
    }
}
