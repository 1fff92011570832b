package org.hidewright.fasteners;

import org.hidewright.testkit.BundleContract;

class FastenersBundleTest extends BundleContract {
    FastenersBundleTest() {
        super(Rivet.class);
    }
}
