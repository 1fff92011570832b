package org.hidewright.command.kit;

import java.util.List;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;

/** Splits leather to half its thickness, and has it for the workshop. */
@Calculates("kit-split")
public final class Split implements Calculator<Split.Asks, Split.Gives> {
    public record Side(
            @RowId String id,

            @Asked(unit = "mm", example = "3 mm", stock = "leather.thickness")
            Length thickness) {}

    public record Asks(
            @Asked(example = "[{\"id\":\"side\",\"thickness\":\"3 mm\"}]")
            List<Side> sides) {}

    public record Half(
            @RowId String id, @Answered(unit = "mm") Length thickness) {}

    public record Gives(@Answered(stock = "leather") List<Half> halves) {}

    @Override
    public Outcome<Gives> calculate(Asks asks, Working working) {
        return Outcome.of(new Gives(asks.sides().stream()
                .map(side -> new Half(side.id(), side.thickness().times(0.5)))
                .toList()));
    }
}
