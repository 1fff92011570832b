package org.hidewright.costing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Quantity;
import org.hidewright.api.measure.Unit;
import org.hidewright.api.measure.Units;
import org.hidewright.testkit.CalculatorRun;

/** Works calculators as a host does: what they say has to be declared. */
final class Worked {
    static final Unit EUR = Units.currency("EUR");

    private Worked() {}

    static Money eur(double amount) {
        return Money.of(amount, EUR);
    }

    static Duration hours(double hours) {
        return Duration.of(hours, Units.HOUR);
    }

    static <Q extends Record, A extends Record> Outcome<A> outcome(Calculator<Q, A> calculator, Q questions) {
        return CalculatorRun.of(calculator, questions).outcome();
    }

    static <Q extends Record, A extends Record> A answers(Calculator<Q, A> calculator, Q questions) {
        return CalculatorRun.of(calculator, questions).answers();
    }

    /** The notices, as {@code key at place [arguments]}. */
    static List<String> told(Outcome<?> outcome) {
        return outcome.notices().stream()
                .map(notice -> (notice.kind().key() + " at " + notice.place()).strip() + " "
                        + notice.args().stream()
                                .map(arg -> arg instanceof Money money ? money.rounded() : arg)
                                .toList())
                .toList();
    }

    static <Q extends Record, A extends Record> String refusal(Calculator<Q, A> calculator, Q questions) {
        Outcome<A> outcome = outcome(calculator, questions);
        assertTrue(outcome.refused(), "not refused");
        assertEquals(1, outcome.notices().size());
        return told(outcome).get(0);
    }

    /** The working: each formula with what was put in and what it came to; then the sources of answers. */
    static <Q extends Record, A extends Record> List<String> working(Calculator<Q, A> calculator, Q questions) {
        return CalculatorRun.of(calculator, questions).working(Worked::shown);
    }

    private static String shown(Object value) {
        if (value instanceof Money money) {
            return money.rounded().amount().toPlainString();
        } else if (value instanceof Duration time) {
            return number(time.in(Units.HOUR)) + " h";
        } else if (value instanceof Area area) {
            return number(area.in(Units.FT2)) + " ft²";
        } else if (value instanceof Quantity<?> quantity) {
            return quantity.toString();
        }
        return number(((Number) value).doubleValue());
    }

    private static String number(double value) {
        return new DecimalFormat("0.####", DecimalFormatSymbols.getInstance(Locale.ROOT)).format(value);
    }
}
