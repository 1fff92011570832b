package org.hidewright.window.kit;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.workshop.Tabulates;
import org.hidewright.api.workshop.WorkshopTable;

/** A table that outlines go into which were drawn, by whatever name. */
@Tabulates("skins")
public final class Skins implements WorkshopTable<Skins.Row> {
    /** A skin. */
    public record Row(
            @Asked(example = "Goat") String name,
            @Asked(example = "0,0 900,0 900,700") String outline,
            @Asked Optional<List<String>> flaws) {}
}
