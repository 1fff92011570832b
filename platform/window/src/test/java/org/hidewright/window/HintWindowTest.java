package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Locale;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
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
}
