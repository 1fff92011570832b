package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.window.kit.Mats;
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

    @Test
    void afterTheStepsUnitsAreSwitchedByTheirKey() {
        real.key('\r');
        for (int i = 0; i < 5; i++) {
            real.alt('n');
            real.alt('o');
        }
        assertTrue(real.window.project().isPresent());
        real.control('u');
        assertTrue(inches());
        real.control('u');
        assertEquals(false, inches());
    }

    @Test
    void afterAMenuWasOpenedWithoutAProjectToo() {
        real.key(SWT.F10);
        real.key(SWT.ESC);
        real.key(SWT.ESC);
        real.key('\r');
        for (int i = 0; i < 5; i++) {
            real.alt('n');
            real.alt('o');
        }
        assertTrue(real.window.project().isPresent());
        real.control('u');
        assertTrue(inches());
    }
}
