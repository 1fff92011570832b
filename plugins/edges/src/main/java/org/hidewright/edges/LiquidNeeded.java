package org.hidewright.edges;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Volume;
import org.osgi.service.component.annotations.Component;

/** Millilitres of one liquid for faces or edges, by what the label says a bottle covers. */
@Calculates("liquid-needed")
@Component(service = Calculator.class)
public final class LiquidNeeded implements Calculator<LiquidNeeded.Coats, LiquidNeeded.Amounts> {
    private static final NoticeKind NO_RATE = NoticeKind.stop("liquid-without-label");

    /** What is asked. */
    public record Coats(
            @Asked(example = "dye") Liquid liquid,

            @Asked(example = "{\"faces\":{\"area\":\"6 dm²\"}}")
            LaidOn laidOn,

            @Asked(min = "1", max = "20", usual = "1-4", preset = "2")
            int coats,

            @Asked(example = "{\"holds\":\"250 ml\",\"covers\":\"2 m²\"}")
            Optional<Label> label,

            @Asked(unit = "%", min = "0 %", max = "300 %", usual = "10-60 %", preset = "30 %")
            double lost) {}

    /** What it is laid on. */
    public sealed interface LaidOn permits LaidOn.Faces, LaidOn.Edges {
        /** One or both sides of parts. */
        record Faces(
                @Asked(unit = "dm²", min = "0.01 dm²", max = "10000 dm²", usual = "0.5-100 dm²", example = "6 dm²")
                Area area,

                @Asked(min = "1", max = "2", preset = "1") int sides)
                implements LaidOn {
            @Override
            public Area once() {
                return area.times(sides);
            }
        }

        /** The narrow faces of parts. */
        record Edges(
                @Asked(unit = "mm", min = "1 mm", max = "1000 m", usual = "5 mm-20 m", example = "420 mm")
                Length length,

                @Asked(unit = "mm", min = "0.2 mm", max = "60 mm", usual = "0.8-12 mm", example = "3.6 mm")
                Length thickness)
                implements LaidOn {
            @Override
            public Area once() {
                return Area.ofMm2(length.mm() * thickness.mm());
            }
        }

        /** What one coat covers. */
        Area once();
    }

    /** What is printed on a bottle. */
    public record Label(
            @Asked(unit = "ml", min = "1 ml", max = "50 l", usual = "30 ml-1 l", example = "250 ml")
            Volume holds,

            @Asked(unit = "m²", min = "0.01 m²", max = "500 m²", example = "2 m²")
            Area covers) {}

    /** What is answered. */
    public record Amounts(
            @Answered(unit = "ml", step = "0.1 ml", round = Rounding.UP, by = "liquid-needed", lead = true)
            Volume used,

            @Answered(unit = "dm²", step = "0.1 dm²", by = "edges-arithmetic")
            Area covered) {}

    @Override
    public Outcome<Amounts> calculate(Coats coats, Working working) {
        Area covered = coats.laidOn().once().times(coats.coats());
        List<Bottle> bottles = coats.label()
                .map(label -> List.of(
                        new Bottle("", coats.liquid(), label.holds(), Optional.of(label.covers()), Optional.empty())))
                .orElse(List.of());
        double rate = Bottle.mlPerSquareMetre(coats.liquid(), bottles);
        if (rate == 0) {
            return Outcome.refuse(NO_RATE.at("label", coats.liquid()));
        }
        Volume used = Liquids.needed(covered, rate, coats.lost(), working);
        if (bottles.isEmpty()) {
            working.source("used", Origins.COVERAGE);
        }
        return Outcome.of(new Amounts(used, covered), List.of(Cautions.DYES_AND_FINISHES.with()));
    }

    @Override
    public List<Formula> formulas() {
        return List.of(Liquids.NEEDED);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(NO_RATE, Cautions.DYES_AND_FINISHES);
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.ARITHMETIC, Origins.COVERAGE);
    }
}
