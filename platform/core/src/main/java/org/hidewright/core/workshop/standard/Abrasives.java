package org.hidewright.core.workshop.standard;

import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.workshop.Tabulates;
import org.hidewright.api.workshop.WorkshopTable;

/** Sandpaper and blocks, by grit. */
@Tabulates("abrasives")
final class Abrasives implements WorkshopTable<Abrasives.Row> {
    enum GritSystem {
        P,
        CAMI,
        ANSI,
        MICRON
    }

    record Row(
            @Asked(example = "P400 paper") String name,

            @Asked(min = "12", max = "10000", usual = "80-3000", example = "400")
            int grit,

            @Asked(preset = "p") GritSystem system,

            @Asked Optional<String> note) {}
}
