package org.hidewright.core.bench;

import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.item.Item;
import org.hidewright.api.measure.Length;

/** A calculator that is given a whole item, for tests of links to one. */
@Calculates("tally")
public final class Tally implements Calculator<Tally.Asks, Tally.Gives> {
    public record Asks(@Asked Item item) {}

    public record Gives(
            @Answered(unit = "mm", step = "0.1 mm") Length width) {}

    @Override
    public Outcome<Gives> calculate(Asks asks, Working working) {
        return Outcome.of(new Gives(
                Length.ofMm(asks.item().parts().get(0).outline().bounds().width())));
    }
}
