package org.hidewright.addons;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hidewright.core.addons.AddOn;
import org.hidewright.core.addons.AddOnChange;
import org.hidewright.core.addons.AddOnChange.Moved;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.junit.jupiter.api.Test;

/**
 * Installing from an index, against a real framework: with what is needed, all or nothing. What was installed is started there,
 * so that what our search found is held against what the framework itself resolves.
 */
class FromIndexTest extends OnAShelf {
    @Test
    void aBundleComesWithAllItNeedsAndNoMore() throws Exception {
        shelved("nets", "1.2", "Import-Package", "org.knots;version=\"[1,2)\",org.contract;version=\"[1.3,2)\"");
        shelved("knots", "1.3", "Export-Package", "org.knots;version=1.3", "Require-Bundle", "ropes");
        shelved("knots", "2.0", "Export-Package", "org.knots;version=2.0");
        shelved("ropes", "1.0", "Require-Capability", "hemp;filter:=\"(strength>=3)\"");
        shelved("weak", "1.0", "Provide-Capability", "hemp;strength:Long=2");
        shelved("strong", "1.0", "Provide-Capability", "hemp;strength:Long=4");
        shelved("mats", "1.0");
        indexes().write(shelf);
        AddOnChange change = installed("nets");
        assertEquals(
                List.of(
                        comes("knots", "1.3.0", true),
                        comes("nets", "1.2.0", false),
                        comes("ropes", "1.0.0", true),
                        comes("strong", "1.0.0", true)),
                change.moved());
        assertEquals(List.of("knots.jar", "nets.jar", "ropes.jar", "strong.jar"), installedFiles());
        assertArrayEquals(
                Files.readAllBytes(shelf.resolve("knots-1.3.jar")), Files.readAllBytes(jars.resolve("knots.jar")));
        startsThere();
        start();
        assertTrue(installed("nets").isNothing(), "a second time there is nothing to do");
    }

    /** The ids of those that do not work without it. */
    private List<String> dependents(String name) throws Exception {
        Wording english = new Wording(Locale.ENGLISH, UnitSystem.METRIC);
        return addOns().dependents(name).stream()
                .map(remark -> english.what(remark).split(" ")[0])
                .toList();
    }

    private void shelvedText(String id, String draws, String asks) throws Exception {
        drawing(bundle(id, "1.0", "Hidewright-Templates", id + "-end.json"), id + "-end", draws, asks)
                .write(shelf.resolve(id + "-1.0.jar"));
    }

    /** No manifest says what a text asks: it is read off the text when the index is made. */
    @Test
    void whatATextAsksComesAlongAndWhatItDrawsWithIsTurnedOn() throws Exception {
        ofProgram("parts", "off", "parts");
        Files.createDirectories(settings);
        Files.writeString(settings.resolve("addons.txt"), "off parts\n");
        shelvedText("belts", "parts", "belt-blanks");
        bundle("blanks", "1.0", "Service-Component", "x.xml")
                .component("x.xml", "calculator.calculates", "belt-blanks")
                .write(shelf.resolve("blanks-1.0.jar"));
        shelved("mats", "1.0");
        indexes().write(shelf);
        AddOnChange change = installed("belts");
        assertEquals(
                List.of("belts false", "blanks true"),
                change.moved().stream()
                        .map(moved -> moved.id() + " " + moved.needed())
                        .toList());
        assertEquals(List.of("parts"), change.on());
        start();
        ofProgram("parts", "on", "parts");
        assertEquals(List.of("belts"), dependents("blanks"));
        assertEquals(List.of(), dependents("belts"));
        assertEquals(List.of("belts"), dependents("parts"));
    }

    @Test
    void textsAloneAreNoCodeAndTheLastPartOfANameWillDo() throws Exception {
        drawing(bundle("net.example.belts", "1.0", "Hidewright-Templates", "belt.json"), "belt", "parts", "parts")
                .write(shelf.resolve("belts.jar"));
        drawing(bundle("net.example.nets", "1.0", "Hidewright-Templates", "net.json"), "net", "parts", "parts")
                .with("org/x/A.class", "code")
                .write(shelf.resolve("nets.jar"));
        shelved("org.example.nets", "1.0");
        ofProgram("parts", "on", "parts");
        indexes().write(shelf);
        waiting.add("belts.jar");
        assertFalse(installed("belts").strange());
        assertEquals(List.of("net.example.belts.jar"), installedFiles());
        start();
        assertEquals(
                List.of(false),
                addOns().all().stream()
                        .filter(addOn -> addOn.id().equals("net.example.belts"))
                        .map(AddOn::code)
                        .toList());
        assertTrue(told(() -> installed("nets")).startsWith("shelf offers no bundle “nets”"), "there are two");
        waiting.add("nets.jar");
        assertTrue(installed("net.example.nets").strange());
        start();
        assertEquals("net.example.belts", addOns().remove("belts").id());
    }

