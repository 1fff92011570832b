package org.hidewright.addons;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.felix.framework.FrameworkFactory;
import org.hidewright.core.addons.AddOnChange;
import org.hidewright.core.addons.AddOnChange.Moved;
import org.hidewright.core.addons.ShopProfiles;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.osgi.framework.Constants;
import org.osgi.framework.launch.Framework;

/** A shop as a file: made so, tried, written, and refused with its line where it says something else. */
class ShopFilesTest extends MakersSettings {
    private Framework framework;
    private Path file;

    @BeforeEach
    void aProgramWithThreeCalculators() throws Exception {
        framework = new FrameworkFactory()
                .newFramework(Map.of(
                        Constants.FRAMEWORK_STORAGE, folder.resolve("cache").toString(), "felix.log.level", "0"));
        framework.start();
        needs = org.hidewright.addons.Framework.needs(framework.getBundleContext(), jars);
        program("edges", "on");
        program("costing", "on");
        file = folder.resolve("shops/mine.json");
        Files.createDirectories(file.getParent());
    }

    @AfterEach
    void stop() throws Exception {
        framework.stop();
        framework.waitForStop(10_000);
    }

    private void program(String id, String state) throws IOException {
        Path jar = Jar.bundle(id, "Bundle-Version", "1.0").write(folder.resolve("program/" + id + ".jar"));
        states.put(jar.toString(), state);
    }

    private ShopProfiles profiles() {
        return addOns().profiles();
    }

    private Path write(String json) throws IOException {
        return Files.writeString(file, json);
    }

    private void shelf() throws Exception {
        Jar.bundle("nets", "Bundle-Version", "1.4", "Require-Bundle", "knots").write(folder.resolve("shelf/nets.jar"));
        Jar.bundle("nets", "Bundle-Version", "2.1").write(folder.resolve("shelf/nets2.jar"));
        Jar.bundle("knots", "Bundle-Version", "1.0").write(folder.resolve("shelf/knots.jar"));
        addOns().indexes().write(folder.resolve("shelf"));
    }

    @Test
    void withNoCalculatorListedAllAreTurnedOff() throws Exception {
        write("{\"hidewright-shop\": 1, \"about\": \"A bare bench\", \"bundles\": []}");
        AddOnChange change = profiles().apply(file, false);
        assertEquals(new AddOnChange(List.of(), List.of(), List.of("costing", "edges", "straps"), false), change);
        assertEquals(
                "# Bundles that are turned off. Changed by: hidewright addons off|on NAME\noff costing\noff edges\n"
                        + "off straps\n",
                choices());
        assertTrue(profiles().apply(file, false).isNothing(), "a second time there is nothing to do");
    }

    @Test
    void whatIsListedIsOnWithWhatItNeedsAndAllElseOff() throws Exception {
        shelf();
        there("pads.jar", "on", Jar.bundle("pads"));
        Files.writeString(settings.resolve("addons.txt"), "# mine\noff straps\noff gone\n");
        write("""
                {"hidewright-shop": 1,
                 "from": ["../shelf"],
                 "bundles": ["straps", {"bundle": "nets", "versions": "[1.2,2)"}, "core"]}
                """);
        AddOnChange change = new AddOnChange(
                List.of(
                        new Moved("knots", "", "1.0.0", List.of(), true),
                        new Moved("nets", "", "1.4.0", List.of(), false)),
                List.of("straps"),
                List.of("costing", "edges", "pads"),
                false);
        assertEquals(change, profiles().apply(file, true));
        assertEquals(List.of("pads.jar"), installedFiles(), "it was only tried");
        assertEquals("# mine\noff straps\noff gone\n", choices());
        assertEquals(change, profiles().apply(file, false));
        assertEquals(List.of("knots.jar", "nets.jar", "pads.jar"), installedFiles());
        assertEquals("# mine\noff gone\noff costing\noff edges\noff pads\n", choices(), "one that is gone stays so");
        states.put(jars.resolve("knots.jar").toString(), "on");
        states.put(jars.resolve("nets.jar").toString(), "on");
        assertTrue(profiles().apply(file, false).isNothing());
        AddOnChange back = addOns().indexes().back();
        assertEquals(List.of("costing", "edges", "pads"), back.on());
        assertEquals(List.of("straps"), back.off());
        assertEquals(List.of("pads.jar"), installedFiles());
        assertEquals("# mine\noff straps\noff gone\n", choices());
    }

