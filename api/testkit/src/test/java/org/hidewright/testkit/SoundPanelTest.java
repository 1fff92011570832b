package org.hidewright.testkit;

import org.hidewright.testkit.faults.Panel;

/** Everything a contract asks holds for a sound template. */
class SoundPanelTest extends BundleContract {
    SoundPanelTest() {
        super(Faulty.bundle(new Panel(), Faulty.texts(new Panel())));
    }
}
