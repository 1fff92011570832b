package org.hidewright.core.begin;

import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.item.Item;
import org.hidewright.api.measure.Length;

/** Asks for an item, but for something else besides that only the maker knows. */
@Calculates("tray-label")
public final class TrayLabel implements Calculator<TrayLabel.Asking, TrayLabel.Made> {
    /** What is asked. */
    public record Asking(
            @Asked Item item,
            @Asked(unit = "mm", example = "30 mm") Length length) {}

    /** What is answered. */
    public record Made(@Answered(unit = "mm") Length length) {}

    @Override
    public Outcome<Made> calculate(Asking asked, Working working) {
        return Outcome.of(new Made(asked.length()));
    }
}
