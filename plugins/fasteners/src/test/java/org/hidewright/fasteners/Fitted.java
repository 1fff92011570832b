package org.hidewright.fasteners;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.measure.Length;
import org.hidewright.testkit.CalculatorRun;

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
        return CalculatorRun.of(calculator, asked).outcome();
    }

    static <Q extends Record, A extends Record> A answers(Calculator<Q, A> calculator, Q asked) {
        return CalculatorRun.of(calculator, asked).answers();
    }

    /** Keys of what is told, in order. */
    static <Q extends Record> List<String> told(Calculator<Q, ?> calculator, Q asked) {
        return outcome(calculator, asked).notices().stream()
                .map(notice -> notice.kind().key())
                .toList();
    }

    /** A notice as {@code key at place [arguments]}. */
    static <Q extends Record> String notice(Calculator<Q, ?> calculator, Q asked, String key) {
        return outcome(calculator, asked).notices().stream()
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
        return CalculatorRun.of(calculator, asked).working(Fitted::shown);
    }

    private static String shown(Object value) {
        double plain = value instanceof Length length ? length.mm() : ((Number) value).doubleValue();
        return new DecimalFormat("0.###", DecimalFormatSymbols.getInstance(Locale.ROOT)).format(plain);
    }
}
