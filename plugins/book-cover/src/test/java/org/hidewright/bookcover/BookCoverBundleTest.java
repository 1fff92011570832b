package org.hidewright.bookcover;

import org.hidewright.testkit.BundleContract;

class BookCoverBundleTest extends BundleContract {
    BookCoverBundleTest() {
        super(BookCover.class);
    }
}
