package org.hidewright.window.slip;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.hidewright.window.look.Inks;
import org.hidewright.window.words.WindowTexts;

/** Lines that are folded away under words that open them. */
final class Foldable {
    private static final double SMALL = 0.85;

    private final Fold<Label> fold;
    private String title = "";
    private String text = "";

    /** @param changed called when it was opened or folded, since it then takes another height */
    Foldable(Composite parent, Inks inks, WindowTexts texts, String id, Runnable changed) {
        fold = new Fold<>(parent, inks, texts, id, in -> lines(in, inks, id), () -> {
            apply();
            changed.run();
        });
        apply();
    }

    private static Label lines(Composite parent, Inks inks, String id) {
        Label lines = inks.dress(
                new Label(parent, SWT.WRAP),
                inks.palette().quiet(),
                inks.palette().paper());
        lines.setFont(inks.font(SMALL, false));
        lines.setData("id", id + ".lines");
        return lines;
    }

    /** Shows lines under a title; whether it takes another height than before. */
    boolean show(String newTitle, String newText) {
        if (title.equals(newTitle) && text.equals(newText)) {
            return false;
        }
        boolean taller = fold.isOpen() || text.isEmpty() != newText.isEmpty();
        title = newTitle;
        text = newText;
        apply();
        return taller;
    }

    private void apply() {
        fold.body().setText(fold.isOpen() ? text : "");
        fold.show(title, !text.isEmpty());
    }
}
