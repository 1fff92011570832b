package org.hidewright.core.item;

import java.util.List;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.PartShape;
import org.hidewright.api.geometry.Region;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.Part;
import org.hidewright.api.item.StitchLine;

/** A part as it is laid on leather, in true size: what is cut, trimmed, punched, stitched, folded and marked, without words. */
public final class PartDrawing {
    /** Of the dot that stands for a stitch hole. */
    private static final double DOT_MM = 0.6;

    private static final double LONGEST_ARROW_MM = 60;

    private PartDrawing() {}

    /** The part where it lies on its own drawing. */
    public static Drawing of(Part part) {
        Drawing.Builder drawing = Drawing.builder();
        List<Curve> cut = PartShape.cutOutline(part);
        cut.forEach(outline -> drawing.add(outline.path(Role.CUT)));
        if (part.allowance() > 0) {
            drawing.add(Curve.of(part.outline()).path(Role.FINISHED_EDGE));
        }
        part.cutOuts().forEach(drawing::add);
        for (Hole hole : part.holes()) {
            drawing.add(Circle.hole(hole.centre(), hole.diameter()));
        }
        for (StitchLine line : part.stitchLines()) {
            drawing.add(line.line());
            line.holes().forEach(hole -> drawing.add(Circle.of(Role.STITCH_HOLE, hole, DOT_MM)));
        }
        part.folds().forEach(fold -> drawing.add(fold.line()));
        part.marks().forEach(drawing::add);
        part.direction().ifPresent(direction -> arrow(drawing, part, direction));
        return drawing.build();
    }

    /** Along the backbone, in the roomiest place. */
    private static void arrow(Drawing.Builder drawing, Part part, double direction) {
        Region finished = PartShape.finished(part);
        Point middle = finished.roomiest();
        double half = Math.min(LONGEST_ARROW_MM, 1.5 * finished.edgeDistance(middle)) / 2;
        Point tail = middle.towards(direction, -half);
        Point tip = middle.towards(direction, half);
        drawing.line(Role.DIRECTION, tail, tip); // whoever draws a direction gives it its points
    }
}
