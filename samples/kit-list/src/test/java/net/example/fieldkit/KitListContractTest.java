package net.example.fieldkit;

import java.util.Set;
import org.hidewright.testkit.BundleContract;

class KitListContractTest extends BundleContract {
    KitListContractTest() {
        super(KitList.class);
    }

    /** Shown by the paper. */
    @Override
    protected Set<String> otherTexts() {
        return Set.of("packing-list.title", "packing-list.of");
    }
}
