package org.hidewright.core.work;

import java.util.List;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Values;
import org.hidewright.core.Nearest;
import org.hidewright.core.project.Link;
import org.hidewright.core.project.ProjectNotices;
import org.hidewright.core.work.Entry.Answered;
import org.hidewright.core.work.Resolver.LinkEnd;

/** Follows links to the answers of slips that were worked before. */
final class Links implements Function<Link, LinkEnd> {
    private final Map<String, WorkedSlip> worked;
    private final Set<String> slips;

    Links(Map<String, WorkedSlip> worked, Set<String> slips) {
        this.worked = worked;
        this.slips = slips;
    }

    /** Ids of the slips that entries link to. */
    static Set<String> sources(Map<String, Answered> entries) {
        Set<String> sources = new LinkedHashSet<>();
        entries.values().forEach(answered -> collect(answered.entry(), sources));
        return sources;
    }

    private static void collect(Entry entry, Set<String> sources) {
        if (entry instanceof Entry.Linked linked) {
            sources.add(linked.link().slip());
        } else if (entry instanceof Entry.Group group) {
            group.answers().values().forEach(answered -> collect(answered.entry(), sources));
        } else if (entry instanceof Entry.OneOf oneOf) {
            oneOf.answers().values().forEach(answered -> collect(answered.entry(), sources));
        } else if (entry instanceof Entry.Table table) {
            table.rows().forEach(row -> collect(row.entry(), sources));
        }
    }

    WorkedSlip slip(String id) {
        return worked.get(id);
    }

    @Override
    public LinkEnd apply(Link link) {
        if (!slips.contains(link.slip())) {
            return LinkEnd.none(Nearest.to(link.slip(), slips)
                    .map(near -> ProjectNotices.LINK_NO_SLIP_NEAREST.with(link.slip(), near))
                    .orElseGet(() -> ProjectNotices.LINK_NO_SLIP.with(link.slip(), String.join(", ", slips))));
        }
        WorkedSlip source = worked.get(link.slip());
        if (source == null || source.installed().isEmpty()) {
            return LinkEnd.none(ProjectNotices.WAITS.with(link.slip()));
        }
        List<Answer> declared = source.installed().get().calculator().declaration().answers();
        Optional<Answer> answer = named(declared, link.answer());
        if (answer.isEmpty()) {
            return LinkEnd.none(noAnswer(link.slip(), link.answer(), declared));
        }
        if (source.answers().isEmpty()) {
            return LinkEnd.none(ProjectNotices.WAITS.with(link.slip()));
        }
        Optional<Object> value = source.answers().get().get(link.answer());
        if (value.isEmpty()) {
            return LinkEnd.none(ProjectNotices.WAITS.with(link.slip()));
        }
        return answer.get().kind() == Kind.ROWS || !link.column().isEmpty()
                ? inTable(link, answer.get(), value.get())
                : new LinkEnd(value, answer.get(), null);
    }

    private static LinkEnd inTable(Link link, Answer table, Object value) {
        Optional<Answer> column = named(table.columns(), link.column());
        if (column.isEmpty()) {
            return LinkEnd.none(noAnswer(link.slip() + "." + link.answer(), link.column(), table.columns()));
        }
        List<Values> rows = value instanceof List<?> list
                ? list.stream().map(Values.class::cast).toList()
                : List.of((Values) value);
        if (link.row().isEmpty() && value instanceof List<?>) {
            List<Object> all = rows.stream().flatMap(row -> row.get(link.column()).stream()).toList();
            return new LinkEnd(Optional.of(all), column.get(), null);
        }
        return rows.stream()
                .filter(row -> link.row().isEmpty() || row.rowId().equals(link.row()))
                .findFirst()
                .flatMap(row -> row.get(link.column()))
                .map(found -> new LinkEnd(Optional.of(found), column.get(), null))
                .orElseGet(() -> LinkEnd.none(ProjectNotices.LINK_NO_ROW.with(
                        link.row(), link.slip() + "." + link.answer(), String.join(", ", rowIds(rows)))));
    }

    private static List<String> rowIds(List<Values> rows) {
        return rows.stream().map(Values::rowId).toList();
    }

    private static Optional<Answer> named(List<Answer> answers, String key) {
        return answers.stream().filter(answer -> answer.key().equals(key)).findFirst();
    }

    private static Notice noAnswer(String where, String key, List<Answer> declared) {
        List<String> keys = declared.stream().map(Answer::key).toList();
        return Nearest.to(key, keys)
                .map(near -> ProjectNotices.LINK_NO_ANSWER_NEAREST.with(where, key, near))
                .orElseGet(() -> ProjectNotices.LINK_NO_ANSWER.with(where, key, String.join(", ", keys)));
    }
}
