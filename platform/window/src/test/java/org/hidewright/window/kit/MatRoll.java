package org.hidewright.window.kit;

import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;

/** How wide rolled nets are, for a mat to take from. */
@Calculates("mat-roll")
public final class MatRoll implements Calculator<MatRoll.Asking, MatRoll.Given> {
    /** What is asked. */
    public record Asking(
            @Asked(min = "1", max = "20", example = "3") int nets) {}

    /** What is answered. */
    public record Given(
            @Answered(unit = "mm", step = "1 mm") Length width) {}

    @Override
    public Outcome<Given> calculate(Asking asked, Working working) {
        return Outcome.of(new Given(Length.ofMm(70 * asked.nets())));
    }
}
