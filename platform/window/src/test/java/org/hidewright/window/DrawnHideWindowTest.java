package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.MenuItem;
import org.hidewright.window.kit.Bench;
import org.hidewright.window.kit.Nets;
import org.hidewright.window.look.Palette;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A hide read from a drawing into the workshop; sizes and areas by hand. */
class DrawnHideWindowTest {
    /** 900 x 600 mm, seen from above; a hole of 100 x 50 mm, 100 mm from its left and 350 mm from its lower edge. */
    private static final String GOAT = """
            <svg xmlns="http://www.w3.org/2000/svg" width="1000mm" height="700mm" viewBox="0 0 1000 700">
              <path id="skin" d="M 50 50 h 900 v 600 h -900 z"/>
              <path id="hole-1" d="M 150 250 h 100 v 50 h -100 z"/>
            </svg>
            """;

    @TempDir
    Path folder;

    private RealWindow real;

    private void open() throws Exception {
        real = RealWindow.at(folder.resolve("settings"), Bench.catalogue(), Bench.project(folder));
        real.window.workshop().open(Bench.workshop(folder));
        settle();
    }

    private void settle() {
        real.settle();
        real.settle();
    }

    @AfterEach
    void close() {
        real.close();
    }

    private void read(String name, String drawing) throws Exception {
        real.files.add(Files.writeString(folder.resolve(name), drawing));
        real.press("deed.hide-drawn");
        settle();
    }

    private String workshop() {
        return real.window.workshop().opened().orElseThrow().text();
    }

    @Test
    void itIsANewRowCalledAsTheFileIsAndTakenBackAsOneChange() throws Exception {
        open();
        String before = workshop();
        read("Goat, spring.svg", GOAT);
        assertEquals("Goat, spring", real.text("workshop/skins[goat-spring].name"));
        assertEquals("0,0 0,600 900,600 900,0", real.text("workshop/skins[goat-spring].outline"));
        assertEquals(
                "hole 100,350 100,400 200,400 200,350",
                real.text("workshop/skins[goat-spring].flaws").strip());
        String told = real.text("workshop.told").replace('\u00a0', ' ');
        assertTrue(told.contains("900 mm × 600 mm, 54 dm²"), told);
        assertEquals(ink(Palette.LIGHT.quiet()), ink());
        real.press("deed.undo");
        settle();
        assertEquals(before, workshop());
    }

    private Color ink() {
        return real.find(Label.class, "workshop.told").getForeground();
    }

    private Color ink(int rgb) {
        return new Color((rgb >> 16) & 0xFF, (rgb >> 8) & 0xFF, rgb & 0xFF);
    }

    @Test
    void whatIsToBeLookedAtIsSaidInAnotherInk() throws Exception {
        open();
        read("skin.svg", GOAT.replace("width=\"1000mm\" height=\"700mm\" ", ""));
        String told = real.text("workshop.told");
        assertTrue(told.contains("does not say how large it is"), told);
        assertEquals(ink(Palette.LIGHT.warning()), ink());
        assertTrue(workshop().contains("\"skins\""), workshop());
    }

    @Test
    void whatIsNoDrawingOrHasNoOutlineChangesNothing() throws Exception {
        open();
        String before = workshop();
        real.press("deed.workshop");
        settle();
        read("broken.svg", "<svg");
        assertTrue(real.text("workshop.told").contains("SVG"), real.text("workshop.told"));
        read("open.svg", GOAT.replace(" z", ""));
        assertTrue(real.text("workshop.told").contains("closed"), real.text("workshop.told"));
        read("photo.png", "no drawing");
        assertTrue(real.text("workshop.told").contains(".svg"), real.text("workshop.told"));
        assertEquals(before, workshop());
    }

    /** Beside the rows of the table it goes into, and of no other. */
    @Test
    void itIsOfferedBesideTheTableOfHides() throws Exception {
        open();
        real.press("deed.workshop");
        settle();
        assertFalse(real.find(Link.class, "workshop.hide-drawn").getVisible(), "beside leather");
        read("skin.svg", GOAT);
        assertTrue(real.find(Link.class, "workshop.hide-drawn").getVisible(), "beside skins");
        assertTrue(real.find(Link.class, "workshop.hide-drawn").getBounds().width > 0);
    }

    @Test
    void withoutAWorkshopOneIsToBeBegunFirst() throws Exception {
        real = RealWindow.at(folder.resolve("settings"), Bench.catalogue(), Bench.project(folder));
        read("skin.svg", GOAT);
        assertTrue(real.has(Link.class, "workshop.new"));
    }

    @Test
    void withoutATableForHidesItIsNotOffered() throws Exception {
        real = RealWindow.at(folder.resolve("settings"), Nets.catalogue(), Bench.project(folder));
        assertFalse(real.find(MenuItem.class, "deed.hide-drawn").isEnabled());
    }
}
