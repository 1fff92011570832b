package org.hidewright.core.template;

import java.util.List;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;

/** A calculator that doubles a length, for templates to ask. */
@Calculates("doubling")
public final class Doubling implements Calculator<Doubling.Asking, Doubling.Given> {
    private static final NoticeKind TOO_LONG = NoticeKind.stop("too-long");
    private static final NoticeKind DOUBLED = NoticeKind.note("doubled");

    /** What is asked. */
    public record Asking(
            @Asked(unit = "mm", min = "1 mm", max = "500 mm", example = "20 mm")
            Length of) {}

    /** What is answered. */
    public record Given(
            @Answered(unit = "mm", step = "0.1 mm", by = "twice-as-long")
            Length twice) {}

    static final Formula TWICE = Formula.of("twice-as-long", "L = 2 · l", Source.of("two", Source.Kind.DEFINITION));

    @Override
    public List<Formula> formulas() {
        return List.of(TWICE);
    }

    @Override
    public Outcome<Given> calculate(Asking asked, Working working) {
        working.step(TWICE, asked.of().times(2), "l", asked.of());
        return asked.of().mm() > 150
                ? Outcome.refuse(TOO_LONG.at("of", asked.of()))
                : Outcome.of(new Given(Length.ofMm(2 * asked.of().mm())), List.of(DOUBLED.at("of")));
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(TOO_LONG, DOUBLED);
    }
}
