package org.hidewright.core.begin;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Part;
import org.hidewright.api.measure.Length;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.core.project.Slip;
import org.hidewright.core.work.AskedLine;
import org.hidewright.core.work.SuitableRows;
import org.hidewright.core.work.WorkedSlip;
import org.hidewright.core.workshop.StockLink;

/**
 * Which parts of a piece are cut from another row of the workshop than the first, as a table of what follows asks for it. A part
 * is of the row that gave the template its thickness; of two rows as thick as each other the one whose question is called like
 * the leather of the part.
 */
final class OtherLeathers {
    /** What a text inside a table says it asks for: leathers as the item calls them, or its parts. */
    static final String LEATHERS = "item.leather";

    private static final double SAME_MM = 1e-6;

    private final SuitableRows rows;
    private final Item item;
    private final List<Taker> takers;

    /** A question of the template that takes a row. */
    private record Taker(String question, StockLink link, double mm) {}

    /** @param template worked, with an item */
    OtherLeathers(SuitableRows rows, WorkedSlip template, Item item) {
        this.rows = rows;
        this.item = item;
        this.takers = template.asked().stream()
                .flatMap(line -> taker(template.slip(), line).stream())
                .toList();
    }

    private static Optional<Taker> taker(Slip slip, AskedLine line) {
        return slip.answer(line.path())
                .flatMap(StockLink::in)
                .filter(link -> line.value().orElse(null) instanceof Length)
                .map(link -> new Taker(
                        line.question().key(), link, ((Length) line.value().orElseThrow()).mm()));
    }

    /** The tables of a calculator that ask for it. */
    static List<Question> tables(List<Question> questions) {
        return questions.stream()
                .filter(question ->
                        question.kind() == Kind.ROWS && names(question).isPresent())
                .toList();
    }

    private static Optional<Question> names(Question table) {
        return table.questions().stream()
                .filter(inner -> inner.from().filter(LEATHERS::equals).isPresent())
                .findFirst();
    }

    /** Whether nobody has answered such a table but with rows as they are written here. */
    static boolean isOurs(Slip slip, Question table) {
        JsonNode answer = slip.answer(AnswerPath.of(table.key())).orElse(null);
        return answer == null
                || answer instanceof JsonArray all
                        && all.items().stream()
                                .allMatch(row -> row instanceof JsonObject object && isOurs(object, table));
    }

    private static boolean isOurs(JsonObject row, Question table) {
        Set<String> known = new LinkedHashSet<>(List.of("id"));
        names(table).map(Question::key).ifPresent(known::add);
        return row.members().entrySet().stream()
                .filter(member -> !known.contains(member.getKey()))
                .allMatch(member -> StockLink.in(member.getValue().value())
                        .filter(link -> link.row().equals(row.text("id").orElse("")))
                        .isPresent());
    }

    /**
     * The rows of such a table; none where everything is of one leather.
     *
     * @param first by table of the workshop, the row that the slip takes for all that is not told otherwise
     */
    List<Map<String, Object>> rows(Question table, Map<String, String> first) {
        String names = names(table).orElseThrow().key();
        Map<String, List<Part>> byRow = new LinkedHashMap<>();
        Map<String, Map<String, Object>> cells = new LinkedHashMap<>();
        for (Part part : item.parts()) {
            Optional<StockLink> link = of(part);
            if (link.isPresent()
                    && !link.get().row().equals(first.get(link.get().table()))) {
                Optional<Map<String, Object>> priced = cells(table, link.get());
                priced.ifPresent(found -> {
                    cells.put(link.get().row(), found);
                    byRow.computeIfAbsent(link.get().row(), row -> new ArrayList<>())
                            .add(part);
                });
            }
        }
        List<Map<String, Object>> all = new ArrayList<>();
        byRow.forEach((row, parts) -> {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("id", row);
            one.put(names, called(parts));
            one.putAll(cells.get(row));
            all.add(one);
        });
        return all;
    }

    /** The row that a part is cut from; empty where its thickness was typed. */
    private Optional<StockLink> of(Part part) {
        if (part.thickness().isEmpty()) {
            return Optional.empty();
        }
        List<Taker> alike = takers.stream()
                .filter(taker -> Math.abs(taker.mm() - part.thickness().getAsDouble()) < SAME_MM)
                .toList();
        return alike.stream()
                .filter(taker -> isCalledLike(part, taker))
                .findFirst()
                .or(() -> alike.stream().findFirst())
                .map(Taker::link);
    }

    private static boolean isCalledLike(Part part, Taker taker) {
        List<String> words = Arrays.asList(taker.question().split("-"));
        return Arrays.stream((part.leather() + " " + part.id()).split("[ .-]+")).anyMatch(words::contains);
    }

    /** Links to all that has to be answered of a row; empty where the workshop does not say it of this one. */
    private Optional<Map<String, Object>> cells(Question table, StockLink row) {
        Map<String, Object> links = new TreeMap<>();
        for (Question inner : table.questions()) {
            boolean wanted = !inner.optional()
                    && inner.preset().isEmpty()
                    && inner.from().filter(LEATHERS::equals).isEmpty();
            if (wanted) {
                Optional<StockLink> link = rows.of(inner).stream()
                        .map(SuitableRows.Fit::link)
                        .filter(fit ->
                                fit.table().equals(row.table()) && fit.row().equals(row.row()))
                        .findFirst();
                if (link.isEmpty()) {
                    return Optional.empty();
                }
                links.put(inner.key(), link.get().written());
            }
        }
        return Optional.of(links);
    }

    /** By their leathers, where no other part is of one of them; else by their ids. */
    private String called(List<Part> parts) {
        return parts.stream()
                .map(part -> isWhole(part.leather(), parts) ? part.leather() : part.id())
                .distinct()
                .collect(Collectors.joining("; "));
    }

    private boolean isWhole(String leather, List<Part> parts) {
        return !leather.isBlank()
                && item.parts().stream()
                        .filter(part -> part.leather().equals(leather))
                        .allMatch(parts::contains);
    }
}
