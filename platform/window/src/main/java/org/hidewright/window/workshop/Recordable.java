package org.hidewright.window.workshop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Kind;
import org.hidewright.core.jobcard.SlipWording;
import org.hidewright.core.wording.TypedCell;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.WorkedSlip;
import org.hidewright.core.workshop.Column;
import org.hidewright.core.workshop.Table;

/**
 * An answer of a slip that can be recorded as measured, such as what a strip of leather came to.
 *
 * @param label the answer with its value
 * @param cells of its row
 */
public record Recordable(String label, Map<String, String> cells) {
    /** The answers of a slip that a column of the table of measured results can hold, those that lead first. */
    public static List<Recordable> of(WorkedSlip slip, Wording wording, Table measured) {
        List<Recordable> found = new ArrayList<>();
        SlipWording words = new SlipWording(slip, wording);
        List<Answer> answers = slip.installed().stream()
                .flatMap(known -> known.calculator().declaration().answers().stream())
                .sorted(Comparator.comparing(answer -> !answer.lead()))
                .toList();
        for (Answer answer : answers) {
            slip.answers()
                    .flatMap(values -> values.get(answer.key()))
                    .ifPresent(value -> measured.columns().stream()
                            .filter(column -> holds(column, answer))
                            .findFirst()
                            .ifPresent(column -> {
                                Map<String, String> cells = new LinkedHashMap<>();
                                cells.put("name", words.title() + ", " + words.label(answer));
                                cells.put(
                                        column.key(),
                                        TypedCell.of(
                                                slip.installed()
                                                        .map(known -> known.calculator()
                                                                .texts()),
                                                answer,
                                                value));
                                found.add(
                                        new Recordable(words.label(answer) + "  " + words.text(answer, value), cells));
                            }));
        }
        return List.copyOf(found);
    }

    private static boolean holds(Column column, Answer answer) {
        Kind kind = column.question().kind();
        return kind == answer.kind() && kind.dimension().isPresent();
    }
}
