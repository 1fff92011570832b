package org.hidewright.straps;

import java.util.List;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.straps.geometry.PlacedPiece;

/** The flat belt, grain up, its turned-back end to the left: outline with its tip, turn, slot and holes. */
record BeltFlatView(
        BeltLayout.Belt belt, List<BeltLayout.BeltHole> holes, PlacedPiece turn, double slotMm, double cutMm) {
    private static final double LETTER_MM = 2.2;
    private static final double OFFSET_STEP_MM = 5;
    /** Share of the radii at which a cubic curve comes nearest a quarter of an ellipse, 4/3 · (√2 - 1). */
    private static final double QUARTER = 4.0 / 3 * (Math.sqrt(2) - 1);

    Drawing drawing() {
        double middle = belt.width().mm() / 2;
        Drawing.Builder drawing = Drawing.builder().add(outline());
        for (double fold : new double[] {turn.flatStart(), turn.flatEnd()}) {
            drawing.line(Role.FOLD, Point.of(fold, 0), Point.of(fold, 2 * middle));
        }
        drawing.add(FlatView.slotOutline(
                Point.of(slotMm, middle),
                belt.slotLength().mm(),
                belt.slotWidth().mm()));
        holes.forEach(hole -> drawing.hole(
                Point.of(hole.fromTurnBackEnd().mm(), middle),
                belt.holeDiameter().mm()));
        double first = holes.get(0).fromTurnBackEnd().mm();
        double last = holes.get(holes.size() - 1).fromTurnBackEnd().mm();
        double offset = -OFFSET_STEP_MM;
        for (double place : new double[] {slotMm, first, last, cutMm}) {
            drawing.dimension(Point.of(0, 0), Point.of(place, 0), offset, FlatView.millimetres(place), LETTER_MM);
            offset -= OFFSET_STEP_MM;
        }
        for (BeltLayout.BeltHole hole : holes) {
            if (hole.worn()) {
                drawing.label(
                        FlatView.millimetres(hole.size().mm()),
                        Point.of(hole.fromTurnBackEnd().mm(), 2 * middle),
                        Anchor.BOTTOM,
                        LETTER_MM);
            }
        }
        return drawing.build();
    }

    private Path outline() {
        double width = belt.width().mm();
        double half = width / 2;
        double shape = belt.tip() == BeltTip.SQUARE ? 0 : belt.tipLength().mm();
        double start = cutMm - shape;
        Path.Builder path = Path.from(Point.of(0, width)).lineTo(0, 0).lineTo(start, 0);
        Point end = Point.of(cutMm, half);
        Point above = Point.of(start, width);
        if (shape == 0) {
            return path.lineTo(above).closed(Role.CUT);
        }
        switch (belt.tip()) {
            case ROUND:
                path.cubicTo(Point.of(start + QUARTER * shape, 0), Point.of(cutMm, half * (1 - QUARTER)), end);
                path.cubicTo(Point.of(cutMm, half * (1 + QUARTER)), Point.of(start + QUARTER * shape, width), above);
                break;
            case ENGLISH:
                path.cubicTo(Point.of(start + shape * 0.45, 0), Point.of(cutMm - shape * 0.2, half * 0.6), end);
                path.cubicTo(Point.of(cutMm - shape * 0.2, half * 1.4), Point.of(start + shape * 0.45, width), above);
                break;
            default:
                path.lineTo(end).lineTo(above);
        }
        return path.closed(Role.CUT);
    }
}
