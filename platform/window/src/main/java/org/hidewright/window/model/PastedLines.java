package org.hidewright.window.model;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.core.wording.AsFiled;
import org.hidewright.core.wording.Wording;

/**
 * Lines of cells as a spreadsheet gives them, as answers of the questions whose order they are in.
 *
 * @param asked the questions of a row
 * @param labels what they are called
 * @param wording in which bare numbers and days are meant
 */
public record PastedLines(List<Question> asked, Function<Question, String> labels, Wording wording) {
    /** The answers of each line by key; a line that says what the columns are is passed over. */
    public List<Map<String, String>> answers(List<List<String>> lines) {
        List<Question> columns = asked.stream()
                .filter(column -> column.kind() != Kind.GROUP && column.kind() != Kind.VARIANTS)
                .filter(column -> column.kind() != Kind.ROWS)
                .toList();
        List<String> head = columns.stream().map(labels).toList();
        List<Map<String, String>> rows = new ArrayList<>();
        for (List<String> line : lines) {
            if (!line.isEmpty() && line.equals(head.subList(0, Math.min(line.size(), head.size())))) {
                continue;
            }
            Map<String, String> answers = new LinkedHashMap<>();
            for (int i = 0; i < Math.min(line.size(), columns.size()); i++) {
                if (!line.get(i).isBlank()) {
                    answers.put(columns.get(i).key(), AsFiled.of(line.get(i).strip(), columns.get(i), wording));
                }
            }
            rows.add(answers);
        }
        return rows;
    }
}
