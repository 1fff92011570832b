package org.hidewright.layout.engine;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import org.hidewright.layout.task.Outline;
import org.hidewright.layout.task.Sheet;

/**
 * What is left of a sheet in one piece: the most there is beyond one straight cut, along or across the backbone, past all that is laid on
 * it. What lies between the pieces is left too, but good for little.
 */
public final class InOnePiece {
    private InOnePiece() {}

    /**
     * Its area; holes of the sheet are no leather.
     *
     * @param laid the outlines that lie on the sheet, one at least
     */
    public static double area(Sheet sheet, List<Outline> laid) {
        DoubleStream.Builder beyond = DoubleStream.builder();
        for (boolean upright : new boolean[] {true, false}) {
            for (double sign : new double[] {1, -1}) {
                double cut = laid.stream()
                        .flatMapToDouble(piece -> Arrays.stream(along(piece, upright, sign)))
                        .max()
                        .orElseThrow();
                double holes = sheet.holes().stream()
                        .mapToDouble(hole -> beyond(hole, upright, sign, cut))
                        .sum();
                beyond.add(beyond(sheet.outline(), upright, sign, cut) - holes);
            }
        }
        return beyond.build().max().orElseThrow();
    }

    private static double[] along(Outline outline, boolean upright, double sign) {
        double[] along = upright ? outline.xs() : outline.ys();
        return Arrays.stream(along).map(at -> sign * at).toArray();
    }

    /** The area beyond a cut: the integral of how far the outline reaches over it. */
    private static double beyond(Outline outline, boolean upright, double sign, double cut) {
        double[] along = along(outline, upright, sign);
        double[] across = upright ? outline.ys() : outline.xs();
        double area = 0;
        for (int here = 0, before = along.length - 1; here < along.length; before = here++) {
            double one = along[before] - cut;
            double other = along[here] - cut;
            double run = across[here] - across[before];
            double most = Math.max(one, other);
            double least = Math.min(one, other);
            if (least >= 0) {
                area += (one + other) / 2 * run;
            } else if (most > 0) {
                area += most / 2 * run * most / (most - least);
            }
        }
        return Math.abs(area);
    }
}
