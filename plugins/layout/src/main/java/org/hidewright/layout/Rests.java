package org.hidewright.layout;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Motion;
import org.hidewright.api.measure.Length;
import org.hidewright.layout.CuttingLayout.Hide;
import org.hidewright.layout.CuttingLayout.Panel;
import org.hidewright.layout.CuttingLayout.Rest;
import org.hidewright.layout.CuttingLayout.SheetOfLeather;
import org.hidewright.layout.task.Laid;
import org.hidewright.layout.task.Outline;

/** What is left of the sheets once the pieces are cut: the same leather with holes where they lay, as it is typed into a workshop. */
final class Rests {
    private static final int DECIMALS = 2;
    private static final String HOLE = Damage.HOLE.name().toLowerCase(Locale.ROOT) + " ";

    private final LayoutTask task;
    private final List<Laid> laid;

    Rests(LayoutTask task, List<Laid> laid) {
        this.task = task;
        this.laid = laid;
    }

    /** @param used numbers of the sheets that are cut from */
    List<Rest> of(int[] used) {
        return IntStream.of(used).mapToObj(this::rest).toList();
    }

    private Rest rest(int number) {
        CutSheet sheet = task.sheets().get(number);
        List<String> flaws = new ArrayList<>();
        String outline = "";
        double rim = 0;
        Backbone backbone = Backbone.UP_THE_SHEET;
        for (SheetOfLeather row : task.leather()) {
            if (row.id().equals(sheet.kind()) && row instanceof Hide hide) {
                outline = hide.outline();
                rim = hide.rim().mm();
                backbone = hide.backbone();
                flaws.addAll(hide.flaws().orElse(List.of()));
            } else if (row.id().equals(sheet.kind()) && row instanceof Panel panel) {
                outline = corners(sheet.outline());
                backbone = panel.backbone();
            }
        }
        for (Laid piece : laid) {
            if (piece.sheet() == number) {
                flaws.add(HOLE + corners(onSheet(piece, sheet)));
            }
        }
        // all else was paid for with the pieces
        double share = number == task.last(laid) ? task.inOnePiece(laid, number) / sheet.area() : 0;
        return new Rest(
                sheet.id(),
                outline,
                Length.ofMm(rim),
                backbone,
                flaws,
                sheet.price().map(price -> price.times(share).rounded()));
    }

    private Curve onSheet(Laid seen, CutSheet sheet) {
        Laid drawn = sheet.frame().drawn(seen);
        return task.pieces()
                .get(seen.piece())
                .outline()
                .moved(Motion.turn(Point.of(0, 0), drawn.angle()).then(Motion.shift(drawn.dx(), drawn.dy())));
    }

    private static String corners(Curve closed) {
        Outline outline = Flattened.of(closed);
        return IntStream.range(0, outline.corners())
                .mapToObj(corner -> number(outline.x(corner)) + "," + number(outline.y(corner)))
                .collect(Collectors.joining(" "));
    }

    private static String number(double mm) {
        BigDecimal rounded = BigDecimal.valueOf(mm).setScale(DECIMALS, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
