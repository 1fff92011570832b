package org.hidewright.core.explain;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.measure.InchFraction;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Typed;
import org.hidewright.api.measure.TypedText;
import org.hidewright.api.measure.Unit;
import org.hidewright.api.measure.Units;
import org.hidewright.core.wording.UnitSystem;

/**
 * A typical answer as somebody would type it who sees it in inches: the coarsest fraction that a rule shows and that is near
 * enough, since an example is only to begin with. Trade units stay, and so does what would lie outside its limits.
 */
public final class ExampleInUnits {
    private static final List<Integer> DIVISIONS = List.of(1, 2, 4, 8, 16, 32, 64);
    /** Of the example: who types over it loses nothing by less. */
    private static final double NEAR = 0.02;

    private static final MathContext DIGITS = new MathContext(3);

    private final UnitSystem system;

    public ExampleInUnits(UnitSystem system) {
        this.system = system;
    }

    /** The example or preset of a question; empty where it gives none. */
    public Optional<String> of(Question question) {
        return question.example()
                .map(text -> question.unit()
                        .filter(own -> question.kind().dimension().isPresent())
                        .flatMap(own -> converted(question, text, own))
                        .orElse(text));
    }

    private Optional<String> converted(Question question, String text, Unit own) {
        return TypedText.quantity(text, own.dimension(), Optional.of(own))
                .understood()
                .filter(typed -> !system.shown(typed.unit()).equals(typed.unit()))
                .filter(typed -> typed.range().isExact())
                .map(this::written)
                .filter(written -> fits(question, written, own));
    }

    private String written(Typed typed) {
        Unit shown = system.shown(typed.unit());
        double base = typed.range().nominal();
        if (shown.equals(Units.INCH)) {
            Length length = Length.of(shown.fromBase(base), shown);
            for (int division : DIVISIONS) {
                InchFraction near = InchFraction.nearest(length, division);
                if (Math.abs(near.errorMm()) <= NEAR * Math.abs(length.mm())) {
                    return near.toString();
                }
            }
        }
        BigDecimal number = new BigDecimal(shown.fromBase(base)).round(DIGITS);
        return (number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString()) + " " + shown.symbol();
    }

    private static boolean fits(Question question, String written, Unit own) {
        return TypedText.quantity(written, own.dimension(), Optional.of(own))
                .understood()
                .filter(typed -> typed.range().low() >= question.min().orElse(Double.NEGATIVE_INFINITY))
                .filter(typed -> typed.range().high() <= question.max().orElse(Double.POSITIVE_INFINITY))
                .isPresent();
    }
}
