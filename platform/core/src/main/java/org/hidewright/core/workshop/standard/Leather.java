package org.hidewright.core.workshop.standard;

import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Density;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Size;
import org.hidewright.api.workshop.Tabulates;
import org.hidewright.api.workshop.WorkshopTable;

/** Sides, hides, panels and strips in stock. */
@Tabulates("leather")
final class Leather implements WorkshopTable<Leather.Row> {
    enum Tannage {
        VEGETABLE,
        CHROME,
        COMBINATION,
        RETANNED,
        OIL,
        ALUM,
        RAWHIDE,
        BONDED
    }

    enum Temper {
        SOFT,
        MEDIUM,
        FIRM
    }

    enum SoldAs {
        SIDE,
        HIDE,
        SHOULDER,
        BEND,
        BELLY,
        PANEL,
        STRIP,
        SKIN
    }

    record Row(
            @Asked(example = "Natural side, spring") String name,

            @Asked(example = "vegetable") Tannage tannage,

            @Asked(unit = "mm", min = "0.2 mm", max = "14 mm", usual = "0.8-6 mm", example = "2-3 oz")
            Length thickness,

            @Asked Optional<Temper> temper,

            @Asked(preset = "side") SoldAs soldAs,

            @Asked(unit = "dm²", min = "0.1 dm²", max = "800 dm²", example = "22 sq ft")
            Optional<Area> area,

            @Asked(unit = "mm", min = "5 mm", max = "4000 mm", example = "8.5 x 11 in")
            Optional<Size> size,

            @Asked(min = "0", max = "10000", preset = "1") int pieces,

            @Asked(min = "0", example = "12.50 EUR") Optional<Money> price,

            @Asked(unit = "g/cm³", min = "0.2", max = "1.5", usual = "0.6-1.2")
            Optional<Density> density,

            @Asked Optional<String> colour,

            @Asked Optional<String> note) {}
}
