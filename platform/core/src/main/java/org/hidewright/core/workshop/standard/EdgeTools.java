package org.hidewright.core.workshop.standard;

import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Length;
import org.hidewright.api.workshop.Tabulates;
import org.hidewright.api.workshop.WorkshopTable;

/** Bevelers, creasers, groovers and slickers. */
@Tabulates("edge-tools")
final class EdgeTools implements WorkshopTable<EdgeTools.Row> {
    enum EdgeTool {
        BEVELER,
        CREASER,
        GROOVER,
        SLICKER,
        SKIVER
    }

    record Row(
            @Asked(example = "Beveler 1 mm") String name,

            @Asked(example = "beveler") EdgeTool kind,

            @Asked(unit = "mm", min = "0.1 mm", max = "20 mm", example = "1 mm")
            Optional<Length> width,

            @Asked Optional<String> note) {}
}
