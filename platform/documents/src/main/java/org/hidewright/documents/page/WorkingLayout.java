package org.hidewright.documents.page;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.document.Sources;
import org.hidewright.api.document.Working;

/** Working and sources: small, quiet, in two columns, for the evening and not for the bench. */
final class WorkingLayout {
    private static final double NAME_SHARE = 0.30;
    private static final double GAP = 5;

    private final Typeface typeface;
    private final double left;
    private final double right;

    WorkingLayout(Typeface typeface, double width) {
        this.typeface = typeface;
        this.left = width * NAME_SHARE - GAP;
        this.right = width - width * NAME_SHARE;
    }

    List<Piece> pieces(Working working) {
        List<Piece> pieces = new ArrayList<>();
        for (Working.Line line : working.lines()) {
            PieceBuilder piece = new PieceBuilder(typeface);
            piece.text(line.what(), 0, 0, left, Style.WORKING_NAME);
            double y = piece.text(line.formula(), left + GAP, 0, right, Style.WORKING);
            y = piece.text(line.numbers(), left + GAP, y, right, Style.WORKING);
            y = piece.text(result(line), left + GAP, y, right, Style.WORKING_NAME);
            piece.text(line.source(), left + GAP, y, right, Style.SOURCE);
            pieces.add(piece.build(pieces.isEmpty() ? 4 : 2.5));
        }
        return pieces;
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
