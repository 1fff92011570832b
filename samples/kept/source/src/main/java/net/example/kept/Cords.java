package net.example.kept;

import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Density;
import org.hidewright.api.measure.Length;
import org.hidewright.api.workshop.Tabulates;
import org.hidewright.api.workshop.WorkshopTable;
import org.osgi.service.component.annotations.Component;

/** A table of the workshop: the cords that lie on the shelf. */
@Component(service = WorkshopTable.class)
@Tabulates("kept-cords")
public final class Cords implements WorkshopTable<Cords.Row> {
    /** A cord. */
    public record Row(
            @Asked(example = "Waxed linen") String name,
            @Asked(unit = "mm", min = "0.5 mm", max = "12 mm", example = "2 mm") Length diameter,
            @Asked(unit = "g/cm3", min = "0.1 g/cm3", max = "3 g/cm3", example = "1.4 g/cm3") Density density,
            @Asked Optional<String> colour) {}
}
