package org.hidewright.core.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.DeclaredCalculator;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Values;
import org.hidewright.core.wording.TypedCell;
import org.hidewright.core.workshop.Column;
import org.hidewright.core.workshop.Row;
import org.hidewright.core.workshop.Table;
import org.hidewright.core.workshop.Tables;
import org.hidewright.core.workshop.WorkshopText;

/**
 * Rows that answers have for the workshop, such as what is left of leather that was cut, put away into its tables. A row that was taken
 * from there is changed, for that leather is no more what it was; any other is added. Put away again, nothing changes; and what is not as it
 * was taken is left alone, or the cuts of another project would be forgotten.
 *
 * @param workshop the workshop with them
 * @param rows which rows they became
 */
public record PutAway(WorkshopText workshop, List<Put> rows) {
    /** What became of a row. */
    public enum Became {
        CHANGED,
        ADDED,
        THERE_ALREADY,
        /** Left alone, since it is not as the project took it: something else may have been cut from it. */
        OTHERWISE_NOW
    }

    /**
     * One row.
     *
     * @param table id of its table
     * @param row its id there
     */
    public record Put(String table, String row, Became became) {}

    public PutAway {
        rows = List.copyOf(rows);
    }

    /** @param tables the tables that are installed; rows for another are left out */
    public static PutAway of(WorkedProject worked, Tables tables, WorkshopText workshop) {
        PutAway all = new PutAway(workshop, List.of());
        for (WorkedSlip slip : worked.slips().values()) {
            if (slip.slip().whatIf().isPresent() || slip.answers().isEmpty()) {
                continue; // nothing is cut by what only tries something out
            }
            DeclaredCalculator calculator = slip.installed().orElseThrow().calculator();
            for (Answer answer : calculator.declaration().answers()) {
                Optional<Table> table = answer.stock().flatMap(tables::find);
                Object rows = slip.answers().get().get(answer.key()).orElse(null);
                if (table.isPresent() && rows instanceof List<?> found) {
                    for (Object row : found) {
                        all = all.with(table.get(), slip, (Values) row, cells(calculator, answer, (Values) row));
                    }
                }
            }
        }
        return all;
    }

    private static Map<String, String> cells(DeclaredCalculator calculator, Answer answer, Values row) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (Answer column : answer.columns()) {
            row.get(column.key())
                    .ifPresent(value ->
                            cells.put(column.key(), TypedCell.of(Optional.of(calculator.texts()), column, value)));
        }
        return cells;
    }

    private PutAway with(Table table, WorkedSlip slip, Values row, Map<String, String> cells) {
        List<Row> there = workshop.workshop().rows(table.id());
        Optional<Row> taken = there.stream()
                .filter(one -> slip.asked().stream()
                        .anyMatch(line -> line.row().equals(row.rowId())
                                && line.cell()
                                        .filter(cell -> cell.startsWith(one.toString()))
                                        .isPresent()))
                .findFirst();
        // of several alike each is a row of its own
        Stream<Row> others = there.stream()
                .filter(one -> rows.stream()
                        .noneMatch(put ->
                                put.table().equals(table.id()) && put.row().equals(one.id())));
        Optional<Row> same = (taken.isPresent() ? taken.stream() : others)
                .filter(one -> holds(one, cells))
                .findFirst();
        if (same.isPresent()) {
            return and(workshop, new Put(table.id(), same.get().id(), Became.THERE_ALREADY));
        }
        if (taken.isPresent() && !isAsTaken(taken.get(), slip, row, cells.keySet())) {
            return and(workshop, new Put(table.id(), taken.get().id(), Became.OTHERWISE_NOW));
        }
        return taken.map(one -> changed(table, one, cells)).orElseGet(() -> added(table, slip, row, cells));
    }

    private static boolean holds(Row row, Map<String, String> cells) {
        return cells.entrySet().stream()
                .allMatch(cell ->
                        row.cell(cell.getKey()).filter(cell.getValue()::equals).isPresent());
    }

    /**
     * Whether the cells that would be written over still read as the project took them; what it did not take must be empty, or it
     * would be lost. A cell beside which something was typed is the maker's own.
     */
    private static boolean isAsTaken(Row now, WorkedSlip slip, Values row, Set<String> columns) {
        Map<String, String> taken = new HashMap<>();
        Set<String> typed = new HashSet<>();
        for (AskedLine line : slip.asked()) {
            if (line.row().equals(row.rowId()) && line.cell().isPresent()) {
                columns.stream()
                        .filter(column -> line.cell().get().equals(now + "." + column))
                        .forEach(column -> taken.put(column, line.text()));
            } else if (line.row().equals(row.rowId())) {
                typed.add(line.question().key());
            }
        }
        return columns.stream()
                .filter(column -> !typed.contains(column))
                .allMatch(column -> now.cell(column).orElse("").equals(taken.getOrDefault(column, "")));
    }

    private PutAway changed(Table table, Row row, Map<String, String> cells) {
        List<String> columns = table.keys();
        WorkshopText changed = workshop;
        for (Map.Entry<String, String> cell : cells.entrySet()) {
            Row now = changed.workshop().rows(table.id()).stream()
                    .filter(one -> one.id().equals(row.id()))
                    .findFirst()
                    .orElseThrow();
            changed = changed.typing(now, cell.getKey(), cell.getValue(), columns);
        }
        return and(changed, new Put(table.id(), row.id(), Became.CHANGED));
    }

    private PutAway added(Table table, WorkedSlip slip, Values row, Map<String, String> cells) {
        Map<String, String> all = new LinkedHashMap<>();
        String name =
                slip.slip().id() + ", " + row.rowId(); // a name that has to be there; the maker gives it a better one
        for (Column column : table.columns()) {
            boolean named =
                    column.question().kind() == Kind.TEXT && !column.question().optional();
            String cell = cells.getOrDefault(column.key(), named ? name : "");
            if (!cell.isEmpty()) {
                all.put(column.key(), cell);
            }
        }
        String id = workshop.freeId(table.id(), row.rowId() + "-rest");
        return and(workshop.adding(table.id(), id, all), new Put(table.id(), id, Became.ADDED));
    }

    private PutAway and(WorkshopText changed, Put put) {
        List<Put> all = new ArrayList<>(rows);
        all.add(put);
        return new PutAway(changed, all);
    }
}