    @Test
    void whatATextAsksAndNobodyBringsIsTold() throws Exception {
        ofProgram("parts", "on", "parts");
        shelvedText("belts", "parts", "belt-blanks");
        indexes().write(shelf);
        assertTrue(told(() -> installed("belts"))
                .startsWith("belts cannot be installed: belts 1.0.0 needs the calculator “belt-blanks”, and it is"
                        + " neither here nor in the index."));
        assertEquals(List.of(), installedFiles());
    }

    @Test
    void whoNeedsABundleByItsManifestIsFoundToo() throws Exception {
        there("knots.jar", "on", bundle("knots", "1.0", "Export-Package", "org.knots;version=1.0"));
        there("nets.jar", "on", bundle("nets", "1.0", "Import-Package", "org.knots"));
        there("mats.jar", "on", bundle("mats", "1.0", "Require-Bundle", "nets"));
        there("pads.jar", "off", bundle("pads", "1.0", "Require-Bundle", "nets"));
        assertEquals(List.of("mats", "nets"), dependents("knots"));
        assertEquals(List.of("mats"), dependents("nets.jar"));
        assertEquals(List.of(), dependents("mats"));
    }

    @Test
    void ofWhatIsNeededTheNewestComes() throws Exception {
        shelved("nets", "1", "Require-Bundle", "knots");
        shelved("knots", "1.9");
        shelved("knots", "1.10");
        shelved("knots", "1.2");
        indexes().write(shelf);
        assertEquals(
                List.of(comes("knots", "1.10.0", true), comes("nets", "1.0.0", false)),
                installed("nets").moved());
        startsThere();
    }

    /** The host comes along, since a part alone brings nothing. */
    @Test
    void whatAPartOfABundleOffersIsFoundToo() throws Exception {
        shelved("nets", "1", "Import-Package", "org.patch");
        shelved("patch", "1", "Fragment-Host", "knots", "Export-Package", "org.patch");
        shelved("knots", "1");
        indexes().write(shelf);
        installed("nets");
        assertEquals(List.of("knots.jar", "nets.jar", "patch.jar"), installedFiles());
    }

    @Test
    void servicesThatAreAskedForComeAlongWhereTheyAreOffered() throws Exception {
        String asks = "osgi.service;filter:=\"(objectClass=a.B)\";effective:=active,"
                + "osgi.service;filter:=\"(objectClass=nobody.Has)\";effective:=active";
        shelved("nets", "1", "Require-Capability", asks);
        shelved("serves", "1", "Provide-Capability", "osgi.service;objectClass:List<String>=\"x.Y,a.B\"");
        indexes().write(shelf);
        installed("nets");
        assertEquals(List.of("nets.jar", "serves.jar"), installedFiles());
    }

    @Test
    void whatIsOptionalStaysAway() throws Exception {
        shelved("nets", "1", "Import-Package", "org.maybe;resolution:=optional", "DynamicImport-Package", "org.dyn");
        shelved("dyn", "1", "Export-Package", "org.dyn");
        indexes().write(shelf);
        installed("nets");
        assertEquals(List.of("nets.jar"), installedFiles());
        startsThere();
    }

    @Test
    void theProgramComesFirstAndIsNotReplaced() throws Exception {
        shelved("nets", "1", "Import-Package", "org.contract");
        shelved("takes", "9", "Export-Package", "org.contract;version=9");
        shelved("straps", "9");
        indexes().write(shelf);
        installed("nets");
        assertEquals(List.of("nets.jar"), installedFiles());
        assertEquals(
                "shelf cannot be installed: straps is the name of a bundle that came with the program. Ask its author for a"
                        + " bundle with a name of its own.",
                told(() -> installed("straps")));
    }

    @Test
    void ofTwoVersionsThatCannotBothBeThereOneIsFound() throws Exception {
        shelved("nets", "1", "Import-Package", "org.knots;version=\"[1,3)\",org.loops");
        shelved("loops", "1", "Export-Package", "org.loops", "Import-Package", "org.knots;version=\"[1,2)\"");
        shelved("knots", "2", "Export-Package", "org.knots;version=2");
        shelved("knots", "1", "Export-Package", "org.knots;version=1");
        indexes().write(shelf);
        installed("nets");
        assertTrue(entry(jars.resolve("knots.jar"), "META-INF/MANIFEST.MF").contains("Bundle-Version: 1\n"));
        startsThere();
    }

