package org.hidewright.documents.page;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.document.Sources;
import org.hidewright.api.document.Working;

/** Working and sources: small, quiet, in two columns, for the evening and not for the bench. */
final class WorkingLayout {
    private static final double NAME_SHARE = 0.30;
    private static final double GAP = 5;

    private static final double SPACE = 1;

    private final Typeface typeface;
    private final Wrapping wrapping;
    private final double left;
    private final double right;

    WorkingLayout(Typeface typeface, double width) {
        this.typeface = typeface;
        this.wrapping = new Wrapping(typeface);
        this.left = width * NAME_SHARE - GAP;
        this.right = width - width * NAME_SHARE;
    }

    List<Piece> pieces(Working working) {
        List<Piece> pieces = new ArrayList<>();
        for (Working.Line line : working.lines()) {
            PieceBuilder piece = new PieceBuilder(typeface);
            piece.text(line.what(), 0, 0, left, Style.WORKING_NAME);
            double y = piece.text(line.formula(), left + GAP, 0, right, Style.WORKING);
            y = numbers(piece, line, y);
            piece.text(line.source(), left + GAP, y, right, Style.SOURCE);
            pieces.add(piece.build(pieces.isEmpty() ? 4 : 2.5));
        }
        return pieces;
    }

    /** Numbers and result on one line where they fit. */
    private double numbers(PieceBuilder piece, Working.Line line, double y) {
        double start = left + GAP;
        double numbers = wrapping.natural(line.numbers(), Style.WORKING);
        double result = wrapping.natural(result(line), Style.WORKING_NAME);
        if (line.numbers().isEmpty()
                || numbers + SPACE + result > right
                || line.numbers().contains("\n")) {
            double next = piece.text(line.numbers(), start, y, right, Style.WORKING);
            return piece.text(result(line), start, next, right, Style.WORKING_NAME);
        }
        piece.text(line.numbers(), start, y, right, Style.WORKING);
        return piece.text(result(line), start + numbers + SPACE, y, right, Style.WORKING_NAME);
    }

    private static String result(Working.Line line) {
        return line.result().isEmpty() || line.result().startsWith("=") ? line.result() : "=\u00a0" + line.result();
    }

    List<Piece> pieces(Sources sources) {
        List<Piece> pieces = new ArrayList<>();
        for (Sources.Entry entry : sources.entries()) {
            PieceBuilder piece = new PieceBuilder(typeface);
            piece.text(entry.kind(), 0, 0, left, Style.SOURCE_KIND);
            piece.text(entry.text(), left + GAP, 0, right, Style.SOURCE);
            pieces.add(piece.build(pieces.isEmpty() ? 4 : 1.2));
        }
        return pieces;
    }
}
