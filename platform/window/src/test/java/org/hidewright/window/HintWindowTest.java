package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Locale;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.hidewright.core.addons.CatalogueWithAddOns;
import org.hidewright.core.workshop.Stock;
import org.hidewright.window.kit.FakeWriters;
import org.hidewright.window.kit.Nets;
import org.hidewright.window.kit.NetsBundles;
import org.hidewright.window.look.Palette;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is usual is told apart from what was typed, by its slant and by how dark it is, and is clear all the same.
 *
 * <p>Source: WCAG 2.2, W3C Recommendation, success criteria 1.4.1 (not by colour alone) and 1.4.3 (4.5 to 1).
 */
@EnabledOnOs(OS.LINUX)
class HintWindowTest {
    private static final double TEXT = 4.5;
    /** So much clearer is what was typed. */
    private static final double CLEARER = 1.25;

    private static final long PAINTED_MS = 300;

    @TempDir
    Path folder;

    private RealWindow real;

    @AfterEach
    void close() {
        GtkSettings.dark(false);
    }

    private double contrast(Text field) {
        long end = System.nanoTime() + PAINTED_MS * 1_000_000;
        real.until(() -> System.nanoTime() > end);
        Rectangle inside = ScreenInk.seen(field, 3);
        return ScreenInk.now(real.display()).words(inside, 14).stream()
                .mapToDouble(ScreenInk.Word::contrast)
                .max()
                .orElseThrow();
    }

    private static boolean isSlanted(Text field) {
        return (field.getFont().getFontData()[0].getStyle() & SWT.ITALIC) != 0;
    }

    @Test
    void inBothThemes() throws Exception {
        for (boolean dark : new boolean[] {false, true}) {
            GtkSettings.dark(dark);
            NetsBundles bundles = new NetsBundles();
            real = new RealWindow(
                    folder.resolve("settings"),
                    new CatalogueWithAddOns(bundles, () -> bundles),
                    Stock.of(bundles::tables),
                    bundles,
                    FakeWriters.all(),
                    Locale.ENGLISH,
                    dark ? Palette.DARK : Palette.LIGHT);
            real.window.open(Nets.bag(folder));
            real.settle();
            Text field = real.find(Text.class, "bag/height");
            assertEquals("", field.getText());
            assertEquals("80 mm", field.getMessage());
            assertTrue(isSlanted(field));
            double hint = contrast(field);
            real.type("bag/height", "80 mm");
            real.find(Text.class, "roll/round").setFocus();
            real.settle();
            assertTrue(!isSlanted(field));
            double typed = contrast(field);
            assertTrue(hint >= TEXT, "contrast of the hint " + hint);
            assertTrue(typed >= CLEARER * hint, "typed " + typed + ", hint " + hint);
            real.close();
        }
    }

    /** GTK takes a hint away from the field that is typed into; whoever types over it wants to see what it was. */
    @Test
    void itStandsBelowTheFieldThatHasTheFocusUntilSomethingIsTyped() throws Exception {
        real = RealWindow.at(folder.resolve("settings"), Nets.catalogue(), Nets.bag(folder));
        Text field = real.find(Text.class, "bag/height");
        assertEquals("", real.text("bag/height/told"));
        Rectangle next = real.find(Text.class, "bag/room.above").getBounds();
        field.setFocus();
        field.notifyListeners(SWT.FocusIn, new Event());
        real.until(() -> real.text("bag/height/told").equals("Usual: 80 mm"));
        assertEquals(next, real.find(Text.class, "bag/room.above").getBounds(), "nothing jumps");
        real.find(Text.class, "roll/round").setFocus();
        field.notifyListeners(SWT.FocusOut, new Event());
        real.until(() -> real.text("bag/height/told").isEmpty());
        field.setFocus();
        field.notifyListeners(SWT.FocusIn, new Event());
        real.until(() -> !real.text("bag/height/told").isEmpty());
        real.type("bag/height", "70 mm");
        real.until(() -> real.text("bag/height/told").isEmpty());
        real.close();
    }

    /** What is told in several lines lies over the next field only as long as letters come. */
    @Test
    void whatIsToldGetsRoomOfItsOwnOnceTheTypingRests() throws Exception {
        real = RealWindow.at(folder.resolve("settings"), Nets.catalogue(), Nets.bag(folder));
        Text field = real.find(Text.class, "bag/height");
        Text next = real.find(Text.class, "bag/room.above");
        int before = next.getLocation().y;
        field.setFocus();
        real.type("bag/height", "80 mm +- 9999999999 mm"); // told in two lines
        assertEquals(before, next.getLocation().y);
        real.until(() -> next.getLocation().y > before);
        assertTrue(field.isFocusControl());
        real.close();
    }
}
