package org.hidewright.core.workshop;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hidewright.api.measure.Dimension;
import org.hidewright.api.measure.Unit;
import org.hidewright.api.measure.Units;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.JsonScalar;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.json.Place;

/**
 * The rows of a workshop file, or the copies of some of them that a project keeps. What is no sound row is passed over;
 * {@link WorkshopReader} tells it. Immutable.
 */
public final class Workshop {
    static final String TABLES = "tables";
    static final String CURRENCY = "currency";
    /** Of a project's copy: the tables it holds whole. */
    static final String WHOLE = "whole";

    private final JsonText source;
    private final JsonObject node;
    private final Map<String, List<Row>> tables = new LinkedHashMap<>();

    private Workshop(JsonText source, JsonObject node) {
        this.source = source;
        this.node = node;
        if (node.get(TABLES).orElse(null) instanceof JsonObject tablesNode) {
            tablesNode.members().forEach((table, member) -> {
                if (member.value() instanceof JsonArray rows) {
                    tables.put(table, rows(table, rows));
                }
            });
        }
    }

    /** The workshop that stands in an object of a text. */
    public static Workshop in(JsonText source, JsonObject node) {
        return new Workshop(source, node);
    }

    /** The workshop in a text of its own that was an object of another text. */
    public static Workshop alone(String text) {
        try {
            JsonText own = JsonText.read(text);
            return new Workshop(own, (JsonObject) own.root());
        } catch (JsonTrouble e) {
            throw new IllegalStateException("what was read in its place can be read alone", e);
        }
    }

    private List<Row> rows(String table, JsonArray array) {
        List<Row> rows = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        array.items().forEach(item -> {
            if (item instanceof JsonObject row) {
                row.text(Row.ID)
                        .filter(id -> !id.isEmpty() && ids.add(id))
                        .ifPresent(id -> rows.add(new Row(table, id, source, row)));
            }
        });
        return List.copyOf(rows);
    }

    /** The workshop's name, empty where none is given. */
    public String name() {
        return node.text("name").orElse("");
    }

    /** The currency of amounts that name none. */
    public Optional<Unit> currency() {
        return currency(node);
    }

    static Optional<Unit> currency(JsonObject node) {
        return node.text(CURRENCY).flatMap(code -> Units.find(Dimension.MONEY, code));
    }

    /** Ids of the tables that have rows here, in the order of the file. */
    public List<String> tables() {
        return List.copyOf(tables.keySet());
    }

    /** The sound rows of a table, in the order of the file; none where there is no such table. */
    public List<Row> rows(String table) {
        return tables.getOrDefault(table, List.of());
    }

    public Optional<Row> row(String table, String id) {
        return rows(table).stream().filter(row -> row.id().equals(id)).findFirst();
    }

    /** Where a table stands in the file. */
    public Place place(String table) {
        return ((JsonObject) node.get(TABLES).orElseThrow())
                .members()
                .get(table)
                .place();
    }

    /** Of a project's copy: whether it holds every row that the table had. */
    boolean whole(String table) {
        return node.get(WHOLE).orElse(null) instanceof JsonArray whole
                && whole.items().stream()
                        .anyMatch(item -> item instanceof JsonScalar scalar
                                && scalar.text().equals(table));
    }

    /** Whether the same rows are in both, each as it was written, under the same head. */
    public boolean sameAs(Workshop other) {
        return tables.equals(other.tables)
                && currency().equals(other.currency())
                && tables().stream().allMatch(table -> whole(table) == other.whole(table));
    }

    /** The text it stands in. */
    JsonText source() {
        return source;
    }

    /** The object it is. */
    JsonObject node() {
        return node;
    }

    /** The characters it stands in. */
    public String text() {
        return source.textOf(node);
    }
}
