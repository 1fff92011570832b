package org.hidewright.core.workshop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.measure.Unit;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.JsonScalar;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.JsonTrouble;

/** One row of a table, kept as it was written. Two rows are equal when table and text are. */
public final class Row {
    /** The key of a row's id, beside its columns. */
    public static final String ID = "id";

    /** Keys that a row may have beside its columns. */
    public static final List<String> RESERVED = List.of(ID, Workshop.CURRENCY, Bringer.KEY);

    private final String table;
    private final String id;
    private final JsonText source;
    private final JsonObject node;

    Row(String table, String id, JsonText source, JsonObject node) {
        this.table = table;
        this.id = id;
        this.source = source;
        this.node = node;
    }

    /** The currency of amounts in it that name none, where it is not that of the workshop. */
    Optional<Unit> currency() {
        return Workshop.currency(node);
    }

    /** The currency of amounts in it that name none. */
    public Optional<Unit> currencyIn(Workshop workshop) {
        return currency().or(workshop::currency);
    }

    /** The bundle that a project’s copy was taken from; empty for what the maker wrote. */
    Optional<Bringer> from() {
        return node.get(Bringer.KEY).flatMap(Bringer::in);
    }

    /** The row as it was written, with something more in it. */
    Row with(String key, String json) {
        try {
            JsonText alone = JsonText.read(text());
            JsonText more = alone.withMember((JsonObject) alone.root(), key, json);
            return new Row(table, id, more, (JsonObject) more.root());
        } catch (JsonTrouble e) {
            throw new IllegalStateException("a row that was read can be read", e);
        }
    }

    /** Id of its table. */
    public String table() {
        return table;
    }

    public String id() {
        return id;
    }

    public JsonObject node() {
        return node;
    }

    /** The row exactly as it was written. */
    public String text() {
        return source.textOf(node);
    }

    /**
     * What is typed in a cell; several values as one text with semicolons. Empty where the cell is, and where it holds
     * neither a text nor a number nor several of them.
     */
    public Optional<String> cell(String column) {
        JsonNode cell = node.get(column).orElse(null);
        if (cell instanceof JsonArray several) {
            List<String> texts = new ArrayList<>();
            several.items().forEach(item -> typed(item).ifPresent(texts::add));
            return texts.size() == several.items().size() && !texts.isEmpty()
                    ? Optional.of(String.join("; ", texts))
                    : Optional.empty();
        }
        return typed(cell);
    }

    private static Optional<String> typed(JsonNode node) {
        return node instanceof JsonScalar scalar && scalar.type() != JsonScalar.Type.NULL
                ? Optional.of(scalar.text())
                : Optional.empty();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Row that && table.equals(that.table) && text().equals(that.text());
    }

    @Override
    public int hashCode() {
        return id.hashCode();
    }

    @Override
    public String toString() {
        return table + "[" + id + "]";
    }
}
