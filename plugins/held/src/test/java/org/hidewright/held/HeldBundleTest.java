package org.hidewright.held;

import org.hidewright.testkit.BundleContract;

class HeldBundleTest extends BundleContract {
    HeldBundleTest() {
        super(HeldThing.class);
    }
}
