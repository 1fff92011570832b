package org.hidewright.documents.page;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.DimensionLine;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Shape;

/**
 * A drawing in its size on paper, with every text at a place where it meets no other. Texts that would meet, or are too
 * long, are replaced by numbers, and stand under the figure beside their number. Where that becomes of most names, it becomes of all:
 * among numbers a name that happens to have room is taken for that of its neighbour.
 */
public final class FigurePlan {
    private static final double[][] NEARBY = {
        {0, 0}, {1, 1}, {-1, 1}, {1, -1}, {-1, -1}, {0, 2}, {0, -2}, {2, 0}, {-2, 0}
    };

    /** The share of the names from which on all are numbers. */
    private static final double MOST = 0.5;

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
        placeAll();
        for (Shape shape : shapes) {
            if (!(shape instanceof Label)) {
                include(PaperScale.inked(shape));
            }
        }
        texts.forEach(text -> include(text.box()));
    }

    /** At a scale, upright, every text in the drawing as long as there is a place for it. */
    public static FigurePlan at(Drawing drawing, double factor, Typeface typeface) {
        return new FigurePlan(drawing, new PaperScale(factor, false), Double.MAX_VALUE, typeface);
    }

    private void include(Box more) {
        box = box == null ? more : box.with(more);
    }

    /** A text of the drawing, where it is meant to stand, and whether it belongs to a dimension line. */
    private record Meant(Label label, FigureText text, boolean measure) {
        /** A measure keeps its place beside its line when a label is in its way. */
        boolean givesWayTo(Meant other) {
            return this != other && (!measure || other.measure) && text.meets(List.of(other.text));
        }
    }

    private void placeAll() {
        List<Meant> all = new ArrayList<>();
        MeasurePlace measures = new MeasurePlace(shapes, typeface);
        for (Shape shape : shapes) {
            if (shape instanceof Label label) {
                meant(label, false, all);
            } else if (shape instanceof DimensionLine dimension) {
                meant(measures.of(dimension), true, all);
            }
        }
        List<Meant> numbered = numbered(all);
        all.stream().filter(one -> !numbered.contains(one)).forEach(one -> texts.add(one.text()));
        for (Meant one : numbered) {
            legend.add(one.text().text());
            texts.add(number(one.label(), Integer.toString(legend.size())));
        }
    }

    private void meant(Label label, boolean measure, List<Meant> all) {
        String text = typeface.printable(label.text());
        if (!text.isBlank()) {
            all.add(new Meant(label, FigureText.of(label, text, typeface), measure));
        }
    }

    private List<Meant> numbered(List<Meant> all) {
        List<Meant> numbered = all.stream().filter(one -> isNumbered(one, all)).toList();
        long names = all.stream().filter(one -> !one.measure()).count();
        long numbers = numbered.stream().filter(one -> !one.measure()).count();
        return numbers > MOST * names
                ? all.stream()
                        .filter(one -> !one.measure() || numbered.contains(one))
                        .toList()
                : numbered;
    }

    private boolean isNumbered(Meant one, List<Meant> all) {
        return typeface.widthMm(one.text().style(), one.text().text()) > mostTextMm
                || all.stream().anyMatch(one::givesWayTo);
    }

    /** At the place of the text it stands for; if that is taken, ever further away, first on the same side. */
    private FigureText number(Label label, String number) {
        double awayX = (0.5 - label.anchor().along()) * label.height();
        double awayY = (0.5 - label.anchor().up()) * label.height();
        for (int ring = 0; ring <= 120; ring++) {
            for (double[] way : NEARBY) {
                double step = ring * label.height() / 2;
                Point at = label.at().plus(ring * awayX + way[0] * step, ring * awayY + way[1] * step);
                Label moved =
                        Label.of(number, at, label.anchor(), label.height()).turned(label.turn());
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
    public Box box() {
        return box;
    }

    /** Texts that stand under the figure, in the order of their numbers from 1. */
    public List<String> legend() {
        return legend;
    }

    /** Tells of every place with ink, millimetres right of and below the top left corner of its box. */
    void ink(InkTrace.Ink ink) {
        InkTrace trace = new InkTrace((x, y) -> ink.at(x - box.minX(), box.maxY() - y));
        shapes.stream().filter(shape -> !(shape instanceof Label)).forEach(trace::follow);
        texts.forEach(text -> trace.box(text.box()));
    }

    /** Draws it with the top left corner of its box at a place on the sheet. */
    public void draw(Canvas canvas, double left, double top) {
        DrawingCanvas sheet = new DrawingCanvas(canvas, left - box.minX(), top + box.maxY());
        shapes.forEach(shape -> ShapePainter.paint(shape, sheet));
        for (FigureText text : texts) {
            canvas.text(text.text(), sheet.x(text.foot()), sheet.y(text.foot()), text.style(), text.turn());
        }
    }
}
