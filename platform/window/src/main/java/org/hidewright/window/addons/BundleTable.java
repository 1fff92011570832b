package org.hidewright.window.addons;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.hidewright.window.look.ColumnWidths;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Spoken;
import org.hidewright.window.words.WindowTexts;

/** Bundles in lines, with what is told above them and all of the chosen one below: its line may have no room for that. */
final class BundleTable {
    private static final String[] COLUMNS = {"bundles.name", "bundles.maker", "bundles.brings", "bundles.state"};
    private static final int[] SHARES = {24, 16, 34, 26};
    private static final int WIDTH = 300;
    private static final int ABOUT_LINES = 5;

    private final Composite page;
    private final Inks inks;
    private final WindowTexts texts;
    private final Label told;
    private final Table table;
    private final Label about;
    private List<Line> lines = List.of();

    /**
     * A bundle.
     *
     * @param quiet whether it is told faintly, since it does nothing now
     */
    record Line(String id, String name, String maker, String brings, String state, boolean quiet) {}

    /**
     * On a page of one column.
     *
     * @param id of the page; its parts are named after it
     * @param chosen called when another line is chosen
     */
    BundleTable(Composite page, String id, Inks inks, WindowTexts texts, Runnable chosen) {
        this.page = page;
        this.inks = inks;
        this.texts = texts;
        told = label(id + ".told", inks.palette().warning());
        label(id + ".rights", inks.palette().ink()).setText(texts.text("bundles.rights.help"));
        table = new Table(page, SWT.FULL_SELECTION | SWT.SINGLE | SWT.V_SCROLL);
        table.setData("id", id + ".lines");
        Spoken.name(table, () -> texts.text(id + ".lines"));
        Spoken.about(table, () -> about().getText());
        table.setHeaderVisible(true);
        table.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        for (String column : COLUMNS) {
            new TableColumn(table, SWT.LEFT).setText(texts.text(column));
        }
        table.addListener(SWT.Resize, event -> widths());
        table.addListener(SWT.Selection, event -> {
            tellChosen();
            chosen.run();
        });
        about = label(id + ".about", inks.palette().ink());
        GridData below = new GridData(SWT.FILL, SWT.BOTTOM, true, false);
        below.widthHint = WIDTH;
        below.heightHint = ABOUT_LINES * inks.em();
        about.setLayoutData(below);
    }

    private Label label(String id, int ink) {
        Label label = inks.dress(new Label(page, SWT.WRAP), ink, inks.palette().paper());
        label.setData("id", id);
        GridData across = new GridData(SWT.FILL, SWT.TOP, true, false);
        across.widthHint = WIDTH;
        label.setLayoutData(across);
        return label;
    }

    private Label about() {
        return about;
    }

    /** Says above the lines what is wrong, or to be thought of. */
    void tell(String text) {
        say(text, inks.palette().warning());
    }

    /** Says above the lines what was done. */
    void tellDone(String text) {
        say(text, inks.palette().ink());
    }

    private void say(String text, int ink) {
        told.setForeground(inks.color(ink));
        told.setText(text);
        page.layout();
    }

    /** Shows other lines; the one that was chosen, or the first, is chosen. */
    void show(List<Line> now) {
        int chosen = Math.max(0, Math.min(index(), now.size() - 1));
        lines = List.copyOf(now);
        table.setItemCount(lines.size());
        for (int i = 0; i < lines.size(); i++) {
            Line line = lines.get(i);
            TableItem item = table.getItem(i);
            item.setText(new String[] {line.name(), line.maker(), line.brings(), line.state()});
            item.setData("id", line.id());
            item.setForeground(inks.color(
                    line.quiet() ? inks.palette().quiet() : inks.palette().ink()));
        }
        widths();
        choose(chosen);
    }

    /** Chooses a line. */
    void choose(int index) {
        table.setSelection(index);
        tellChosen();
    }

    /** The chosen line, or -1. */
    int index() {
        return table.getSelectionIndex();
    }

    private void tellChosen() {
        int index = index();
        if (index < 0 || index >= lines.size()) {
            about.setText("");
        } else {
            Line line = lines.get(index);
            about.setText(texts.text("bundles.about.help", line.name(), line.maker(), line.brings(), line.state()));
        }
        Spoken.tell(table);
        page.layout();
    }

    private void widths() {
        ColumnWidths.share(table, SHARES);
    }
}
