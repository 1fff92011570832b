package org.hidewright.stitching;

import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.measure.Length;

/**
 * A length of thread to cut, and the stitches it sews.
 *
 * @param stitches how many
 */
public record ThreadPiece(
        @RowId String id,
        @Answered(by = "sewing-habit") int stitches,

        @Answered(unit = "mm", step = "10 mm", round = Rounding.UP, by = "thread-needed")
        Length cut) {}
