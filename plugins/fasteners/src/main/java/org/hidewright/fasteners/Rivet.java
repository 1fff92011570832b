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

/** Which rivet holds a stack, its hole, and of a solid one how much is clipped off. */
@Calculates("rivet")
@Component(service = Calculator.class)
public final class Rivet implements Calculator<Rivet.Riveted, Posted> {
    /** A capped rivet’s post stands 2 to 3 mm out of the stack (common practice). */
    private static final double CAP_LEAST_MM = 2;

    private static final double CAP_MOST_MM = 3;
    /** A tubular shank needs half to seven tenths of its diameter to roll over (from memory). */
    private static final double ROLL_LEAST = 0.5;

    private static final double ROLL_MOST = 0.7;

    /** What is asked. */
    public record Riveted(
            @Asked(example = "{\"measured\":{\"thickness\":\"4 mm\"}}")
            Stack stack,

            @Asked(preset = "{\"capped\":{}}") RivetKind kind,

            @Asked(
                    example =
                            "{\"post-diameter\":\"2.9 mm\",\"post-length\":\"7 mm\",\"head-diameter\":\"9 mm\",\"setter\":\"rivet setter\"}")
            Shank rivet,

            @Asked(unit = "mm", min = "1 mm", max = "60 mm", example = "6 mm; 7 mm; 9 mm")
            Optional<List<Length>> lengths,

            @Asked(preset = "medium") Temper temper,
            @Asked(preset = "{\"punched\":{}}") HoleMade made,
            @Asked Use use) {}

    @Override
    public Outcome<Posted> calculate(Riveted asked, Working working) {
        return new Posting(
                        "rivet",
                        asked.rivet(),
                        asked.rivet().lengths(asked.lengths()),
                        ShankHole.of(asked.rivet().postDiameter(), asked.temper()),
                        fit(asked),
                        asked.made(),
                        asked.use(),
                        true)
                .work(working);
    }

    private static PostLength fit(Riveted asked) {
        if (asked.kind() instanceof RivetKind.Solid solid) {
            return PostLength.clipped(asked.stack(), solid.burr().plus(solid.peened()), Origins.POST_HABIT);
        } else if (asked.kind() instanceof RivetKind.Tubular) {
            double diameter = asked.rivet().postDiameter().mm();
            return PostLength.of(asked.stack(), ROLL_LEAST * diameter, ROLL_MOST * diameter, Origins.ROLL_OVER);
        }
        return PostLength.of(asked.stack(), CAP_LEAST_MM, CAP_MOST_MM, Origins.POST_HABIT);
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
        return List.of(Origins.HOLE_HABIT, Origins.POST_HABIT, Origins.ROLL_OVER);
    }
}
