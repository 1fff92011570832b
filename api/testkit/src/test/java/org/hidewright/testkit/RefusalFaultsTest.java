package org.hidewright.testkit;

import java.util.Set;
import org.hidewright.testkit.faults.Refusing;
import org.hidewright.testkit.faults.Strip;
import org.junit.jupiter.api.Test;

/** What is usual is answered; what is not said to be a matter of answers that do not go together is told. */
class RefusalFaultsTest {
    @Test
    void aRefusalInsideUsualLimits() {
        Faulty.of(new Refusing.Choosy())
                .fails(
                        BundleContract::nothingUsualIsRefusedButWhatDoesNotGoTogether,
                        "choosy: “too-wide” is refused although every answer is usual: {width=60.0 mm",
                        "Make the limits narrower",
                        "name it in refusedTogether()");
    }

    @Test
    void oneThatIsSaidToBeAMatterOfAnswersTogetherPasses() {
        Faulty.refusing(new Refusing.Choosy(), Set.of("too-wide")).nothingUsualIsRefusedButWhatDoesNotGoTogether();
    }

    @Test
    void aNameThatNoCalculatorDeclares() {
        Faulty.refusing(new Strip(), Set.of("too-lng"))
                .fails(
                        BundleContract::nothingUsualIsRefusedButWhatDoesNotGoTogether,
                        "“too-lng” stands in refusedTogether(), and no calculator declares such a stop; leave it out or mend it.");
    }

    @Test
    void anExampleThatIsRefused() {
        Faulty.refusing(new Refusing.BadExample(), Set.of("not-this"))
                .fails(
                        BundleContract::thePresetsAndExamplesTogetherAreAnswered,
                        "bad-example: the presets and examples together are refused",
                        "choose ones that go together");
    }

    @Test
    void refusalsOfNearlyEverythingThatIsUsual() {
        Faulty.refusing(new Refusing.Unwilling(), Set.of("no"))
                .fails(
                        BundleContract::nothingUsualIsRefusedButWhatDoesNotGoTogether,
                        "unwilling: the example was asked with one answer changed to another usual one, 5 times, and answered 2 times",
                        "Draw the usual limits so that what lies between them can be made.");
    }
}
