package org.hidewright.core.bench;

import java.util.List;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.item.Edge;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Operation;
import org.hidewright.api.item.Part;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Length;

/** A calculator that answers an item of one rectangular part, 60 mm high, for tests of items. */
@Calculates("plate")
public final class Plate implements Calculator<Plate.Asks, Plate.Gives> {
    public record Asks(
            @Asked(unit = "mm", min = "1 mm", max = "1000 m", example = "100 mm")
            Length width) {}

    public record Gives(@Answered Item item) {}

    @Override
    public Outcome<Gives> calculate(Asks asks, Working working) {
        double width = asks.width().mm();
        Path outline = Path.rectangle(Role.CUT, Point.of(0, 0), width, 60);
        return Outcome.of(new Gives(Item.builder()
                .part(Part.of("front", "Front", outline)
                        .edge(Edge.of("foot", "rim", 0, width))
                        .build())
                .operation(Operation.of("skive", "Skive the foot")
                        .on(List.of("front"))
                        .tool("skiving knife")
                        .handsOn(Duration.ofSeconds(600))
                        .leastWait(Duration.ofSeconds(7200))
                        .mostWait(Duration.ofSeconds(86400))
                        .build())
                .build()));
    }
}
