package org.hidewright.window;

import java.util.ArrayList;
import java.util.List;
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
    private final WindowTexts texts;
    private final Menu bar;
    private final Shell shell;
    private final List<Runnable> checks = new ArrayList<>();
    private final List<MenuItem> items = new ArrayList<>();

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
        menu.addListener(SWT.Show, event -> check());
        Mnemonics.give(in);
        // a key does not reach an item that is grey, and what was so when the menu was seen last may have changed since
        menu.addListener(SWT.Hide, event -> items.forEach(deed -> deed.setEnabled(true)));
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
        items.add(item);
        Mnemonics.give(menu);
        checks.add(() -> item.setEnabled(possible.getAsBoolean()));
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

    private void check() {
        checks.forEach(Runnable::run);
    }

    private String written(int key) {
        String modifiers = ((key & SWT.MOD1) != 0 ? texts.text("key.ctrl") + "+" : "")
                + ((key & SWT.MOD2) != 0 ? texts.text("key.shift") + "+" : "");
        return modifiers + (char) Character.toUpperCase(key & SWT.KEY_MASK);
    }
}
