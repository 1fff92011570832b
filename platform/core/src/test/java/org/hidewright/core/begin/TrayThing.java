package org.hidewright.core.begin;

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
    /** What is asked. */
    public record Asking(
            @Asked(min = "1", max = "20", example = "3") int pencils) {}

    /** What is answered. */
    public record Given(
            @Answered(unit = "mm", step = "1 mm") Length width,
            @Answered(unit = "mm", step = "1 mm") Length height) {}

    @Override
    public Outcome<Given> calculate(Asking asked, Working working) {
        return Outcome.of(new Given(Length.ofMm(8 * asked.pencils()), Length.ofMm(180)));
    }
}
