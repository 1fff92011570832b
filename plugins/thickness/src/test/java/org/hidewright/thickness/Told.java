package org.hidewright.thickness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.api.declaration.Texts;

/** What an outcome says, checked as a host would: every notice declared and with its three texts in words. */
final class Told {
    private static final Texts TEXTS = RecordCalculator.of(new Thickness()).texts();

    private Told() {}

    static List<String> by(Calculator<?, ?> calculator, Outcome<?> outcome) {
        for (Notice notice : outcome.notices()) {
            assertTrue(calculator.notices().contains(notice.kind()), () -> notice + " is not among notices()");
            for (String part : List.of("what", "why", "next")) {
                String key = "notice." + notice.kind().key() + "." + part;
                String text = Words.of(TEXTS, key, notice.args());
                assertFalse(text.contains("{"), () -> key + " leaves a place open: " + text);
            }
        }
        return outcome.notices().stream().map(notice -> notice.kind().key()).toList();
    }

    static <A extends Record> A answers(Calculator<?, A> calculator, Outcome<A> outcome) {
        by(calculator, outcome);
        assertFalse(outcome.refused(), () -> "refused: " + outcome.notices());
        return outcome.answers().orElseThrow();
    }

    /** The single reason of a refusal, as {@code kind at place}. */
    static String refusal(Calculator<?, ?> calculator, Outcome<?> outcome) {
        by(calculator, outcome);
        assertTrue(outcome.refused(), () -> "not refused: " + outcome);
        assertEquals(1, outcome.notices().size(), () -> "reasons " + outcome.notices());
        Notice reason = outcome.notices().get(0);
        return reason.kind().key() + " at " + reason.place();
    }
}
