package org.hidewright.sheath;

import org.hidewright.testkit.BundleContract;

class SheathBundleTest extends BundleContract {
    SheathBundleTest() {
        super(Sheath.class);
    }
}
