package org.hidewright.fasteners;

import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.measure.Length;

/**
 * One hole to make.
 *
 * @param cut the punch to take, or the circle to draw for a machine; what is wanted where neither is known
 * @param fromEdge least distance from its centre to an edge
 * @param between least distance from its centre to the next
 */
public record HoleRow(
        @RowId String id,

        @Answered(unit = "mm", step = "0.1 mm", by = "hole-exact")
        Length wanted,

        @Answered(unit = "mm", step = "0.1 mm", round = Rounding.UP, by = "hole-least")
        Length atLeast,

        @Answered(unit = "mm", step = "0.1 mm", round = Rounding.DOWN, by = "hole-most")
        Length atMost,

        @Answered(unit = "mm", step = "0.01 mm", by = "hole-habit")
        Length cut,

        @Answered(unit = "mm", step = "0.5 mm", round = Rounding.UP, by = "hole-edge")
        Length fromEdge,

        @Answered(unit = "mm", step = "0.5 mm", round = Rounding.UP, by = "hole-pitch")
        Length between) {}
