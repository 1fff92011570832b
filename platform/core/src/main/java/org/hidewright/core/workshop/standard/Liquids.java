package org.hidewright.core.workshop.standard;

import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Volume;
import org.hidewright.api.workshop.Tabulates;
import org.hidewright.api.workshop.WorkshopTable;

/** Dyes, glues, finishes and waxes, by the bottle. */
@Tabulates("liquids")
final class Liquids implements WorkshopTable<Liquids.Row> {
    enum Liquid {
        DYE,
        STAIN,
        GLUE,
        EDGE_PAINT,
        BURNISHING,
        WAX,
        CONDITIONER,
        SEALER,
        THINNER,
        OTHER
    }

    record Row(
            @Asked(example = "Brown dye") String name,

            @Asked(example = "dye") Liquid kind,

            @Asked(unit = "ml", min = "1 ml", max = "50 l", example = "250 ml")
            Volume holds,

            @Asked(min = "0", example = "12.50 EUR") Optional<Money> price,

            @Asked(unit = "m²", min = "0.01 m²", max = "500 m²", example = "2 m²")
            Optional<Area> covers,

            @Asked(unit = "min", min = "0", max = "14 d", example = "20 min")
            Optional<Duration> waiting,

            @Asked Optional<String> note) {}
}
