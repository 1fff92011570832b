package org.hidewright.core.bench;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Budget;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Search;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Density;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Mass;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Size;
import org.hidewright.api.measure.Units;

/** A calculator that searches for an answer of every kind there is: whatever chance gives. */
@Calculates("whole")
public final class Whole implements Calculator<Whole.Asks, Whole.Gives>, Search<Whole.Asks, Whole.Found> {
    public record Found(
            @Asked Sampler.Asks all,

            @Asked(min = "0", example = "12.50 EUR") Money price,

            @Asked(example = "2026-03-01") LocalDate day) {}

    public record Asks(@Asked Optional<Found> found) {}

    public record Gives(@Answered int holes) {}

    @Override
    public Outcome<Gives> calculate(Asks asks, Working working) {
        return Outcome.of(
                new Gives(asks.found().map(found -> found.all().holes()).orElse(0)));
    }

    @Override
    public void search(Asks asks, Budget budget, Consumer<Found> better) {
        SplittableRandom random = new SplittableRandom(budget.seed());
        better.accept(new Found(
                all(random),
                Money.of(BigDecimal.valueOf(random.nextInt(100_000), 2), Units.currency("EUR")),
                LocalDate.of(2026, 1 + random.nextInt(12), 1 + random.nextInt(28))));
    }

    private static Length length(SplittableRandom random, double from, double to) {
        return Length.ofMm(random.nextDouble(from, to));
    }

    private static Size size(SplittableRandom random) {
        return Size.of(length(random, 1, 2000), length(random, 1, 2000));
    }

    private static Sampler.Tannage tannage(SplittableRandom random) {
        return Sampler.Tannage.values()[random.nextInt(3)];
    }

    private static Sampler.Core core(SplittableRandom random) {
        return switch (random.nextInt(3)) {
            case 0 -> new Sampler.RoundBar(length(random, 1, 30), random.nextInt(1, 6));
            case 1 -> new Sampler.FlatRing(length(random, 0, 30));
            default -> new Sampler.OwnLayers(random.nextInt(1, 7));
        };
    }

    private static Sampler.Asks all(SplittableRandom random) {
        return new Sampler.Asks(
                length(random, 0.4, 12),
                Angle.ofRadians(random.nextDouble(2 * Math.PI)),
                Area.ofMm2(random.nextDouble(6e6)),
                Mass.ofGrams(random.nextDouble(5000)),
                Density.ofGramsPerCm3(random.nextDouble(0.2, 2)),
                size(random),
                random.nextInt(1, 21),
                random.nextInt(9) / 8.0,
                tannage(random),
                random.nextBoolean(),
                "said \"" + random.nextInt() + "\" \\ so",
                IntStream.range(0, random.nextInt(1, 5))
                        .mapToObj(each -> length(random, 0, 50))
                        .toList(),
                List.of(random.nextInt(1, 9), random.nextInt(1, 9)),
                List.of(tannage(random)),
                List.of(size(random), size(random)),
                List.of(random.nextBoolean()),
                List.of("belly", "bend " + random.nextInt()),
                core(random),
                new Sampler.Edge(length(random, 0, 3), tannage(random)),
                List.of(
                        new Sampler.Layer("strap", length(random, 0.2, 10), random.nextBoolean(), Optional.of("glued")),
                        new Sampler.Layer("lining", length(random, 0.2, 10), random.nextBoolean(), Optional.empty())),
                List.of(
                        new Sampler.Run("r1", length(random, 1, 900)),
                        new Sampler.Bend("b1", Angle.ofRadians(random.nextDouble(-4, 4)))),
                random.nextBoolean() ? Optional.empty() : Optional.of(length(random, 0, 1)));
    }
}
