package org.hidewright.core.workshop.standard;

import java.time.LocalDate;
import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Length;
import org.hidewright.api.workshop.Tabulates;
import org.hidewright.api.workshop.WorkshopTable;

/** What was measured in this workshop, with its day. */
@Tabulates("measured")
final class Measured implements WorkshopTable<Measured.Row> {
    record Row(
            @Asked(example = "Ring fold, 2.5 mm side") String name,

            @Asked(example = "2026-03-01") LocalDate day,

            @Asked(example = "natural-side") Optional<String> leather,

            @Asked(unit = "mm") Optional<Length> length,

            @Asked Optional<Double> ratio,

            @Asked(unit = "min", min = "0") Optional<Duration> time,

            @Asked Optional<String> note) {}
}
