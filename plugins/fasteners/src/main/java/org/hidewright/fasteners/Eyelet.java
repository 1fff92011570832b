package org.hidewright.fasteners;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;
import org.osgi.service.component.annotations.Component;

/** Which eyelet goes through a stack, and its hole. */
@Calculates("eyelet")
@Component(service = Calculator.class)
public final class Eyelet implements Calculator<Eyelet.Rolled, Posted> {
    /** An eyelet’s barrel stands 1.5 to 2.5 mm out of the leather before it is rolled over (common practice). */
    private static final double LEAST_MM = 1.5;

    private static final double MOST_MM = 2.5;

    /** What is asked. */
    public record Rolled(
            @Asked(example = "{\"measured\":{\"thickness\":\"3 mm\"}}")
            Stack stack,

            @Asked(
                    example =
                            "{\"post-diameter\":\"5 mm\",\"post-length\":\"5 mm\",\"head-diameter\":\"9 mm\",\"setter\":\"eyelet setter\"}")
            Shank barrel,

            @Asked(unit = "mm", min = "1 mm", max = "60 mm", example = "4 mm; 5 mm; 6 mm")
            Optional<List<Length>> lengths,

            @Asked(preset = "{\"punched\":{}}") HoleMade made,
            @Asked Use use) {}

    @Override
    public Outcome<Posted> calculate(Rolled asked, Working working) {
        return new Posting(
                        "barrel",
                        asked.barrel(),
                        asked.barrel().lengths(asked.lengths()),
                        ShankHole.ofBarrel(asked.barrel().postDiameter()),
                        PostLength.of(asked.stack(), LEAST_MM, MOST_MM, Origins.POST_HABIT),
                        asked.made(),
                        asked.use(),
                        true)
                .work(working);
    }

    @Override
    public List<Formula> formulas() {
        return Posting.FORMULAS;
    }

    @Override
    public List<NoticeKind> notices() {
        return Posting.NOTICES;
    }

    @Override
    public List<Source> sources() {
        return Posting.SOURCES;
    }
}
