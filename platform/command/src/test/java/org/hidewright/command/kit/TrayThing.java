package org.hidewright.command.kit;

import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;

/** How large a thing is, for a tray to take from. */
@Calculates("tray-thing")
public final class TrayThing implements Calculator<TrayThing.Asking, TrayThing.Given> {
    /** What it is. */
    public sealed interface Thing {
        /** One book. */
        record Book() implements Thing {}

        /** Pencils side by side. */
        record Pencils(
                @Asked(min = "1", max = "20", preset = "2") int count,

                @Asked(unit = "mm", min = "3 mm", max = "20 mm", preset = "8 mm")
                Length across)
                implements Thing {}
    }

    /** What is asked. */
    public record Asking(@Asked(example = "{\"book\":{}}") Thing thing) {}

    /** What is answered. */
    public record Given(
            @Answered(unit = "mm", step = "1 mm") Length width,
            @Answered(unit = "mm", step = "1 mm") Length height) {}

    @Override
    public Outcome<Given> calculate(Asking asked, Working working) {
        Length width = asked.thing() instanceof Thing.Pencils some
                ? Length.ofMm(some.count() * some.across().mm())
                : Length.ofMm(120);
        return Outcome.of(new Given(width, Length.ofMm(180)));
    }
}
