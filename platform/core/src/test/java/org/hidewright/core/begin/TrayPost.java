package org.hidewright.core.begin;

import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Density;

/** What to pay the post for what is heavy. */
@Calculates("tray-post")
public final class TrayPost implements Calculator<TrayPost.Asking, TrayPost.Charged> {
    /** What is asked. */
    public record Asking(
            @Asked(unit = "g/cm3", min = "0.1 g/cm3", max = "3 g/cm3", example = "1 g/cm3", from = "tray-weight.each")
            Density weight) {}

    /** What is answered. */
    public record Charged(
            @Answered(unit = "g/cm3", lead = true) Density paid) {}

    @Override
    public Outcome<Charged> calculate(Asking asked, Working working) {
        return Outcome.of(new Charged(asked.weight()));
    }
}
