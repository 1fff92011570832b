package org.hidewright.testkit.faults;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.item.Item;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Size;

/** It asks for something of every kind, and answers what it was asked: nothing is wrong with it. */
@Calculates("everything")
public final class Everything implements Calculator<Everything.Asks, Everything.Heard> {
    public enum Edge {
        CUT,
        TURNED,
        BOUND
    }

    public sealed interface Closing permits Stud, Lace {}

    public record Stud(
            @Asked(unit = "mm", min = "3 mm", max = "20 mm", usual = "6-12 mm", preset = "8 mm")
            Length head) implements Closing {}

    public record Lace(
            @Asked(min = "1", max = "9", usual = "2-4", preset = "2")
            int holes) implements Closing {}

    public record Layer(
            @RowId String id,

            @Asked(unit = "mm", min = "0.4 mm", max = "6 mm", usual = "1-3 mm", example = "2 mm")
            Length thickness,

            @Asked(preset = "no") boolean skived) {}

    public sealed interface Stretch permits Straight, Bend {}

    public record Straight(
            @RowId String id,

            @Asked(unit = "mm", min = "1 mm", max = "1 m", example = "50 mm")
            Length length) implements Stretch {}

    public record Bend(
            @RowId String id,

            @Asked(unit = "deg", min = "0 deg", max = "180 deg", preset = "90 deg")
            Angle turn) implements Stretch {}

    public record Held(
            @Asked(unit = "mm", min = "1 mm", max = "1 m", example = "105 x 148 mm")
            Size size,

            @Asked(unit = "%", min = "0 %", max = "90 %", usual = "0-15 %", preset = "3 %")
            double spare) {}

    public record Asks(
            @Asked Held held,
            @Asked(preset = "turned") Edge edge,
            @Asked(preset = "{\"stud\":{}}") Closing closing,

            @Asked(
                    example =
                            "[{\"id\":\"front\",\"thickness\":\"1.6 mm\"},{\"id\":\"lining\",\"thickness\":\"0.8 mm\"}]")
            List<Layer> layers,

            @Asked(example = "[{\"id\":\"leg\",\"straight\":{\"length\":\"80 mm\"}},{\"id\":\"fold\",\"is\":\"bend\"}]")
            List<Stretch> stretches,

            @Asked(unit = "mm", min = "1 mm", max = "60 mm", example = "4 mm; 5 mm")
            Optional<List<Length>> posts,

            @Asked(min = "0", example = "28 EUR") Money price,
            @Asked(example = "2026-12-31") Optional<LocalDate> until,
            @Asked Item item) {}

    public record Heard(@Answered String said) {}

    @Override
    public Outcome<Heard> calculate(Asks asks, Working working) {
        return Outcome.of(new Heard(asks.toString()));
    }
}
