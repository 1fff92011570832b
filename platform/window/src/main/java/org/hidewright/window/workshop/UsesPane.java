package org.hidewright.window.workshop;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Tools;
import org.hidewright.window.words.WindowTexts;

/** Which projects take the row that is chosen, and how their copies stand to it; a project is opened from here. */
final class UsesPane {
    private static final String[] COLUMNS = {"uses.project", "uses.where", "uses.now"};
    private static final int[] SHARES = {22, 34, 44};
    private static final int PERCENT = 100;

    private final Inks inks;
    private final WindowTexts texts;
    private final Composite all;
    private final Label head;
    private final Table lines;
    private List<RowUse> uses = List.of();

    /**
     * Nothing yet.
     *
     * @param opens opens a project
     * @param look asks for a folder of projects that are to be known too
     */
    UsesPane(Composite parent, Inks inks, WindowTexts texts, Consumer<Path> opens, Runnable look) {
        this.inks = inks;
        this.texts = texts;
        all = inks.dress(
                new Composite(parent, SWT.NONE),
                inks.palette().ink(),
                inks.palette().paper());
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        all.setLayout(layout);
        head = inks.dress(
                new Label(all, SWT.WRAP), inks.palette().ink(), inks.palette().paper());
        head.setData("id", "uses.head");
        head.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        Runnable open = () -> {
            int index = lines().getSelectionIndex();
            if (index >= 0 && index < uses.size()) {
                opens.accept(uses.get(index).file());
            }
        };
        Tools tools = new Tools(all, inks);
        tools.words(texts.text("uses.open"), "uses.open", open);
        tools.words(texts.text("uses.folder"), "uses.folder", look);
        lines = inks.dress(
                new Table(all, SWT.FULL_SELECTION | SWT.SINGLE | SWT.BORDER),
                inks.palette().ink(),
                inks.palette().paper());
        lines.setData("id", "uses.lines");
        lines.setHeaderVisible(true);
        lines.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        for (String column : COLUMNS) {
            new TableColumn(lines, SWT.LEFT).setText(texts.text(column));
        }
        lines.addListener(SWT.Resize, event -> widths());
        lines.addListener(SWT.DefaultSelection, event -> open.run());
    }

    private Table lines() {
        return lines;
    }

    Composite control() {
        return all;
    }

    /** Shows who takes the row; empty where none is chosen. */
    void show(String row, List<RowUse> now) {
        head.setText(row.isEmpty() ? "" : texts.many("uses.head", now.size()));
        if (now.equals(uses)) {
            return;
        }
        uses = now;
        lines.setItemCount(now.size());
        for (int i = 0; i < now.size(); i++) {
            RowUse use = now.get(i);
            TableItem item = lines.getItem(i);
            item.setText(new String[] {use.project(), use.where(), use.differs()});
            item.setForeground(inks.color(
                    use.changed() ? inks.palette().warning() : inks.palette().ink()));
        }
        if (!now.isEmpty()) {
            lines.setSelection(0);
        }
        widths();
    }

    private void widths() {
        int width = lines.getClientArea().width;
        for (int i = 0; i < COLUMNS.length; i++) {
            lines.getColumn(i).setWidth(Math.max(1, width * SHARES[i] / PERCENT));
        }
    }
}
