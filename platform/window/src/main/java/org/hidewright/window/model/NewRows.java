package org.hidewright.window.model;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Variant;
import org.hidewright.core.wording.Wording;

/** Rows for a table out of lines of cells, as they stand in a project. */
final class NewRows {
    private final QuestionFace table;
    private final Wording wording;
    private final Function<Question, String> labels;
    private final Set<String> taken = new HashSet<>();

    /**
     * Rows for a table.
     *
     * @param labels what the questions of a row are called
     * @param wording in which bare numbers and days are meant
     */
    NewRows(QuestionFace table, Function<Question, String> labels, Wording wording) {
        this.table = table;
        this.labels = labels;
        this.wording = wording;
        table.rows().forEach(row -> taken.add(row.id()));
    }

    /** Each with an id that no other has; a line without cells is a row that nobody has answered yet. */
    List<Map<String, Object>> of(List<List<String>> lines) {
        return new PastedLines(columns(), labels, wording)
                .answers(lines).stream().map(this::row).toList();
    }

    private Map<String, Object> row(Map<String, String> answers) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("id", freeId());
        if (table.question().variants().isEmpty()) {
            row.putAll(answers);
        } else {
            row.put(variant().key(), answers);
        }
        return row;
    }

    /** Rows of several kinds begin as the last one is; the maker chooses another. */
    private Variant variant() {
        List<Variant> variants = table.question().variants();
        String last = table.rows().isEmpty()
                ? ""
                : table.rows().get(table.rows().size() - 1).variant().get(0).text();
        for (QuestionFace.Choice choice : table.rows().isEmpty() ? List.<QuestionFace.Choice>of() : choices()) {
            if (choice.label().equals(last)) {
                return variants.stream()
                        .filter(variant -> variant.key().equals(choice.key()))
                        .findFirst()
                        .orElseThrow();
            }
        }
        return variants.get(0);
    }

    private List<QuestionFace.Choice> choices() {
        return table.rows().get(0).variant().get(0).choices();
    }

    private List<Question> columns() {
        return table.question().variants().isEmpty()
                ? table.question().questions()
                : variant().questions();
    }

    private String freeId() {
        int number = taken.size() + 1;
        while (!taken.add("row-" + number)) {
            number++;
        }
        return "row-" + number;
    }
}
