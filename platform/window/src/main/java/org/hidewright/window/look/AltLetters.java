package org.hidewright.window.look;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Shell;

/**
 * The letters that press a button or open a menu with Alt stand underlined all the time. GTK by itself shows some until Alt was
 * pressed once, and after that all only while it is held, so that a guide could not speak of them. The property is named as in
 * the reference of GTK 3, GtkWindow.
 */
public final class AltLetters {
    private AltLetters() {}

    /** From now on in a window, and in its menus. */
    public static void on(Shell shell) {
        Listener again = event -> shell.getDisplay().asyncExec(() -> show(shell));
        Listener released = event -> {
            if (event.keyCode == SWT.ALT) {
                again.handleEvent(event);
            }
        };
        if (GtkProperties.are()) {
            shell.addListener(SWT.Show, again);
            shell.addListener(SWT.Activate, again);
            shell.addListener(SWT.Deactivate, again);
            shell.getDisplay().addFilter(SWT.KeyUp, released);
            shell.addListener(SWT.Dispose, event -> shell.getDisplay().removeFilter(SWT.KeyUp, released));
            show(shell);
        }
    }

    private static void show(Shell shell) {
        if (!shell.isDisposed()) {
            GtkProperties.flag(shell, GtkProperties.OF_WINDOW, "mnemonics-visible", true);
        }
    }
}
