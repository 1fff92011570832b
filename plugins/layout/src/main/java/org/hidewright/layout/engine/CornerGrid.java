package org.hidewright.layout.engine;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.hidewright.layout.task.Laid;
import org.hidewright.layout.task.Piece;
import org.hidewright.layout.task.Sheet;

/**
 * The grid on which all corners of pieces and panels lie, where there is one: then pieces that turn by quarters can touch without a hair
 * between them, and fill a panel edge to edge, since their places are whole numbers of its steps and so exact. With hides, or poorer
 * places on a panel, nothing is gained by that.
 *
 * @param step the distance of its lines, in the unit of the outlines; nought where there is no such grid
 * @param widest the longer side of the largest sheet
 */
record CornerGrid(double step, double widest) {
    /** For pieces that lie anywhere. */
    static final CornerGrid NONE = new CornerGrid(0, 0);

    /** A finer grid than so, as a share of the sheet, is no help: a search does not tell its places apart. */
    private static final double FINEST = 2e-4;

    /** Of the longer side of a sheet; far more than what counts as touching while parts are searched a place ({@link Meeting}). */
    private static final double HAIR = 1e-6;

    /** Fractions of one that are tried: halves, quarters and so on are exact, tenths are not. */
    private static final int FRACTIONS = 1 << 10;

    /** Beyond such numbers sums are no longer exact. */
    private static final double LARGEST = 1L << 30;

    static CornerGrid of(List<Piece> pieces, List<Sheet> sheets) {
        boolean square = pieces.stream().allMatch(piece -> piece.turning().square());
        boolean panels = sheets.stream()
                .allMatch(sheet ->
                        sheet.zones().isEmpty() && Rectangle.of(sheet.outline()).isPresent());
        if (!square || !panels) {
            return NONE;
        }
        long[] common = {0};
        boolean whole = Stream.concat(
                        pieces.stream().map(Piece::outline),
                        sheets.stream()
                                .distinct()
                                .flatMap(sheet -> Stream.concat(Stream.of(sheet.outline()), sheet.holes().stream())))
                .distinct()
                .flatMapToDouble(
                        outline -> DoubleStream.concat(DoubleStream.of(outline.xs()), DoubleStream.of(outline.ys())))
                .allMatch(number -> {
                    double times = number * FRACTIONS;
                    common[0] = common(common[0], (long) Math.abs(times));
                    return Math.abs(number) < LARGEST && times == Math.rint(times);
                });
        double widest = sheets.stream()
                .map(Sheet::outline)
                .mapToDouble(outline -> Math.max(extent(outline.xs()), extent(outline.ys())))
                .max()
                .orElse(0);
        double step = (double) common[0] / FRACTIONS;
        return whole && step >= FINEST * widest ? new CornerGrid(step, widest) : NONE;
    }

    private static double extent(double[] along) {
        return DoubleStream.of(along).max().getAsDouble()
                - DoubleStream.of(along).min().getAsDouble();
    }

    private static long common(long one, long other) {
        return other == 0 ? one : common(other, one % other);
    }

    boolean exists() {
        return step > 0;
    }

    /**
     * A length by which parts on the grid may be smaller without hiding an overlap: a tenth of the least distance of a corner from an edge
     * that it does not touch, which is the step's square divided by the length of the edge, and no more than needed. Nought where there is no
     * grid.
     */
    double hair() {
        return exists() ? Math.min(0.1 * step * step / widest, HAIR * widest) : 0;
    }

    /** The number on the grid that is nearest. */
    double nearest(double number) {
        return Math.rint(number / step) * step;
    }

    /** The piece where the grid has a place for it nearest to where it lies. */
    Laid nearest(Laid laid) {
        return new Laid(laid.piece(), laid.sheet(), laid.angle(), nearest(laid.dx()), nearest(laid.dy()));
    }
}
