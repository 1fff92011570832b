package net.example.fieldkit;

import org.hidewright.testkit.BundleContract;

/** What the host expects of every bundle: sound declarations, and a text for everything that is shown. */
class JarSleeveContractTest extends BundleContract {
    JarSleeveContractTest() {
        super(JarSleeve.class);
    }
}
