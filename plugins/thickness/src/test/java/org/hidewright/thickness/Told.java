package org.hidewright.thickness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Phrase;
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
        A answers = outcome.answers().orElseThrow();
        phrases(answers).forEach(phrase -> {
            assertTrue(calculator.phrases().contains(phrase.key()), () -> phrase + " is not among phrases()");
            assertFalse(Words.of(TEXTS, "phrase." + phrase.key(), phrase.args()).contains("{"), phrase::toString);
        });
        return answers;
    }

    private static Stream<Phrase> phrases(Object answer) {
        if (answer instanceof Phrase phrase) {
            return Stream.of(phrase);
        } else if (answer instanceof Optional<?> optional) {
            return optional.stream().flatMap(Told::phrases);
        } else if (answer instanceof List<?> rows) {
            return rows.stream().flatMap(Told::phrases);
        } else if (answer instanceof Record) {
            return Arrays.stream(answer.getClass().getRecordComponents())
                    .flatMap(component -> phrases(valueOf(component, answer)));
        }
        return Stream.empty();
    }

    private static Object valueOf(RecordComponent component, Object of) {
        try {
            return component.getAccessor().invoke(of);
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(e);
        }
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
