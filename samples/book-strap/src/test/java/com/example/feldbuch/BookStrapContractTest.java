package com.example.feldbuch;

import org.hidewright.testkit.BundleContract;

class BookStrapContractTest extends BundleContract {
    BookStrapContractTest() {
        super(BookStrap.class);
    }
}
