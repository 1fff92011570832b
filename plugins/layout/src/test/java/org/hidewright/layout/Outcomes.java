package org.hidewright.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.layout.CuttingLayout.LaidOut;

/** What is answered to cuts, or why it is refused; for tests. */
final class Outcomes {
    private Outcomes() {}

    static Outcome<LaidOut> outcome(Cuts cuts) {
        return new CuttingLayout().calculate(cuts.cut(), Working.NONE);
    }

    static LaidOut answers(Cuts cuts) {
        Outcome<LaidOut> outcome = outcome(cuts);
        return outcome.answers().orElseThrow(() -> new AssertionError(outcome.toString()));
    }

    static Notice refusal(Cuts cuts) {
        Outcome<LaidOut> outcome = outcome(cuts);
        assertTrue(outcome.refused(), outcome.toString());
        return outcome.notices().get(0);
    }

    static void assertRefused(String key, String place, Cuts cuts) {
        Notice notice = refusal(cuts);
        assertEquals(key + " " + place, notice.kind().key() + " " + notice.place());
    }
}
