package org.hidewright.window.workshop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.hidewright.window.look.Inks;
import org.hidewright.window.model.QuestionFace;
import org.hidewright.window.model.QuestionFace.Origin;
import org.hidewright.window.words.WindowTexts;

/** The rows of a table in columns; what bundles bring in quiet letters. Lines are made when they are seen. */
final class RowsTable {
    /** So many lines are measured for the width of a column. */
    private static final int MEASURED = 100;
    /** In heights of a line of text. */
    private static final int WIDEST = 12;

    private final Inks inks;
    private final WindowTexts texts;
    private final Runnable chosen;
    private final Table table;
    private WorkshopFace.Shown shown;
    private String key = "";

    /**
     * An empty table.
     *
     * @param chosen called when another row is chosen
     * @param enter called when the row that is chosen is to be typed in
     */
    RowsTable(Composite parent, Inks inks, WindowTexts texts, Runnable chosen, Runnable enter) {
        this.inks = inks;
        this.texts = texts;
        this.chosen = chosen;
        table = inks.dress(
                new Table(parent, SWT.FULL_SELECTION | SWT.SINGLE | SWT.VIRTUAL | SWT.BORDER),
                inks.palette().ink(),
                inks.palette().paper());
        table.setData("id", "workshop.rows");
        table.setHeaderVisible(true);
        table.addListener(SWT.SetData, this::line);
        table.addListener(SWT.Selection, event -> choose());
        table.addListener(SWT.DefaultSelection, event -> enter.run());
        table.addListener(SWT.KeyDown, event -> {
            if ((event.stateMask & SWT.MOD1) != 0 && event.keyCode == 'c') {
                toClipboard();
            }
        });
    }

    Table control() {
        return table;
    }

    /** The row that is chosen; empty where none is. */
    Optional<WorkshopFace.Line> line() {
        return Optional.ofNullable(shown).flatMap(of -> of.line(key));
    }

    /** Shows a table as it is now; a row that has just come is chosen, and where one has gone the next. */
    void show(WorkshopFace.Shown now) {
        WorkshopFace.Shown before = shown;
        boolean other = before == null || !before.id().equals(now.id());
        shown = now;
        if (other || !before.columns().equals(now.columns()) || hasFrom(before) != hasFrom(now)) {
            columns();
        }
        if (other) {
            key = now.lines().isEmpty() ? "" : now.lines().get(0).key();
        } else {
            follow(before, now);
        }
        if (!other && before.lines().equals(now.lines())) {
            return;
        }
        table.setItemCount(now.lines().size());
        table.clearAll();
        if (other || before.lines().size() != now.lines().size()) {
            widths();
        }
        int index = index(now, key);
        if (index >= 0) {
            table.setSelection(index);
        }
    }

    private void follow(WorkshopFace.Shown before, WorkshopFace.Shown now) {
        Optional<String> come = now.lines().stream()
                .map(WorkshopFace.Line::key)
                .filter(line -> before.line(line).isEmpty())
                .findFirst();
        int was = index(before, key);
        if (come.isPresent()) {
            key = come.get();
        } else if (now.line(key).isEmpty()) {
            int next = Math.min(was, now.lines().size() - 1);
            key = next < 0 ? "" : now.lines().get(next).key();
        }
    }

    private static int index(WorkshopFace.Shown in, String key) {
        return in.lines().stream().map(WorkshopFace.Line::key).toList().indexOf(key);
    }

    private void columns() {
        table.setItemCount(0);
        for (TableColumn old : table.getColumns()) {
            old.dispose();
        }
        new TableColumn(table, SWT.LEFT).setText(texts.text("workshop.id"));
        table.getColumn(0).setToolTipText(texts.text("workshop.id.help"));
        for (WorkshopFace.Head head : shown.columns()) {
            TableColumn column = new TableColumn(table, SWT.LEFT);
            column.setText(head.text());
            column.setToolTipText(head.help());
        }
        if (hasFrom(shown)) {
            new TableColumn(table, SWT.LEFT).setText(texts.text("workshop.from-bundle"));
        }
    }

    private static boolean hasFrom(WorkshopFace.Shown in) {
        return in.lines().stream().anyMatch(line -> !line.own());
    }

    private List<String> cells(WorkshopFace.Line line) {
        List<String> cells = new ArrayList<>(List.of(line.id()));
        cells.addAll(line.cells());
        cells.add(line.from());
        return cells;
    }

    private void line(Event event) {
        if (event.index >= shown.lines().size()) {
            return;
        }
        WorkshopFace.Line line = shown.lines().get(event.index);
        TableItem item = (TableItem) event.item;
        item.setText(cells(line).toArray(String[]::new));
        item.setForeground(inks.color(
                !line.own()
                        ? inks.palette().quiet()
                        : line.wrong() > 0
                                ? inks.palette().warning()
                                : inks.palette().ink()));
    }

    private void widths() {
        GC gc = new GC(table);
        int most = WIDEST * inks.em();
        for (int i = 0; i < table.getColumnCount(); i++) {
            int width = gc.textExtent(table.getColumn(i).getText()).x;
            for (WorkshopFace.Line line :
                    shown.lines().subList(0, Math.min(MEASURED, shown.lines().size()))) {
                width = Math.max(width, gc.textExtent(cells(line).get(i)).x);
            }
            table.getColumn(i).setWidth(Math.min(most, width + 2 * inks.em()));
        }
        gc.dispose();
    }

    private void choose() {
        int index = table.getSelectionIndex();
        key = index < 0 || index >= shown.lines().size()
                ? ""
                : shown.lines().get(index).key();
        chosen.run();
    }

    /** Chooses a row by its id, as soon as it is there. */
    void choose(String id) {
        key = id;
        if (shown != null && index(shown, id) >= 0) {
            table.setSelection(index(shown, id));
            chosen.run();
        }
    }

    /** The row that is chosen, under the heads of its columns, as a spreadsheet takes it. */
    private void toClipboard() {
        line().ifPresent(line -> {
            Clipboard clipboard = new Clipboard(table.getDisplay());
            String head = String.join(
                    "\t", shown.columns().stream().map(WorkshopFace.Head::label).toList());
            String cells = String.join(
                    "\t", line.questions().stream().map(RowsTable::typed).toList());
            clipboard.setContents(new Object[] {head + "\n" + cells}, new Transfer[] {TextTransfer.getInstance()});
            clipboard.dispose();
        });
    }

    private static String typed(QuestionFace face) {
        return face.origin() == Origin.TYPED ? face.text() : "";
    }
}
