package org.hidewright.documents;

import java.util.function.UnaryOperator;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.DimensionLine;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;

/** Figures of the neck strap, in millimetres. */
final class NeckStrapDrawings {
    private static final double LETTERS = 2.3;

    private NeckStrapDrawings() {}

    /** The whole strap seen from above. */
    static Drawing flat(UnaryOperator<String> words) {
        Drawing.Builder drawing = Drawing.builder()
                .rectangle(Role.CUT, Point.of(0, 0), 931, 18)
                .line(Role.FOLD, Point.of(33.7, 0), Point.of(33.7, 18))
                .line(Role.FOLD, Point.of(897.3, 0), Point.of(897.3, 18))
                .line(Role.DIRECTION, Point.of(500, 9), Point.of(800, 9))
                .hole(Point.of(12, 9), 5)
                .hole(Point.of(55.5, 9), 5);
        for (int i = 0; i < 12; i++) {
            drawing.hole(Point.of(120 + 25 * i, 9), 3.5);
        }
        return drawing.dimension(Point.of(0, 0), Point.of(931, 0), -14, "931 mm", LETTERS)
                .dimension(Point.of(0, 0), Point.of(120, 0), -6, "120", LETTERS)
                .dimension(Point.of(120, 0), Point.of(395, 0), -6, "11 × 25 = 275", LETTERS)
                .label(words.apply("fold"), Point.of(33.7, 18), Anchor.BOTTOM, LETTERS)
                .label(words.apply("backbone"), Point.of(650, 18), Anchor.BOTTOM, LETTERS)
                .build();
    }

    /** The turned-back end seen from the side, round a round loop of 3 mm. */
    static Drawing fold(UnaryOperator<String> words) {
        double inner = 1.5;
        double thick = 2.4;
        double outer = inner + thick;
        double run = 38;
        Point bar = Point.of(0, 0);
        Path leather = Path.from(Point.of(run, outer))
                .lineTo(0, outer)
                .arcAround(bar, Math.PI)
                .lineTo(run, -outer)
                .lineTo(run, -inner)
                .lineTo(0, -inner)
                .arcAround(bar, -Math.PI)
                .lineTo(run, inner)
                .closed(Role.SECTION);
        Path grain = Path.from(Point.of(run, outer))
                .lineTo(0, outer)
                .arcAround(bar, Math.PI)
                .lineTo(run, -outer)
                .open(Role.GRAIN);
        Path flesh = Path.from(Point.of(run, inner))
                .lineTo(0, inner)
                .arcAround(bar, Math.PI)
                .lineTo(run, -inner)
                .open(Role.FLESH);
        return Drawing.builder()
                .add(leather)
                .add(flesh)
                .add(grain)
                .add(Circle.of(Role.HARDWARE, bar, 3))
                .line(Role.MARK, Point.of(22, -7), Point.of(22, 7))
                .label(words.apply("screw"), Point.of(22, 7), Anchor.BOTTOM, LETTERS)
                .label(words.apply("loop, 3 mm"), Point.of(0, outer), Anchor.BOTTOM, LETTERS)
                .add(DimensionLine.of(Point.of(0, -outer), Point.of(22, -outer), -9, "22 mm", LETTERS))
                .add(DimensionLine.of(Point.of(run, -outer), Point.of(run, outer), -7, "7.8 mm", LETTERS))
                .build();
    }

    /** The left end in true size, to lay on the leather. */
    static Drawing end(UnaryOperator<String> words) {
        Path outline = Path.from(Point.of(130, 0))
                .lineTo(130, 18)
                .lineTo(9, 18)
                .arcAround(Point.of(9, 9), Math.PI)
                .closed(Role.CUT);
        return Drawing.builder()
                .add(outline)
                .hole(Point.of(12, 9), 5)
                .hole(Point.of(55.5, 9), 5)
                .hole(Point.of(120, 9), 3.5)
                .line(Role.FOLD, Point.of(33.7, 0), Point.of(33.7, 18))
                .line(Role.STITCH, Point.of(64, 3), Point.of(130, 3))
                .line(Role.STITCH, Point.of(64, 15), Point.of(130, 15))
                .line(Role.MARK, Point.of(64, 0), Point.of(64, 18))
                .add(Path.from(Point.of(85, 6))
                        .cubicTo(Point.of(95, 14), Point.of(100, 2), Point.of(110, 12))
                        .open(Role.MARK))
                .add(Path.rectangle(Role.INNER_CUT, Point.of(72, 7), 8, 4))
                .label(words.apply("fold"), Point.of(33.7, 18), Anchor.BOTTOM, LETTERS)
                .label(words.apply("skive from here to the end"), Point.of(64, 18), Anchor.BOTTOM_LEFT, LETTERS)
                .dimension(Point.of(12, 0), Point.of(55.5, 0), -8, "43.5 mm", LETTERS)
                .build();
    }
}
