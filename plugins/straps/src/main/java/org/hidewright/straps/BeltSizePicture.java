package org.hidewright.straps;

import java.util.List;
import java.util.Locale;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.straps.geometry.FoldedStrap;

/**
 * From where to where the size is measured: the buckle end from the side, the belt to the right of the bar and its grain
 * up, what lies between the turn-back and the worn hole left out.
 */
final class BeltSizePicture {
    private static final String WORN = "belt-to-worn-hole";
    private static final String NO_HOLE = "belt-to-no-hole";
    private static final String TURN_BACK = "belt-turn-back";
    private static final String KEEPER = "belt-keeper";
    private static final String SIZE = "belt-size-from-";
    static final List<String> PHRASES =
            List.of(SIZE + "fold", SIZE + "frame-end", SIZE + "bar", WORN, NO_HOLE, TURN_BACK, KEEPER);

    private static final double LETTER_MM = 2.4;
    private static final double SIZE_LETTER_MM = 3;
    private static final double BEYOND_TURN_BACK_MM = 15;
    private static final double BESIDE_MM = 2;
    private static final double BREAK_BEYOND_MM = 3;
    private static final double SIZE_OFFSET_MM = 9;
    private static final double TURN_BACK_OFFSET_MM = 7;
    private static final double PRONG_MM = 1.6;

    private final BeltLayout.Belt belt;
    private final BeltGeometry geometry;
    private final BeltRow row;
    private final double bar;
    private final double top;
    private final double inside;
    private final double worn;
    private final double tip;
    private final double shownTo;
    private final LongStrap view;

    BeltSizePicture(BeltLayout.Belt belt, BeltGeometry geometry, BeltRow row) {
        this.belt = belt;
        this.geometry = geometry;
        this.row = row;
        this.bar = belt.barDiameter().mm();
        this.inside = geometry.parallel() ? bar / 2 : 0;
        this.top = inside + geometry.legAboveMm();
        this.worn = geometry.fromBarMm(row.sizeMm());
        this.tip = geometry.fromBarMm(row.largestMm()) + belt.tipBeyond().mm();
        double around = 1.5 * row.spacingMm();
        this.shownTo = Math.min(worn + around, tip);
        this.view = LongStrap.without(belt.turnBackLength().mm() + BEYOND_TURN_BACK_MM, Math.min(worn, tip) - around);
    }

    Drawing drawing() {
        Drawing.Builder drawing = Drawing.builder();
        frame(drawing);
        leather(drawing);
        drawing.add(Circle.of(Role.HARDWARE, Point.of(0, 0), bar));
        prong(drawing);
        belt.keeperFromBar().ifPresent(middle -> keeper(drawing, middle.mm()));
        holes(drawing);
        size(drawing);
        turnBack(drawing);
        return drawing.build();
    }

    /** The frame’s side and its outer end. */
    private void frame(Drawing.Builder drawing) {
        double outer = bar / 2 - belt.frameLength().mm();
        if (outer < -bar / 2) {
            drawing.rectangle(Role.HARDWARE, Point.of(outer, -bar / 4), -outer, bar / 2);
            drawing.add(Circle.of(Role.HARDWARE, Point.of(outer, 0), bar));
        }
    }

    /** Hinged on the bar, through the slot, over the outer end of the frame. */
    private void prong(Drawing.Builder drawing) {
        double end = -belt.frameLength().mm();
        if (end < -bar) {
            drawing.add(Path.from(Point.of(-bar / 4, 0))
                    .lineTo(end, bar / 2)
                    .lineTo(end, bar / 2 + PRONG_MM)
                    .lineTo(0, bar / 2)
                    .closed(Role.HARDWARE));
        }
    }

    private void leather(Drawing.Builder drawing) {
        double firstEnd = view.broken() ? view.from() : shownTo;
        FoldedStrap buckleEnd =
                geometry.pictured(Math.max(firstEnd, belt.contact().mm() + 1));
        new SideOfLeather(buckleEnd, geometry.skives(buckleEnd)).draw(drawing);
        if (view.broken()) {
            double start = view.x(view.to());
            double end = view.x(shownTo);
            drawing.rectangle(Role.SECTION, Point.of(start, inside), end - start, top - inside);
            drawing.line(Role.GRAIN, Point.of(start, top), Point.of(end, top));
            drawing.line(Role.FLESH, Point.of(start, inside), Point.of(end, inside));
            breakAt(drawing, view.x(view.from()));
            breakAt(drawing, start);
        }
        if (shownTo < tip) {
            breakAt(drawing, view.x(shownTo));
        }
    }

    /** The wavy line along which the belt is broken off, a little longer than the leather is thick. */
    private void breakAt(Drawing.Builder drawing, double x) {
        Path.Builder wave = Path.from(Point.of(x, inside - BREAK_BEYOND_MM));
        LongStrap.wave(wave, Point.of(x, top + BREAK_BEYOND_MM));
        drawing.add(wave.open(Role.NOTE));
    }

    private void keeper(Drawing.Builder drawing, double middle) {
        double width = belt.keeperWidth().mm();
        if (view.broken() && middle + width / 2 > view.from()) {
            return;
        }
        double height = top + 1;
        drawing.rectangle(Role.MARK, Point.of(middle - width / 2, -height), width, 2 * height);
        drawing.label(Phrase.of(KEEPER), Point.of(middle, height), Anchor.BOTTOM, LETTER_MM);
    }

    private void holes(Drawing.Builder drawing) {
        for (int i = 1; i <= row.count(); i++) {
            double at = geometry.fromBarMm(row.sizeMm(i));
            if (at < shownTo && view.shows(at)) {
                for (double side : new double[] {-0.5, 0.5}) {
                    double x = view.x(at) + side * belt.holeDiameter().mm();
                    drawing.line(Role.INNER_CUT, Point.of(x, inside), Point.of(x, top));
                }
            }
        }
        double x = view.x(worn);
        Point foot = Point.of(x, inside - 2 * BESIDE_MM);
        drawing.line(Role.MARK, foot, Point.of(x, top + BESIDE_MM));
        Phrase label = row.holdsWorn() ? Phrase.of(WORN, row.worn()) : Phrase.of(NO_HOLE, row.count());
        drawing.label(label, foot, Anchor.TOP, LETTER_MM);
    }

    private double outside() {
        return Math.max(geometry.outsideOfFoldMm(), top);
    }

    private void size(Drawing.Builder drawing) {
        double datum = -geometry.behindBarMm();
        double above = outside() + BESIDE_MM;
        Point foot = Point.of(datum, -outside() - BESIDE_MM);
        drawing.line(Role.MARK, foot, Point.of(datum, above));
        String from = SIZE + belt.datum().name().toLowerCase(Locale.ROOT).replace('_', '-');
        drawing.dimension(
                Point.of(datum, above),
                Point.of(view.x(worn), above),
                SIZE_OFFSET_MM,
                Phrase.of(from, belt.size()),
                SIZE_LETTER_MM);
    }

    private void turnBack(Drawing.Builder drawing) {
        double length = belt.turnBackLength().mm();
        double under = -outside();
        drawing.dimension(
                Point.of(0, under),
                Point.of(length, under),
                -TURN_BACK_OFFSET_MM,
                Phrase.of(TURN_BACK, belt.turnBackLength()),
                LETTER_MM);
    }
}
