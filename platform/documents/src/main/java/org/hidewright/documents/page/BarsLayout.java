package org.hidewright.documents.page;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.hidewright.api.document.Bars;
import org.hidewright.api.document.Table.Align;

/** Bars with their names before and their amounts behind them, one piece each. */
final class BarsLayout {
    private static final double BEFORE = 4;
    private static final double BETWEEN = 1.2;
    private static final double GAP = 3;
    private static final double THICK = 3.2;
    /** A bar of next to nothing is still seen. */
    private static final double LEAST = 0.3;

    private static final double MOST_OF_LINE = 0.32;

    private final Typeface typeface;
    private final double width;

    BarsLayout(Typeface typeface, double width) {
        this.typeface = typeface;
        this.width = width;
    }

    List<Piece> pieces(Bars bars) {
        double labels = widest(bars, Bars.Bar::label);
        double texts = widest(bars, Bars.Bar::text);
        double left = labels + GAP;
        double scale = bars.furthest() > 0 ? (width - left - GAP - texts) / bars.furthest() : 0;
        List<Piece> pieces = new ArrayList<>();
        if (!bars.caption().isEmpty()) {
            PieceBuilder caption = new PieceBuilder(typeface);
            caption.text(bars.caption(), 0, 0, width, Style.ANSWER_LABEL);
            pieces.add(caption.build(BEFORE).keptWithNext());
        }
        for (Bars.Bar bar : bars.bars()) {
            PieceBuilder row = new PieceBuilder(typeface);
            row.text(bar.label(), 0, 0, labels, Style.CELL, Align.END);
            double end = left;
            for (Bars.Stretch stretch : bar.stretches()) {
                double from = left + stretch.from() * scale;
                double length = Math.max(LEAST, (stretch.to() - stretch.from()) * scale);
                row.add(new Marks.Bar(from, (Style.CELL.lineMm() - THICK) / 2, length, THICK, stretch.isFaint()));
                end = Math.max(end, from + length);
            }
            row.text(bar.text(), end + GAP / 2, 0, texts, Style.CELL);
            row.downTo(Style.CELL.lineMm());
            pieces.add(row.build(pieces.isEmpty() ? BEFORE : BETWEEN));
        }
        return pieces;
    }

    private double widest(Bars bars, Function<Bars.Bar, String> text) {
        return bars.bars().stream()
                .mapToDouble(bar -> typeface.widthMm(Style.CELL, text.apply(bar)))
                .map(Math::ceil)
                .max()
                .stream()
                .map(most -> Math.min(most, width * MOST_OF_LINE))
                .findFirst()
                .orElse(0);
    }
}
