package org.hidewright.window.workshop;

import java.text.Normalizer;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.hidewright.api.declaration.Kind;
import org.hidewright.core.workshop.Row;
import org.hidewright.core.workshop.Table;
import org.hidewright.core.workshop.Tables.BroughtRow;
import org.hidewright.core.workshop.Workshop;
import org.hidewright.core.workshop.WorkshopText;

/** What a new row of the maker’s own has: an id, and the cells of a bundle’s row that it is a copy of. */
final class OwnRow {
    private OwnRow() {}

    /** After its name, where it has one that can be written as an id; else after its table. */
    static String id(WorkshopText text, String table, Map<String, String> cells) {
        String plain = Normalizer.normalize(cells.getOrDefault("name", ""), Normalizer.Form.NFD)
                .replace("ß", "ss")
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        int number = text.workshop().rows(table).size() + 1;
        return text.freeId(table, plain.isEmpty() ? table + "-" + number : plain);
    }

    /** The cells of a row that a bundle brings, with the currency of its amounts where that is another here. */
    static Map<String, String> cells(Table table, BroughtRow brought, Workshop into) {
        Row row = brought.row();
        Map<String, String> cells = new LinkedHashMap<>();
        row.node().members().keySet().stream()
                .filter(key -> !Row.RESERVED.contains(key))
                .forEach(key -> row.cell(key).ifPresent(cell -> cells.put(key, cell)));
        boolean amounts = table.columns().stream()
                .anyMatch(column -> column.question().kind() == Kind.MONEY && cells.containsKey(column.key()));
        if (amounts && !brought.currency().equals(into.currency())) {
            brought.currency().ifPresent(unit -> cells.put("currency", unit.symbol()));
        }
        return cells;
    }
}
