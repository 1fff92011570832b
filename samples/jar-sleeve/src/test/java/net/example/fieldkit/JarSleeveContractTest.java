package net.example.fieldkit;

import org.hidewright.testkit.BundleContract;

/** What the host expects of every bundle: sound declarations, texts, and answers that can be relied on. */
class JarSleeveContractTest extends BundleContract {
    JarSleeveContractTest() {
        super(JarSleeve.class);
    }
}
