package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Locale;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Text;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.window.kit.FakeWriters;
import org.hidewright.window.kit.Mats;
import org.hidewright.window.look.Palette;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Keys of the menus, pressed on the keyboard of the screen. */
@EnabledOnOs(OS.LINUX)
class ShortcutsWindowTest {
    @TempDir
    Path folder;

    private RealWindow real;

    @BeforeEach
    void open() {
        Catalogue catalogue = Mats.catalogue();
        real = new RealWindow(folder.resolve("settings"), catalogue, Mats.stock(catalogue));
    }

    @AfterEach
    void close() {
        real.close();
    }

    private boolean inches() {
        return real.window.project().orElseThrow().wording().inches();
    }

    /** What stands after the tab, the toolkit reads on Linux; what it cannot read it leaves out. */
    @Test
    void aLineOfAMenuTellsAllOfItsKeyInEveryLanguage() {
        for (Locale language : EveryState.LANGUAGES) {
            real.close();
            real = new RealWindow(
                    folder.resolve("settings"),
                    Mats.catalogue(),
                    null,
                    null,
                    FakeWriters.all(),
                    language,
                    Palette.LIGHT);
            assertTrue(real.find(MenuItem.class, "deed.begin").getText().endsWith("\tCtrl+Shift+N"), "" + language);
            assertTrue(real.find(MenuItem.class, "deed.units").getText().endsWith("\tCtrl+U"), "" + language);
        }
    }

    @Test
    void afterTheStepsUnitsAreSwitchedByTheirKey() {
        real.hands.key('\r');
        for (int i = 0; i < 5; i++) {
            real.hands.alt('n');
            real.hands.alt('o');
        }
        assertTrue(real.window.project().isPresent());
        real.hands.control('u');
        assertTrue(inches());
        real.find(Text.class, "mat/width").setFocus();
        real.hands.control('u');
        assertFalse(inches(), "also while a field has the keyboard");
    }

    @Test
    void afterAMenuWasOpenedWithoutAProjectToo() {
        real.hands.key(SWT.F10);
        real.hands.key(SWT.ESC);
        real.hands.key(SWT.ESC);
        real.hands.key('\r');
        for (int i = 0; i < 5; i++) {
            real.hands.alt('n');
            real.hands.alt('o');
        }
        assertTrue(real.window.project().isPresent());
        real.hands.control('u');
        assertTrue(inches());
    }
}
