package org.hidewright.documents.page;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Two squares, 100 mm and 4 in, that tell on paper whether the printer kept the size; once on a page is enough. */
final class CheckSquares {
    private static final double METRIC = 100;
    private static final double INCH = 4 * 25.4;
    private static final double INSET = 5;
    /** Of the piece. */
    static final double WIDTH = INCH + 0.2;

    private final Typeface typeface;
    private final Map<String, Piece> byText = new HashMap<>();

    CheckSquares(Typeface typeface) {
        this.typeface = typeface;
    }

    /** The same piece for the same text, so that a page knows it has it. */
    Piece piece(String text) {
        return byText.computeIfAbsent(text, this::make);
    }

    /** Both squares so pale that a pattern drawn over them is not mistaken. */
    List<Mark> pale(double x, double top) {
        Line line = Line.solid(0.15, Tone.HAIRLINE);
        return List.of(
                new Marks.Frame(x, top, INCH, INCH, line),
                new Marks.Frame(x, top + INCH - METRIC, METRIC, METRIC, line));
    }

    private Piece make(String text) {
        PieceBuilder piece = new PieceBuilder(typeface);
        Line thin = Line.solid(0.2, Tone.INK);
        piece.add(new Marks.Frame(0.1, INCH - METRIC + 0.1, METRIC, METRIC, thin));
        piece.add(new Marks.Frame(0.1, 0.1, INCH, INCH, Line.dashed(0.2, 1.5, 1.0)));
        piece.downTo(INCH + 0.2);
        double room = METRIC - 2 * INSET;
        double y = piece.text("100 mm", INSET, INSET + 2, room, Style.CHECK);
        y = piece.text("- - -  4 in", INSET, y, room, Style.BODY);
        piece.text(text, INSET, y + 3, room, Style.BODY);
        return piece.build(6);
    }
}
