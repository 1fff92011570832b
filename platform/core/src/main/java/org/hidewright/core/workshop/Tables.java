package org.hidewright.core.workshop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.declaration.DeclaredTable;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.measure.Unit;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.wording.Remark;

/**
 * The tables that are installed: those every workshop has, and those that bundles bring or extend, with the rows that bundles
 * bring. Immutable.
 */
public final class Tables {
    private final Map<String, Table> byId = new LinkedHashMap<>();
    private final Map<String, Map<String, BroughtRow>> rows = new LinkedHashMap<>();
    private final List<Remark> problems = new ArrayList<>();

    private Tables() {}

    /**
     * A table as one bundle declares it.
     *
     * @param bundle its symbolic name
     */
    public record Brought(DeclaredTable table, String bundle) {}

    /**
     * A row that a bundle brings.
     *
     * @param currency of amounts in it that name none
     */
    public record BroughtRow(Row row, Optional<Unit> currency, Bringer from) {}

    /** Tables put together from what bundles declare, the earlier first; a column that is there already is told. */
    public static Tables of(List<Brought> brought) {
        Tables tables = new Tables();
        brought.forEach(tables::add);
        return tables;
    }

    /** The same with rows of bundles, the earlier first; a row whose id is there already is told. */
    public Tables with(List<BroughtRow> brought) {
        Tables with = copy();
        brought.forEach(with::add);
        return with;
    }

    /** The same with more columns, after those that are there. */
    public Tables and(List<Brought> brought) {
        Tables with = copy();
        brought.forEach(with::add);
        return with;
    }

    /** The same without what a bundle brings, as if it were not installed. */
    public Tables without(String bundle) {
        Tables left = new Tables();
        byId.forEach((id, table) -> {
            List<Column> columns = table.columns().stream()
                    .filter(column -> !column.bundle().equals(bundle))
                    .toList();
            if (!columns.isEmpty()) {
                left.byId.put(id, new Table(table.declared(), columns));
            }
        });
        rows.forEach((table, inside) -> inside.forEach((id, row) -> {
            if (!row.from().bundle().equals(bundle)) {
                left.rows.computeIfAbsent(table, fresh -> new LinkedHashMap<>()).put(id, row);
            }
        }));
        return left;
    }

    private Tables copy() {
        Tables copy = new Tables();
        copy.byId.putAll(byId);
        copy.problems.addAll(problems);
        rows.forEach((table, inside) -> copy.rows.put(table, new LinkedHashMap<>(inside)));
        return copy;
    }

    private void add(BroughtRow brought) {
        Row row = brought.row();
        BroughtRow first = rows.computeIfAbsent(row.table(), table -> new LinkedHashMap<>())
                .putIfAbsent(row.id(), brought);
        if (first != null) {
            problems.add(Remark.of(
                    WorkshopNotices.BROUGHT_ROW_TAKEN.with(
                            brought.from().bundle(),
                            row.toString(),
                            first.from().bundle()),
                    CoreTexts.TEXTS));
        }
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

    /** The rows that bundles bring to a table. */
    public List<BroughtRow> rows(String table) {
        return List.copyOf(rows.getOrDefault(table, Map.of()).values());
    }

    /** A row that a bundle brings. */
    public Optional<BroughtRow> row(String table, String id) {
        return Optional.ofNullable(rows.getOrDefault(table, Map.of()).get(id));
    }

    /** Whether a bundle brings any row. */
    public boolean haveRows() {
        return !rows.isEmpty();
    }

    /** Columns and rows that were left out because another bundle has the key. */
    public List<Remark> problems() {
        return List.copyOf(problems);
    }
}
