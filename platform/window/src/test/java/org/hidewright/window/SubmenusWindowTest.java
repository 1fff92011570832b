package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.hidewright.window.look.Submenus;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class SubmenusWindowTest {
    private Shell shell;

    @BeforeEach
    void open() {
        shell = new Shell(RealWindow.screen());
    }

    @AfterEach
    void close() {
        shell.dispose();
    }

    @Test
    void aSubmenuIsUsedAgainWithoutItsLines() {
        Label label = new Label(shell, SWT.NONE);
        Menu menu = new Menu(label);
        Menu first = filled(menu);
        Menu second = filled(menu);
        assertNotSame(first, second);

        Submenus.of(label).clear(menu);
        assertEquals(0, menu.getItemCount());
        assertFalse(first.isDisposed());

        assertSame(second, filled(menu));
        assertSame(first, filled(menu));
        assertEquals(1, first.getItemCount());
    }

    @Test
    void whatAControlUsedIsThereForTheNext() {
        Label label = new Label(shell, SWT.NONE);
        Menu menu = new Menu(label);
        label.setMenu(menu);
        label.addListener(SWT.Dispose, event -> Submenus.of(label).clear(menu));
        Menu first = filled(menu);
        label.dispose();
        assertFalse(first.isDisposed());
        assertSame(first, filled(new Menu(shell)));
    }

    private Menu filled(Menu menu) {
        MenuItem item = new MenuItem(menu, SWT.CASCADE);
        Menu inside = Submenus.of(shell).under(item);
        new MenuItem(inside, SWT.PUSH).setText("Roll");
        return inside;
    }
}
