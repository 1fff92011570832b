package org.hidewright.window;

import java.util.List;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.hidewright.window.look.Inks;

/** Something that is to be read, perhaps with a choice, above all else but in nobody’s way. */
final class TellBar extends Composite {
    private final Inks inks;
    /** What had the keyboard before it asked; null where nothing had. */
    private Control before;

    /**
     * What can be done about it.
     *
     * @param id by which it is found
     * @param text in words
     * @param does what it does; the bar goes away by itself
     */
    record Choice(String id, String text, Runnable does) {}

    TellBar(Composite parent, Inks inks) {
        super(parent, SWT.NONE);
        this.inks = inks;
        inks.dress(this, inks.palette().warning(), inks.palette().paper());
        setData("id", "told");
        hide();
    }

    /** Tells something. What asks takes the keyboard, so that it can be answered; what only tells leaves it where it is. */
    void tell(String text, List<Choice> choices) {
        Control focus = getDisplay().getFocusControl();
        if (focus != null && focus.getParent() != this) {
            before = focus;
        }
        for (Control old : getChildren()) {
            old.dispose();
        }
        GridLayout layout = new GridLayout(1 + choices.size(), false);
        layout.marginWidth = 12;
        layout.horizontalSpacing = 18;
        setLayout(layout);
        Label label = inks.dress(
                new Label(this, SWT.WRAP),
                inks.palette().warning(),
                inks.palette().paper());
        label.setText(text);
        label.setData("id", "told.text");
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
        data.widthHint = 300;
        label.setLayoutData(data);
        for (Choice choice : choices) {
            inks.words(this, choice.text(), () -> {
                        answered();
                        choice.does().run();
                    })
                    .setData("id", "told." + choice.id());
        }
        show(true);
        if (choices.size() > 1) {
            Stream.of(getChildren()).filter(Link.class::isInstance).findFirst().ifPresent(Control::forceFocus);
        }
    }

    /** Gives the keyboard back to what had it. */
    private void answered() {
        hide();
        if (before != null && !before.isDisposed()) {
            before.setFocus();
        }
        before = null;
    }

    void hide() {
        show(false);
    }

    private void show(boolean there) {
        if (getLayoutData() instanceof GridData data) {
            data.exclude = !there;
        }
        setVisible(there);
        getParent().layout(true, true);
    }
}
