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

/** Which screw post closes a stack: its barrel may end inside the leather and never stand out, or the stack stays loose. */
@Calculates("screw-post")
@Component(service = Calculator.class)
public final class ScrewPost implements Calculator<ScrewPost.Screwed, Posted> {
    /** The barrel is as long as the pressed stack, or up to half a millimetre shorter (common practice). */
    private static final double LEAST_MM = -0.5;

    private static final double MOST_MM = 0;

    /** What is asked. */
    public record Screwed(
            @Asked(example = "{\"measured\":{\"thickness\":\"6.2 mm\"}}")
            Stack stack,

            @Asked(example = "{\"post-diameter\":\"5 mm\",\"post-length\":\"6 mm\",\"head-diameter\":\"10 mm\"}")
            Shank barrel,

            @Asked(unit = "mm", min = "1 mm", max = "60 mm", example = "4 mm; 5 mm; 6 mm; 8 mm")
            Optional<List<Length>> lengths,

            @Asked(preset = "medium") Temper temper,
            @Asked(preset = "{\"punched\":{}}") HoleMade made,
            @Asked Use use) {}

    @Override
    public Outcome<Posted> calculate(Screwed asked, Working working) {
        return new Posting(
                        "barrel",
                        asked.barrel(),
                        asked.barrel().lengths(asked.lengths()),
                        ShankHole.of(asked.barrel().postDiameter(), asked.temper()),
                        PostLength.of(asked.stack(), LEAST_MM, MOST_MM, Origins.POST_HABIT),
                        asked.made(),
                        asked.use(),
                        false)
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
