package org.hidewright.core.workshop.standard;

import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Length;
import org.hidewright.api.workshop.Tabulates;
import org.hidewright.api.workshop.WorkshopTable;

/** Punches for slots, as for the prong of a buckle. */
@Tabulates("slot-punches")
final class SlotPunches implements WorkshopTable<SlotPunches.Row> {
    record Row(
            @Asked(example = "Prong slot 4 x 25") String name,

            @Asked(unit = "mm", min = "1 mm", max = "100 mm", example = "25 mm")
            Length length,

            @Asked(unit = "mm", min = "0.5 mm", max = "40 mm", example = "4 mm")
            Length width,

            @Asked Optional<String> note) {}
}
