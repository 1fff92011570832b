package org.hidewright.window.kit;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Density;
import org.hidewright.api.measure.Length;

/** Layers one over the other, each asked for in more than one question: leather takes all of a row of the workshop. */
@Calculates("layered")
public final class Layered implements Calculator<Layered.Asks, Layered.Gives> {
    /** A layer. */
    public sealed interface Layer permits Leather, Board, Filler {
        String id();
    }

    /** Of leather. */
    public record Leather(
            @RowId String id,

            @Asked(unit = "mm", example = "2 mm", stock = "leather.thickness")
            Length thickness,

            @Asked(unit = "g/cm³", example = "0.95", stock = "leather.density")
            Optional<Density> density,

            @Asked(preset = "1") int sheets)
            implements Layer {}

    /** Of board. */
    public record Board(
            @RowId String id,

            @Asked(unit = "mm", example = "1 mm", stock = "leather.thickness")
            Length thickness) implements Layer {}

    /** Of leather, but called otherwise than in the table. */
    public record Filler(
            @RowId String id,

            @Asked(unit = "mm", example = "1 mm", stock = "leather.thickness")
            Length height,

            @Asked(unit = "g/cm³", example = "0.95", stock = "leather.density")
            Density weight)
            implements Layer {}

    /** A row that is no variant. */
    public record Patch(
            @RowId String id,

            @Asked(unit = "mm", example = "1 mm", stock = "leather.thickness")
            Length thickness,

            @Asked(unit = "g/cm³", example = "0.95", stock = "leather.density")
            Density density) {}

    /** What is asked. */
    public record Asks(
            @Asked(example = "[]") List<Layer> layers,
            @Asked(preset = "[]") List<Patch> patches) {}

    /** What is answered. */
    public record Gives(
            @Answered(unit = "mm") Length all,
            @Answered(stock = "leather") List<Left> left) {}

    /** What is left of leather: all but half a millimetre of it. */
    public record Left(
            @RowId String id, @Answered(unit = "mm") Length thickness) {}

    @Override
    public Outcome<Gives> calculate(Asks asks, Working working) {
        List<Left> left = asks.layers().stream()
                .filter(Leather.class::isInstance)
                .map(Leather.class::cast)
                .map(leather -> new Left(leather.id(), leather.thickness().minus(Length.ofMm(0.5))))
                .toList();
        return Outcome.of(new Gives(Length.ofMm(asks.layers().size()), left));
    }
}
