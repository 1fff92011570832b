package org.hidewright.documents.page;

import org.hidewright.api.drawing.DimensionLine;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;

/** Lines and arrows of a measured distance, without its text. */
final class DimensionPainter {
    private static final double GAP = 1;
    private static final double BEYOND = 0.8;
    private static final double OUTSIDE = 4;
    /** How far arrows and end lines may reach out of the box of the four corners. */
    static final double REACH = OUTSIDE + 0.2;

    private static final Line LINE = RoleLine.of(Role.NOTE).line();

    private DimensionPainter() {}

    static void paint(DimensionLine dimension, DrawingCanvas canvas) {
        Point start = dimension.lineStart();
        Point end = dimension.lineEnd();
        double along = start.directionTo(end);
        side(canvas, dimension.from(), start);
        side(canvas, dimension.to(), end);
        double beyond = beyond(dimension);
        boolean inside = beyond == 0;
        Point from = start.towards(along, -beyond);
        Point to = end.towards(along, beyond);
        canvas.moveTo(from);
        canvas.lineTo(to);
        canvas.target().stroke(LINE);
        Arrowhead.paint(canvas, start, inside ? along + Math.PI : along, Tone.QUIET);
        Arrowhead.paint(canvas, end, inside ? along : along + Math.PI, Tone.QUIET);
    }

    /** How far the line is drawn beyond its ends; 0 where its arrows have room between them. */
    static double beyond(DimensionLine dimension) {
        return dimension.lineStart().distanceTo(dimension.lineEnd()) > 3 * Arrowhead.LENGTH ? 0 : OUTSIDE;
    }

    private static void side(DrawingCanvas canvas, Point place, Point lineEnd) {
        double distance = place.distanceTo(lineEnd);
        if (distance > GAP) {
            double away = place.directionTo(lineEnd);
            canvas.moveTo(place.towards(away, GAP));
            canvas.lineTo(lineEnd.towards(away, BEYOND));
            canvas.target().stroke(LINE);
        }
    }
}
