package org.hidewright.fasteners;

import java.util.Optional;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.measure.Length;

/** One of the lengths that can be had, and for which stacks it is. */
public record PostRow(
        @RowId String id,

        @Answered(unit = "mm", step = "0.1 mm", by = "post-habit")
        Length post,

        @Answered(unit = "mm", step = "0.1 mm", round = Rounding.UP, by = "post-most")
        Optional<Length> stackFrom,

        @Answered(unit = "mm", step = "0.1 mm", round = Rounding.DOWN, by = "post-least")
        Length stackTo,

        @Answered boolean suits) {}
