package org.hidewright.core.brought;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.declaration.DeclaredTable;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.measure.Dimension;
import org.hidewright.api.measure.TypedText;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.Member;
import org.hidewright.core.json.JsonNotices;
import org.hidewright.core.json.Place;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.work.StockCheck;
import org.hidewright.core.workshop.Column;
import org.hidewright.core.workshop.Row;
import org.hidewright.core.workshop.StockLink;
import org.hidewright.core.workshop.Table;
import org.hidewright.core.workshop.Tables;
import org.hidewright.core.workshop.Tables.Brought;
import org.hidewright.core.workshop.Tables.BroughtRow;

/**
 * Looks the rows of a bundle over, once the columns of all bundles are known: as strictly as nobody looks at what a maker writes for
 * themselves, since whoever takes such a row has not measured it. A row with a fault is left out.
 */
public final class BroughtCheck {
    private final BroughtTables brought;
    private final Tables tables;
    private final List<Remark> remarks = new ArrayList<>();

    private BroughtCheck(BroughtTables brought, Tables tables) {
        this.brought = brought;
        this.tables = tables;
    }

    /** The rows that can be taken, and what is wrong, each with its place in the text. */
    public record Result(List<BroughtRow> rows, List<Remark> remarks) {}

    /**
     * Looks a text over.
     *
     * @param tables all that are installed, those of the text among them
     */
    public static Result of(BroughtTables brought, Tables tables) {
        return new BroughtCheck(brought, tables).look();
    }

    private Result look() {
        brought.columns().forEach(this::title);
        remarks.addAll(StockCheck.of(brought.rows(), tables));
        List<BroughtRow> sound = new ArrayList<>();
        for (Row row : brought.all()) {
            Optional<Table> table = tables.find(row.table());
            table.ifPresent(known -> row(row, known));
            if (table.isPresent() && remarks.stream().noneMatch(remark -> remark.stops() && isAbout(row, remark))) {
                sound.add(brought.brought(row));
            }
        }
        return new Result(List.copyOf(sound), List.copyOf(remarks));
    }

    /** A table that nobody else has declared before has a name and says what it is for. */
    private void title(Brought columns) {
        DeclaredTable table = columns.table();
        boolean first = tables.find(table.id())
                .filter(known -> known.declared() == table)
                .isPresent();
        for (String key : List.of(table.titleKey(), table.purposeKey())) {
            if (first
                    && table.texts()
                            .find(key, Locale.ENGLISH)
                            .filter(text -> !text.isBlank())
                            .isEmpty()) {
                String part = key.substring(table.id().length() + 1);
                remarks.add(Remark.of(BroughtNotices.BROUGHT_NO_TITLE.with(table.id(), part), CoreTexts.TEXTS));
            }
        }
    }

    private static boolean isAbout(Row row, Remark remark) {
        return remark.cell().equals(row.toString()) || remark.cell().startsWith(row + ".");
    }

    private void row(Row row, Table table) {
        if (!TablesReader.isName(row.id())) {
            say(
                    Remark.of(BroughtNotices.BROUGHT_BAD_NAME.with(row.id()), CoreTexts.TEXTS),
                    row.toString(),
                    row.node().place());
        }
        for (Map.Entry<String, Member> cell : row.node().members().entrySet()) {
            JsonNode value = cell.getValue().value();
            Optional<Column> column = table.column(cell.getKey());
            boolean several =
                    column.filter(known -> known.question().kind() == Kind.LIST).isPresent();
            if (value instanceof JsonObject || value instanceof JsonArray && !several) {
                say(
                        Remark.of(JsonNotices.wrongShape(cell.getKey(), "\"15 mm\"", value), CoreTexts.TEXTS),
                        StockLink.cell(row, cell.getKey()),
                        cell.getValue().place());
            } else {
                column.ifPresent(known -> unit(row, known, cell.getValue().place()));
            }
        }
    }

    /** What is measured says in what: a bare number that was meant in inches would be cut in millimetres. */
    private void unit(Row row, Column column, Place place) {
        Optional<Dimension> dimension = column.question().itemKind().dimension();
        Optional<String> text = row.cell(column.key());
        if (dimension.isEmpty()
                || dimension.get() == Dimension.NUMBER
                || dimension.get() == Dimension.MONEY
                || text.isEmpty()) {
            return;
        }
        for (String part : text.get().split(";")) {
            boolean without = TypedText.quantity(
                            part, dimension.get(), column.question().unit())
                    .understood()
                    .filter(typed -> !typed.unitTyped())
                    .isPresent();
            if (without) {
                String cell = StockLink.cell(row, column.key());
                String unit = column.question().unit().map(Object::toString).orElse("mm");
                say(
                        Remark.of(BroughtNotices.BROUGHT_NO_UNIT.with(cell, part.strip(), unit), CoreTexts.TEXTS),
                        cell,
                        place);
            }
        }
    }

    private void say(Remark remark, String cell, Place place) {
        remarks.add(remark.inCell(cell).atPlace(place));
    }
}
