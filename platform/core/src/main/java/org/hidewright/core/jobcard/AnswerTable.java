package org.hidewright.core.jobcard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Values;
import org.hidewright.core.item.ItemFacts;

/**
 * An answer of rows or a group as a table: the columns that hold anything, before them the ids of the rows unless a column
 * says the same.
 *
 * @param ids whether the first cell of each row is its id
 * @param columns the columns after it
 * @param rows a text for each cell
 */
public record AnswerTable(boolean ids, List<Answer> columns, List<List<String>> rows) {
    /** Empty where the answer is no table or has no row. */
    public static Optional<AnswerTable> of(Answer answer, Object value, SlipWording words) {
        if (answer.kind() != Kind.ROWS && answer.kind() != Kind.GROUP && answer.kind() != Kind.ITEM) {
            return Optional.empty();
        }
        List<Values> rows = ItemFacts.rowsOf(value);
        List<Answer> columns = answer.columns().stream()
                .filter(column -> column.kind() != Kind.DRAWING)
                .filter(column ->
                        rows.stream().anyMatch(row -> row.get(column.key()).isPresent()))
                .toList();
        if (rows.isEmpty() || columns.isEmpty()) {
            return Optional.empty();
        }
        boolean ids = rows.stream().anyMatch(row -> !row.rowId().isEmpty() && !told(row, columns));
        List<List<String>> texts =
                rows.stream().map(row -> cells(row, ids, columns, words)).toList();
        return Optional.of(new AnswerTable(ids, columns, texts));
    }

    private static List<String> cells(Values row, boolean ids, List<Answer> columns, SlipWording words) {
        List<String> cells = new ArrayList<>();
        if (ids) {
            cells.add(row.rowId());
        }
        columns.forEach(column -> cells.add(
                row.get(column.key()).map(cell -> words.text(column, cell)).orElse("")));
        return List.copyOf(cells);
    }

    /** Whether a column says what the row's id says. */
    private static boolean told(Values row, List<Answer> columns) {
        return columns.stream()
                .anyMatch(column ->
                        row.get(column.key()).filter(row.rowId()::equals).isPresent());
    }
}
