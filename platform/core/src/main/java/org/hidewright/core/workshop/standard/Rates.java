package org.hidewright.core.workshop.standard;

import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Money;
import org.hidewright.api.workshop.Tabulates;
import org.hidewright.api.workshop.WorkshopTable;

/** What an hour costs, and shares added to a price. */
@Tabulates("rates")
final class Rates implements WorkshopTable<Rates.Row> {
    record Row(
            @Asked(example = "Bench hour") String name,

            @Asked(min = "0", example = "28 EUR") Optional<Money> perHour,

            @Asked(unit = "%", min = "0 %", max = "1000 %", example = "12 %")
            Optional<Double> share,

            @Asked Optional<String> note) {}
}
