package org.hidewright.window.workshop;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.core.project.AnswerPath.Step;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.store.WorkshopFile;
import org.hidewright.core.wording.AsFiled;
import org.hidewright.core.wording.FieldWording;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.PutAway;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.workshop.Column;
import org.hidewright.core.workshop.Row;
import org.hidewright.core.workshop.Stock;
import org.hidewright.core.workshop.Table;
import org.hidewright.core.workshop.Tables.BroughtRow;
import org.hidewright.core.workshop.WorkshopReader;
import org.hidewright.core.workshop.WorkshopText;
import org.hidewright.window.model.Answering;
import org.hidewright.window.model.History;
import org.hidewright.window.model.PastedLines;
import org.hidewright.window.words.WindowTexts;

/**
 * A workshop that is open in a window. Everything but reading its cells is done on the thread of the window; the editors of
 * slips edit its rows as they do those of a table on a slip: a table is a question, {@code leather[side].thickness} a path.
 */
public final class OpenWorkshop implements Answering {
    /** What stands for the slip in the ids of its editors. */
    static final String PLACE = "workshop";

    private static final String NAME = "name";

    private final Path path;
    private final Catalogue catalogue;
    private final Supplier<Wording> wording;
    private final WindowTexts texts;
    private final Executor work;
    private final Executor window;
    private final Runnable changed;
    private final History<WorkshopText> history;
    private volatile WorkshopFile file;
    private Consumer<WorkshopFace> shows = face -> {};
    private WorkshopFace face;
    /** For whoever takes from it on another thread. */
    private volatile WorkshopText current;

    private volatile long latest;

    /**
     * A workshop from its file.
     *
     * @param catalogue what is installed
     * @param wording the words it is shown in: in the units of the project beside it
     * @param work a thread that may take its time
     * @param window the thread of the window
     * @param changed called when something can be taken from it that could not, or not so
     */
    public OpenWorkshop(
            Path path,
            WorkshopFile file,
            Catalogue catalogue,
            Supplier<Wording> wording,
            WindowTexts texts,
            Executor work,
            Executor window,
            Runnable changed) {
        this.path = path;
        this.file = file;
        this.catalogue = catalogue;
        this.wording = wording;
        this.texts = texts;
        this.work = work;
        this.window = window;
        this.changed = changed;
        this.history = new History<>(file.text(), WorkshopText::text);
        this.current = file.text();
    }

    public Path path() {
        return path;
    }

    /** What can be taken from it as it is now, saved or not. */
    public Stock stock(Stock installed) {
        return current.stock(installed);
    }

    public String text() {
        return history.now().text();
    }

    /** Whether what is shown is not in the file. */
    public boolean unsaved() {
        return !history.now().text().equals(file.text().text());
    }

    /** Shows it from now on. */
    void shownBy(Consumer<WorkshopFace> to) {
        shows = to;
        show();
    }

    /** What is shown; empty before the first is. */
    Optional<WorkshopFace> face() {
        return Optional.ofNullable(face);
    }

    /** Reads it anew, as when bundles have come or gone, or other units are shown. */
    public void show() {
        long mine = ++latest;
        WorkshopText text = history.now();
        Wording words = wording.get();
        work.execute(() -> {
            if (mine == latest) {
                WorkshopFace read = WorkshopFaces.of(text, catalogue, words, texts);
                window.execute(() -> {
                    if (mine == latest) {
                        face = read;
                        shows.accept(read);
                    }
                });
            }
        });
    }

    private void change(String spot, UnaryOperator<WorkshopText> edit) {
        history.change(edit.apply(history.now()), spot);
        taken();
    }

    private void taken() {
        boolean other = !current.text().equals(history.now().text());
        current = history.now();
        show();
        if (other) {
            changed.run();
        }
    }

    private Optional<Row> row(String table, String id) {
        return history.now().workshop().row(table, id);
    }

    /** A row as a project would take it now: the maker’s, else that of a bundle. */
    public Optional<Row> taken(String table, String id) {
        return current.workshop()
                .row(table, id)
                .or(() -> catalogue.tables().row(table, id).map(BroughtRow::row));
    }

    /** A change of one row; nothing where it is not there, or is a bundle’s. */
    private void changeRow(String spot, String table, String id, RowEdit edit) {
        row(table, id).ifPresent(row -> change(spot, text -> edit.of(text, row)));
    }

    private interface RowEdit {
        WorkshopText of(WorkshopText text, Row row);
    }

    @Override
    public void type(String slip, AnswerPath at, String typed) {
        if (at.equals(WorkshopFaces.NAME)) {
            change(NAME, text -> text.named(typed));
        } else if (at.equals(WorkshopFaces.CURRENCY)) {
            change(at.toString(), text -> text.inCurrency(typed.strip()));
        } else {
            String key = ((Step.Key) at.steps().get(2)).name();
            String meant = column(at.question(), key)
                    .map(column -> AsFiled.of(typed, column.question(), wording.get()))
                    .orElse(typed);
            changeRow(
                    at.toString(),
                    at.question(),
                    rowOf(at),
                    (text, row) -> text.typing(row, key, meant, columns(at.question())));
        }
    }

    private static String rowOf(AnswerPath at) {
        return ((Step.Row) at.steps().get(1)).id();
    }

    private List<String> columns(String table) {
        return catalogue.tables().find(table).map(Table::keys).orElse(List.of());
    }

