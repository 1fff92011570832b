package org.hidewright.core.workshop.standard;

import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Length;
import org.hidewright.api.workshop.Tabulates;
import org.hidewright.api.workshop.WorkshopTable;

/** Punches for round holes, by the hole they cut. */
@Tabulates("punches")
final class Punches implements WorkshopTable<Punches.Row> {
    record Row(
            @Asked(example = "4 mm punch") String name,

            @Asked(unit = "mm", min = "0.3 mm", max = "60 mm", usual = "0.8-30 mm", example = "4 mm")
            Length diameter,

            @Asked Optional<String> number,

            @Asked Optional<String> note) {}
}
