package net.example.fieldkit;

import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Length;
import org.hidewright.api.workshop.Tabulates;
import org.hidewright.api.workshop.WorkshopTable;
import org.osgi.service.component.annotations.Component;

/** Columns that the workshop’s hardware lacks for the slides of a strap. */
@Component(service = WorkshopTable.class)
@Tabulates("hardware")
public final class StrapSlides implements WorkshopTable<StrapSlides.Row> {
    /** What is measured of a slide beside its inside width; other hardware leaves it empty. */
    public record Row(
            @Asked(unit = "mm", min = "0.5 mm", max = "8 mm", example = "2.5 mm")
            Optional<Length> strapAtMost,

            @Asked(unit = "mm", min = "5 mm", max = "80 mm", example = "18 mm")
            Optional<Length> slideHeight) {}
}
