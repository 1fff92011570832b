package org.hidewright.core.project;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where an answer stands on a slip: a question, and from there inwards the keys of groups and variants and the ids of rows.
 *
 * @param steps from the question of the slip inwards; at least one, the first a key
 */
public record AnswerPath(List<Step> steps) {
    /** One step inwards. */
    public sealed interface Step {
        /**
         * To what stands under a key: of a question, or of a variant.
         *
         * @param name the key
         */
        record Key(String name) implements Step {}

        /**
         * To a row of a table.
         *
         * @param id its id; a row without one has {@code row-} and its number, counted from one
         */
        record Row(String id) implements Step {}
    }

    public AnswerPath {
        steps = List.copyOf(steps);
        if (steps.isEmpty() || !(steps.get(0) instanceof Step.Key)) {
            throw new IllegalArgumentException("an answer stands under the key of a question");
        }
    }

    /** A question of the slip. */
    public static AnswerPath of(String question) {
        return new AnswerPath(List.of(new Step.Key(question)));
    }

    /** What stands under a key inside: a question of a group or row, or a variant. */
    public AnswerPath key(String name) {
        return with(new Step.Key(name));
    }

    /** A row of a table. */
    public AnswerPath row(String id) {
        return with(new Step.Row(id));
    }

    private AnswerPath with(Step step) {
        List<Step> all = new ArrayList<>(steps);
        all.add(step);
        return new AnswerPath(all);
    }

    /** What it stands in together with others: a group or a chosen variant; empty for a question of the slip or of a row. */
    public Optional<AnswerPath> group() {
        int last = steps.size() - 1;
        return last > 0 && steps.get(last) instanceof Step.Key && steps.get(last - 1) instanceof Step.Key
                ? Optional.of(new AnswerPath(steps.subList(0, last)))
                : Optional.empty();
    }

    /** The question of the slip that it stands in. */
    public String question() {
        return ((Step.Key) steps.get(0)).name();
    }

    /** As remarks name the place: {@code sections[run-1].length}. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        for (Step step : steps) {
            if (step instanceof Step.Row row) {
                text.append('[').append(row.id()).append(']');
            } else {
                text.append(text.isEmpty() ? "" : ".").append(((Step.Key) step).name());
            }
        }
        return text.toString();
    }
}
