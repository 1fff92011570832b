package org.hidewright.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;

/**
 * One calculation worked as a host works it, for tests: whatever it says of formulas, sources and notices has to be declared
 * by its calculator, and every symbol has to stand in its formula.
 *
 * @param <A> the answers
 */
public final class CalculatorRun<A extends Record> {
    private final Outcome<A> outcome;
    private final List<Line> lines;

    private CalculatorRun(Outcome<A> outcome, List<Line> lines) {
        this.outcome = outcome;
        this.lines = lines;
    }

    /**
     * Works it.
     *
     * @throws AssertionError if it tells of something that is not declared
     */
    public static <Q extends Record, A extends Record> CalculatorRun<A> of(Calculator<Q, A> calculator, Q asked) {
        Taken taken = new Taken(calculator);
        Outcome<A> outcome = calculator.calculate(asked, taken);
        outcome.notices()
                .forEach(notice ->
                        assertTrue(calculator.notices().contains(notice.kind()), () -> notice + " is not declared"));
        return new CalculatorRun<>(outcome, taken.lines);
    }

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
        return lines.stream().map(line -> line.written(shown)).toList();
    }

    /** One thing taken down. */
    @FunctionalInterface
    private interface Line {
        String written(Function<Object, String> shown);
    }

    private static final class Taken implements Working {
        private final Calculator<?, ?> calculator;
        private final List<Line> lines = new ArrayList<>();

        Taken(Calculator<?, ?> calculator) {
            this.calculator = calculator;
        }

        @Override
        public void step(Formula formula, Object result, Object... symbolsAndValues) {
            assertTrue(calculator.formulas().contains(formula), () -> formula + " is not declared");
            assertEquals(0, symbolsAndValues.length % 2, () -> formula + " has a symbol without a value");
            for (int i = 0; i < symbolsAndValues.length; i += 2) {
                String symbol = (String) symbolsAndValues[i];
                assertTrue(formula.symbols().contains(symbol), () -> symbol + " is not in " + formula.symbols());
            }
            lines.add(shown -> formula.symbols() + " | " + put(symbolsAndValues, shown) + " | " + shown.apply(result));
        }

        private static String put(Object[] symbolsAndValues, Function<Object, String> shown) {
            List<String> put = new ArrayList<>();
            for (int i = 0; i < symbolsAndValues.length; i += 2) {
                put.add(symbolsAndValues[i] + " " + shown.apply(symbolsAndValues[i + 1]));
            }
            return String.join(", ", put);
        }

        @Override
        public void source(String answer, Source source) {
            boolean ofFormula = calculator.formulas().stream()
                    .anyMatch(formula -> formula.source().equals(source));
            assertTrue(ofFormula || calculator.sources().contains(source), () -> source + " is not declared");
            lines.add(shown -> answer + " by " + source.key());
        }
    }
}
