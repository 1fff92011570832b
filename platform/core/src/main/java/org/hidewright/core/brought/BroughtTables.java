package org.hidewright.core.brought;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.measure.Unit;
import org.hidewright.core.workshop.Bringer;
import org.hidewright.core.workshop.Row;
import org.hidewright.core.workshop.Tables.Brought;
import org.hidewright.core.workshop.Tables.BroughtRow;
import org.hidewright.core.workshop.Workshop;

/**
 * What the text of one bundle brings.
 *
 * @param columns tables, or more columns for some
 * @param rows those that are sound by themselves; their cells are looked at once all columns are known
 */
public record BroughtTables(List<Brought> columns, Workshop rows, Bringer from) {
    public BroughtTables {
        columns = List.copyOf(columns);
    }

    /** The rows of its tables. */
    List<Row> all() {
        return rows.tables().stream()
                .flatMap(table -> rows.rows(table).stream())
                .toList();
    }

    /** How many rows there are. */
    public int count() {
        return all().size();
    }

    BroughtRow brought(Row row) {
        Optional<Unit> currency = row.currencyIn(rows);
        return new BroughtRow(row, currency, from);
    }
}
