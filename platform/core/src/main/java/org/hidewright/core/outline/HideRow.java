package org.hidewright.core.outline;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hidewright.core.workshop.Table;
import org.hidewright.core.workshop.Tables;

/**
 * A hide that was drawn, as a row: a project and the workshop’s table of hides call its columns alike.
 *
 * <p>The table is brought by a bundle, and nothing here knows which: it is the one with these columns.
 *
 * @param flaws what is drawn on it
 */
public record HideRow(Outlined hide, List<Outlined> flaws) {
    public static final String OUTLINE = "outline";
    public static final String FLAWS = "flaws";

    public HideRow {
        flaws = List.copyOf(flaws);
    }

    /** The table that such rows go into; empty where none is installed. */
    public static Optional<Table> table(Tables tables) {
        return tables.all().stream()
                .filter(table ->
                        table.column(OUTLINE).isPresent() && table.column(FLAWS).isPresent())
                .findFirst();
    }

    /** Its cells, as they are typed; of the flaws none where there are none. */
    public Map<String, String> cells() {
        Map<String, String> cells = new LinkedHashMap<>();
        cells.put(OUTLINE, hide.text());
        if (!flaws.isEmpty()) {
            cells.put(FLAWS, flaws.stream().map(Outlined::text).collect(Collectors.joining("; ")));
        }
        return cells;
    }
}
