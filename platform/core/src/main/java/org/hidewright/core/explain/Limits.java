package org.hidewright.core.explain;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.measure.Unit;
import org.hidewright.api.measure.Units;
import org.hidewright.core.wording.UnitSystem;

/** The limits of a question as they could be typed: a number with its unit, a decimal point in any language. */
public final class Limits {
    /** Digits of a limit in its own unit: all of them, without the last bits of a conversion. */
    private static final MathContext OWN = new MathContext(10);
    /** Digits of a limit in another unit, where it is only to be known about. */
    private static final int CONVERTED_DIGITS = 3;

    private final Question question;
    private final Unit unit;
    private final boolean converted;

    /** Limits in the unit of the question. */
    public Limits(Question question) {
        this(question, UnitSystem.METRIC);
    }

    /** Limits in the unit that is shown. */
    public Limits(Question question, UnitSystem system) {
        Unit own = question.unit().orElse(Units.ONE);
        this.question = question;
        this.unit = system.shown(own);
        this.converted = !unit.equals(own);
    }

    public Optional<String> min() {
        return limit(question.min(), RoundingMode.CEILING);
    }

    public Optional<String> max() {
        return limit(question.max(), RoundingMode.FLOOR);
    }

    public Optional<String> usual() {
        return question.usual()
                .map(usual -> withUnit(
                        number(usual.low(), RoundingMode.CEILING) + "-" + number(usual.high(), RoundingMode.FLOOR)));
    }

    private Optional<String> limit(OptionalDouble base, RoundingMode inward) {
        return base.isPresent() ? Optional.of(withUnit(number(base.getAsDouble(), inward))) : Optional.empty();
    }

    /** Rounded to the side that is within: what is told as the least can be typed. */
    private String number(double base, RoundingMode inward) {
        BigDecimal number = new BigDecimal(unit.fromBase(base)).round(OWN);
        if (converted) {
            number = number.round(new MathContext(CONVERTED_DIGITS, inward));
        }
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    private String withUnit(String number) {
        return (number + " " + unit.symbol()).strip();
    }
}
