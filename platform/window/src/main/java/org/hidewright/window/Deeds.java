package org.hidewright.window;

import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.hidewright.window.look.Mnemonics;
import org.hidewright.window.look.Submenus;
import org.hidewright.window.words.WindowTexts;

/** All that can be done, as the menus of the window. A deed that cannot be done now is told apart when its menu is opened. */
final class Deeds {
    /** There the toolkit reads the key of a line in English, and the system writes it in the maker’s language. */
    private static final boolean GTK = "gtk".equals(SWT.getPlatform());

    private final WindowTexts texts;
    private final Menu bar;
    private final Shell shell;

    Deeds(Shell shell, WindowTexts texts) {
        this.shell = shell;
        this.texts = texts;
        this.bar = new Menu(shell, SWT.BAR);
        shell.setMenuBar(bar);
    }

    /** A menu of the bar. */
    Menu menu(String key) {
        return submenu(bar, key);
    }

    private Menu submenu(Menu in, String key) {
        MenuItem item = new MenuItem(in, SWT.CASCADE);
        item.setText(texts.text("menu." + key));
        Menu menu = new Menu(shell, SWT.DROP_DOWN);
        menu.setData("id", "menu." + key);
        Mnemonics.give(in);
        item.setMenu(menu);
        return menu;
    }

    /**
     * A deed.
     *
     * @param key 0 where it has none
     * @param possible whether it can be done now
     */
    void deed(Menu menu, String name, int key, BooleanSupplier possible, Runnable does) {
        MenuItem item = new MenuItem(menu, SWT.PUSH);
        String text = texts.text("deed." + name);
        item.setText(key == 0 ? text : text + "\t" + written(key));
        item.setAccelerator(key);
        item.setData("id", "deed." + name);
        item.addListener(SWT.Selection, event -> {
            if (possible.getAsBoolean()) {
                does.run();
            }
        });
        Mnemonics.give(menu);
        menu.addListener(SWT.Show, event -> item.setEnabled(possible.getAsBoolean()));
        // a key does not reach an item that is grey, and what was so when the menu was seen last may have changed since
        menu.addListener(SWT.Hide, event -> item.setEnabled(true));
    }

    /** A menu in a menu that is filled when it is opened. */
    void list(Menu menu, String key, Consumer<Menu> fill) {
        Menu list = submenu(menu, key);
        list.addListener(SWT.Show, event -> {
            Submenus.of(shell).clear(list);
            fill.accept(list);
            Mnemonics.give(list);
        });
    }

    void line(Menu menu) {
        new MenuItem(menu, SWT.SEPARATOR);
    }

    private String written(int key) {
        return (GTK ? modifiers(key, "Ctrl", "Shift") : modifiers(key, texts.text("key.ctrl"), texts.text("key.shift")))
                + (char) Character.toUpperCase(key & SWT.KEY_MASK);
    }

    private static String modifiers(int key, String command, String shift) {
        return ((key & SWT.MOD1) != 0 ? command + "+" : "") + ((key & SWT.MOD2) != 0 ? shift + "+" : "");
    }
}
