package org.hidewright.window.model;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonOut;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.core.project.Link;
import org.hidewright.core.project.Slip;
import org.hidewright.core.wording.AsFiled;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.workshop.StockLink;
import org.hidewright.core.workshop.Table;
import org.hidewright.core.workshop.Tables;

/**
 * Changes inside the answers of one slip, where presets have to be written down before a part of them can be changed.
 *
 * @param asked what is asked at a place, as it is shown
 * @param wording the language and units that are shown
 */
record AnswerEdits(Function<AnswerPath, Optional<QuestionFace>> asked, Wording wording) {
    /**
     * The slip with the presets of what lies round an answer written down, so that one of several answers of a preset can be
     * changed without the others.
     */
    Slip laidDown(Slip slip, AnswerPath path) throws JsonTrouble {
        Slip laid = slip;
        for (int steps = 1; steps <= path.steps().size(); steps++) {
            AnswerPath round = new AnswerPath(path.steps().subList(0, steps));
            if (round.steps().get(steps - 1) instanceof AnswerPath.Step.Row) {
                mustBeThere(laid, round);
            }
            boolean whole = steps == path.steps().size();
            Optional<String> preset = asked.apply(round)
                    .map(QuestionFace::question)
                    .filter(question -> !whole || question.kind() == Kind.ROWS)
                    .flatMap(Question::preset)
                    .filter(text -> text.startsWith("{") || text.startsWith("["));
            if (preset.isPresent() && laid.answer(round).isEmpty()) {
                laid = laid.answering(round, preset.get());
            }
        }
        return laid;
    }

    private static void mustBeThere(Slip slip, AnswerPath row) {
        if (slip.answer(row).isEmpty()) {
            throw new Gone(row.toString());
        }
    }

    private QuestionFace table(AnswerPath table) {
        return asked.apply(table).orElseThrow(() -> new Gone(table.toString()));
    }

    /** The slip with an answer as it was typed: a bare number is of the unit that is shown, a day in the words that are. */
    Slip typed(Slip slip, AnswerPath path, String text) throws JsonTrouble {
        String meant = asked.apply(path)
                .map(face -> AsFiled.of(text, face.question(), wording))
                .orElse(text);
        return laidDown(slip, path).answering(path, JsonText.quoted(meant));
    }

    /** The slip with an answer linked to that of another, or to the cell of one. */
    Slip linked(Slip slip, AnswerPath path, Link to) throws JsonTrouble {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("from", to.slip());
        json.put("answer", to.answer());
        json.put("row", to.row());
        json.put("column", to.column());
        json.values().removeIf(""::equals);
        return laidDown(slip, path).answering(path, JsonOut.line(json).strip());
    }

    /** The slip with an answer taken from the workshop, or with all that a variant asks taken from a row of it. */
    Slip stocked(Slip slip, AnswerPath path, StockLink row, Tables tables) throws JsonTrouble {
        return asked.apply(path).isPresent()
                ? laidDown(slip, path)
                        .answering(path, JsonOut.line(row.written()).strip())
                : wholeRow(laidDown(slip, path), path, row, tables);
    }

    /** What was typed in the variant for a column of the table gives way to the row; what the table knows nothing of stays. */
    private static Slip wholeRow(Slip slip, AnswerPath variant, StockLink row, Tables tables) throws JsonTrouble {
        Slip taking =
                without(slip, variant, tables.find(row.table()).map(Table::keys).orElse(List.of()));
        for (Map.Entry<String, Object> part : row.written().entrySet()) {
            taking = taking.answering(variant.key(part.getKey()), JsonText.quoted((String) part.getValue()));
        }
        return taking;
    }

    /** The slip without an answer; where a row that is taken whole gives it, nothing is taken from that row any more. */
    Slip cleared(Slip slip, AnswerPath path) throws JsonTrouble {
        Optional<AnswerPath> variant = path.group()
                .filter(group -> slip.answer(path).isEmpty())
                .filter(group -> slip.answer(group).flatMap(StockLink::in).isPresent());
        return variant.isPresent() ? without(slip, variant.get(), StockLink.KEYS) : slip.clearing(path);
    }

    private static Slip without(Slip slip, AnswerPath variant, List<String> keys) throws JsonTrouble {
        Slip left = slip;
        for (String key : keys) {
            left = left.clearing(variant.key(key));
        }
        return left;
    }

    /** The slip with rows added to a table, after its last. */
    Slip withRows(Slip slip, AnswerPath table, List<List<String>> lines, Function<Question, String> labels)
            throws JsonTrouble {
        QuestionFace into = table(table);
        Slip laid = laidDown(slip, table);
        for (Map<String, Object> row : new NewRows(into, labels, wording).of(lines)) {
            laid = laid.answer(table).orElse(null) instanceof JsonArray there
                    ? laid.withRow(
                            table, there.items().size(), JsonOut.line(row).strip())
                    : laid.answering(table, JsonOut.line(List.of(row)).strip());
        }
        return laid;
    }

    /** The slip without a row of a table. */
    Slip withoutRow(Slip slip, AnswerPath table, String row) throws JsonTrouble {
        Slip laid = laidDown(slip, table.row(row));
        return laid.clearing(table.row(row));
    }

    /** The slip with a row further up or down; one that is at its end already stays. */
    Slip movingRow(Slip slip, AnswerPath table, String row, int by) throws JsonTrouble {
        List<String> ids = table(table).rows().stream().map(RowFace::id).toList();
        int to = ids.indexOf(row) + by;
        if (to < 0 || to >= ids.size()) {
            return slip;
        }
        Slip laid = laidDown(slip, table.row(row));
        String moved = laid.answer(table.row(row)).map(laid::textOf).orElseThrow(() -> new Gone(row));
        return laid.clearing(table.row(row)).withRow(table, to, moved);
    }
}
