package org.hidewright.layout;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import org.hidewright.layout.task.Laid;
import org.hidewright.layout.task.Outline;

/**
 * What is left of a sheet in one piece: the most there is beyond one straight cut, along or across the backbone, past all that is laid on
 * it. What lies between the pieces is left too, but good for little.
 */
final class InOnePiece {
    private InOnePiece() {}

    /** Its area in square millimetres, of a sheet on which a piece lies at least. */
    static double of(LayoutTask task, List<Laid> laid, int sheet) {
        return area(
                task.sheets().get(sheet),
                laid.stream()
                        .filter(piece -> piece.sheet() == sheet)
                        .map(piece -> task.pieces()
                                .get(piece.piece())
                                .exact()
                                .outline()
                                .moved(piece.angle(), piece.dx(), piece.dy()))
                        .toList());
    }

    private static double area(CutSheet sheet, List<Outline> laid) {
        Outline outline = sheet.frame().seen(Flattened.of(sheet.outline()));
        DoubleStream.Builder beyond = DoubleStream.builder();
        for (boolean upright : new boolean[] {true, false}) {
            for (double sign : new double[] {1, -1}) {
                double cut = laid.stream()
                        .flatMapToDouble(piece -> Arrays.stream(along(piece, upright, sign)))
                        .max()
                        .orElseThrow();
                double holes = sheet.exact().holes().stream()
                        .mapToDouble(hole -> beyond(hole, upright, sign, cut))
                        .sum();
                beyond.add(beyond(outline, upright, sign, cut) - holes);
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
