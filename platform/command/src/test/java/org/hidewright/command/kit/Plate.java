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
import org.hidewright.api.measure.Length;

/** Answers an item of one part that is cut both ways. */
@Calculates("kit-plate")
public final class Plate implements Calculator<Plate.Asks, Plate.Gives> {
    public record Asks(
            @Asked(unit = "mm", min = "1 mm", max = "1 m", preset = "100 mm")
            Length width) {}

    public record Gives(@Answered Item item) {}

    @Override
    public Outcome<Gives> calculate(Asks asks, Working working) {
        Path outline = Path.rectangle(Role.CUT, Point.of(0, 0), asks.width().mm(), 60);
        return Outcome.of(new Gives(Item.builder()
                .part(Part.of("front", "Front", outline).pieces(1, 1).build())
                .build()));
    }
}
