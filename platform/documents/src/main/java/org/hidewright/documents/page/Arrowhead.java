package org.hidewright.documents.page;

import org.hidewright.api.drawing.Point;

/** A filled point at the end of a line. */
final class Arrowhead {
    static final double LENGTH = 2.4;
    static final double HALF_WIDTH = 0.55;

    private Arrowhead() {}

    /** @param direction where it points, radians counter-clockwise from the right, y up */
    static void paint(DrawingCanvas canvas, Point tip, double direction, Tone tone) {
        Point base = tip.towards(direction + Math.PI, LENGTH);
        canvas.moveTo(tip);
        canvas.lineTo(base.towards(direction + Math.PI / 2, HALF_WIDTH));
        canvas.lineTo(base.towards(direction - Math.PI / 2, HALF_WIDTH));
        canvas.target().close();
        canvas.target().fill(tone);
    }
}