    @Test
    void whatATextDrawsWithStaysOn() throws Exception {
        ofProgram("parts", "on", "parts");
        ofProgram("stitches", "off", "stitches");
        there(
                "belts.jar",
                "on",
                drawing(Jar.bundle("belts", "Hidewright-Templates", "belt.json"), "belt", "parts", "stitches"));
        Files.writeString(settings.resolve("addons.txt"), "off stitches\n");
        write("{\"hidewright-shop\": 1, \"bundles\": [\"belts\"]}");
        AddOnChange change = profiles().apply(file, false);
        assertEquals(List.of("stitches"), change.on());
        assertEquals(List.of("costing", "edges", "straps"), change.off());
    }

    @Test
    void whatIsHereAndFitsStaysAndAnotherVersionTakesItsPlaceWhereTheFileSaysSo() throws Exception {
        shelf();
        there("nets.jar", "off", Jar.bundle("nets", "Bundle-Version", "2.0"));
        Files.writeString(settings.resolve("addons.txt"), "off nets\n");
        write(
                "{\"hidewright-shop\": 1, \"from\": [\"../shelf\"], \"bundles\": [\"nets\", \"straps\", \"edges\", \"costing\"]}");
        assertEquals(
                new AddOnChange(List.of(), List.of("nets"), List.of(), false),
                profiles().apply(file, true));
        write("{\"hidewright-shop\": 1, \"from\": [\"../shelf\"], \"bundles\": [\"straps\", \"edges\", \"costing\","
                + " {\"bundle\": \"nets\", \"versions\": \"[1,2)\"}]}");
        assertEquals(
                List.of(
                        new Moved("knots", "", "1.0.0", List.of(), true),
                        new Moved("nets", "2.0.0", "1.4.0", List.of(), false)),
                profiles().apply(file, false).moved());
    }

    @Test
    void whatWaitsIsStartedByAShopThatListsIt() throws Exception {
        there("nets.jar", "waiting", Jar.bundle("nets"));
        write("{\"hidewright-shop\": 1, \"bundles\": [\"nets\", \"straps\", \"edges\", \"costing\"]}");
        assertTrue(profiles().apply(file, true).strange());
        assertFalse(Files.exists(settings.resolve("addons-agreed.txt")));
        assertTrue(profiles().apply(file, false).strange());
        assertTrue(Files.readString(settings.resolve("addons-agreed.txt")).endsWith(" nets\n"));
    }

    private List<String> told() {
        Wording wording = new Wording(Locale.ENGLISH, UnitSystem.METRIC);
        return assertThrows(FileTrouble.class, () -> profiles().apply(file, false)).remarks().stream()
                .map(remark -> (remark.place() == null ? "" : remark.place().line() + ": ")
                        + wording.what(remark).replace(folder + "/", ""))
                .toList();
    }

    @Test
    void whatIsNowhereIsToldWithItsLineAndNothingIsDone() throws Exception {
        shelf();
        write("""
                {"hidewright-shop": 1, "from": ["../shelf"],
                 "bundles": [
                  "straps",
                  "telephone",
                  {"bundle": "nets", "versions": "[3,4)"},
                  {"bundle": "edges", "versions": "2"}]}
                """);
        assertEquals(
                List.of(
                        "4: telephone is neither here nor in an index that the file names.",
                        "5: Of nets there is no version [3,4), neither here nor in an index that the file names.",
                        "6: edges is here in version 1.0.0, and the file asks for 2."),
                told());
        assertFalse(Files.exists(settings));
        write("{\"hidewright-shop\": 1, \"from\": [\"../shelf\"], \"bundles\": [\n\"edgess\"]}");
        assertEquals(
                List.of("2: edgess is neither here nor in an index that the file names; perhaps edges is meant."),
                told());
        write("{\"hidewright-shop\": 1, \"from\": [\"nowhere\"], \"bundles\": []}");
        assertEquals(List.of("There is no file or folder shops/nowhere."), told());
    }

