package org.hidewright.addons;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.hidewright.core.addons.AddOnChange;
import org.hidewright.core.addons.AddOnChange.Moved;
import org.junit.jupiter.api.Test;

/** Newer versions from an index, older ones where they are asked for, and the last change taken back. */
class UpdateAndBackTest extends OnAShelf {
    @Test
    void anOlderVersionComesOnlyWhenThatIsAskedFor() throws Exception {
        there("nets.jar", "on", bundle("nets", "1.5"));
        shelved("nets", "1.2");
        shelved("nets", "1.4.0.b");
        indexes().write(shelf);
        assertEquals(
                "nets 1.5.0 is installed, and 1.4.0.b is older. Add --older if that is what you want.",
                told(() -> installed("nets")));
        assertEquals(
                "nets 1.5.0 is installed, and 1.2.0 is older. Add --older if that is what you want.",
                told(() -> installed("nets@1.2.0")));
        assertEquals(
                "shelf offers no version 1.3.0 of nets. It offers: 1.4.0.b, 1.2.0.",
                told(() -> installed("nets@1.3.0")));
        assertEquals(
                List.of(new Moved("nets", "1.5.0", "1.4.0", List.of(), false)),
                indexes().install(shelf, List.of("nets@1.4.0"), true).moved());
        start();
        assertEquals(
                List.of(new Moved("nets", "1.4.0", "1.2.0", List.of(), false)),
                indexes().install(shelf, List.of("nets@1.2.0"), true).moved());
    }

    @Test
    void whatIsInstalledIsBroughtUpToDate() throws Exception {
        there("nets.jar", "on", bundle("nets", "1.0", "Import-Package", "org.knots;version=\"[1,2)\""));
        there("old name.jar", "on", bundle("knots", "1.0", "Export-Package", "org.knots;version=1.0"));
        there("mine.jar", "on", bundle("mine", "1.0"));
        shelved("nets", "1.1", "Import-Package", "org.knots;version=\"[1,2)\"");
        shelved("knots", "1.4", "Export-Package", "org.knots;version=1.4");
        shelved("knots", "2.0", "Export-Package", "org.knots;version=2.0");
        shelved("mats", "1.0");
        indexes().write(shelf);
        assertEquals(
                "mats is not installed, so that it cannot be brought up to date. Install it: hidewright addons install mats"
                        + " --from shelf",
                told(() -> indexes().update(shelf, List.of("mats"))));
        assertTrue(told(() -> indexes().update(shelf, List.of("nest"))).contains("perhaps nets is meant"));
        assertEquals(
                List.of(new Moved("nets", "1.0.0", "1.1.0", List.of(), false)),
                indexes().update(shelf, List.of("nets")).moved());
        start();
        assertEquals(
                List.of(new Moved("knots", "1.0.0", "1.4.0", List.of(), false)),
                indexes().update(shelf, List.of()).moved(),
                "as new as goes together with the rest");
        assertEquals(List.of("knots.jar", "mine.jar", "nets.jar"), installedFiles());
        start();
        assertTrue(indexes().update(shelf, List.of()).isNothing());
        startsThere();
    }

    @Test
    void theLastChangeIsTakenBackAndThatAgain() throws Exception {
        assertEquals(
                "There is no change of what is installed to take back. hidewright addons lists what is there; "
                        + "what is turned off is turned on by hidewright addons on NAME.",
                told(() -> indexes().back()));
        there("nets.jar", "on", bundle("nets", "1.0"));
        there("mine.jar", "on", bundle("mine", "1.0"));
        Path torn = Files.writeString(jars.resolve("torn.jar"), "torn");
        byte[] before = Files.readAllBytes(jars.resolve("nets.jar"));
        shelved("nets", "2.0", "Require-Bundle", "knots");
        shelved("knots", "1.0");
        indexes().write(shelf);
        installed("nets");
        start();
        AddOnChange back = indexes().back();
        assertEquals(
                List.of(
                        new Moved("knots", "1.0.0", "", List.of(), false),
                        new Moved("nets", "2.0.0", "1.0.0", List.of(), false)),
                back.moved());
        assertArrayEquals(before, Files.readAllBytes(jars.resolve("nets.jar")));
        assertEquals(List.of("mine.jar", "nets.jar", "torn.jar"), installedFiles());
        assertEquals("torn", Files.readString(torn));
        start();
        assertEquals(
                List.of(comes("knots", "1.0.0", false), new Moved("nets", "1.0.0", "2.0.0", List.of(), false)),
                indexes().back().moved());
        assertEquals(List.of("knots.jar", "mine.jar", "nets.jar", "torn.jar"), installedFiles());
    }

    @Test
    void choicesComeBackOnlyWithAChangeThatMadeThem() throws Exception {
        there("knots.jar", "off", bundle("knots", "1.0"));
        Files.writeString(settings.resolve("addons.txt"), "off knots\n");
        shelved("nets", "1.0", "Require-Bundle", "knots");
        shelved("mats", "1.0");
        indexes().write(shelf);
        installed("nets");
        assertEquals("", choices());
        start();
        AddOnChange back = indexes().back();
        assertEquals(List.of("knots"), back.off());
        assertEquals(List.of(), back.on());
        assertEquals("off knots\n", choices());
        start();
        installed("mats");
        addOns().turn("straps", false);
        start();
        assertEquals(List.of(), indexes().back().on(), "what was chosen since stays");
        assertEquals("off knots\noff straps\n", choices());
    }

    @Test
    void whereAllIsAsItWasThereIsNothingToTakeBack() throws Exception {
        Path nets = there("nets.jar", "on", bundle("nets", "1.0"));
        Files.createDirectories(settings.resolve("addons-before"));
        Files.copy(nets, settings.resolve("addons-before/nets.jar"));
        assertTrue(told(() -> indexes().back()).startsWith("There is no change of what is installed to take back."));
        Files.writeString(settings.resolve("addons-before/addons.txt"), "off nets\n");
        assertEquals(List.of("nets"), indexes().back().off());
    }
}
