package org.hidewright.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.junit.jupiter.api.Test;

/** What a run lets pass, and each thing it must not let pass. */
class CalculatorRunTest {
    private static final Source SUMS = Source.of("sums", Source.Kind.DEFINITION);
    private static final Source GUESS = Source.of("guess", Source.Kind.FROM_MEMORY);
    private static final Formula DOUBLE = Formula.of("double", "y = 2 · x", SUMS);
    private static final Formula OTHER = Formula.of("other", "z = x", SUMS);
    private static final NoticeKind TOLD = NoticeKind.note("told");
    private static final NoticeKind STOP = NoticeKind.stop("stop");

    /** What it says beside doubling its number. */
    private enum Says {
        WHAT_IS_DECLARED,
        ANOTHER_FORMULA,
        ANOTHER_SYMBOL,
        A_SYMBOL_WITHOUT_VALUE,
        ANOTHER_SOURCE,
        ANOTHER_NOTICE,
        NOTHING_BUT_A_REFUSAL
    }

    private record Asked(double x, Says says) {}

    private record Answer(double y) {}

    private static final class Doubling implements Calculator<Asked, Answer> {
        @Override
        public Outcome<Answer> calculate(Asked asked, Working working) {
            double doubled = 2 * asked.x();
            switch (asked.says()) {
                case ANOTHER_FORMULA -> working.step(OTHER, asked.x(), "x", asked.x());
                case ANOTHER_SYMBOL -> working.step(DOUBLE, doubled, "q", asked.x());
                case A_SYMBOL_WITHOUT_VALUE -> working.step(DOUBLE, doubled, "x");
                case ANOTHER_SOURCE -> working.source("y", GUESS);
                case NOTHING_BUT_A_REFUSAL -> {
                    return Outcome.refuse(STOP.at("x"));
                }
                default -> {
                    working.step(DOUBLE, doubled, "x", asked.x());
                    working.source("y", SUMS);
                }
            }
            NoticeKind kind = asked.says() == Says.ANOTHER_NOTICE ? NoticeKind.note("another") : TOLD;
            return Outcome.of(new Answer(doubled), List.of(kind.with()));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(DOUBLE);
        }

        @Override
        public List<NoticeKind> notices() {
            return List.of(TOLD, STOP);
        }
    }

    private static CalculatorRun<Answer> run(Says says) {
        return CalculatorRun.of(new Doubling(), new Asked(3, says));
    }

    @Test
    void whatIsDeclaredPasses() {
        CalculatorRun<Answer> run = run(Says.WHAT_IS_DECLARED);
        assertEquals(6, run.answers().y());
        assertEquals(Optional.of(new Answer(6)), run.outcome().answers());
        assertEquals(List.of("y = 2 · x | x <3.0> | <6.0>", "y by sums"), run.working(value -> "<" + value + ">"));
    }

    @Test
    void whatIsNotDeclaredFails() {
        for (Says says : List.of(
                Says.ANOTHER_FORMULA,
                Says.ANOTHER_SYMBOL,
                Says.A_SYMBOL_WITHOUT_VALUE,
                Says.ANOTHER_SOURCE,
                Says.ANOTHER_NOTICE)) {
            assertThrows(AssertionError.class, () -> run(says), says::toString);
        }
    }

    @Test
    void aRefusalHasNoAnswers() {
        CalculatorRun<Answer> run = run(Says.NOTHING_BUT_A_REFUSAL);
        assertTrue(run.outcome().refused());
        assertThrows(AssertionError.class, run::answers);
    }
}
