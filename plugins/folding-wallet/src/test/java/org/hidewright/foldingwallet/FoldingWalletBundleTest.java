package org.hidewright.foldingwallet;

import org.hidewright.testkit.BundleContract;

class FoldingWalletBundleTest extends BundleContract {
    FoldingWalletBundleTest() {
        super(FoldingWallet.class);
    }
}
