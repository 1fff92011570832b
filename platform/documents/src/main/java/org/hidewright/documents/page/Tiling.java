package org.hidewright.documents.page;

import java.util.List;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Point;

/** How one pattern is cut up into sheets that overlap; millimetres, y down from the upper left corner of the pattern. */
record Tiling(Box pattern, double width, double height, double overlap) {
    private static final double CROSS_ARM = 4;
    private static final Line CROSS = Line.solid(0.2, Tone.INK);

    int columns() {
        return count(pattern.width(), width);
    }

    int rows() {
        return count(pattern.height(), height);
    }

    private int count(double length, double sheet) {
        return Math.max(1, (int) Math.ceil((length - overlap) / (sheet - overlap) - 1e-9));
    }

    int sheets() {
        return rows() * columns();
    }

    /** Where the sheets of a column begin. */
    double left(int column) {
        return column * (width - overlap);
    }

    /** Where the sheets of a row begin. */
    double top(int row) {
        return row * (height - overlap);
    }

    /** On every sheet alike, in the middle of what overlaps: those on the right of one are those on the left of the next. */
    List<Point> crosses() {
        double in = overlap / 2;
        return List.of(
                Point.of(in, in),
                Point.of(width - in, in),
                Point.of(in, height - in),
                Point.of(width - in, height - in));
    }

    void drawFrame(Canvas canvas, double x, double y) {
        canvas.moveTo(x, y);
        canvas.lineTo(x + width, y);
        canvas.lineTo(x + width, y + height);
        canvas.lineTo(x, y + height);
        canvas.close();
        canvas.stroke(Line.HAIR);
        for (Point cross : crosses()) {
            canvas.moveTo(x + cross.x() - CROSS_ARM, y + cross.y());
            canvas.lineTo(x + cross.x() + CROSS_ARM, y + cross.y());
            canvas.moveTo(x + cross.x(), y + cross.y() - CROSS_ARM);
            canvas.lineTo(x + cross.x(), y + cross.y() + CROSS_ARM);
            canvas.stroke(CROSS);
        }
    }
}
