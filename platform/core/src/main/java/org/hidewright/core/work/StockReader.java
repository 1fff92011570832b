package org.hidewright.core.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.declaration.DeclaredTable;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Written;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.Nearest;
import org.hidewright.core.json.Place;
import org.hidewright.core.project.ProjectNotices;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.work.Entry.Answered;
import org.hidewright.core.work.Entry.Origin;
import org.hidewright.core.workshop.CellWords;
import org.hidewright.core.workshop.Column;
import org.hidewright.core.workshop.Shelf;
import org.hidewright.core.workshop.Shelf.Taken;
import org.hidewright.core.workshop.StockLink;
import org.hidewright.core.workshop.Table;
import org.hidewright.core.workshop.WorkshopNotices;

/**
 * Answers one question from the workshop: a value from a cell, a list from a cell or a column, a group from a row, rows from
 * a table. Columns answer the questions that have their keys.
 */
final class StockReader {
    private final Shelf shelf;
    private final StockLink link;
    private final BiFunction<Question, String, Answered> unanswered;
    private final List<Remark> remarks = new ArrayList<>();

    /**
     * A reader of one link.
     *
     * @param unanswered what becomes of a question inside a group, at its path, for which the row has nothing
     */
    StockReader(Shelf shelf, StockLink link, BiFunction<Question, String, Answered> unanswered) {
        this.shelf = shelf;
        this.link = link;
        this.unanswered = unanswered;
    }

    /** Why there is no answer, not yet placed. */
    List<Remark> remarks() {
        return remarks;
    }

    /** The entry for a question; one that is bad has its reason among the remarks. */
    Entry read(Question question, String path, Place place) {
        Optional<Table> table = shelf.tables().find(link.table()).or(this::gone);
        if (!shelf.stocked()) {
            return bad(WorkshopNotices.NO_WORKSHOP.with(words(link.toString())));
        } else if (table.isEmpty()) {
            return bad(noTable());
        }
        return switch (question.kind()) {
            case GROUP ->
                wholeRow()
                        .map(row -> (Entry) stocked(
                                link.toString(),
                                new Entry.Group(group(question.questions(), table.get(), row, path, place))))
                        .orElseGet(Entry.Bad::new);
            case ROWS -> rows(question, table.get(), path, place);
            case VARIANTS -> bad(WorkshopNotices.WORKSHOP_NOT_VARIANTS.with(link.toString()));
            default -> values(question, table.get());
        };
    }

    /**
     * What a row answers of several questions, by their keys.
     *
     * @return an answer for each; all are bad, and why is among the remarks, where there is no such row
     */
    Map<String, Answered> row(List<Question> questions, String path, Place place) {
        Optional<Table> table = shelf.tables().find(link.table()).or(this::gone);
        Optional<Taken> row = Optional.empty();
        if (!shelf.stocked()) {
            bad(WorkshopNotices.NO_WORKSHOP.with(words(link.toString())));
        } else if (table.isEmpty()) {
            bad(noTable());
        } else {
            row = wholeRow();
        }
        if (row.isPresent()) {
            return group(questions, table.orElseThrow(), row.get(), path, place);
        }
        Map<String, Answered> answers = new LinkedHashMap<>();
        questions.forEach(
                question -> answers.put(question.key(), new Answered(new Entry.Bad(), Origin.WORKSHOP, "", place)));
        return answers;
    }

    /** The row that is linked whole; empty, and told, where there is none or the link names less or more. */
    private Optional<Taken> wholeRow() {
        if (link.row().isEmpty() || !link.column().isEmpty()) {
            bad(WorkshopNotices.WORKSHOP_LINK_NEEDS.with(link.toString(), Phrase.of("link-row")));
            return Optional.empty();
        }
        Optional<Taken> row = row();
        if (row.isEmpty()) {
            bad(noRow());
        }
        return row;
    }

    private Optional<Taken> row() {
        return shelf.row(link.table(), link.row());
    }

    /** The table of a copy whose bundle has gone with all it said of it. */
    private Optional<Table> gone() {
        return row().filter(StockReader::outlives)
                .map(row -> new Table(
                        DeclaredTable.written(link.table(), List.of(), (key, language) -> Optional.empty()),
                        List.of()));
    }

    /** Rows of bundles say the units of all they measure, so that a copy can be read when the bundle is gone. */
    private static boolean outlives(Taken row) {
        return row.kept() && row.from().isPresent();
    }

