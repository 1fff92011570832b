package org.hidewright.documents.page;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.document.Table.Align;

/** Puts texts and marks into one piece. */
final class PieceBuilder {
    private final Typeface typeface;
    private final Wrapping wrapping;
    private final List<Mark> marks = new ArrayList<>();
    private double bottom;

    PieceBuilder(Typeface typeface) {
        this.typeface = typeface;
        this.wrapping = new Wrapping(typeface);
    }

    PieceBuilder add(Mark mark) {
        marks.add(mark);
        bottom = Math.max(bottom, mark.bottom());
        return this;
    }

    /** Sets a text in as many lines as it needs and returns where it ends; an empty text takes no height. */
    double text(String text, double x, double y, double width, Style style, Align align) {
        if (text.isEmpty()) {
            return y;
        }
        double top = y;
        for (String line : wrapping.lines(text, style, width)) {
            double free = width - typeface.widthMm(style, line);
            double indent = align == Align.END ? free : align == Align.CENTRE ? free / 2 : 0;
            if (!line.isEmpty()) {
                marks.add(new Marks.Text(line, x + Math.max(0, indent), top, style));
            }
            top += style.lineMm();
        }
        bottom = Math.max(bottom, top);
        return top;
    }

    double text(String text, double x, double y, double width, Style style) {
        return text(text, x, y, width, style, Align.START);
    }

    double bottom() {
        return bottom;
    }

    /** Leaves room down to a level. */
    PieceBuilder downTo(double level) {
        bottom = Math.max(bottom, level);
        return this;
    }

    Piece build(double before) {
        return Piece.of(before, bottom, marks);
    }
}
