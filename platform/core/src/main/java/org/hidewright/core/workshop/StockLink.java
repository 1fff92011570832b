package org.hidewright.core.workshop;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.Member;

/**
 * A question answered by the workshop.
 *
 * @param table id of the table
 * @param row id of a row, empty for every row
 * @param column key of a column, empty for the whole row
 */
public record StockLink(String table, String row, String column) {
    /** The keys it is written with. */
    public static final List<String> KEYS = List.of("workshop", "row", "column");

    /** The link that stands in a node, if one does. */
    public static Optional<StockLink> in(JsonNode node) {
        return node instanceof JsonObject object
                ? object.text(KEYS.get(0))
                        .map(table -> new StockLink(
                                table,
                                object.text(KEYS.get(1)).orElse(""),
                                object.text(KEYS.get(2)).orElse("")))
                : Optional.empty();
    }

    /** All links that stand in a node or inside it. */
    public static List<StockLink> within(JsonNode node) {
        Optional<StockLink> link = in(node);
        if (link.isPresent()) {
            return List.of(link.get());
        }
        Stream<JsonNode> inside = node instanceof JsonObject object
                ? object.members().values().stream().map(Member::value)
                : node instanceof JsonArray array ? array.items().stream() : Stream.empty();
        return inside.flatMap(one -> within(one).stream()).toList();
    }

    /** The link as it is written. */
    public Map<String, Object> written() {
        Map<String, Object> link = new LinkedHashMap<>();
        link.put(KEYS.get(0), table);
        link.put(KEYS.get(1), row);
        link.put(KEYS.get(2), column);
        link.values().removeIf(""::equals);
        return link;
    }

    /** The place of one cell: {@code table[row].column}. */
    public static String cell(Row row, String column) {
        return row + "." + column;
    }

    @Override
    public String toString() {
        return table + (row.isEmpty() ? "" : "[" + row + "]") + (column.isEmpty() ? "" : "." + column);
    }
}
