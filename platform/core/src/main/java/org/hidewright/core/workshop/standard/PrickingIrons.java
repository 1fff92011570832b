package org.hidewright.core.workshop.standard;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Length;
import org.hidewright.api.workshop.Tabulates;
import org.hidewright.api.workshop.WorkshopTable;

/** Irons and chisels that mark or cut stitch holes, by pitch. */
@Tabulates("pricking-irons")
final class PrickingIrons implements WorkshopTable<PrickingIrons.Row> {
    enum HoleShape {
        SLANTED,
        STRAIGHT,
        ROUND,
        DIAMOND
    }

    record Row(
            @Asked(example = "3.85 mm iron") String name,

            @Asked(unit = "mm", min = "0.8 mm", max = "15 mm", usual = "2-6 mm", example = "3.85 mm")
            Length pitch,

            @Asked(min = "1", max = "40", example = "2; 6") List<Integer> prongs,

            @Asked(unit = "mm", min = "0.2 mm", max = "10 mm")
            Optional<Length> prongWidth,

            @Asked(preset = "slanted") HoleShape shape,

            @Asked Optional<String> note) {}
}
