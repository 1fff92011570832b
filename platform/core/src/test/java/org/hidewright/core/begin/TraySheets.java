package org.hidewright.core.begin;

import java.util.List;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.item.Item;
import org.hidewright.api.measure.Length;

/** Asks for an item, and for the sheets that the maker has to cut it from. */
@Calculates("tray-sheets")
public final class TraySheets implements Calculator<TraySheets.Asking, TraySheets.Counted> {
    /** One of them. */
    public record Sheet(
            @RowId String id,
            @Asked(unit = "mm", example = "300 mm") Length length) {}

    /** What is asked. */
    public record Asking(
            @Asked Item item,

            @Asked(example = "[{\"id\":\"first\",\"length\":\"300 mm\"}]")
            List<Sheet> sheets) {}

    /** What is answered. */
    public record Counted(@Answered int sheets) {}

    @Override
    public Outcome<Counted> calculate(Asking asked, Working working) {
        return Outcome.of(new Counted(asked.sheets().size()));
    }
}
