package org.hidewright.thickness;

import org.hidewright.testkit.BundleContract;

class ThicknessBundleTest extends BundleContract {
    ThicknessBundleTest() {
        super(Thickness.class);
    }
}