    /** A column; of a copy whose bundle has gone with it, what the question itself says of such a cell. */
    private static Optional<Column> column(String key, Question question, Table table, Optional<Taken> row) {
        return table.column(key)
                .or(() -> row.filter(StockReader::outlives)
                        .filter(copy -> copy.row().cell(key).isPresent())
                        .filter(copy -> Written.TYPED.contains(question.itemKind()))
                        .map(copy -> column(key, question, copy)));
    }

    private static Column column(String key, Question question, Taken copy) {
        Map<String, String> unit =
                question.unit().map(known -> Map.of("unit", known.symbol())).orElse(Map.of());
        List<String> options = EntryReader.keys(question.options());
        return new Column(
                Written.column(copy.row().table(), key, question.itemKind(), unit, options),
                (text, language) -> Optional.empty(),
                copy.from().orElseThrow().bundle());
    }

    /** A single value, or several. */
    private Entry values(Question question, Table table) {
        boolean several = question.kind() == Kind.LIST;
        if (link.column().isEmpty() || link.row().isEmpty() && !several) {
            return bad(WorkshopNotices.WORKSHOP_LINK_NEEDS.with(
                    link.toString(), Phrase.of(link.column().isEmpty() ? "link-column" : "link-row")));
        }
        Optional<Column> column = column(link.column(), question, table, row());
        if (column.isEmpty()) {
            return bad(noColumn(table));
        }
        if (link.row().isEmpty()) {
            return shelf.rows(link.table())
                    .map(rows -> all(question, column.get(), rows))
                    .orElseGet(() -> bad(WorkshopNotices.NO_WORKSHOP.with(words(link.toString()))));
        }
        Optional<Taken> row = row();
        if (row.isEmpty()) {
            return bad(noRow());
        }
        List<Entry> cells = cells(question, column.get(), row.get());
        if (cells.isEmpty()) {
            return remarks.isEmpty()
                    ? bad(WorkshopNotices.WORKSHOP_EMPTY_CELL.with(
                            words(StockLink.cell(row.get().row(), column.get().key()))))
                    : new Entry.Bad();
        }
        return several ? stocked(link.toString(), new Entry.Several(cells)) : cells.get(0);
    }

    private Entry all(Question question, Column column, List<Taken> rows) {
        List<Entry> items = new ArrayList<>();
        rows.forEach(row -> items.addAll(cells(question, column, row)));
        return remarks.isEmpty() ? stocked(link.toString(), new Entry.Several(List.copyOf(items))) : new Entry.Bad();
    }

    private Entry rows(Question question, Table table, String path, Place place) {
        if (!question.variants().isEmpty()) {
            return bad(WorkshopNotices.WORKSHOP_NOT_VARIANTS.with(link.toString()));
        } else if (!link.column().isEmpty()) {
            return bad(WorkshopNotices.WORKSHOP_LINK_NEEDS.with(link.toString(), Phrase.of("link-table")));
        }
        Optional<List<Taken>> rows = link.row().isEmpty() ? shelf.rows(link.table()) : row().map(List::of);
        if (rows.isEmpty()) {
            return bad(link.row().isEmpty() ? WorkshopNotices.NO_WORKSHOP.with(words(link.toString())) : noRow());
        }
        List<Entry.Row> entries = new ArrayList<>();
        for (Taken row : rows.get()) {
            String rowPath = path + "[" + row.row().id() + "]";
            entries.add(new Entry.Row(
                    row.row().id(), new Entry.Group(group(question.questions(), table, row, rowPath, place))));
        }
        return stocked(link.toString(), new Entry.Table(List.copyOf(entries)));
    }

    private Map<String, Answered> group(List<Question> questions, Table table, Taken row, String path, Place place) {
        Map<String, Answered> answers = new LinkedHashMap<>();
        for (Question inner : questions) {
            answers.put(
                    inner.key(),
                    column(inner.key(), inner, table, Optional.of(row))
                            .flatMap(column -> inGroup(inner, column, row, place))
                            .orElseGet(() -> unanswered.apply(inner, path + "." + inner.key())));
        }
        return answers;
    }

    /** What a row has for a question inside a group; empty where its cell is. */
    private Optional<Answered> inGroup(Question question, Column column, Taken row, Place place) {
        int before = remarks.size();
        List<Entry> cells = cells(question, column, row);
        if (cells.isEmpty() && remarks.size() == before) {
            return Optional.empty();
        }
        Entry entry = cells.isEmpty()
                ? new Entry.Bad()
                : question.kind() == Kind.LIST
                        ? stocked(StockLink.cell(row.row(), column.key()), new Entry.Several(cells))
                        : cells.get(0);
        return Optional.of(
                new Answered(entry, Origin.WORKSHOP, text(column, row).orElse(""), place));
    }

