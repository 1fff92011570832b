package org.hidewright.documents.page;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.document.NoteSpace;
import org.hidewright.api.document.Table.Align;
import org.hidewright.api.document.TickList;

/** What is written on at the bench: steps with a box to tick, and ruled lines. */
final class StepLayout {
    private static final double BOX = 5.5;
    private static final double NUMBER_GAP = 3;
    private static final double RULING = 9;

    private final Typeface typeface;
    private final double width;

    StepLayout(Typeface typeface, double width) {
        this.typeface = typeface;
        this.width = width;
    }

    List<Piece> pieces(TickList list) {
        List<Piece> pieces = new ArrayList<>();
        double numbers = typeface.widthMm(
                Style.STEP_NUMBER, Integer.toString(list.steps().size()));
        double textX = BOX + NUMBER_GAP + numbers + NUMBER_GAP;
        for (TickList.Step step : list.steps()) {
            PieceBuilder piece = new PieceBuilder(typeface);
            double centre = Style.STEP.lineMm() / 2;
            double y = Math.max(0, BOX / 2 - centre);
            piece.add(new Marks.Frame(0.2, y + centre - BOX / 2, BOX, BOX, Line.BOX));
            String number = Integer.toString(pieces.size() + 1);
            piece.text(number, BOX + NUMBER_GAP, y, numbers, Style.STEP_NUMBER, Align.END);
            double end = piece.text(step.text(), textX, y, width - textX, Style.STEP);
            piece.text(step.detail(), textX, end, width - textX, Style.REASON);
            pieces.add(piece.build(pieces.isEmpty() ? 4 : 3.4));
        }
        return pieces;
    }

    List<Piece> pieces(NoteSpace space) {
        List<Piece> pieces = new ArrayList<>();
        PieceBuilder label = new PieceBuilder(typeface);
        label.text(space.label(), 0, 0, width, Style.ANSWER_LABEL);
        if (!space.label().isEmpty()) {
            pieces.add(label.build(5).keptWithNext());
        }
        for (int i = 0; i < space.lines(); i++) {
            Mark rule = new Marks.Rule(0, width, RULING, Line.solid(0.2, Tone.HAIRLINE));
            Piece line = Piece.of(0, RULING, List.of(rule));
            pieces.add(i < Math.min(space.lines(), 20) - 1 ? line.keptWithNext() : line);
        }
        return pieces;
    }
}
