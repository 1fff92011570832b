package org.hidewright.documents.page;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.document.Checks;
import org.hidewright.api.document.Checks.Check;
import org.hidewright.api.document.Severity;

/** Checks, each behind a sign that is told by its shape. */
final class CheckLayout {
    private static final double TEXT_X = 13;

    private final Typeface typeface;
    private final double width;

    CheckLayout(Typeface typeface, double width) {
        this.typeface = typeface;
        this.width = width;
    }

    List<Piece> pieces(Checks checks) {
        List<Piece> pieces = new ArrayList<>();
        for (Check check : checks.checks()) {
            PieceBuilder piece = new PieceBuilder(typeface);
            piece.add(new Sign(check.severity(), 0, 0.6));
            double room = width - TEXT_X;
            Style word = check.severity() == Severity.NOTE ? Style.SEVERITY_NOTE : Style.SEVERITY;
            double y = piece.text(check.severityText(), TEXT_X, 0, room, word);
            y = piece.text(check.what(), TEXT_X, y, room, Style.CHECK);
            y = piece.text(check.why(), TEXT_X, y, room, Style.BODY);
            if (!check.next().isEmpty()) {
                double start = TEXT_X + 5;
                piece.add(new Arrow(TEXT_X, y + Style.BODY.baselineMm() - Style.BODY.capitalMm() / 2));
                piece.text(check.next(), start, y, width - start, Style.BODY);
            }
            pieces.add(piece.build(pieces.isEmpty() ? 4 : 4.5));
        }
        return pieces;
    }

    /** A small arrow to what comes next; its height is that of a letter. */
    private record Arrow(double x, double y) implements Mark {
        @Override
        public double top() {
            return y - 0.8;
        }

        @Override
        public double bottom() {
            return y + 0.8;
        }

        @Override
        public void draw(Canvas canvas, double x0, double y0) {
            canvas.moveTo(x0 + x, y0 + y);
            canvas.lineTo(x0 + x + 3.2, y0 + y);
            canvas.moveTo(x0 + x + 2.2, y0 + y - 0.8);
            canvas.lineTo(x0 + x + 3.2, y0 + y);
            canvas.lineTo(x0 + x + 2.2, y0 + y + 0.8);
            canvas.stroke(Line.solid(0.3, Tone.INK));
        }
    }
}
