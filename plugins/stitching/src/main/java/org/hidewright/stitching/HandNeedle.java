package org.hidewright.stitching;

import java.util.Comparator;
import java.util.List;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.measure.Length;

/**
 * A blunt needle for sewing by hand that is there; the workshop’s table of hand needles can be taken for them.
 *
 * <p>Numbers of hand needles run the other way than those of machine needles and differ between makers, so that no list of
 * numbers can stand for what is measured.
 */
public record HandNeedle(
        @RowId String id,

        @Asked(unit = "mm", min = "0.2 mm", max = "5 mm", usual = "0.5-1.8 mm", example = "1 mm")
        Length eye) {

    /** The eye is about two fifths wider than the thread that goes through it twice over (common practice). */
    static final double EYE = 1.4;

    /**
     * One that takes the thread.
     *
     * @param thickestThread that its eye takes
     */
    public record Taking(
            @RowId String id,

            @Answered(unit = "mm", step = "0.1 mm", by = "needle-eyes")
            Length eye,

            @Answered(unit = "mm", step = "0.01 mm", round = Rounding.DOWN, by = "needle-eyes")
            Length thickestThread) {}

    Length thickestThread() {
        return eye.times(1 / EYE);
    }

    /** Those that take a thread, the narrowest eye first: a wider one tears at the holes for nothing. */
    static List<Taking> taking(List<HandNeedle> needles, double threadMm) {
        return needles.stream()
                .filter(needle -> needle.thickestThread().mm() >= threadMm - 1e-9)
                .sorted(Comparator.comparingDouble(needle -> needle.eye().mm()))
                .map(needle -> new Taking(needle.id(), needle.eye(), needle.thickestThread()))
                .toList();
    }
}
