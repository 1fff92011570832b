package org.hidewright.core.workshop.standard;

import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Size;
import org.hidewright.api.workshop.Tabulates;
import org.hidewright.api.workshop.WorkshopTable;

/** Machines that cut or mark, with what they take away. */
@Tabulates("machines")
final class Machines implements WorkshopTable<Machines.Row> {
    record Row(
            @Asked(example = "Small laser") String name,

            @Asked(unit = "mm", min = "0 mm", max = "3 mm", usual = "0.05-0.4 mm", example = "0.2 mm")
            Optional<Length> kerf,

            @Asked(unit = "mm", min = "20 mm", max = "5000 mm", example = "300 x 400 mm")
            Optional<Size> bed,

            @Asked(min = "0", example = "6 EUR") Optional<Money> perHour,

            @Asked Optional<String> note) {}
}
