package org.hidewright.core.workshop;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.declaration.DeclaredTable;

/**
 * A table that is installed, with the columns of all bundles that extend it.
 *
 * @param declared as the first bundle declared it; its texts hold the title
 * @param columns those of the first bundle first
 */
public record Table(DeclaredTable declared, List<Column> columns) {
    public Table {
        columns = List.copyOf(columns);
    }

    public String id() {
        return declared.id();
    }

    /** Keys of the columns, in their order. */
    public List<String> keys() {
        return columns.stream().map(Column::key).toList();
    }

    public Optional<Column> column(String key) {
        return columns.stream().filter(column -> column.key().equals(key)).findFirst();
    }
}
