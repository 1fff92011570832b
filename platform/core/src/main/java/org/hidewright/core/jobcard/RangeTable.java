package org.hidewright.core.jobcard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BinaryOperator;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hidewright.api.declaration.Answer;

/**
 * The numbers of one table or list of answers that move over the ranges.
 *
 * @param answer the table
 * @param head the headings; the first, over the rows’ names, is empty
 * @param rows a text for each cell, empty where nothing moves
 */
public record RangeTable(Answer answer, List<String> head, List<List<String>> rows) {
    /** A longer one would push the rest of the card away; the JSON has it. */
    static final int MOST_ROWS = 40;

    /** A table’s key, the id of a row, and the column or side within. */
    private static final Pattern IN_ROW = Pattern.compile("([^\\[.]+)\\[([^\\]]+)\\]((?:\\.[^\\[\\]]+)?)");

    /**
     * The tables short enough for the card.
     *
     * @param texts what each number that moves comes to, by its place
     * @param label heads the column of a place
     * @param name of a row, by the key of its table and its id
     */
    static List<RangeTable> of(
            List<Answer> declared,
            Map<String, String> texts,
            UnaryOperator<String> label,
            BinaryOperator<String> name) {
        List<RangeTable> tables = new ArrayList<>();
        for (Answer answer : declared) {
            Map<String, String> heads = new TreeMap<>(asDeclared(answer));
            Map<String, Map<String, String>> cells = new LinkedHashMap<>();
            texts.forEach((place, text) -> {
                Matcher parts = IN_ROW.matcher(place);
                if (parts.matches() && parts.group(1).equals(answer.key())) {
                    heads.computeIfAbsent(parts.group(3), column -> label.apply(place));
                    cells.computeIfAbsent(parts.group(2), row -> new LinkedHashMap<>())
                            .put(parts.group(3), text);
                }
            });
            if (!cells.isEmpty() && cells.size() <= MOST_ROWS) {
                tables.add(new RangeTable(answer, head(heads), rows(heads, cells, id -> name.apply(answer.key(), id))));
            }
        }
        return List.copyOf(tables);
    }

    /** Columns, written as {@code .column} or {@code .column.side}, in the order they are declared in. */
    private static Comparator<String> asDeclared(Answer answer) {
        List<String> keys = answer.columns().stream().map(Answer::key).toList();
        return Comparator.<String>comparingInt(column -> column.isEmpty() ? 0 : keys.indexOf(column.split("\\.")[1]))
                .thenComparing(Comparator.naturalOrder());
    }

    private static List<String> head(Map<String, String> heads) {
        List<String> head = new ArrayList<>(List.of(""));
        head.addAll(heads.values());
        return List.copyOf(head);
    }

    private static List<List<String>> rows(
            Map<String, String> heads, Map<String, Map<String, String>> cells, UnaryOperator<String> name) {
        List<List<String>> rows = new ArrayList<>();
        cells.forEach((id, row) -> {
            List<String> texts = new ArrayList<>(List.of(name.apply(id)));
            heads.keySet().forEach(column -> texts.add(row.getOrDefault(column, "")));
            rows.add(List.copyOf(texts));
        });
        return List.copyOf(rows);
    }

    /** How many numbers it shows. */
    long numbers() {
        return rows.stream()
                .flatMap(row -> row.stream().skip(1))
                .filter(cell -> !cell.isEmpty())
                .count();
    }
}
