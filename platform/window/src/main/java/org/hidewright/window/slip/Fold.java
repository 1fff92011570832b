package org.hidewright.window.slip;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Link;
import org.hidewright.window.look.FoldWords;
import org.hidewright.window.look.Inks;
import org.hidewright.window.words.WindowTexts;

/** Something that is folded away under words that open it. */
final class Fold<C extends Control> {
    private final Link head;
    private final C body;
    private final WindowTexts texts;
    private final Runnable turned;
    private boolean open;

    /** Makes what is folded away. */
    interface Body<C extends Control> {
        C in(Composite parent);
    }

    /** @param turned called when it was opened or folded, since it then takes another height */
    Fold(Composite parent, Inks inks, WindowTexts texts, String id, Body<C> body, Runnable turned) {
        this.texts = texts;
        this.turned = turned;
        head = inks.words(parent, "", this::turn);
        head.setData("id", id);
        head.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false, 2, 1));
        this.body = body.in(parent);
        GridData data = new GridData(SWT.FILL, SWT.TOP, true, false, 2, 1);
        data.widthHint = 200;
        this.body.setLayoutData(data);
    }

    private void turn() {
        open = !open;
        turned.run();
    }

    C body() {
        return body;
    }

    boolean isOpen() {
        return open;
    }

    /** @param any whether there is anything to open */
    void show(String title, boolean any) {
        FoldWords.say(head, title, open, texts.text(open ? "fold.open" : "fold.shut"));
        place(head, any);
        place(body, open && any);
    }

    private static void place(Control control, boolean there) {
        ((GridData) control.getLayoutData()).exclude = !there;
        control.setVisible(there);
    }
}
