package org.hidewright.testkit;

import org.hidewright.testkit.faults.Worked;
import org.junit.jupiter.api.Test;

/** Answers that leap, and answers that are waited for. */
class WorkFaultsTest {
    @Test
    void anAnswerThatIsWorkedOutOtherwiseAtOneValueAlone() {
        Faulty.of(new Worked.Leaping())
                .fails(
                        BundleContract::aSmallChangeOfAMeasureMakesNoLeap,
                        "leaping: with width a thousandth smaller and larger, area goes from 24.975 mm² over 50.0 mm² to 25.02",
                        "look for what is worked out at one value alone");
    }

    @Test
    void workThatKeepsAMakerWaiting() {
        Faulty.of(new Worked.Slow())
                .fails(BundleContract::noAnswerKeepsAMakerWaiting, "slow: ", "work that is done again and again");
    }
}
