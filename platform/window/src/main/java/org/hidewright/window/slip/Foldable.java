package org.hidewright.window.slip;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.hidewright.window.look.FoldWords;
import org.hidewright.window.look.Inks;
import org.hidewright.window.words.WindowTexts;

/** Lines that are folded away under words that open them. */
final class Foldable {
    private static final double SMALL = 0.85;

    private final Link head;
    private final Label lines;
    private final WindowTexts texts;
    private final Runnable changed;
    private String title = "";
    private String text = "";
    private boolean open;

    /** @param changed called when it was opened or folded, since it then takes another height */
    Foldable(Composite parent, Inks inks, WindowTexts texts, String id, Runnable changed) {
        this.texts = texts;
        this.changed = changed;
        head = inks.words(parent, "", this::turn);
        head.setData("id", id);
        head.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false, 2, 1));
        lines = inks.dress(
                new Label(parent, SWT.WRAP),
                inks.palette().quiet(),
                inks.palette().paper());
        lines.setFont(inks.font(SMALL, false));
        lines.setData("id", id + ".lines");
        GridData data = new GridData(SWT.FILL, SWT.TOP, true, false, 2, 1);
        data.widthHint = 200;
        lines.setLayoutData(data);
        apply();
    }

    /** Shows lines under a title; whether it takes another height than before. */
    boolean show(String newTitle, String newText) {
        if (title.equals(newTitle) && text.equals(newText)) {
            return false;
        }
        boolean taller = open || text.isEmpty() != newText.isEmpty();
        title = newTitle;
        text = newText;
        apply();
        return taller;
    }

    private void turn() {
        open = !open;
        apply();
        changed.run();
    }

    private void apply() {
        FoldWords.say(head, title, open, texts.text(open ? "fold.open" : "fold.shut"));
        lines.setText(open ? text : "");
        place(head, !text.isEmpty());
        place(lines, open && !text.isEmpty());
    }

    private static void place(Control control, boolean there) {
        ((GridData) control.getLayoutData()).exclude = !there;
        control.setVisible(there);
    }
}
