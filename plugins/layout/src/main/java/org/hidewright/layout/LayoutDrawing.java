package org.hidewright.layout;

import java.util.Comparator;
import java.util.List;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Motion;
import org.hidewright.api.geometry.Region;
import org.hidewright.api.item.Hole;
import org.hidewright.layout.task.Laid;

/** The sheets that are cut from side by side, with the pieces on them. */
final class LayoutDrawing {
    private static final double LETTERS = 2.5;
    private static final double BETWEEN = 30;
    private static final double ARROW = 0.12;

    private final LayoutTask task;
    private final List<Laid> laid;
    private final Drawing.Builder drawing = Drawing.builder();

    LayoutDrawing(LayoutTask task, List<Laid> laid) {
        this.task = task;
        this.laid = laid;
    }

    Drawing of(int[] sheets) {
        double left = 0;
        for (int number : sheets) {
            CutSheet sheet = task.sheets().get(number);
            Box box = sheet.outline().bounds();
            Motion moved = Motion.shift(left - box.minX(), -box.minY());
            sheet(sheet, moved);
            List<Region> pieces = laid.stream()
                    .filter(piece -> piece.sheet() == number)
                    .map(piece -> piece(piece, sheet, moved))
                    .toList();
            sheet.flaws().forEach(flaw -> named(flaw, moved, pieces));
            left += box.maxX() - box.minX() + BETWEEN;
        }
        return drawing.build();
    }

    private void sheet(CutSheet sheet, Motion moved) {
        drawing.add(sheet.outline().moved(moved).path(Role.SHEET));
        for (DrawnFlaw drawn : sheet.flaws()) {
            drawing.add(drawn.outline().moved(moved).path(Role.MARK));
        }
        Box box = sheet.outline().moved(moved).bounds();
        drawing.label(sheet.id(), Point.of(box.minX(), box.minY()), Anchor.TOP_LEFT, LETTERS);
        double length = ARROW * Math.min(box.maxX() - box.minX(), box.maxY() - box.minY());
        double direction = sheet.frame() == Frame.QUARTER_TURNED ? Math.PI / 2 : 0;
        Point middle = Point.of(box.maxX() - length, box.minY() - 2 * LETTERS);
        drawing.add(Path.line(
                Role.DIRECTION, middle.towards(direction, -length / 2), middle.towards(direction, length / 2)));
    }

    /** The name of a region, in its roomiest place beside the pieces. */
    private void named(DrawnFlaw drawn, Motion moved, List<Region> pieces) {
        if (drawn.flaw().damage() != Damage.REGION) {
            return;
        }
        List<Region> free = List.of(Region.of(drawn.outline().moved(moved)));
        for (Region piece : pieces) {
            free = free.stream().flatMap(part -> part.minus(piece).stream()).toList();
        }
        free.stream()
                .max(Comparator.comparingDouble(Region::area))
                .ifPresent(part -> drawing.label(drawn.flaw().name(), part.roomiest(), Anchor.CENTRE, LETTERS));
    }

    /** What it covers. */
    private Region piece(Laid seen, CutSheet sheet, Motion moved) {
        CutPiece piece = task.pieces().get(seen.piece());
        Laid drawn = sheet.frame().drawn(seen);
        Motion onSheet = Motion.turn(Point.of(0, 0), drawn.angle())
                .then(Motion.shift(drawn.dx(), drawn.dy()))
                .then(moved);
        Curve outline = piece.outline().moved(onSheet);
        drawing.add(outline.path(Role.CUT));
        Motion toPlace = piece.toMiddle().then(onSheet);
        for (Path cutOut : piece.part().cutOuts()) {
            drawing.add(Curve.of(cutOut).moved(toPlace).path(Role.INNER_CUT));
        }
        for (Hole hole : piece.part().holes()) {
            drawing.add(Circle.hole(toPlace.apply(hole.centre()), hole.diameter()));
        }
        Region covered = Region.of(outline);
        drawing.label(piece.id(), covered.roomiest(), Anchor.CENTRE, LETTERS);
        return covered;
    }
}
