package org.hidewright.straps;

import org.hidewright.testkit.BundleContract;

class StrapsBundleTest extends BundleContract {
    StrapsBundleTest() {
        super(StrapLayout.class);
    }
}