    /** What is typed in a cell, or what its column presets. */
    static Optional<String> text(Column column, Taken row) {
        return row.row().cell(column.key()).or(() -> column.question().preset());
    }

    /** What is typed where the link leads, in one text. */
    Optional<String> text() {
        return shelf.tables()
                .find(link.table())
                .flatMap(table -> table.column(link.column()))
                .flatMap(column -> row().flatMap(row -> text(column, row)));
    }

    /** The values of a cell as a question takes them, each with its place; none where the cell is empty or not fit. */
    private List<Entry> cells(Question question, Column column, Taken row) {
        String text = text(column, row).orElse(null);
        if (text == null) {
            return List.of();
        }
        String cell = StockLink.cell(row.row(), column.key());
        boolean several = column.question().kind() == Kind.LIST;
        if (!fits(question, column.question()) || several && question.kind() != Kind.LIST) {
            bad(ProjectNotices.LINK_WRONG_KIND.with(cell, column.question().kind(), question.kind()));
            return List.of();
        }
        ScalarReader own = ScalarReader.of(column.question(), text, row.currency());
        if (own.entry().isEmpty()) {
            bad(WorkshopNotices.WORKSHOP_BAD_CELL.with(words(cell), text));
            return List.of();
        }
        List<Entry> found = new ArrayList<>();
        List<Entry> read = own.entry().get() instanceof Entry.Several list
                ? list.items()
                : List.of(own.entry().get());
        for (int i = 0; i < read.size(); i++) {
            Entry entry = asAsked(question, read.get(i), text);
            if (entry instanceof Entry.Bad) {
                return List.of();
            }
            found.add(stocked(several ? TypedRanges.item(cell, i) : cell, entry));
        }
        return List.copyOf(found);
    }

    private static boolean fits(Question question, Question column) {
        Kind asked = question.itemKind();
        Kind given = column.itemKind();
        return asked == given
                || asked.dimension().isPresent() && asked.dimension().equals(given.dimension());
    }

    /** A key must be one of the question’s own, and what is counted a whole number. */
    private Entry asAsked(Question question, Entry entry, String text) {
        boolean readAgain = question.itemKind() == Kind.CHOICE || question.itemKind() == Kind.COUNT;
        if (!readAgain) {
            return entry;
        }
        String again = entry instanceof Entry.Plain plain
                ? plain.value().toString()
                : entry instanceof Entry.Quantity counted ? counted.typed().echo() : text;
        ScalarReader reader = ScalarReader.one(question, again);
        if (reader.entry().isEmpty()) {
            remarks.add(reader.trouble());
            return new Entry.Bad();
        }
        return reader.entry().get();
    }

    private static Entry.Stocked stocked(String cell, Entry entry) {
        return new Entry.Stocked(cell, entry);
    }

    private Notice noTable() {
        return Nearest.to(link.table(), shelf.tables().ids())
                .map(near -> WorkshopNotices.WORKSHOP_NO_TABLE_NEAREST.with(link.table(), near))
                .orElseGet(() -> WorkshopNotices.WORKSHOP_NO_TABLE.with(
                        link.table(), String.join(", ", shelf.tables().ids())));
    }

    private Notice noRow() {
        List<String> ids = shelf.ids(link.table());
        return Nearest.to(link.row(), ids)
                .map(near -> WorkshopNotices.WORKSHOP_NO_ROW_NEAREST.with(link.row(), words(link.table()), near))
                .orElseGet(() ->
                        WorkshopNotices.WORKSHOP_NO_ROW.with(link.row(), words(link.table()), String.join(", ", ids)));
    }

    private Notice noColumn(Table table) {
        List<String> keys = table.keys();
        return Nearest.to(link.column(), keys)
                .map(near -> WorkshopNotices.WORKSHOP_NO_COLUMN_NEAREST.with(link.column(), words(link.table()), near))
                .orElseGet(() -> WorkshopNotices.WORKSHOP_NO_COLUMN.with(
                        link.column(), words(link.table()), String.join(", ", keys)));
    }

    private CellWords words(String cell) {
        return CellWords.of(cell, shelf);
    }

    private Entry bad(Notice notice) {
        remarks.add(Remark.of(notice, CoreTexts.TEXTS));
        return new Entry.Bad();
    }
}
