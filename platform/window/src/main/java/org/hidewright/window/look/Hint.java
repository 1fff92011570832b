package org.hidewright.window.look;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.widgets.Text;

/** What is usual, in an empty field: slanted and paler, so that nobody takes it for what somebody has typed. */
public final class Hint {
    private Hint() {}

    /** To be called once for a field, before it has one. */
    public static void on(Text field, Inks inks) {
        field.addListener(SWT.Modify, event -> slant(field, inks));
    }

    /** Gives a field another one; none where it is empty. */
    public static void say(Text field, Inks inks, String hint) {
        if (!field.getMessage().equals(hint)) {
            field.setMessage(hint);
        }
        slant(field, inks);
    }

    private static void slant(Text field, Inks inks) {
        boolean seen = field.getText().isEmpty() && !field.getMessage().isEmpty();
        Font font = seen ? inks.slanted() : inks.font(1, false);
        if (!field.getFont().equals(font)) {
            field.setFont(font);
        }
    }
}
