package org.hidewright.layout;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Money;
import org.hidewright.api.workshop.Tabulates;
import org.hidewright.api.workshop.WorkshopTable;
import org.osgi.service.component.annotations.Component;

/** The hides of a workshop and what is left of them, each with its outline and flaws. */
@Tabulates("hides")
@Component(service = WorkshopTable.class)
public final class Hides implements WorkshopTable<Hides.Row> {
    /** A hide, a side or what is left of one; columns are called as what a layout asks of one. */
    public record Row(
            @Asked(example = "Natural side, spring") String name,

            @Asked(example = "0,0 1200,0 1300,700 600,900 -100,600")
            String outline,

            @Asked(unit = "mm", min = "0 mm", max = "500 mm", usual = "0-50 mm", example = "10 mm")
            Optional<Length> rim,

            @Asked(example = "up-the-sheet") Optional<Backbone> backbone,

            @Asked(example = "marked 300,300 340,300 340,420")
            Optional<List<String>> flaws,

            @Asked(min = "0", example = "165 EUR") Optional<Money> price,
            @Asked Optional<String> note) {}
}
