package org.hidewright.documents.page;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.DimensionLine;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Shape;

/**
 * A drawing in its size on paper, with every text at a place where it meets no other. A text that finds no place, or is too
 * long, is replaced by a number, and stands under the figure beside that number.
 */
final class FigurePlan {
    private static final double[][] NEARBY = {
        {0, 0}, {1, 1}, {-1, 1}, {1, -1}, {-1, -1}, {0, 2}, {0, -2}, {2, 0}, {-2, 0}
    };

    private final Typeface typeface;
    private final double mostTextMm;
    private final PaperScale scale;
    private final List<Shape> shapes;
    private final List<FigureText> texts = new ArrayList<>();
    private final List<String> legend = new ArrayList<>();
    private Box box;

    /** @param mostTextMm a longer text goes under the figure */
    FigurePlan(Drawing drawing, PaperScale scale, double mostTextMm, Typeface typeface) {
        this.typeface = typeface;
        this.mostTextMm = mostTextMm;
        this.scale = scale;
        this.shapes = drawing.shapes().stream().map(scale::of).toList();
        for (Shape shape : shapes) {
            if (shape instanceof Label label) {
                place(label);
            } else if (shape instanceof DimensionLine dimension) {
                place(dimension.label());
            }
        }
        for (Shape shape : shapes) {
            if (!(shape instanceof Label)) {
                include(PaperScale.inked(shape));
            }
        }
        texts.forEach(text -> include(text.box()));
    }

    private void include(Box more) {
        box = box == null ? more : box.with(more);
    }

    private void place(Label label) {
        String text = typeface.printable(label.text());
        if (text.isBlank()) {
            return;
        }
        FigureText asMeant = FigureText.of(label, text, typeface);
        if (typeface.widthMm(asMeant.style(), text) <= mostTextMm && !asMeant.meets(texts)) {
            texts.add(asMeant);
            return;
        }
        legend.add(text);
        texts.add(number(label, Integer.toString(legend.size())));
    }

    private FigureText number(Label label, String number) {
        double step = label.height() * 2;
        for (int ring = 1; ring <= 40; ring++) {
            for (double[] way : NEARBY) {
                Point at = label.at().plus(way[0] * step * ring / 2, way[1] * step * ring / 2);
                Label moved = Label.of(number, at, Anchor.CENTRE, label.height());
                FigureText text = FigureText.of(moved, number, typeface);
                if (!text.meets(texts)) {
                    return text;
                }
            }
        }
        throw new IllegalStateException("no place for the text \"" + label.text() + "\" in its drawing");
    }

    PaperScale scale() {
        return scale;
    }

    /** Everything inked, millimetres on paper, y up. */
    Box box() {
        return box;
    }

    /** Texts that stand under the figure, in the order of their numbers from 1. */
    List<String> legend() {
        return legend;
    }

    /** Draws it with the top left corner of its box at a place on the sheet. */
    void draw(Canvas canvas, double left, double top) {
        DrawingCanvas sheet = new DrawingCanvas(canvas, left - box.minX(), top + box.maxY());
        shapes.forEach(shape -> ShapePainter.paint(shape, sheet));
        for (FigureText text : texts) {
            canvas.text(text.text(), sheet.x(text.foot()), sheet.y(text.foot()), text.style(), text.turn());
        }
    }
}
