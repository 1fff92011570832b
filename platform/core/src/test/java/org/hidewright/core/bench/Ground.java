package org.hidewright.core.bench;

import java.util.List;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;

/** Punches that are ground a tenth of a millimetre smaller, for tests of rows that are put away. */
@Calculates("ground")
public final class Ground implements Calculator<Ground.Asks, Ground.Gives> {
    public record Punch(
            @RowId String id,

            @Asked(unit = "mm", example = "3 mm", stock = "punches.diameter")
            Length diameter) {}

    public record Asks(
            @Asked(example = "[{\"id\":\"p\",\"diameter\":\"3 mm\"}]")
            List<Punch> punches) {}

    public record Smaller(
            @RowId String id, @Answered(unit = "mm") Length diameter) {}

    public record Lost(
            @RowId String id, @Answered(unit = "mm") Length diameter) {}

    public record Gives(
            @Answered(stock = "punches") List<Smaller> punches,

            @Answered(stock = "no-such-table") List<Lost> lost) {}

    @Override
    public Outcome<Gives> calculate(Asks asks, Working working) {
        return Outcome.of(new Gives(
                asks.punches().stream()
                        .map(punch -> new Smaller(
                                punch.id(), Length.ofMm(punch.diameter().mm() - 0.1)))
                        .toList(),
                List.of(new Lost("lost", Length.ofMm(1)))));
    }
}
