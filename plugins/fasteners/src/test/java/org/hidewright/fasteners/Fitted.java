package org.hidewright.fasteners;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;

/** Works calculators as a host does, and builds what they are asked. */
final class Fitted {
    static final Use PLAIN = new Use(false, false, false);

    private Fitted() {}

    static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    static List<Length> lengths(double... mm) {
        return Arrays.stream(mm).mapToObj(Length::ofMm).toList();
    }

    static Stack stack(double mm) {
        return new Stack.Measured(mm(mm));
    }

    static Stack between(double thin, double thick) {
        return new Stack.Between(mm(thin), mm(thick));
    }

    static HoleMade punches(double... mm) {
        return new HoleMade.Punched(mm.length == 0 ? Optional.empty() : Optional.of(lengths(mm)));
    }

    static Shank shank(double post, double length, double head) {
        return new Shank(mm(post), Optional.of(mm(length)), Optional.of(mm(head)), Optional.of("its own"));
    }

    static <Q extends Record, A extends Record> Outcome<A> outcome(Calculator<Q, A> calculator, Q asked) {
        Outcome<A> outcome = calculator.calculate(asked, new Checked(calculator));
        outcome.notices()
                .forEach(notice ->
                        assertTrue(calculator.notices().contains(notice.kind()), () -> notice + " is not declared"));
        return outcome;
    }

    static <Q extends Record, A extends Record> A answers(Calculator<Q, A> calculator, Q asked) {
        Outcome<A> outcome = outcome(calculator, asked);
        assertFalse(outcome.refused(), () -> outcome.notices().toString());
        return outcome.answers().orElseThrow();
    }

    /** Keys of what is told, in order. */
    static <Q extends Record> List<String> told(Calculator<Q, ?> calculator, Q asked) {
        return calculator.calculate(asked, new Checked(calculator)).notices().stream()
                .map(notice -> notice.kind().key())
                .toList();
    }

    /** A notice as {@code key at place [arguments]}. */
    static <Q extends Record> String notice(Calculator<Q, ?> calculator, Q asked, String key) {
        return calculator.calculate(asked, new Checked(calculator)).notices().stream()
                .filter(notice -> notice.kind().key().equals(key))
                .map(notice -> key + " at " + notice.place() + " "
                        + notice.args().stream().map(Fitted::tenths).toList())
                .findFirst()
                .orElse("not told");
    }

    private static Object tenths(Object arg) {
        return arg instanceof Length length ? Math.round(length.mm() * 1000) / 1000.0 : arg;
    }

    /** The working: each formula with what was put in and what it came to, in mm; then the sources of answers. */
    static <Q extends Record> List<String> working(Calculator<Q, ?> calculator, Q asked) {
        Checked lines = new Checked(calculator);
        calculator.calculate(asked, lines);
        return lines.lines();
    }

    /** Every formula declared, every symbol in its formula, and the numbers give the result where they can be added up here. */
    private record Checked(Calculator<?, ?> calculator, List<String> lines) implements Working {
        Checked(Calculator<?, ?> calculator) {
            this(calculator, new ArrayList<>());
        }

        @Override
        public void step(Formula formula, Object result, Object... symbolsAndValues) {
            assertTrue(calculator.formulas().contains(formula), () -> formula + " is not declared");
            assertEquals(0, symbolsAndValues.length % 2);
            List<String> put = new ArrayList<>();
            for (int i = 0; i < symbolsAndValues.length; i += 2) {
                String symbol = (String) symbolsAndValues[i];
                assertTrue(formula.symbols().contains(symbol), () -> symbol + " is not in " + formula.symbols());
                put.add(symbol + " " + number(symbolsAndValues[i + 1]));
            }
            lines.add(formula.symbols() + " | " + String.join(", ", put) + " | " + number(result));
        }

        @Override
        public void source(String answer, Source source) {
            assertTrue(calculator.sources().contains(source) || isOfFormula(source), () -> source + " is not declared");
            lines.add(answer + " by " + source.key());
        }

        private static String number(Object value) {
            double plain = value instanceof Length length ? length.mm() : ((Number) value).doubleValue();
            return new DecimalFormat("0.###", DecimalFormatSymbols.getInstance(Locale.ROOT)).format(plain);
        }

        private boolean isOfFormula(Source source) {
            return calculator.formulas().stream()
                    .anyMatch(formula -> formula.source().equals(source));
        }
    }
}
