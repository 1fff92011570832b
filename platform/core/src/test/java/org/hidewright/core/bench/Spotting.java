package org.hidewright.core.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Budget;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Search;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Length;

/** A calculator whose spots are searched for, by chance: each must lie on the line. */
@Calculates("spotting")
public final class Spotting
        implements Calculator<Spotting.Asks, Spotting.Gives>, Search<Spotting.Asks, Spotting.Spots> {
    /** Of what shape the mark at a spot is. */
    public enum Mark {
        ROUND,
        SQUARE
    }

    public record Spot(
            @RowId String id,

            @Asked(unit = "mm", min = "0 mm", example = "3 mm")
            Length at,

            @Asked(unit = "°", example = "90°") Angle turned,
            @Asked(preset = "round") Mark mark,
            @Asked(preset = "no") boolean held) {}

    public record Spots(
            @Asked(example = "[{\"id\":\"a\",\"at\":\"3 mm\",\"turned\":\"90°\"}]")
            List<Spot> spots,

            @Asked(unit = "%", example = "50 %") double share) {}

    public record Asks(
            @Asked(unit = "mm", min = "1 mm", example = "100 mm")
            Length line,

            @Asked Optional<String> note,
            @Asked Optional<Spots> spots) {}

    public record Gives(
            @Answered int count,
            @Answered(unit = "mm", lead = true) Length last,
            @Answered(asFile = true) Drawing line) {}

    @Override
    public Outcome<Gives> calculate(Asks asks, Working working) {
        List<Spot> spots = asks.spots().map(Spots::spots).orElse(List.of());
        Length last = spots.stream().map(Spot::at).reduce(Length.ofMm(0), (one, other) -> other);
        Drawing.Builder line = Drawing.builder()
                .line(Role.CUT, Point.of(0, 0), Point.of(asks.line().mm(), 0));
        spots.forEach(spot -> line.hole(Point.of(spot.at().mm(), 0), 1));
        return Outcome.of(new Gives(spots.size(), last, line.build()));
    }

    /** Goes on from the spots that are there; each try is a place, and every third place is a spot. */
    @Override
    public void search(Asks asks, Budget budget, Consumer<Spots> better) {
        SplittableRandom random = new SplittableRandom(budget.seed());
        List<Spot> spots = new ArrayList<>(asks.spots().map(Spots::spots).orElse(List.of()));
        for (long tried = 1; budget.spent(tried) < 1; tried++) {
            double at = random.nextDouble(asks.line().mm());
            if (tried % 3 == 0) {
                spots.add(new Spot(
                        "spot-" + (spots.size() + 1),
                        Length.ofMm(at),
                        Angle.ofRadians(random.nextDouble(-Math.PI, Math.PI)),
                        random.nextBoolean() ? Mark.ROUND : Mark.SQUARE,
                        random.nextBoolean()));
                better.accept(new Spots(List.copyOf(spots), random.nextDouble()));
            }
        }
    }
}
