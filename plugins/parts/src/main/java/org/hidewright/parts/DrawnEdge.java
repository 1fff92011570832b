package org.hidewright.parts;

import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.measure.Length;

/** A stretch of a part’s outline that is finished in one way. */
public record DrawnEdge(
        @RowId String id,
        @Asked(example = "mouth") String kind,

        @Asked(unit = "mm", min = "0 mm", max = "50 m", preset = "0 mm")
        Length from,

        @Asked(unit = "mm", min = "0 mm", max = "50 m", example = "180 mm")
        Optional<Length> to) {}
