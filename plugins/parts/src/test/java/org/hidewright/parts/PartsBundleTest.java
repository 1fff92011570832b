package org.hidewright.parts;

import org.hidewright.testkit.BundleContract;

class PartsBundleTest extends BundleContract {
    PartsBundleTest() {
        super(Parts.class);
    }
}
