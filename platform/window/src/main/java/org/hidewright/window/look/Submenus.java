package org.hidewright.window.look;

import java.util.ArrayDeque;
import java.util.Deque;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;

/**
 * Menus in menus, used again as long as the window is open. What GTK keeps of the looks of a submenu outlives its disposal, and
 * each one left behind makes taking away any widget slower.
 */
public final class Submenus {
    private static final String KEY = "submenus";

    private final Shell shell;
    private final Deque<Menu> free = new ArrayDeque<>();

    private Submenus(Shell shell) {
        this.shell = shell;
    }

    /** Those of the window that a control is in. */
    public static Submenus of(Control control) {
        Shell shell = control.getShell();
        if (shell.getData(KEY) == null) {
            shell.setData(KEY, new Submenus(shell));
        }
        return (Submenus) shell.getData(KEY);
    }

    /** A menu without a line, which a line of another menu opens. */
    public Menu under(MenuItem item) {
        Menu inside = free.isEmpty() ? new Menu(shell, SWT.DROP_DOWN) : free.pop();
        item.setMenu(inside);
        return inside;
    }

    /** Takes all lines out of a menu, and keeps the menus that they open. */
    public void clear(Menu menu) {
        for (MenuItem item : menu.getItems()) {
            Menu inside = item.getMenu();
            if (inside != null) {
                item.setMenu(null);
                clear(inside);
                free.push(inside);
            }
            item.dispose();
        }
    }
}
