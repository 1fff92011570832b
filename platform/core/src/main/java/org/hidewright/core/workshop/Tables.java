package org.hidewright.core.workshop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.declaration.DeclaredTable;
import org.hidewright.api.declaration.Question;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.wording.Remark;

/** The tables that are installed: those every workshop has, and those that bundles bring or extend. Immutable. */
public final class Tables {
    private final Map<String, Table> byId = new LinkedHashMap<>();
    private final List<Remark> problems = new ArrayList<>();

    private Tables() {}

    /**
     * A table as one bundle declares it.
     *
     * @param bundle its symbolic name
     */
    public record Brought(DeclaredTable table, String bundle) {}

    /** Tables put together from what bundles declare, the earlier first; a column that is there already is told. */
    public static Tables of(List<Brought> brought) {
        Tables tables = new Tables();
        brought.forEach(tables::add);
        return tables;
    }

    private void add(Brought brought) {
        Table there = byId.get(brought.table().id());
        List<Column> columns = new ArrayList<>(there == null ? List.of() : there.columns());
        for (Question question : brought.table().columns()) {
            Optional<Column> first = there == null ? Optional.empty() : there.column(question.key());
            if (first.isPresent()) {
                problems.add(Remark.of(
                        WorkshopNotices.COLUMN_TAKEN.with(
                                brought.bundle(),
                                question.key(),
                                brought.table().id(),
                                first.get().bundle()),
                        CoreTexts.TEXTS));
            } else {
                columns.add(new Column(question, brought.table().texts(), brought.bundle()));
            }
        }
        byId.put(brought.table().id(), new Table(there == null ? brought.table() : there.declared(), columns));
    }

    public Optional<Table> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** In the order they were brought. */
    public List<Table> all() {
        return List.copyOf(byId.values());
    }

    public List<String> ids() {
        return List.copyOf(byId.keySet());
    }

    /** Columns that were left out because another bundle has the key. */
    public List<Remark> problems() {
        return List.copyOf(problems);
    }
}
