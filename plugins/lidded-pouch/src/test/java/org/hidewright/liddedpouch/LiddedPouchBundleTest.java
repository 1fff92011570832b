package org.hidewright.liddedpouch;

import org.hidewright.testkit.BundleContract;

class LiddedPouchBundleTest extends BundleContract {
    LiddedPouchBundleTest() {
        super(LiddedPouch.class);
    }
}
