package org.hidewright.core.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.measure.Range;
import org.hidewright.api.measure.Unit;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.Nearest;
import org.hidewright.core.json.JsonNode.Member;
import org.hidewright.core.json.JsonNotices;
import org.hidewright.core.project.ProjectNotices;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.work.Entry.Answered;
import org.hidewright.core.work.Entry.Origin;
import org.hidewright.core.workshop.Column;
import org.hidewright.core.workshop.Row;
import org.hidewright.core.workshop.StockLink;
import org.hidewright.core.workshop.Table;
import org.hidewright.core.workshop.Tables;
import org.hidewright.core.workshop.Workshop;
import org.hidewright.core.workshop.WorkshopNotices;

/** Looks every cell of a workshop over, as it would be read by a question that is asked like its column. */
public final class StockCheck {
    private final Tables tables;
    private final List<Remark> remarks = new ArrayList<>();

    private StockCheck(Tables tables) {
        this.tables = tables;
    }

    /** What is wrong with tables, columns and cells, each with its place in the file. */
    public static List<Remark> of(Workshop workshop, Tables tables) {
        StockCheck check = new StockCheck(tables);
        for (String id : workshop.tables()) {
            Optional<Table> table = tables.find(id);
            if (table.isPresent()) {
                workshop.rows(id).forEach(row -> check.row(table.get(), row, row.currencyIn(workshop)));
            } else {
                check.dormant(id, workshop);
            }
        }
        return List.copyOf(check.remarks);
    }

    private void dormant(String id, Workshop workshop) {
        remarks.add(Remark.of(
                        Nearest.to(id, tables.ids())
                                .map(near -> WorkshopNotices.TABLE_DORMANT_NEAREST.with(id, near))
                                .orElseGet(() -> WorkshopNotices.TABLE_DORMANT.with(id)),
                        CoreTexts.TEXTS)
                .atPlace(workshop.place(id)));
    }

    private void row(Table table, Row row, Optional<Unit> currency) {
        List<String> known = new ArrayList<>(Row.RESERVED);
        table.columns().forEach(column -> known.add(column.key()));
        row.node().members().forEach((key, member) -> {
            if (!known.contains(key)) {
                remarks.add(Remark.of(JsonNotices.unknownKey(key, known), CoreTexts.TEXTS)
                        .inCell(row.toString())
                        .atPlace(member.place()));
            }
        });
        table.columns().forEach(column -> cell(column, row, currency));
    }

    private void cell(Column column, Row row, Optional<Unit> currency) {
        remarks.addAll(cell(row, column, currency, UsualCells.NONE).remarks());
    }

    /**
     * A cell as it is read.
     *
     * @param value empty where the cell is, or cannot be read; the middle of a range
     * @param range limits of what was typed, in base units; empty where it is no single quantity
     * @param remarks what is wrong with it
     */
    public record Cell(Optional<Object> value, Optional<Range> range, List<Remark> remarks) {
        private static Cell none(Optional<Remark> why) {
            return new Cell(Optional.empty(), Optional.empty(), why.stream().toList());
        }
    }

    /**
     * Reads one cell.
     *
     * @param currency of amounts that name none
     * @param usual what is usual where the column does not say
     */
    public static Cell cell(Row row, Column column, Optional<Unit> currency, UsualCells usual) {
        Question question = column.question();
        String path = StockLink.cell(row, column.key());
        Member member = row.node().members().get(column.key());
        Optional<String> text = row.cell(column.key());
        if (text.isEmpty()) {
            boolean missing = member != null || question.preset().isEmpty() && !question.optional();
            return Cell.none(missing ? Optional.of(missing(row, question, path, member)) : Optional.empty());
        }
        ScalarReader reader = ScalarReader.of(question, text.get(), currency);
        if (reader.entry().isEmpty()) {
            return Cell.none(Optional.of(reader.trouble().inCell(path).atPlace(member.place())));
        }
        Resolver resolver = new Resolver(
                "",
                link -> {
                    throw new IllegalStateException("a cell has no link");
                },
                RangePick.NOMINAL);
        Answered answered = new Answered(reader.entry().get(), Origin.TYPED, text.get(), member.place());
        Optional<Object> value = resolver.resolve(List.of(question), Map.of(question.key(), answered))
                .flatMap(values -> values.get(question.key()));
        Optional<Range> range = answered.entry() instanceof Entry.Quantity quantity
                ? Optional.of(quantity.typed().range())
                : Optional.empty();
        Stream<Remark> unusual = range
                .filter(typed -> value.isPresent())
                .flatMap(typed -> usual.unusual(row.table(), column, typed.nominal()))
                .map(notice -> Remark.of(notice, CoreTexts.TEXTS).atPlace(member.place()))
                .stream();
        return new Cell(
                value,
                range,
                Stream.concat(resolver.remarks().stream(), unusual)
                        .filter(remark -> !remark.key().equals("notice." + ProjectNotices.MIDPOINT.key()))
                        .map(remark -> remark.atQuestion("").inCell(path))
                        .toList());
    }

    private static Remark missing(Row row, Question question, String path, Member member) {
        return Remark.of(
                        WorkshopNotices.CELL_MISSING.with(
                                path, question.example().orElse("…")),
                        CoreTexts.TEXTS)
                .atPlace(member == null ? row.node().place() : member.place());
    }
}
