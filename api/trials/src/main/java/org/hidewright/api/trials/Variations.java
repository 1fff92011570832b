package org.hidewright.api.trials;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.api.declaration.Chosen;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.declaration.Variant;

/** Answers to questions of which one is changed, and the others are as they were. */
public final class Variations {
    /** What else one question could be answered with; asked of every question, also of those that hold others. */
    @FunctionalInterface
    public interface Others {
        /** @param now empty where it is left open */
        Stream<Object> of(Question question, Optional<Object> now);
    }

    /**
     * One of them.
     *
     * @param place the question that is changed, as notices name it
     */
    public record Varied(String place, Values values) {}

    private final Others others;

    private Variations(Others others) {
        this.others = others;
    }

    /** Every answer that differs from those given in one of them, in the order of the questions. */
    public static List<Varied> of(List<Question> questions, Values from, Others others) {
        return new Variations(others).all(questions, from, "").toList();
    }

    private Stream<Varied> all(List<Question> questions, Values from, String path) {
        return questions.stream().flatMap(question -> {
            String place = path.isEmpty() ? question.key() : path + "." + question.key();
            return one(question, from.get(question.key()), place)
                    .map(changed -> new Varied(changed.place(), with(from, question.key(), changed.value())));
        });
    }

    private record Changed(String place, Object value) {}

    private Stream<Changed> one(Question question, Optional<Object> now, String place) {
        Stream<Changed> itself = others.of(question, now).map(other -> new Changed(place, other));
        return Stream.concat(itself, now.stream().flatMap(value -> inside(question, value, place)));
    }

    private Stream<Changed> inside(Question question, Object value, String place) {
        if (question.kind() != Kind.ROWS) {
            return within(question, value, place);
        }
        List<?> rows = (List<?>) value;
        List<Changed> changed = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            int at = i;
            within(question, rows.get(i), place + "[" + (i + 1) + "]").forEach(row -> {
                List<Object> all = new ArrayList<>(rows);
                all.set(at, row.value());
                changed.add(new Changed(row.place(), List.copyOf(all)));
            });
        }
        return changed.stream();
    }

    private Stream<Changed> within(Question question, Object value, String place) {
        if (value instanceof Chosen chosen) {
            Variant variant = variant(question, chosen.variant());
            return all(variant.questions(), chosen.values(), place + "." + chosen.variant())
                    .map(varied -> new Changed(varied.place(), Chosen.of(chosen.variant(), varied.values())));
        }
        return value instanceof Values values
                ? all(question.questions(), values, place).map(varied -> new Changed(varied.place(), varied.values()))
                : Stream.empty();
    }

    static Variant variant(Question question, String key) {
        return question.variants().stream()
                .filter(variant -> variant.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private static Values with(Values from, String key, Object value) {
        Map<String, Object> entries = new LinkedHashMap<>(from.entries());
        entries.put(key, value);
        return Values.row(from.rowId(), entries);
    }
}
