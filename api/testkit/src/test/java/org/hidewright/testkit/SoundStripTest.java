package org.hidewright.testkit;

import org.hidewright.testkit.faults.Strip;

/** Everything a contract asks holds for a sound calculator. */
class SoundStripTest extends BundleContract {
    SoundStripTest() {
        super(Faulty.bundle(new Strip(), Faulty.texts(new Strip())));
    }
}
