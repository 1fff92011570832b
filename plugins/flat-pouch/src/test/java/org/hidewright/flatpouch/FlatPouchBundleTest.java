package org.hidewright.flatpouch;

import org.hidewright.testkit.BundleContract;

class FlatPouchBundleTest extends BundleContract {
    FlatPouchBundleTest() {
        super(FlatPouch.class);
    }
}
