package org.hidewright.core.workshop.standard;

import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Money;
import org.hidewright.api.workshop.Tabulates;
import org.hidewright.api.workshop.WorkshopTable;

/** Threads by diameter and length. */
@Tabulates("threads")
final class Threads implements WorkshopTable<Threads.Row> {
    record Row(
            @Asked(example = "Waxed linen 0.6") String name,

            @Asked(unit = "mm", min = "0.1 mm", max = "4 mm", usual = "0.3-1.5 mm", example = "0.6 mm")
            Length diameter,

            @Asked(unit = "m", min = "1 m", max = "5000 m", example = "25 m")
            Optional<Length> length,

            @Asked(min = "0", example = "12.50 EUR") Optional<Money> price,

            @Asked Optional<String> colour,

            @Asked Optional<String> note) {}
}
