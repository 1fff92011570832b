package org.hidewright.stitching;

import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.measure.Length;

/** An edge under the leather that the line crosses, as where a pocket ends: the stack steps there. */
public record BuriedEdge(
        @RowId String id,

        @Asked(unit = "mm", min = "0 mm", max = "20 m", example = "42 mm")
        Length at,

        @Asked(preset = "after") Thinner thinner) {
    /** On which side of it, going along the line, the stack is thinner. */
    public enum Thinner {
        BEFORE,
        AFTER
    }
}
