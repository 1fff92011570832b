package org.hidewright.documents.page;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.document.BigAnswer;

/** Answers, two beside each other where they are short enough; each number is the largest thing near it. */
final class AnswerLayout {
    private static final double BEFORE = 5;
    private static final double BETWEEN = 10;
    private static final double UNIT_GAP = 2;

    private final Typeface typeface;
    private final Wrapping wrapping;
    private final double width;

    AnswerLayout(Typeface typeface, double width) {
        this.typeface = typeface;
        this.wrapping = new Wrapping(typeface);
        this.width = width;
    }

    /** Pieces for answers that follow each other. */
    List<Piece> pieces(List<BigAnswer> answers) {
        List<Piece> pieces = new ArrayList<>();
        double half = (width - BETWEEN) / 2;
        int i = 0;
        while (i < answers.size()) {
            PieceBuilder row = new PieceBuilder(typeface);
            BigAnswer first = answers.get(i++);
            boolean narrow = fits(first, half);
            put(row, first, 0, narrow ? half : width);
            if (narrow && i < answers.size() && fits(answers.get(i), half)) {
                put(row, answers.get(i++), half + BETWEEN, half);
            }
            pieces.add(row.build(BEFORE));
        }
        return pieces;
    }

    private boolean fits(BigAnswer answer, double room) {
        double value = typeface.widthMm(Style.ANSWER, typeface.printable(answer.value()));
        return value + unitWidth(answer) <= room;
    }

    private double unitWidth(BigAnswer answer) {
        return answer.unit().isEmpty() ? 0 : UNIT_GAP + wrapping.natural(answer.unit(), Style.ANSWER_UNIT);
    }

    private void put(PieceBuilder row, BigAnswer answer, double x, double room) {
        row.add(new Marks.Rule(x, x + room, 0, Line.RULE));
        double y = row.text(answer.label(), x, 1.2, room, Style.ANSWER_LABEL);
        List<String> lines = wrapping.lines(answer.value(), Style.ANSWER, room);
        for (String line : lines) {
            row.add(new Marks.Text(line, x, y, Style.ANSWER));
            y += Style.ANSWER.lineMm();
        }
        double end = x + typeface.widthMm(Style.ANSWER, lines.get(lines.size() - 1));
        double sameFoot = Style.ANSWER.lineMm() - Style.ANSWER.baselineMm() + Style.ANSWER_UNIT.baselineMm();
        if (end + unitWidth(answer) <= x + room + 1e-6) {
            row.text(answer.unit(), end + UNIT_GAP, y - sameFoot, room, Style.ANSWER_UNIT);
        } else {
            y = row.text(answer.unit(), x, y, room, Style.ANSWER_UNIT);
        }
        y = row.text(answer.fromTo(), x, y, room, Style.FROM_TO);
        row.text(answer.reason(), x, y, room, Style.REASON);
    }
}
