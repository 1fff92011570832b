package org.hidewright.fasteners;

import java.util.Map.Entry;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.hidewright.api.measure.Length;

/** How much wider than a shank its hole is, by the clearance holes of ISO 273 for M1.6 to M10. */
final class ClearanceHoles {
    private static final NavigableMap<Double, double[]> FINE_AND_MEDIUM = new TreeMap<>();

    static {
        row(1.6, 1.7, 1.8);
        row(2, 2.2, 2.4);
        row(2.5, 2.7, 2.9);
        row(3, 3.2, 3.4);
        row(3.5, 3.7, 3.9);
        row(4, 4.3, 4.5);
        row(5, 5.3, 5.5);
        row(6, 6.4, 6.6);
        row(8, 8.4, 9);
        row(10, 10.5, 11);
    }

    private ClearanceHoles() {}

    private static void row(double shank, double fine, double medium) {
        FINE_AND_MEDIUM.put(shank, new double[] {fine - shank, medium - shank});
    }

    static Length fine(Length shank) {
        return Length.ofMm(shank.mm() + clearance(shank, 0));
    }

    static Length medium(Length shank) {
        return Length.ofMm(shank.mm() + clearance(shank, 1));
    }

    /** Of the nearest thread that is no thicker, so that a hole is never made too wide; below and above, of the ends. */
    private static double clearance(Length shank, int series) {
        Entry<Double, double[]> row = FINE_AND_MEDIUM.floorEntry(shank.mm() + 1e-9);
        return (row == null ? FINE_AND_MEDIUM.firstEntry() : row).getValue()[series];
    }
}
