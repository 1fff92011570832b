package org.hidewright.stitching;

import org.hidewright.testkit.BundleContract;

class StitchingBundleTest extends BundleContract {
    StitchingBundleTest() {
        super(StitchMarks.class);
    }
}
