package org.hidewright.edges;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Units;
import org.hidewright.api.measure.Volume;

/** A bottle that is there; the workshop’s table of liquids can be taken for them. */
public record Bottle(
        @RowId String id,

        @Asked(example = "dye") Liquid kind,

        @Asked(unit = "ml", min = "1 ml", max = "50 l", usual = "30 ml-1 l", example = "250 ml")
        Volume holds,

        @Asked(unit = "m²", min = "0.01 m²", max = "500 m²", example = "2 m²")
        Optional<Area> covers,

        @Asked(unit = "min", min = "0", max = "14 d", example = "20 min")
        Optional<Duration> waiting) {

    /** Millilitres for a coat on a square metre: by the first bottle whose label tells it, else by habit. */
    static double mlPerSquareMetre(Liquid kind, List<Bottle> bottles) {
        return labelled(kind, bottles)
                .map(bottle -> bottle.holds.ml() / bottle.covers.orElseThrow().in(Units.M2))
                .orElse(kind.mlPerSquareMetre());
    }

    /** What the labels of these bottles ask for until the next step; nothing where none says it. */
    static Duration waiting(Liquid kind, List<Bottle> bottles) {
        return bottles.stream()
                .filter(bottle -> bottle.kind == kind)
                .flatMap(bottle -> bottle.waiting.stream())
                .max(Comparator.comparingDouble(Duration::seconds))
                .orElse(Duration.ZERO);
    }

    private static Optional<Bottle> labelled(Liquid kind, List<Bottle> bottles) {
        return bottles.stream()
                .filter(bottle -> bottle.kind == kind && bottle.covers.isPresent())
                .findFirst();
    }
}