    private Optional<Column> column(String table, String key) {
        return catalogue.tables().find(table).flatMap(known -> known.column(key));
    }

    @Override
    public void choose(String slip, AnswerPath at, String variant) {
        throw new IllegalArgumentException("no cell has variants");
    }

    @Override
    public void clear(String slip, AnswerPath at) {
        type(slip, at, "");
        settle();
    }

    @Override
    public Optional<String> typed(String slip, AnswerPath at) {
        if (at.steps().size() == 1) {
            return Optional.of(
                            at.equals(WorkshopFaces.NAME)
                                    ? history.now().workshop().name()
                                    : history.now().currency())
                    .map(JsonText::quoted);
        }
        return row(at.question(), rowOf(at))
                .flatMap(row -> row.cell(((Step.Key) at.steps().get(2)).name()));
    }

    @Override
    public void settle() {
        history.settle();
    }

    @Override
    public void addRow(String slip, AnswerPath table) {
        if (catalogue.tables().find(table.question()).isPresent()) { // while the file is read none is shown yet
            add(table.question(), Map.of());
        }
    }

    /**
     * Adds a row after the last of a table.
     *
     * @return its id
     */
    public String add(String table, Map<String, String> cells) {
        String id = OwnRow.id(history.now(), table, cells);
        change("", text -> text.adding(table, id, cells));
        return id;
    }

    @Override
    public void addRows(String slip, AnswerPath table, List<List<String>> lines) {
        Optional<Table> known = catalogue.tables().find(table.question());
        if (known.isEmpty()) {
            return;
        }
        List<Column> columns = known.get().columns();
        List<Map<String, String>> rows = new PastedLines(
                        columns.stream().map(Column::question).toList(),
                        question -> columns.stream()
                                .filter(column -> column.question() == question)
                                .map(column ->
                                        new FieldWording(Optional.of(column.texts()), wording.get()).label(question))
                                .findFirst()
                                .orElseThrow(),
                        wording.get())
                .answers(lines);
        change("", text -> {
            WorkshopText more = text;
            for (Map<String, String> cells : rows) {
                more = more.adding(table.question(), OwnRow.id(more, table.question(), cells), cells);
            }
            return more;
        });
    }

    @Override
    public void removeRow(String slip, AnswerPath table, String row) {
        changeRow("", table.question(), row, WorkshopText::removing);
    }

    @Override
    public void moveRow(String slip, AnswerPath table, String row, int by) {
        changeRow("", table.question(), row, (text, moved) -> text.moving(moved, by));
    }

    /**
     * Copies a row, right after it; one of a bundle becomes a row of the maker’s own under the same id, and goes before it.
     *
     * @return id of the copy; empty where there is nothing to copy
     */
    Optional<String> copyRow(String table, String id, boolean own) {
        if (own) {
            Optional<Row> row = row(table, id);
            String copy = history.now().freeId(table, id);
            row.ifPresent(of -> change("", text -> text.copying(of, copy)));
            return row.map(of -> copy);
        }
        if (row(table, id).isPresent()) {
            return Optional.of(id);
        }
        Optional<BroughtRow> brought = catalogue.tables().row(table, id);
        brought.ifPresent(of -> catalogue
                .tables()
                .find(table)
                .ifPresent(in -> change("", text -> text.adding(table, id, OwnRow.cells(in, of, text.workshop())))));
        return brought.map(of -> id);
    }

    /** Gives a row another id; whether it has it now: one that is empty or taken is refused. */
    boolean call(String table, String id, String other) {
        boolean free = !other.isBlank() && row(table, other).isEmpty();
        if (free) {
            changeRow("", table, id, (text, row) -> text.calling(row, other.strip()));
        }
        return free;
    }

    /** What is left of a project that is cut, as it would be put away here. */
    public PutAway left(WorkedProject worked) {
        return PutAway.of(worked, catalogue.tables(), history.now());
    }

    /** Puts away what was found to be left, as one change. */
    public void take(PutAway left) {
        if (!left.workshop().text().equals(text())) {
            change("", text -> left.workshop());
        }
    }

    public boolean canUndo() {
        return history.canUndo();
    }

    public boolean canRedo() {
        return history.canRedo();
    }

    public void undo() {
        history.undo();
        taken();
    }

    public void redo() {
        history.redo();
        taken();
    }

    /** Takes over another text, such as one that was not saved the last time; whether it is a workshop. */
    public boolean takeOver(String text) {
        Optional<WorkshopText> other = WorkshopText.of(WorkshopReader.read(text));
        other.ifPresent(read -> change("", before -> read));
        return other.isPresent();
    }

    /** Whether another program has changed its file since it was opened or saved; on any thread. */
    public boolean changedMeanwhile() {
        return file.changedMeanwhile();
    }

    /** Reads its file anew; what is shown is what is there now, and what was there can be gone back to. */
    public List<Remark> readAgain() {
        try {
            file = WorkshopFile.open(path, Stock.of(catalogue::tables));
            change("", before -> file.text());
            return file.remarks();
        } catch (FileTrouble e) {
            return e.remarks();
        }
    }

    /**
     * Saves it into its file.
     *
     * @return what is to be told
     */
    public List<Remark> save() {
        try {
            file = file.save(history.now());
            history.settle();
            show();
            return file.remarks();
        } catch (FileTrouble e) {
            return e.remarks();
        }
    }
}
