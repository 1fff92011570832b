package org.hidewright.documents.page;

import java.util.List;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.DimensionLine;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Shape;

/**
 * Where the number of a dimension line stands: above its line, or, where it is longer than the line, on the line’s own
 * extension, so that no end line of it or its neighbours strikes it through (ISO 129-1, from memory).
 */
record MeasurePlace(List<Shape> shapes, Typeface typeface) {
    private static final double CLEAR_MM = 1;

    Label of(DimensionLine dimension) {
        Label above = dimension.label();
        double length = dimension.lineStart().distanceTo(dimension.lineEnd());
        if (width(above) <= length) {
            return above;
        }
        Label before = outside(dimension, above, dimension.lineEnd(), dimension.lineStart());
        Label after = outside(dimension, above, dimension.lineStart(), dimension.lineEnd());
        return !free(before, dimension) && free(after, dimension) ? after : before;
    }

    private double width(Label label) {
        String text = typeface.printable(label.text());
        return typeface.widthMm(FigureText.of(label, text, typeface).style(), text);
    }

    /** On the extension of the line beyond one end, past its arrow. */
    private static Label outside(DimensionLine dimension, Label above, Point from, Point end) {
        double onwards = from.directionTo(end);
        Point at = end.towards(onwards, DimensionPainter.beyond(dimension) + CLEAR_MM);
        boolean asRead = Math.cos(onwards - above.turn()) > 0;
        return Label.of(above.text(), at, asRead ? Anchor.LEFT : Anchor.RIGHT, above.height())
                .turned(above.turn());
    }

    /** Whether it is clear of every other dimension line. */
    private boolean free(Label label, DimensionLine own) {
        Box box =
                FigureText.of(label, typeface.printable(label.text()), typeface).box();
        return shapes.stream()
                .filter(shape -> shape instanceof DimensionLine && !shape.equals(own))
                .map(PaperScale::inked)
                .noneMatch(other -> FigureText.meet(box, other));
    }
}
