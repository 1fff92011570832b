package org.hidewright.window.kit;

import java.util.Optional;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.measure.Length;

/** A cord round a roll of nets: asks what the window has an editor for. */
@Calculates("cord")
public final class Cord implements Calculator<Cord.Asks, Cord.Gives> {
    /** How it ends. */
    public sealed interface End {
        /** Cut. */
        record Plain() implements End {}

        /** With a loop. */
        record Loop(
                @Asked(unit = "mm", min = "1 mm", max = "90 mm", preset = "20 mm")
                Length round) implements End {}
    }

    /** What it is twisted of. */
    public enum Lay {
        TWO,
        THREE
    }

    /** What is asked. */
    public record Asks(
            @Asked(unit = "mm", min = "1 mm", max = "900 mm", usual = "50-300 mm", example = "100 mm", picture = "roll")
            Length round,

            @Asked(min = "1", max = "9", preset = "2") int turns,
            @Asked(preset = "two") Lay lay,
            @Asked(preset = "no") boolean waxed,
            @Asked(preset = "{\"plain\":{}}") End end,
            @Asked(unit = "mm") Optional<Length> spare) {}

    /** What is answered. */
    public record Gives(
            @Answered(unit = "mm", step = "0.1 mm") Length spareTaken,

            @Answered(unit = "mm", step = "0.1 mm", lead = true)
            Length length,

            @Answered Drawing straight) {}

    @Override
    public Outcome<Gives> calculate(Asks asked, Working working) {
        double loop = asked.end() instanceof End.Loop loops ? loops.round().mm() : 0;
        double spare = asked.spare().map(Length::mm).orElse(0.0);
        double length = asked.round().mm() * asked.turns() + loop + spare;
        Drawing straight = Drawing.builder()
                .line(Role.CUT, Point.of(0, 0), Point.of(length, 0))
                .build();
        return Outcome.of(new Gives(Length.ofMm(spare), Length.ofMm(length), straight));
    }
}
