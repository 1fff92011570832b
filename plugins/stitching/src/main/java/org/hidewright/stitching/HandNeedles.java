package org.hidewright.stitching;

import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Length;
import org.hidewright.api.workshop.Tabulates;
import org.hidewright.api.workshop.WorkshopTable;
import org.osgi.service.component.annotations.Component;

/** Blunt needles for sewing by hand, by the width of their eyes. */
@Tabulates("hand-needles")
@Component(service = WorkshopTable.class)
public final class HandNeedles implements WorkshopTable<HandNeedles.Row> {
    /** One row. */
    public record Row(
            @Asked(example = "Harness needle 2") String name,

            @Asked(unit = "mm", min = "0.2 mm", max = "5 mm", example = "1 mm")
            Length eye,

            @Asked Optional<String> note) {}
}
