package org.hidewright.core.begin;

import java.util.Optional;
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

/** A template with a question for every step. */
@Calculates("tray")
public final class Tray implements Calculator<Tray.Asking, Tray.Made> {
    /** A choice. */
    public enum Corners {
        SHARP,
        ROUND
    }

    /** What it holds. */
    public record Held(
            @Asked(unit = "mm", min = "10 mm", max = "500 mm", example = "60 mm", from = "tray-thing.width")
            Length width,

            @Asked(unit = "mm", min = "10 mm", max = "500 mm", example = "90 mm", from = "tray-thing.height")
            Length height) {}

    /** What is asked. */
    public record Asking(
            @Asked Held held,

            @Asked(unit = "mm", min = "0 mm", max = "9 mm", preset = "2 mm")
            Length ease,

            @Asked(example = "sharp") Corners corners,

            @Asked(
                    unit = "mm",
                    min = "1 mm",
                    max = "5 mm",
                    usual = "2-3 mm",
                    preset = "2 mm",
                    stock = "leather.thickness")
            Length thickness,

            @Asked(unit = "mm", min = "0.2 mm", max = "1 mm", stock = "leather.thickness")
            Optional<Length> lining) {}

    /** What is answered. */
    public record Made(@Answered Item item) {}

    @Override
    public Outcome<Made> calculate(Asking asked, Working working) {
        Path outline = Path.rectangle(
                Role.CUT,
                Point.of(0, 0),
                asked.held().width().mm() + asked.ease().mm(),
                asked.held().height().mm());
        return Outcome.of(new Made(
                Item.builder().part(Part.of("base", "Base", outline).build()).build()));
    }
}
