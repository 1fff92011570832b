package org.hidewright.stitching;

import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.measure.Length;

/**
 * One blow.
 *
 * @param prongs of the iron taken
 * @param first number of the hole its first prong stands in, counted from 1
 * @param last number of the hole of its last prong
 * @param off how far its prongs stand from their holes at most
 */
public record Strike(
        @RowId String id,
        @Answered(by = "strike-plan") int prongs,
        @Answered(by = "strike-plan") int first,
        @Answered(by = "strike-plan") int last,

        @Answered(unit = "mm", step = "0.01 mm", round = Rounding.UP, by = "strike-plan")
        Length off) {}
