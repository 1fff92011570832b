package org.hidewright.command.kit;

import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Part;

/** Asks for a yes or no before it answers an item. */
@Calculates("kit-lidded")
public final class Lidded implements Calculator<Lidded.Asking, Lidded.Made> {
    public record Asking(@Asked(example = "yes") boolean lid) {}

    public record Made(@Answered Item item) {}

    @Override
    public Outcome<Made> calculate(Asking asking, Working working) {
        Path outline = Path.rectangle(Role.CUT, Point.of(0, 0), 100, asking.lid() ? 90 : 60);
        return Outcome.of(new Made(
                Item.builder().part(Part.of("front", "Front", outline).build()).build()));
    }
}
