package org.hidewright.window.begin;

import java.util.List;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.hidewright.core.work.SuitableRows.Fit;
import org.hidewright.core.workshop.StockLink;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Spoken;
import org.hidewright.window.words.WindowTexts;

/** What the workshop has for a question: one of its rows can be taken. */
final class StockRow {
    private static final int STEP_IN = 12;
    /** In heights of a line of text, as the editor of a question. */
    private static final int WIDTH = 7;

    private final List<StockLink> links;
    private final Combo combo;

    /** @param taken called with the row that is chosen */
    StockRow(Composite parent, Inks inks, WindowTexts texts, String id, List<Fit> fits, Consumer<StockLink> taken) {
        links = fits.stream().map(Fit::link).toList();
        Composite line = inks.dress(
                new Composite(parent, SWT.NONE),
                inks.palette().ink(),
                inks.palette().paper());
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        line.setLayout(layout);
        line.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        Label label = inks.dress(
                new Label(line, SWT.NONE),
                inks.palette().quiet(),
                inks.palette().paper());
        label.setText(texts.text("begin.from-stock"));
        GridData left = new GridData(SWT.FILL, SWT.CENTER, true, false);
        left.horizontalIndent = STEP_IN;
        left.widthHint = WIDTH * inks.em() - STEP_IN; // so that it stands right below the field
        label.setLayoutData(left);
        combo = new Combo(line, SWT.READ_ONLY);
        combo.setData("id", id);
        fits.forEach(fit -> combo.add(fit.name() + " · " + fit.text()));
        GridData right = new GridData(SWT.FILL, SWT.CENTER, true, false);
        right.widthHint = WIDTH * inks.em();
        combo.setLayoutData(right);
        Spoken.labelled(combo, label);
        Spoken.tell(combo);
        combo.addListener(SWT.Selection, event -> taken.accept(links.get(combo.getSelectionIndex())));
    }

    /** Shows which row is taken; none where something was typed. */
    void show(StockLink now) {
        int index = links.indexOf(now);
        if (index < 0) {
            combo.deselectAll();
        } else if (combo.getSelectionIndex() != index) {
            combo.select(index);
        }
    }
}
