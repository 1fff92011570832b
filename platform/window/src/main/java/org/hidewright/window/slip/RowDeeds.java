package org.hidewright.window.slip;

import java.util.Arrays;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.window.look.Tools;

/** What can be done with the rows of a table: by words beside it, and by keys on what shows the rows. */
public final class RowDeeds {
    private final Editing editing;
    private final String slip;
    private final Supplier<AnswerPath> table;
    private final Supplier<String> chosen;
    private final Control rows;

    /**
     * The deeds of one table.
     *
     * @param chosen id of the row that is chosen; empty where none is
     * @param rows what shows them
     */
    public RowDeeds(Editing editing, String slip, Supplier<AnswerPath> table, Supplier<String> chosen, Control rows) {
        this.editing = editing;
        this.slip = slip;
        this.table = table;
        this.chosen = chosen;
        this.rows = rows;
        rows.addListener(SWT.KeyDown, this::key);
    }

    /** Puts words for them into a row of words; each is found by what their ids begin with. */
    public void into(Tools tools, String ids) {
        tool(tools, ids, "add", this::add);
        tool(tools, ids, "remove", this::remove);
        tool(tools, ids, "up", () -> move(-1));
        tool(tools, ids, "down", () -> move(1));
        tool(tools, ids, "paste", this::paste);
    }

    private void tool(Tools tools, String ids, String key, Runnable does) {
        tools.words(editing.texts().text("row." + key), ids + "/" + key, does)
                .setToolTipText(editing.texts().text("row." + key + ".help"));
    }

    private void key(Event event) {
        if (event.keyCode == SWT.DEL) {
            remove();
        } else if ((event.stateMask & SWT.MOD1) != 0 && event.keyCode == 'v') {
            paste();
        } else if ((event.stateMask & SWT.ALT) != 0 && event.keyCode == SWT.ARROW_UP) {
            move(-1);
        } else if ((event.stateMask & SWT.ALT) != 0 && event.keyCode == SWT.ARROW_DOWN) {
            move(1);
        }
    }

    private void add() {
        editing.answers().addRow(slip, table.get());
    }

    private void remove() {
        if (!chosen.get().isEmpty()) {
            editing.answers().removeRow(slip, table.get(), chosen.get());
        }
    }

    private void move(int by) {
        if (!chosen.get().isEmpty()) {
            editing.answers().moveRow(slip, table.get(), chosen.get(), by);
        }
    }

    /** Cells as a spreadsheet puts them on the clipboard: a line for each row, tabs between the cells. */
    private void paste() {
        Clipboard clipboard = new Clipboard(rows.getDisplay());
        Object text = clipboard.getContents(TextTransfer.getInstance());
        clipboard.dispose();
        if (text instanceof String cells && !cells.isBlank()) {
            editing.answers()
                    .addRows(
                            slip,
                            table.get(),
                            cells.lines()
                                    .map(line -> Arrays.asList(line.split("\t", -1)))
                                    .toList());
        }
    }
}
