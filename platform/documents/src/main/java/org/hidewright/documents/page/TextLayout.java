package org.hidewright.documents.page;

import java.util.ArrayList;
import java.util.List;

/** Running text as pieces of one line each, so that it flows over pages without leaving one line alone. */
final class TextLayout {
    private final Typeface typeface;
    private final double width;

    TextLayout(Typeface typeface, double width) {
        this.typeface = typeface;
        this.width = width;
    }

    List<Piece> pieces(String text, Style style, double before) {
        List<Piece> pieces = new ArrayList<>();
        List<String> lines = new Wrapping(typeface).lines(text, style, width);
        for (int i = 0; i < lines.size(); i++) {
            Mark line = new Marks.Text(lines.get(i), 0, 0, style);
            List<Mark> marks = lines.get(i).isEmpty() ? List.of() : List.of(line);
            Piece piece = Piece.of(i == 0 ? before : 0, style.lineMm(), marks);
            boolean firstOrLastButOne = i < lines.size() - 1 && (i == 0 || i == lines.size() - 2);
            pieces.add(firstOrLastButOne ? piece.keptWithNext() : piece);
        }
        return pieces;
    }
}
