package org.hidewright.fasteners;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.measure.Length;

/** One of a row of test holes, to be made in scrap of the same leather before the piece is cut. */
public record TestHole(
        @RowId String id,

        @Answered(unit = "mm", step = "0.1 mm", by = "hole-habit")
        Length hole) {
    private static final double STEP_MM = 0.2;
    private static final int ROW = 5;
    private static final double LETTER_MM = 3;
    /** A size with its unit and the room before the next, in letters of that height. */
    private static final double LABEL_MM = 18;

    private static final double LEAST_MM = 0.3;

    /** The five punches nearest to what is wanted, or five sizes around it where there are none to choose from. */
    static List<TestHole> around(ShankHole hole, List<Length> punches) {
        List<Length> sizes = punches.isEmpty()
                ? evenly(hole.wanted())
                : punches.stream()
                        .distinct()
                        .sorted(Comparator.comparingDouble(
                                punch -> Math.abs(punch.mm() - hole.wanted().mm())))
                        .limit(ROW)
                        .sorted()
                        .toList();
        List<TestHole> row = new ArrayList<>();
        sizes.forEach(size -> row.add(new TestHole("t" + (row.size() + 1), size)));
        return row;
    }

    private static List<Length> evenly(Length middle) {
        List<Length> sizes = new ArrayList<>();
        for (int i = -ROW / 2; i <= ROW / 2; i++) {
            double size = middle.mm() + i * STEP_MM;
            if (size >= LEAST_MM) {
                sizes.add(Length.ofMm(size));
            }
        }
        return sizes;
    }

    /** The row at true size, three widths apart or as far as their labels need, with each size below its hole. */
    static Drawing drawn(List<TestHole> row) {
        double widest = row.stream().mapToDouble(test -> test.hole().mm()).max().orElse(0);
        double apart = Math.max(LABEL_MM, 3 * widest);
        double below = -widest / 2 - LETTER_MM;
        Drawing.Builder drawing = Drawing.builder();
        for (int i = 0; i < row.size(); i++) {
            Point centre = Point.of(apart * (i + 0.5), 0);
            drawing.hole(centre, row.get(i).hole().mm());
            drawing.label(row.get(i).hole(), Point.of(centre.x(), below), Anchor.TOP, LETTER_MM);
        }
        return drawing.rectangle(
                        Role.NOTE,
                        Point.of(0, below - 2 * LETTER_MM),
                        apart * row.size(),
                        2 * (widest / 2 + LETTER_MM) + 2 * LETTER_MM)
                .build();
    }
}