    @Test
    void allThatIsNotUnderstoodIsToldAtOnce() throws Exception {
        write("""
                {"hidewright-shop": 1, "form": [],
                 "about": 3,
                 "from": "shelf",
                 "bundles": [
                  7,
                  {"bundel": "nets"},
                  {"bundle": "nets", "versions": "soon"},
                  "nets"]}
                """);
        assertEquals(
                List.of(
                        "1: “form” means nothing here.",
                        "2: “about” is the number 3 here; a text in double quotes belongs there.",
                        "3: “from” is a text in double quotes here; a list in square brackets belongs there.",
                        "5: “bundles” is the number 7 here; a list in square brackets belongs there.",
                        "6: “bundel” means nothing here.",
                        "6: “bundle” is missing here.",
                        "7: “soon” says no versions.",
                        "8: nets is listed twice."),
                told());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"hidewright-shop\": 1}|1: “bundles” is missing here.",
                "[]|1: shops/mine.json is no file of what a shop has turned on.",
                "{\"hidewright\": 1}|1: shops/mine.json is no file of what a shop has turned on.",
                "{\"hidewright-shop\": \"1\", \"bundles\": []}|1: shops/mine.json is no file of what a shop has turned on.",
                "{\"hidewright-shop\": 2, \"bundles\": []}|1: shops/mine.json is of a newer kind (2) than this program knows (1).",
            })
    void whatIsNoShopIsTold(String json, String said) throws Exception {
        write(json);
        assertEquals(List.of(said), told());
    }

    @Test
    void whatIsNoJsonIsToldWithItsLine() throws Exception {
        write("{\"hidewright-shop\": 1,\n \"bundles\": [,]}");
        assertTrue(told().get(0).startsWith("2: "), told().toString());
        Files.delete(file);
        assertEquals(1, told().size());
    }

    @Test
    void whatIsTurnedOnIsWrittenAndMakesTheSameShopElsewhere() throws Exception {
        shelf();
        there("nets.jar", "on", Jar.bundle("nets", "Bundle-Version", "1.4"));
        there("pads.jar", "off", Jar.bundle("pads"));
        program("costing", "off");
        assertEquals(
                List.of(), profiles().write(file, List.of(folder.resolve("shelf"))), "of nets it has a newer one too");
        assertEquals("""
                {
                  "hidewright-shop": 1,
                  "from": [
                    "../shelf"
                  ],
                  "bundles": [
                    "edges",
                    {
                      "bundle": "nets",
                      "versions": "1.4.0"
                    },
                    "straps"
                  ]
                }
                """, Files.readString(file));
        assertEquals(
                "shops/mine.json is there already. Name another file, or move that one away.",
                told(() -> profiles().write(file, List.of())));
        Files.writeString(settings.resolve("addons.txt"), "off costing\noff pads\n");
        assertTrue(profiles().apply(file, false).isNothing(), "it is so here");
        profiles().write(file.resolveSibling("plain.json"), List.of());
        assertFalse(Files.readString(file.resolveSibling("plain.json")).contains("from"));
        there("eyelets.jar", "on", Jar.bundle("eyelets", "Bundle-Version", "0.3"));
        there("knots.jar", "on", Jar.bundle("knots", "Bundle-Version", "1.0.1"));
        assertEquals(
                List.of("eyelets 0.3.0", "knots 1.0.1"),
                profiles().write(file.resolveSibling("lacking.json"), List.of(folder.resolve("shelf"))),
                "the knots of the shelf are older");
        assertEquals(
                "There is no file or folder nowhere. Check the name, and the folder you are in.",
                told(() -> profiles().write(file.resolveSibling("y.json"), List.of(folder.resolve("nowhere")))));
        assertFalse(Files.exists(file.resolveSibling("y.json")));
        assertTrue(told(() -> profiles().write(folder.resolve("nowhere/x.json"), List.of()))
                .startsWith("nowhere/x.json could not be changed: "));
    }
}
