package org.hidewright.core.explain;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.measure.Unit;
import org.hidewright.api.measure.Units;

/** The limits of a question as they could be typed: a number with the question's unit, a decimal point in any language. */
public final class Limits {
    private final Question question;
    private final Unit unit;

    public Limits(Question question) {
        this.question = question;
        this.unit = question.unit().orElse(Units.ONE);
    }

    public Optional<String> min() {
        return limit(question.min());
    }

    public Optional<String> max() {
        return limit(question.max());
    }

    public Optional<String> usual() {
        return question.usual().map(usual -> withUnit(number(usual.low()) + "-" + number(usual.high())));
    }

    private Optional<String> limit(OptionalDouble base) {
        return base.isPresent() ? Optional.of(withUnit(number(base.getAsDouble()))) : Optional.empty();
    }

    private String number(double base) {
        BigDecimal number = new BigDecimal(unit.fromBase(base)).round(new MathContext(10));
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    private String withUnit(String number) {
        return (number + " " + unit.symbol()).strip();
    }
}
