package net.example.fieldkit;

import org.hidewright.testkit.TableContract;

class StrapSlidesContractTest extends TableContract {
    StrapSlidesContractTest() {
        super(new StrapSlides());
    }
}
