package org.hidewright.core.brought;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.JsonTrouble;

/** How a bundle names the tables it carries as texts: a header of its manifest lists their files. */
public final class TableFiles {
    /** {@code Hidewright-Tables: strap-slides.json}. */
    public static final String HEADER = "Hidewright-Tables";

    private TableFiles() {}

    /**
     * Paths in the bundle, each once.
     *
     * @param header as it stands in the manifest; null where there is none
     */
    public static List<String> paths(String header) {
        Set<String> paths = new LinkedHashSet<>();
        for (String part : header == null ? new String[0] : header.split(",")) {
            if (!part.isBlank()) {
                paths.add(part.strip());
            }
        }
        return List.copyOf(paths);
    }

    /** Ids of the tables that a text has columns or rows for; none where it cannot be read. */
    public static List<String> tables(String text) {
        Set<String> tables = new LinkedHashSet<>();
        try {
            JsonNode root = JsonText.read(text).root();
            for (String key : List.of(TablesReader.COLUMNS, TablesReader.ROWS)) {
                if (root instanceof JsonObject head && head.get(key).orElse(null) instanceof JsonObject inside) {
                    tables.addAll(inside.members().keySet());
                }
            }
        } catch (JsonTrouble unreadable) {
            return List.of(); // what is wrong with it is told when tables are asked for
        }
        return new ArrayList<>(tables);
    }
}
