package org.hidewright.parts;

import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.measure.Length;

/** A straight line a part is folded along. */
public record DrawnFold(
        @RowId String id,

        @Asked(example = "{\"from-x\":\"0 mm\",\"from-y\":\"60 mm\",\"to-x\":\"180 mm\",\"to-y\":\"60 mm\"}")
        Along.Between line,

        @Asked(unit = "mm", min = "0 mm", max = "500 mm", usual = "0-20 mm", preset = "0 mm")
        Length insideRadius,

        @Asked(preset = "grain") Outside outside) {

    /** The face that is seen. */
    public enum Outside {
        GRAIN,
        FLESH
    }
}
