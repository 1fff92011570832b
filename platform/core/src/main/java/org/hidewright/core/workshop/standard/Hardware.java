package org.hidewright.core.workshop.standard;

import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Money;
import org.hidewright.api.workshop.Tabulates;
import org.hidewright.api.workshop.WorkshopTable;

/** Studs, snaps, rivets, buckles, rings and the like, by measured sizes. */
@Tabulates("hardware")
final class Hardware implements WorkshopTable<Hardware.Row> {
    enum Fitting {
        STUD,
        SNAP,
        CAPPED_RIVET,
        TUBULAR_RIVET,
        SOLID_RIVET,
        SCREW_POST,
        EYELET,
        BUCKLE,
        RING,
        MAGNET,
        ZIP,
        OTHER
    }

    record Row(
            @Asked(example = "Ball stud, small") String name,

            @Asked(example = "stud") Fitting kind,

            @Asked(unit = "mm", min = "0.5 mm", max = "20 mm")
            Optional<Length> postDiameter,

            @Asked(unit = "mm", min = "1 mm", max = "60 mm") Optional<Length> postLength,

            @Asked(unit = "mm", min = "1 mm", max = "60 mm") Optional<Length> headDiameter,

            @Asked(unit = "mm", min = "1 mm", max = "30 mm") Optional<Length> neckDiameter,

            @Asked(unit = "mm", min = "0.5 mm", max = "30 mm")
            Optional<Length> neckHeight,

            @Asked(unit = "mm", min = "3 mm", max = "200 mm")
            Optional<Length> insideWidth,

            @Asked(unit = "mm", min = "0.5 mm", max = "20 mm")
            Optional<Length> barDiameter,

            @Asked(min = "0", max = "100000", preset = "1") int pieces,

            @Asked(min = "0", example = "12.50 EUR") Optional<Money> price,

            @Asked Optional<String> setter,

            @Asked Optional<String> note) {}
}
