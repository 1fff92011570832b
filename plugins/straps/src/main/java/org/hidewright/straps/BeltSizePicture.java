package org.hidewright.straps;

import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.straps.geometry.FoldedStrap;
import org.hidewright.straps.geometry.Pose;
import org.hidewright.straps.geometry.Skives;

/**
 * From where the size is measured: the buckle end from the side at true size, the belt shortened before the worn hole.
 */
record BeltSizePicture(BeltLayout.Belt belt, BeltGeometry geometry) {
    private static final double LETTER_MM = 2.5;
    private static final double SHOWN_BEYOND_TURN_BACK_MM = 45;
    private static final double BEYOND_HOLE_MM = 18;
    private static final double FRAME_MM = 3;

    Drawing drawing() {
        double reach = belt.turnBackLength().mm() + SHOWN_BEYOND_TURN_BACK_MM + BEYOND_HOLE_MM;
        double hole = reach - BEYOND_HOLE_MM;
        FoldedStrap strap = geometry.folded(reach);
        Drawing.Builder drawing = Drawing.builder();
        new SideOfLeather(strap, new Skives(strap, belt.thickness().mm(), piece -> 0)).draw(drawing);
        Pose bar = geometry.turnBack()
                .centre(strap.piece(BeltGeometry.BUCKLE).orElseThrow().start());
        // The strap runs back from the bar to the left, so behind the bar is to the right.
        drawing.add(Circle.of(
                Role.HARDWARE, Point.of(bar.x(), bar.y()), belt.barDiameter().mm()));
        double frame = belt.frameLength().mm();
        if (frame > FRAME_MM) {
            drawing.add(Circle.of(Role.HARDWARE, Point.of(bar.x() + frame - FRAME_MM / 2, bar.y()), FRAME_MM));
            drawing.line(Role.HARDWARE, Point.of(bar.x(), bar.y()), Point.of(bar.x() + frame - FRAME_MM / 2, bar.y()));
        }
        double thickness = belt.thickness().mm();
        Point holeTop = Point.of(bar.x() - hole, bar.y() + 2);
        Point holeEnd = Point.of(bar.x() - hole, bar.y() - thickness - 2);
        drawing.line(Role.MARK, holeTop, holeEnd);
        breakMarks(drawing, bar, (belt.turnBackLength().mm() + hole) / 2, thickness);
        double low = bar.y() - belt.barDiameter().mm() / 2 - thickness;
        drawing.dimension(
                Point.of(bar.x() - hole, low),
                Point.of(bar.x() + geometry.behindBarMm(), low),
                -8,
                FlatView.millimetres(belt.size().mm()),
                LETTER_MM);
        return drawing.build();
    }

    /** Two slanting strokes where the belt is drawn shorter than it is. */
    private static void breakMarks(Drawing.Builder drawing, Pose bar, double fromBar, double thickness) {
        for (double beside : new double[] {-1.5, 1.5}) {
            double x = bar.x() - fromBar + beside;
            drawing.line(Role.NOTE, Point.of(x - 1.5, bar.y() - thickness - 2), Point.of(x + 1.5, bar.y() + 2));
        }
        drawing.label("…", Point.of(bar.x() - fromBar, bar.y() + 2), Anchor.BOTTOM, LETTER_MM);
    }
}