    @Test
    void whatRunsGoesOnRunningAndIsRenewedOnlyWhereItMust() throws Exception {
        there("knots.jar", "on", bundle("knots", "1.0", "Export-Package", "org.knots;version=1.0"));
        there("mats.jar", "on", bundle("mats", "1.0", "Import-Package", "org.knots;version=\"[1,2)\""));
        shelved("knots", "1.1", "Export-Package", "org.knots;version=1.1");
        shelved("knots", "1.5", "Export-Package", "org.knots;version=1.5");
        shelved("knots", "2.0", "Export-Package", "org.knots;version=2.0");
        shelved("plain", "1", "Import-Package", "org.knots");
        shelved("newer", "1", "Import-Package", "org.knots;version=1.2");
        shelved("newest", "1", "Import-Package", "org.knots;version=2.0");
        indexes().write(shelf);
        assertEquals(List.of(comes("plain", "1.0.0", false)), installed("plain").moved());
        start();
        assertEquals(
                List.of(new Moved("knots", "1.0.0", "1.5.0", List.of(), true), comes("newer", "1.0.0", false)),
                installed("newer").moved());
        start();
        startsThere();
        assertTrue(told(() -> installed("newest")).startsWith("newest cannot be installed: "), "mats would stop");
        assertEquals(List.of("knots.jar", "mats.jar", "newer.jar", "plain.jar"), installedFiles());
    }

    @Test
    void whatIsBrokenAlreadyKeepsNothingAway() throws Exception {
        there("broken.jar", "on", bundle("broken", "1", "Import-Package", "org.nowhere"));
        there("failed.jar", "failed was not started.", bundle("failed", "1", "Import-Package", "org.nowhere.too"));
        there("torn.jar", "torn.jar was not started.", Jar.empty().with("x", "y"));
        shelved("nets", "1");
        indexes().write(shelf);
        installed("nets");
        assertEquals(List.of("broken.jar", "failed.jar", "nets.jar", "torn.jar"), installedFiles());
    }

    @Test
    void whatIsNeededAndTurnedOffIsTurnedOn() throws Exception {
        there("knots.jar", "off", bundle("knots", "1.0", "Export-Package", "org.knots"));
        there("idle.jar", "off", bundle("idle", "1.0"));
        Files.writeString(settings.resolve("addons.txt"), "# mine\noff knots\noff idle\n");
        shelved("nets", "1", "Import-Package", "org.knots");
        shelved("idle", "2");
        indexes().write(shelf);
        assertEquals(List.of("knots"), installed("nets").on());
        assertEquals("# mine\noff idle\n", choices());
        start();
        assertEquals(List.of(), installed("idle").on(), "a choice outlives a version");
        assertEquals("# mine\noff idle\n", choices());
    }

    @Test
    void whatAStrangerMadeIsToldOfAndNotTwice() throws Exception {
        shelved("nets", "1.0");
        indexes().write(shelf);
        assertFalse(installed("nets").strange(), "signed by somebody named");
        assertTrue(
                Files.readString(settings.resolve("addons-agreed.txt")).endsWith(" nets\n"),
                "it goes on when nobody is named any more");
        Files.delete(settings.resolve("addons-agreed.txt"));
        start();
        addOns().remove("nets");
        start();
        waiting.add("nets-1.0.jar");
        assertTrue(installed("nets").strange());
        String agreed = Files.readString(settings.resolve("addons-agreed.txt"));
        assertTrue(
                agreed.endsWith("\n" + Sha256.of(Files.readAllBytes(shelf.resolve("nets-1.0.jar"))) + " nets\n"),
                agreed);
        assertTrue(agreed.startsWith("# "), agreed);
        new Agreed(settings).add(Map.of(Files.readAllBytes(shelf.resolve("nets-1.0.jar")), "nets"));
        assertEquals(agreed, Files.readString(settings.resolve("addons-agreed.txt")));
    }

    @Test
    void anotherBundleUnderTheNameOfTheFileIsNotWrittenOver() throws Exception {
        there("nets.jar", "on", bundle("mats", "1"));
        there("a.jar", "on", bundle("knots", "1"));
        there("b.jar", "knots was not started.", bundle("knots", "1"));
        shelved("nets", "1.0");
        shelved("knots", "2");
        indexes().write(shelf);
        installed("nets", "knots");
        assertEquals(List.of("knots.jar", "nets-2.jar", "nets.jar"), installedFiles());
    }
}
