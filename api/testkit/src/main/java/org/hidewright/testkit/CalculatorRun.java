package org.hidewright.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.Function;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;

/**
 * One calculation worked as a host works it, for tests: whatever it says of formulas, sources and notices has to be declared
 * by its calculator, and every symbol has to stand in its formula.
 *
 * @param <A> the answers
 */
public final class CalculatorRun<A extends Record> {
    private final Outcome<A> outcome;
    private final WorkingTaken taken;

    private CalculatorRun(Outcome<A> outcome, WorkingTaken taken) {
        this.outcome = outcome;
        this.taken = taken;
    }

    /**
     * Works it.
     *
     * @throws AssertionError if it tells of something that is not declared
     */
    public static <Q extends Record, A extends Record> CalculatorRun<A> of(Calculator<Q, A> calculator, Q asked) {
        WorkingTaken taken = new WorkingTaken(calculator.formulas(), calculator.sources());
        Outcome<A> outcome = calculator.calculate(asked, taken);
        assertEquals(List.of(), taken.wrong());
        outcome.notices()
                .forEach(notice ->
                        assertTrue(calculator.notices().contains(notice.kind()), () -> notice + " is not declared"));
        return new CalculatorRun<>(outcome, taken);
    }

    /** What came of it, refused or answered. */
    public Outcome<A> outcome() {
        return outcome;
    }

    /**
     * The answers.
     *
     * @throws AssertionError if it was refused
     */
    public A answers() {
        assertFalse(outcome.refused(), () -> outcome.notices().toString());
        return outcome.answers().orElseThrow();
    }

    /**
     * The working in its order: {@code T = n · t | n 8, t 2 h | 16 h} for a step, {@code answer by source-key} for a source
     * that stands in place of the declared one.
     *
     * @param shown how quantities and numbers are written
     */
    public List<String> working(Function<Object, String> shown) {
        return taken.lines(shown);
    }
}
