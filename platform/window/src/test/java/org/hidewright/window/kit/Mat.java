package org.hidewright.window.kit;

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

/** A mat that nets are rolled on: a template with something to be asked in every step. */
@Calculates("mat")
public final class Mat implements Calculator<Mat.Asking, Mat.Made> {
    /** A choice. */
    public enum Corners {
        SHARP,
        ROUND
    }

    /** What is asked. */
    public record Asking(
            @Asked(unit = "mm", min = "10 mm", max = "900 mm", example = "200 mm", from = "mat-roll.width")
            Length width,

            @Asked(unit = "mm", min = "10 mm", max = "900 mm", preset = "100 mm")
            Length height,

            @Asked(preset = "sharp") Corners corners,

            @Asked(
                    unit = "mm",
                    min = "1 mm",
                    max = "5 mm",
                    usual = "2-3 mm",
                    preset = "2 mm",
                    stock = "leather.thickness")
            Length thickness) {}

    /** What is answered. */
    public record Made(@Answered Item mat) {}

    @Override
    public Outcome<Made> calculate(Asking asked, Working working) {
        Path outline = Path.rectangle(
                Role.CUT, Point.of(0, 0), asked.width().mm(), asked.height().mm());
        return Outcome.of(new Made(Item.builder()
                .part(Part.of("mat", "Mat", outline)
                        .leather("brown side")
                        .thickness(asked.thickness().mm())
                        .build())
                .build()));
    }
}
