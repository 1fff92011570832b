package org.hidewright.stitching;

import java.util.List;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.measure.Length;

/**
 * A needle of a sewing machine.
 *
 * @param id its metric number, a hundred times its blade in millimetres
 * @param number the older number that is sold beside it
 */
public record MachineNeedle(
        @RowId String id,

        @Answered(unit = "mm", step = "0.01 mm", by = "needle-sizes")
        Length blade,

        @Answered String number,

        @Answered(unit = "mm", step = "0.01 mm", by = "needle-sizes")
        Length thickestThread) {
    /** The rule of thumb of a dictionary of sewing needles. */
    static final double THREAD_SHARE = 0.4;

    private static final int SHOWN = 3;

    private record Made(int metric, String number) {}

    /** Numbers sold in pairs; pages differ on 150, and 95 is seldom sold. */
    private static final List<Made> TABLE = List.of(
            new Made(60, "8"),
            new Made(65, "9"),
            new Made(70, "10"),
            new Made(75, "11"),
            new Made(80, "12"),
            new Made(85, "13"),
            new Made(90, "14"),
            new Made(95, "15"),
            new Made(100, "16"),
            new Made(105, "17"),
            new Made(110, "18"),
            new Made(120, "19"),
            new Made(125, "20"),
            new Made(130, "21"),
            new Made(140, "22"),
            new Made(150, "22, 23"),
            new Made(160, "23"),
            new Made(180, "24"),
            new Made(200, "25"),
            new Made(230, "26"),
            new Made(250, "27"));

    /** The thinnest needles that take a thread, at most three. */
    static List<MachineNeedle> taking(double threadMm) {
        return TABLE.stream()
                .filter(made -> THREAD_SHARE * made.metric() / 100 >= threadMm - 1e-9)
                .limit(SHOWN)
                .map(made -> new MachineNeedle(
                        Integer.toString(made.metric()),
                        Length.ofMm(made.metric() / 100.0),
                        made.number(),
                        Length.ofMm(THREAD_SHARE * made.metric() / 100)))
                .toList();
    }
}
