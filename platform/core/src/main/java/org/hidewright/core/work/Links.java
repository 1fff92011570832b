package org.hidewright.core.work;

import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.item.Item;
import org.hidewright.core.Nearest;
import org.hidewright.core.item.ItemFacts;
import org.hidewright.core.json.Place;
import org.hidewright.core.project.Link;
import org.hidewright.core.project.ProjectNotices;
import org.hidewright.core.work.Entry.Answered;
import org.hidewright.core.work.Resolver.LinkEnd;

/** Follows links to the answers of slips that were worked before. */
final class Links implements Function<Link, LinkEnd> {
    private final Function<String, WorkedSlip> worked;
    private final Set<String> slips;
    /** What was taken from items already; an item is a large thing to compare, and always the same one here. */
    private final Map<Item, List<Values>> facts = new IdentityHashMap<>();

    /**
     * Links of a project.
     *
     * @param worked what is known of a slip by its id; null where nothing is
     * @param slips all ids
     */
    Links(Function<String, WorkedSlip> worked, Set<String> slips) {
        this.worked = worked;
        this.slips = slips;
    }

    /**
     * Where a link starts.
     *
     * @param path of the question that is linked
     * @param place where the link stands in the file; null in a preset
     */
    record Foot(String path, Place place) {}

    /** The slips that entries link to by id, each with the first question that does. */
    static Map<String, Foot> sources(Map<String, Answered> entries) {
        Map<String, Foot> sources = new LinkedHashMap<>();
        collect(entries, "", sources);
        return sources;
    }

    private static void collect(Map<String, Answered> entries, String path, Map<String, Foot> sources) {
        entries.forEach((key, answered) -> collect(answered.entry(), path.isEmpty() ? key : path + "." + key, sources));
    }

    private static void collect(Entry entry, String path, Map<String, Foot> sources) {
        if (entry instanceof Entry.Linked linked) {
            sources.putIfAbsent(linked.link().slip(), new Foot(path, linked.place()));
        } else if (entry instanceof Entry.Group group) {
            collect(group.answers(), path, sources);
        } else if (entry instanceof Entry.OneOf oneOf) {
            collect(oneOf.answers(), path + "." + oneOf.variant(), sources);
        } else if (entry instanceof Entry.Table table) {
            table.rows().forEach(row -> collect(row.entry(), path + "[" + row.id() + "]", sources));
        }
    }

    @Override
    public LinkEnd apply(Link link) {
        if (!slips.contains(link.slip())) {
            return LinkEnd.none(Nearest.to(link.slip(), slips)
                    .map(near -> ProjectNotices.LINK_NO_SLIP_NEAREST.with(link.slip(), near))
                    .orElseGet(() -> ProjectNotices.LINK_NO_SLIP.with(link.slip(), String.join(", ", slips))));
        }
        WorkedSlip source = worked.apply(link.slip());
        if (source == null || source.installed().isEmpty()) {
            return LinkEnd.none(ProjectNotices.WAITS.with(link.slip()));
        }
        List<Answer> declared =
                source.installed().get().calculator().declaration().answers();
        Optional<Answer> answer = named(declared, link.answer());
        if (answer.isEmpty()) {
            return LinkEnd.none(noAnswer(link.slip(), link.answer(), declared));
        }
        if (source.answers().isEmpty()) {
            return LinkEnd.none(ProjectNotices.WAITS.with(link.slip()));
        }
        String name = link.slip() + "." + link.answer();
        boolean table = !answer.get().columns().isEmpty();
        if (!table && !(link.column().isEmpty() && link.row().isEmpty())) {
            return LinkEnd.none(ProjectNotices.LINK_NO_TABLE.with(name));
        }
        Optional<Object> value = source.answers().get().get(link.answer());
        if (value.isEmpty()) {
            return LinkEnd.none(ProjectNotices.LINK_NO_VALUE.with(name));
        }
        return table ? inTable(link, answer.get(), value.get()) : new LinkEnd(value, answer.get(), null);
    }

    private LinkEnd inTable(Link link, Answer table, Object value) {
        String name = link.slip() + "." + link.answer();
        if (value instanceof Item && link.column().isEmpty() && link.row().isEmpty()) {
            return new LinkEnd(Optional.of(value), table, null);
        }
        if (link.column().isEmpty()) {
            return LinkEnd.none(ProjectNotices.LINK_NO_COLUMN.with(name, String.join(", ", keys(table.columns()))));
        }
        Optional<Answer> column = named(table.columns(), link.column());
        if (column.isEmpty()) {
            return LinkEnd.none(noAnswer(name, link.column(), table.columns()));
        }
        List<Values> rows = rows(value);
        if (link.row().isEmpty() && !(value instanceof Values)) {
            List<Object> all = rows.stream()
                    .flatMap(row -> row.get(link.column()).stream())
                    .toList();
            return new LinkEnd(Optional.of(all), column.get(), null);
        }
        Optional<Values> row = rows.stream()
                .filter(candidate -> link.row().isEmpty() || candidate.rowId().equals(link.row()))
                .findFirst();
        if (row.isEmpty()) {
            return LinkEnd.none(noRow(link.row(), name, rowIds(rows)));
        }
        return row.get()
                .get(link.column())
                .map(found -> new LinkEnd(Optional.of(found), column.get(), null))
                .orElseGet(() -> LinkEnd.none(ProjectNotices.LINK_NO_VALUE.with(link.toString())));
    }

    private List<Values> rows(Object value) {
        return value instanceof Item item ? facts.computeIfAbsent(item, ItemFacts::rows) : ItemFacts.rowsOf(value);
    }

    private static Notice noRow(String row, String table, List<String> ids) {
        return Nearest.to(row, ids)
                .map(near -> ProjectNotices.LINK_NO_ROW_NEAREST.with(row, table, near))
                .orElseGet(() -> ProjectNotices.LINK_NO_ROW.with(row, table, String.join(", ", ids)));
    }

    private static List<String> keys(List<Answer> answers) {
        return answers.stream().map(Answer::key).toList();
    }

    private static List<String> rowIds(List<Values> rows) {
        return rows.stream().map(Values::rowId).toList();
    }

    private static Optional<Answer> named(List<Answer> answers, String key) {
        return answers.stream().filter(answer -> answer.key().equals(key)).findFirst();
    }

    private static Notice noAnswer(String where, String key, List<Answer> declared) {
        List<String> keys = keys(declared);
        return Nearest.to(key, keys)
                .map(near -> ProjectNotices.LINK_NO_ANSWER_NEAREST.with(where, key, near))
                .orElseGet(() -> ProjectNotices.LINK_NO_ANSWER.with(where, key, String.join(", ", keys)));
    }
}
