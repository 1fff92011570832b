package org.hidewright.core.begin;

import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.item.Item;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Density;

/** How heavy an item is by a hide of the workshop. */
@Calculates("tray-weight")
public final class TrayWeight implements Calculator<TrayWeight.Asking, TrayWeight.Weighs> {
    /** What is asked. */
    public record Asking(
            @Asked Item item,

            @Asked(unit = "g/cm3", min = "0.1 g/cm3", max = "3 g/cm3", example = "0.9 g/cm3", stock = "leather.density")
            Density density,

            @Asked(unit = "ft2", min = "0.1 ft2", max = "90 ft2", example = "6 ft2", stock = "leather.area")
            Area area,

            @Asked(min = "1", max = "9", preset = "1") int pieces) {}

    /** What is answered. */
    public record Weighs(
            @Answered(unit = "g/cm3", lead = true) Density each) {}

    @Override
    public Outcome<Weighs> calculate(Asking asked, Working working) {
        return Outcome.of(new Weighs(asked.density()));
    }
}
