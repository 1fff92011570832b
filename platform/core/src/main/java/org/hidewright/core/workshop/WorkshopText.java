package org.hidewright.core.workshop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.wording.Remark;

/**
 * The text of a workshop file as it is changed: rows added, moved, taken out, cells typed. Every character that is not changed
 * stays as it was, also of what is not understood. Immutable.
 */
public final class WorkshopText {
    private static final String NAME = "name";
    private static final int IN_TABLES = 1;
    private static final int IN_TABLE = 2;

    private final JsonText source;
    private final Workshop workshop;
    private final List<Remark> remarks;

    private WorkshopText(Workshop workshop, List<Remark> remarks) {
        this.source = workshop.source();
        this.workshop = workshop;
        this.remarks = remarks;
    }

    /** A text that was read; empty where it is no workshop. */
    public static Optional<WorkshopText> of(WorkshopReader.Result read) {
        return read.workshop().map(workshop -> new WorkshopText(workshop, read.remarks()));
    }

    /** A workshop in which nothing is yet. */
    public static WorkshopText begun(String name) {
        String text = "{\n  \"workshop\": " + WorkshopReader.FORMAT + ",\n  \"name\": " + JsonText.quoted(name)
                + ",\n  \"tables\": {}\n}\n";
        return of(WorkshopReader.read(text)).orElseThrow();
    }

    public Workshop workshop() {
        return workshop;
    }

    /** What is wrong with it, cells aside. */
    public List<Remark> remarks() {
        return remarks;
    }

    /** Every character of it. */
    public String text() {
        return source.text();
    }

    /** What can be taken from it. */
    public Stock stock(Stock tables) {
        return remarks.stream().anyMatch(Remark::stops) ? tables.withParts(workshop) : tables.with(workshop);
    }

    /** The currency of amounts that name none, as it was written; empty where none was. */
    public String currency() {
        return head(Workshop.CURRENCY);
    }

    private String head(String key) {
        return workshop.node().text(key).orElse("");
    }

    /** With another name of the workshop; an empty one takes it away. */
    public WorkshopText named(String name) {
        return withHead(NAME, name);
    }

    /** With another currency of amounts that name none; an empty one takes it away. */
    public WorkshopText inCurrency(String code) {
        return withHead(Workshop.CURRENCY, code);
    }

    private WorkshopText withHead(String key, String typed) {
        if (typed.equals(head(key))) {
            return this;
        }
        JsonObject head = workshop.node();
        Optional<JsonNode> there = head.get(key);
        return edited(() -> typed.isBlank()
                ? there.isPresent() ? source.without(head, key) : source
                : there.isPresent()
                        ? source.with(there.get(), JsonText.quoted(typed))
                        : source.withLines(key, JsonText.quoted(typed)));
    }

    /**
     * With something typed in a cell; a blank text empties it.
     *
     * @param columns in their order, so that a cell that was empty comes to stand behind those before it
     */
    public WorkshopText typing(Row row, String column, String typed, List<String> columns) {
        if (row.cell(column).orElse("").equals(typed)) {
            return this;
        }
        JsonObject node = row.node();
        Optional<JsonNode> there = node.get(column);
        return edited(() -> typed.isBlank()
                ? there.isPresent() ? source.without(node, column) : source
                : there.isPresent()
                        ? source.with(there.get(), JsonText.quoted(typed))
                        : source.withMemberBehind(
                                node, lastBefore(node, column, columns), column, JsonText.quoted(typed)));
    }

    private static String lastBefore(JsonObject row, String column, List<String> columns) {
        List<String> before = columns.subList(0, Math.max(0, columns.indexOf(column)));
        return before.stream().filter(key -> row.get(key).isPresent()).reduce(Row.ID, (first, next) -> next);
    }

    /** With another id of a row, which no other row of its table has. */
    public WorkshopText calling(Row row, String id) {
        return edited(() -> source.with(row.node().get(Row.ID).orElseThrow(), JsonText.quoted(id)));
    }

    /**
     * With a row after the last of a table, which need not be there.
     *
     * @param id that no other row of the table has
     * @param cells what is typed in its cells, by column
     */
    public WorkshopText adding(String table, String id, Map<String, String> cells) {
        Map<String, String> all = new LinkedHashMap<>();
        all.put(Row.ID, id);
        all.putAll(cells);
        String json = all.entrySet().stream()
                .map(cell -> JsonText.quoted(cell.getKey()) + ": " + JsonText.quoted(cell.getValue()))
                .collect(Collectors.joining(", ", "{", "}"));
        JsonNode there = tables().flatMap(tables -> tables.get(table)).orElse(null);
        return edited(() -> there instanceof JsonArray rows && !rows.items().isEmpty()
                ? source.withItem(rows, rows.items().size(), json)
                : withFirst(table, there, json));
    }

    private JsonText withFirst(String table, JsonNode there, String row) throws JsonTrouble {
        String rows = source.indented("[\n" + row + "\n]", IN_TABLE);
        if (there != null) {
            return source.with(there, rows);
        }
        JsonObject tables = tables().orElse(null);
        return tables != null && !tables.members().isEmpty()
                ? source.withMember(tables, table, rows)
                : withTables(tables, "{\n" + JsonText.quoted(table) + ": [\n" + row + "\n]\n}");
    }

    private JsonText withTables(JsonObject empty, String json) throws JsonTrouble {
        return empty == null
                ? source.withLines(Workshop.TABLES, json)
                : source.with(empty, source.indented(json, IN_TABLES));
    }

    /**
     * With a copy of a row right after it.
     *
     * @param id that no other row of the table has
     */
    public WorkshopText copying(Row row, String id) {
        return edited(() -> {
            JsonText alone = JsonText.read(row.text());
            String copy = alone.with(((JsonObject) alone.root()).get(Row.ID).orElseThrow(), JsonText.quoted(id))
                    .text();
            return source.withItem(array(row), at(row) + 1, copy);
        });
    }

    /** Without a row. */
    public WorkshopText removing(Row row) {
        return edited(() -> source.withoutItem(array(row), at(row)));
    }

    /** With a row further up or down; one that is at its end already stays. */
    public WorkshopText moving(Row row, int by) {
        List<Row> rows = workshop.rows(row.table());
        int to = rows.indexOf(row) + by;
        if (to < 0 || to >= rows.size()) {
            return this;
        }
        int place = at(rows.get(to));
        WorkshopText without = removing(row);
        return without.edited(() -> without.source.withItem(without.array(row), place, row.text()));
    }

    private Optional<JsonObject> tables() {
        return workshop.node()
                .get(Workshop.TABLES)
                .filter(node -> node instanceof JsonObject)
                .map(node -> (JsonObject) node);
    }

    private JsonArray array(Row row) {
        return (JsonArray) tables().flatMap(tables -> tables.get(row.table())).orElseThrow();
    }

    /** Among all items of its table, also those that are no rows. */
    private int at(Row row) {
        return array(row).items().indexOf(row.node());
    }

    /** An id for a new row that no other of its table has. */
    public String freeId(String table, String wanted) {
        List<String> taken = new ArrayList<>();
        workshop.rows(table).forEach(row -> taken.add(row.id()));
        String free = wanted;
        for (int i = 2; taken.contains(free); i++) {
            free = wanted + "-" + i;
        }
        return free;
    }

    private interface Change {
        JsonText made() throws JsonTrouble;
    }

    private WorkshopText edited(Change change) {
        try {
            return of(WorkshopReader.read(change.made().text())).orElseThrow();
        } catch (JsonTrouble e) {
            throw new IllegalStateException("what is put into it is JSON", e);
        }
    }
}
