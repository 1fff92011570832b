package org.hidewright.straps;

import java.util.List;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.geometry.PlacedPiece;

/**
 * The flat belt, grain up, its turned-back end to the left: outline with its tip, turn, slot and holes; what lies between
 * the slot and the row is left out.
 */
final class BeltFlatView {
    private static final String TURN = "belt-turn-and-slot";
    private static final String WORN = "belt-worn";
    static final List<String> PHRASES = List.of(TURN, WORN);

    private static final double LETTER_MM = 2.4;
    private static final double LEVEL_MM = 6;
    private static final double BEYOND_TURN_MM = 25;
    private static final double BEFORE_ROW_MM = 25;
    /** Share of the radii at which a cubic curve comes nearest a quarter of an ellipse, 4/3 · (√2 - 1). */
    private static final double QUARTER = 4.0 / 3 * (Math.sqrt(2) - 1);

    private final BeltLayout.Belt belt;
    private final List<BeltLayout.BeltHole> holes;
    private final PlacedPiece turn;
    private final double slotMm;
    private final double cutMm;
    private final double width;
    private final double shape;
    private final LongStrap view;

    BeltFlatView(BeltLayout.Belt belt, List<BeltLayout.BeltHole> holes, PlacedPiece turn, double slotMm, double cutMm) {
        this.belt = belt;
        this.holes = holes;
        this.turn = turn;
        this.slotMm = slotMm;
        this.cutMm = cutMm;
        this.width = belt.width().mm();
        this.shape = belt.tip() == BeltTip.SQUARE ? 0 : belt.tipLength().mm();
        double slotEnd = slotMm + belt.slotLength().mm() / 2;
        this.view = LongStrap.without(
                Math.max(turn.flatEnd(), slotEnd) + BEYOND_TURN_MM, Math.min(flat(0), cutMm - shape) - BEFORE_ROW_MM);
    }

    private double flat(int index) {
        return holes.get(index).fromTurnBackEnd().mm();
    }

    Drawing drawing() {
        Drawing.Builder drawing = Drawing.builder();
        outline(drawing);
        for (double fold : new double[] {turn.flatStart(), turn.flatEnd()}) {
            drawing.line(Role.FOLD, Point.of(fold, 0), Point.of(fold, width));
        }
        drawing.add(FlatView.slotOutline(
                Point.of(slotMm, width / 2),
                belt.slotLength().mm(),
                belt.slotWidth().mm()));
        drawing.label(Phrase.of(TURN), Point.of(slotMm, width), Anchor.BOTTOM, LETTER_MM);
        for (int i = 0; i < holes.size(); i++) {
            double x = view.x(flat(i));
            drawing.hole(Point.of(x, width / 2), belt.holeDiameter().mm());
            Point above = Point.of(x, width);
            if (holes.get(i).worn()) {
                drawing.label(Phrase.of(WORN, i + 1), above, Anchor.BOTTOM, LETTER_MM);
            } else {
                drawing.label(String.valueOf(i + 1), above, Anchor.BOTTOM, LETTER_MM);
            }
        }
        dimensions(drawing);
        return drawing.build();
    }

    /** Below the belt: the turn and the slot from the turned-back end, the holes from the tip, the whole outermost. */
    private void dimensions(Drawing.Builder drawing) {
        int last = holes.size() - 1;
        double end = view.x(cutMm);
        dimension(drawing, 0, turn.flatStart(), Length.ofMm(turn.flatStart()), 1);
        dimension(drawing, 0, slotMm, Length.ofMm(slotMm), 2);
        dimension(drawing, 0, turn.flatEnd(), Length.ofMm(turn.flatEnd()), 3);
        dimension(drawing, view.x(flat(last)), end, belt.tipBeyond(), 1);
        if (last > 0) {
            dimension(drawing, view.x(flat(last - 1)), view.x(flat(last)), belt.spacing(), 1);
            dimension(drawing, view.x(flat(0)), end, Length.ofMm(cutMm - flat(0)), 3);
        }
        holes.subList(1, Math.max(1, last)).stream()
                .filter(BeltLayout.BeltHole::worn)
                .forEach(
                        hole -> dimension(drawing, view.x(hole.fromTurnBackEnd().mm()), end, hole.fromTip(), 2));
        dimension(drawing, 0, end, Length.ofMm(cutMm), 4);
    }

    private static void dimension(Drawing.Builder drawing, double from, double to, Length value, int level) {
        if (to > from) {
            drawing.dimension(Point.of(from, 0), Point.of(to, 0), -level * LEVEL_MM, value, LETTER_MM);
        }
    }

    private void outline(Drawing.Builder drawing) {
        if (!view.broken()) {
            drawing.add(tip(Path.from(Point.of(0, width)).lineTo(0, 0)).closed(Role.CUT));
            return;
        }
        double left = view.x(view.from());
        double right = view.x(view.to());
        drawing.add(Path.from(Point.of(left, width))
                .lineTo(0, width)
                .lineTo(0, 0)
                .lineTo(left, 0)
                .open(Role.CUT));
        drawing.add(tip(Path.from(Point.of(right, 0))).lineTo(right, width).open(Role.CUT));
        for (double at : new double[] {left, right}) {
            Path.Builder wave = Path.from(Point.of(at, 0));
            LongStrap.wave(wave, Point.of(at, width));
            drawing.add(wave.open(Role.NOTE));
        }
    }

    /** Along the lower edge, round the tip, to where its shaping ends on the upper edge. */
    private Path.Builder tip(Path.Builder path) {
        double half = width / 2;
        double cut = view.x(cutMm);
        double start = cut - shape;
        path.lineTo(start, 0);
        Point end = Point.of(cut, half);
        Point above = Point.of(start, width);
        if (shape == 0) {
            return path.lineTo(above);
        }
        switch (belt.tip()) {
            case ROUND:
                path.cubicTo(Point.of(start + QUARTER * shape, 0), Point.of(cut, half * (1 - QUARTER)), end);
                path.cubicTo(Point.of(cut, half * (1 + QUARTER)), Point.of(start + QUARTER * shape, width), above);
                break;
            case ENGLISH:
                path.cubicTo(Point.of(start + shape * 0.45, 0), Point.of(cut - shape * 0.2, half * 0.6), end);
                path.cubicTo(Point.of(cut - shape * 0.2, half * 1.4), Point.of(start + shape * 0.45, width), above);
                break;
            default:
                path.lineTo(end).lineTo(above);
        }
        return path;
    }
}
