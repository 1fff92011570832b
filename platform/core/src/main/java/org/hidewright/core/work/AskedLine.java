package org.hidewright.core.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.hidewright.api.declaration.Chosen;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.declaration.Variant;
import org.hidewright.api.measure.Range;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.core.project.Link;
import org.hidewright.core.work.Entry.Answered;
import org.hidewright.core.work.Entry.Origin;

/**
 * One question of a slip as it stands, nested ones after the one that holds them.
 *
 * @param question the question
 * @param path where its answer stands on the slip
 * @param depth 0 for a question of the slip, more for those inside groups, variants and rows
 * @param row id of the row it belongs to, empty outside tables
 * @param origin typed, preset, linked or taken from the workshop
 * @param text as typed, or the link; empty for what holds others
 * @param link where it is linked to
 * @param cell where it lies in the workshop if it was taken from there: {@code table[row].column}, or less
 * @param typedRange limits of what was typed, in base units; empty where it is no single quantity
 * @param value what the calculator was given; empty where there is none
 */
public record AskedLine(
        Question question,
        AnswerPath path,
        int depth,
        String row,
        Origin origin,
        String text,
        Optional<Link> link,
        Optional<String> cell,
        Optional<Range> typedRange,
        Optional<Object> value) {
    /** Whether it was typed, preset or linked. */
    public boolean typed() {
        return origin == Origin.TYPED;
    }

    public boolean preset() {
        return origin == Origin.PRESET;
    }

    static List<AskedLine> of(List<Question> questions, Map<String, Answered> entries, Values values) {
        List<AskedLine> lines = new ArrayList<>();
        add(lines, questions, entries, values, new Inside(AnswerPath::of, 0, ""));
        return List.copyOf(lines);
    }

    /** Where questions stand: how the path of one is made of its key, how deep, and in which row. */
    private record Inside(Function<String, AnswerPath> path, int depth, String row) {
        Inside below(AnswerPath holder) {
            return new Inside(holder::key, depth + 1, row);
        }
    }

    private static void add(
            List<AskedLine> lines,
            List<Question> questions,
            Map<String, Answered> entries,
            Values values,
            Inside inside) {
        for (Question question : questions) {
            Answered answered = entries.get(question.key());
            if (answered.entry() instanceof Entry.Open) {
                continue;
            }
            Entry entry = answered.entry() instanceof Entry.Stocked stocked ? stocked.entry() : answered.entry();
            Optional<Object> value = Optional.ofNullable(values).flatMap(given -> given.get(question.key()));
            Optional<Link> link =
                    answered.entry() instanceof Entry.Linked linked ? Optional.of(linked.link()) : Optional.empty();
            AnswerPath path = inside.path().apply(question.key());
            lines.add(new AskedLine(
                    question,
                    path,
                    inside.depth(),
                    inside.row(),
                    answered.origin(),
                    link.map(Link::toString).orElse(answered.text()),
                    link,
                    answered.entry() instanceof Entry.Stocked stocked ? Optional.of(stocked.cell()) : Optional.empty(),
                    entry instanceof Entry.Quantity quantity
                            ? Optional.of(quantity.typed().range())
                            : Optional.empty(),
                    value));
            inside(lines, question, entry, value.orElse(null), path, inside.below(path));
        }
    }

    private static void inside(
            List<AskedLine> lines, Question question, Entry entry, Object value, AnswerPath path, Inside inside) {
        if (entry instanceof Entry.Group group) {
            add(lines, question.questions(), group.answers(), value instanceof Values values ? values : null, inside);
        } else if (entry instanceof Entry.OneOf oneOf) {
            for (Variant variant : question.variants()) {
                if (variant.key().equals(oneOf.variant())) {
                    Values chosen = value instanceof Chosen given ? given.values() : null;
                    add(
                            lines,
                            variant.questions(),
                            oneOf.answers(),
                            chosen,
                            new Inside(path.key(variant.key())::key, inside.depth(), inside.row()));
                }
            }
        } else if (entry instanceof Entry.Table table) {
            List<?> rows = value instanceof List<?> given ? given : List.of();
            for (int i = 0; i < table.rows().size(); i++) {
                Object rowValue = i < rows.size() ? rows.get(i) : null;
                Entry.Row row = table.rows().get(i);
                AnswerPath rowPath = path.row(row.id());
                inside(
                        lines,
                        question,
                        row.entry(),
                        rowValue,
                        rowPath,
                        new Inside(rowPath::key, inside.depth(), row.id()));
            }
        }
    }
}
