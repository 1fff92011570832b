package org.hidewright.testkit;

import org.hidewright.testkit.faults.Everything;

/** Questions of every kind can be made up and asked. */
class SoundEverythingTest extends BundleContract {
    SoundEverythingTest() {
        super(Faulty.bundle(new Everything(), Faulty.texts(new Everything())));
    }
}
