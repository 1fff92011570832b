package org.hidewright.core.jobcard;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.item.Item;
import org.hidewright.core.item.ItemFacts;
import org.hidewright.core.wording.IdWords;

/**
 * An answer of rows or a group as a table: the columns that hold anything, before them what the rows are called unless that
 * stands in the columns.
 *
 * @param named whether the first cell of each row is its name
 * @param columns the columns after it
 * @param rows a text for each cell
 */
public record AnswerTable(boolean named, List<Answer> columns, List<List<String>> rows) {
    static final Set<Kind> WORDS = Set.of(Kind.TEXT, Kind.CHOICE, Kind.PHRASE);

    /** Empty where the answer is no table, has no row, or is for the workshop alone. */
    public static Optional<AnswerTable> of(Answer answer, Object value, SlipWording words) {
        if (answer.stock().isPresent()
                || answer.kind() != Kind.ROWS && answer.kind() != Kind.GROUP && answer.kind() != Kind.ITEM) {
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
        List<List<String>> texts =
                rows.stream().map(row -> cells(row, columns, words)).toList();
        if (value instanceof Item item) {
            return Optional.of(new AnswerTable(true, columns, named(ItemFacts.names(item, words.itemNames()), texts)));
        }
        boolean named = rows.stream().anyMatch(row -> !row.rowId().isEmpty() && !told(row, columns))
                && (mostlyTyped(rows, words) || !toldApart(columns, texts));
        return Optional.of(new AnswerTable(
                named,
                columns,
                named ? named(rows.stream().map(row -> IdWords.of(row.rowId())).toList(), texts) : texts));
    }

    private static List<String> cells(Values row, List<Answer> columns, SlipWording words) {
        return columns.stream()
                .map(column -> row.get(column.key())
                        .map(cell -> words.text(column, cell))
                        .orElse(""))
                .toList();
    }

    private static List<List<String>> named(List<String> names, List<List<String>> texts) {
        List<List<String>> named = new ArrayList<>();
        for (int i = 0; i < texts.size(); i++) {
            named.add(Stream.concat(Stream.of(names.get(i)), texts.get(i).stream())
                    .toList());
        }
        return List.copyOf(named);
    }

    /** Whether it is a table of what was typed row by row; a calculator may call a row of its own as one of them is. */
    private static boolean mostlyTyped(List<Values> rows, SlipWording words) {
        return rows.stream().filter(row -> words.isTypedRow(row.rowId())).count() * 2 >= rows.size();
    }

    /** Whether rows say in words what they are, or are told apart by words or by what they say first; an id tells no more. */
    private static boolean toldApart(List<Answer> columns, List<List<String>> texts) {
        Set<String> first = new HashSet<>();
        Set<List<String>> words = new HashSet<>();
        boolean phrases = true;
        for (List<String> row : texts) {
            if (!row.get(0).isEmpty()) {
                first.add(row.get(0));
            }
            words.add(said(columns, row, WORDS));
            phrases &= said(columns, row, Set.of(Kind.PHRASE)).stream().anyMatch(text -> !text.isEmpty());
        }
        return phrases || first.size() == texts.size() || words.size() == texts.size();
    }

    private static List<String> said(List<Answer> columns, List<String> row, Set<Kind> kinds) {
        return IntStream.range(0, columns.size())
                .filter(i -> kinds.contains(columns.get(i).kind()))
                .mapToObj(row::get)
                .toList();
    }

    /** Whether a column says what the row's id says. */
    private static boolean told(Values row, List<Answer> columns) {
        return columns.stream()
                .anyMatch(column ->
                        row.get(column.key()).filter(row.rowId()::equals).isPresent());
    }
}
