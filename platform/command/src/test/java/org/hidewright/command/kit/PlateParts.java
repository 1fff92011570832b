package org.hidewright.command.kit;

import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.item.Item;

/** Counts the parts of an item that another slip answers. */
@Calculates("kit-plate-parts")
public final class PlateParts implements Calculator<PlateParts.Asks, PlateParts.Gives> {
    public record Asks(@Asked Item item) {}

    public record Gives(@Answered int parts) {}

    @Override
    public Outcome<Gives> calculate(Asks asks, Working working) {
        return Outcome.of(new Gives(asks.item().parts().size()));
    }
}
