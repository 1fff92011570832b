package org.hidewright.window.piece;

import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Point;

/**
 * Where a drawing lies in a view and how large.
 *
 * @param factor how much larger than life, 1 for true size
 * @param pixelsPerMm of the screen
 * @param box what is inked, millimetres at that size, y up
 * @param left of the box in the view, in pixels
 * @param top of the box in the view, in pixels
 */
public record Sheet(double factor, double pixelsPerMm, Box box, double left, double top) {
    /** A place of the view on the drawing, in millimetres of the thing itself. */
    public Point onDrawing(double x, double y) {
        return Point.of(
                ((x - left) / pixelsPerMm + box.minX()) / factor, (box.maxY() - (y - top) / pixelsPerMm) / factor);
    }

    /** A place of the drawing in the view, across in pixels. */
    public double x(Point place) {
        return left + (place.x() * factor - box.minX()) * pixelsPerMm;
    }

    /** The same down. */
    public double y(Point place) {
        return top + (box.maxY() - place.y() * factor) * pixelsPerMm;
    }

    /** Pixels of the view in millimetres of the thing itself. */
    public double mm(double pixels) {
        return pixels / pixelsPerMm / factor;
    }

    /** Whether a place of the view lies on it. */
    public boolean holds(double x, double y) {
        return x >= left && y >= top && x <= left + box.width() * pixelsPerMm && y <= top + box.height() * pixelsPerMm;
    }
}
