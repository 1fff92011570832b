package org.hidewright.window.begin;

import java.util.List;
import java.util.Locale;
import java.util.function.IntConsumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.hidewright.core.begin.Step;
import org.hidewright.window.look.Inks;
import org.hidewright.window.words.WindowTexts;

/** The steps by their names; the others can be gone to. */
final class StepLine extends Composite {
    private static final int SPACING = 22;

    private final Inks inks;
    private final WindowTexts texts;
    private final IntConsumer goes;

    StepLine(Composite parent, Inks inks, WindowTexts texts, IntConsumer goes) {
        super(parent, SWT.NONE);
        this.inks = inks;
        this.texts = texts;
        this.goes = goes;
        inks.dress(this, inks.palette().ink(), inks.palette().paper());
        RowLayout row = new RowLayout(SWT.HORIZONTAL);
        row.spacing = SPACING;
        row.marginLeft = 0;
        row.center = true;
        setLayout(row);
        setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
    }

    static String name(WindowTexts texts, Step step) {
        return texts.text("begin.step-" + step.kind().name().toLowerCase(Locale.ROOT));
    }

    void show(List<Step> steps, int now) {
        for (Control old : getChildren()) {
            old.dispose();
        }
        for (int i = 0; i < steps.size(); i++) {
            String text = i + 1 + "  " + name(texts, steps.get(i));
            int step = i;
            if (i == now) {
                Label label = inks.dress(
                        new Label(this, SWT.NONE),
                        inks.palette().ink(),
                        inks.palette().paper());
                label.setFont(inks.font(1, true));
                label.setText(text);
            } else {
                inks.words(this, text, () -> goes.accept(step)).setData("id", "begin.step." + (i + 1));
            }
        }
        getParent().layout(true, true);
    }
}
