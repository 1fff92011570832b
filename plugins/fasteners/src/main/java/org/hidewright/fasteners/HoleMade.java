package org.hidewright.fasteners;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Length;

/** How a hole is made. */
public sealed interface HoleMade permits HoleMade.Punched, HoleMade.MachineCut {
    /** With a hollow punch, one of those that are there. */
    record Punched(
            @Asked(unit = "mm", min = "0.3 mm", max = "60 mm", usual = "0.8-30 mm", example = "2 mm; 3 mm; 4 mm")
            Optional<List<Length>> punches)
            implements HoleMade {}

    /** By a machine that takes a kerf away: it follows a line half of it inside the hole. */
    record MachineCut(
            @Asked(unit = "mm", min = "0 mm", max = "3 mm", usual = "0.05-0.4 mm", example = "0.2 mm")
            Length kerf) implements HoleMade {}
}
