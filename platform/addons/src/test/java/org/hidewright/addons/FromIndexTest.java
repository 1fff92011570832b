package org.hidewright.addons;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.felix.framework.FrameworkFactory;
import org.hidewright.core.addons.AddOnChange;
import org.hidewright.core.addons.AddOnChange.Moved;
import org.hidewright.core.addons.AddOnIndexes;
import org.hidewright.core.store.FileTrouble;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.osgi.framework.Bundle;
import org.osgi.framework.Constants;
import org.osgi.framework.launch.Framework;

/**
 * Installing from an index, against a real framework: with what is needed, all or nothing. What was installed is started there,
 * so that what our search found is held against what the framework itself resolves.
 */
class FromIndexTest extends MakersSettings {
    private Framework framework;
    private Path shelf;

    @BeforeEach
    void aFrameworkAndAShelf() throws Exception {
        framework = new FrameworkFactory()
                .newFramework(Map.of(
                        Constants.FRAMEWORK_STORAGE, folder.resolve("cache").toString(), "felix.log.level", "0"));
        framework.start();
        Path contract = Jar.bundle("core", "Bundle-Version", "1.4", "Export-Package", "org.contract;version=1.4")
                .write(folder.resolve("program/core.jar"));
        framework.getBundleContext().installBundle(contract.toUri().toString()).start();
        needs = org.hidewright.addons.Framework.needs(framework.getBundleContext(), jars);
        shelf = Files.createDirectories(folder.resolve("shelf"));
    }

    @AfterEach
    void stop() throws Exception {
        framework.stop();
        framework.waitForStop(10_000);
    }

    private AddOnIndexes indexes() {
        return addOns().indexes();
    }

    /** On the shelf; its file has name and version. */
    private Path shelved(String id, String version, String... headers) throws IOException {
        return bundle(id, version, headers).write(shelf.resolve(id + "-" + version + ".jar"));
    }

    private static Jar bundle(String id, String version, String... headers) {
        String[] all = new String[headers.length + 2];
        all[0] = "Bundle-Version";
        all[1] = version;
        System.arraycopy(headers, 0, all, 2, headers.length);
        return Jar.bundle(id, all);
    }

    private AddOnChange installed(String... names) throws FileTrouble {
        return indexes().install(shelf, List.of(names), false);
    }

    /** As a start would find it. */
    private void start() throws Exception {
        states.keySet().removeIf(jar -> Path.of(jar).startsWith(jars));
        if (Files.exists(jars)) {
            for (Path jar : new AddOnsFolder(settings).jars()) {
                String id = Candidate.kept(jar).id();
                states.put(
                        jar.toString(),
                        new Choices(settings.resolve("addons.txt")).off().contains(id) ? "off" : "on");
            }
        }
    }

    /** Starts all that is installed in the framework, which fails where it does not resolve. */
    private void startsThere() throws Exception {
        Map<String, Bundle> bundles = new HashMap<>();
        for (Path jar : new AddOnsFolder(settings).jars()) {
            Bundle bundle =
                    framework.getBundleContext().installBundle(jar.toUri().toString());
            bundles.put(bundle.getSymbolicName(), bundle);
        }
        for (Bundle bundle : bundles.values()) {
            bundle.start();
        }
        for (Bundle bundle : bundles.values()) {
            bundle.uninstall();
        }
    }

    private static Moved comes(String id, String version, boolean needed) {
        return new Moved(id, "", version, List.of(), needed);
    }

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
    void whatIsNowhereIsToldWithWhoNeedsIt() throws Exception {
        shelved("nets", "1.2", "Import-Package", "org.knots");
        shelved("knots", "1.3", "Export-Package", "org.knots", "Import-Package", "org.contract;version=\"[2,3)\"");
        shelved("mats", "1", "Require-Bundle", "felt;bundle-version=2");
        shelved("pads", "1", "Require-Capability", "hemp;filter:=\"(strength>=3)\"");
        indexes().write(shelf);
        String next =
                ", and it is neither here nor in the index. Add the bundle that brings it to the index, or ask its"
                        + " author.";
        assertEquals(
                "nets cannot be installed: knots 1.3.0 needs the package org.contract [2.0.0,3.0.0)" + next,
                told(() -> installed("nets")));
        assertEquals(
                "mats cannot be installed: mats 1.0.0 needs the bundle felt 2.0.0" + next,
                told(() -> installed("mats")));
        assertEquals(
                "pads cannot be installed: pads 1.0.0 needs hemp (strength>=3)" + next, told(() -> installed("pads")));
        assertEquals(List.of(), installedFiles());
        assertFalse(Files.exists(settings), "nothing was written at all");
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
    void whatDoesNotGoTogetherIsTold() throws Exception {
        shelved("nets", "1", "Import-Package", "org.knots;version=\"[2,3)\",org.loops");
        shelved("loops", "1", "Export-Package", "org.loops", "Import-Package", "org.knots;version=\"[1,2)\"");
        shelved("knots", "2", "Export-Package", "org.knots;version=2");
        shelved("knots", "1", "Export-Package", "org.knots;version=1");
        indexes().write(shelf);
        assertTrue(
                told(() -> installed("nets")).startsWith("nets cannot be installed: "), told(() -> installed("nets")));
        assertEquals(List.of(), installedFiles());
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
    void aJarThatIsNotWhatTheIndexSaysIsRefused() throws Exception {
        Path jar = shelved("nets", "1.0");
        byte[] honest = Files.readAllBytes(jar);
        indexes().write(shelf);
        byte[] changed = honest.clone();
        changed[changed.length / 2] ^= 1;
        Files.write(jar, changed);
        String next = " Copy both again. If the jar is yours and meant so, make the index anew with hidewright addons"
                + " index.";
        assertEquals(
                "shelf/nets-1.0.jar is not what the index says: its checksum (SHA-256) is another." + next,
                told(() -> installed("nets")));
        Files.write(jar, new byte[honest.length + 1]);
        assertEquals(
                "shelf/nets-1.0.jar is not what the index says: it has " + (honest.length + 1) + " bytes instead of "
                        + honest.length + "." + next,
                told(() -> installed("nets")));
        Files.delete(jar);
        assertEquals(
                "nets is in the index, and its jar shelf/nets-1.0.jar is not there. Copy it again, or make the index anew"
                        + " with hidewright addons index.",
                told(() -> installed("nets")));
        Path index = shelf.resolve("index.xml");
        Path other = bundle("mats", "3.0").write(shelf.resolve("mats.jar"));
        String asWritten = Files.readString(index);
        Files.writeString(
                index,
                asWritten
                        .replace(Sha256.of(honest), Sha256.of(Files.readAllBytes(other)))
                        .replace("\"" + honest.length + "\"", "\"" + Files.size(other) + "\"")
                        .replace("nets-1.0.jar", "mats.jar"));
        assertEquals(
                "shelf/mats.jar is not what the index says: it is mats 3.0.0." + next, told(() -> installed("nets")));
        for (String away : List.of("../nets.jar", "file:/elsewhere/nets.jar", "https://example.org/nets.jar", "::")) {
            Files.writeString(index, asWritten.replace("nets-1.0.jar", away));
            assertEquals(
                    "nets is not installed: the index says its jar is " + away + ", which is not in the folder of the"
                            + " index. Put the jar beside the index and make it anew with hidewright addons index.",
                    told(() -> installed("nets")));
        }
        assertEquals(List.of(), installedFiles());
    }

    @Test
    void whatIsPackedAsNoHonestJarIsRefusedThoughTheIndexVouchesForIt() throws Exception {
        shelved("nets", "1.0");
        shelved("patch", "1.0", "Fragment-Host", "straps");
        indexes().write(shelf);
        faults.put("nets-1.0.jar", "leads-out");
        assertTrue(told(() -> installed("nets")).contains("the name of a file in it leads out"));
        assertTrue(told(() -> installed("patch")).contains("needs the bundle straps"), told(() -> installed("patch")));
        assertEquals(List.of(), installedFiles());
    }

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
    void namesThatAreNotOfferedAreTold() throws Exception {
        shelved("nets", "1");
        shelved("mats", "1");
        indexes().write(shelf);
        assertEquals(
                "shelf offers no bundle “nest”; perhaps nets is meant. hidewright addons --from shelf lists all that it"
                        + " offers.",
                told(() -> installed("nest")).replace(folder + "/", ""));
        assertEquals(
                "shelf offers no bundle “telephone”. It offers: mats, nets. hidewright addons --from shelf says more about"
                        + " each.",
                told(() -> installed("telephone")));
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
                "There is no change of the add-ons to take back. hidewright addons lists what is there.",
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
        assertTrue(told(() -> indexes().back()).startsWith("There is no change of the add-ons to take back."));
        Files.writeString(settings.resolve("addons-before/addons.txt"), "off nets\n");
        assertEquals(List.of("nets"), indexes().back().off());
    }

    @Test
    void whatAStrangerMadeIsToldOfAndNotTwice() throws Exception {
        shelved("nets", "1.0");
        indexes().write(shelf);
        assertFalse(installed("nets").strange(), "signed by somebody named");
        assertFalse(Files.exists(settings.resolve("addons-agreed.txt")));
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
    void anIndexInsideAJarIsLookedOverAndRead() throws Exception {
        shelved("nets", "1.0");
        Path index = indexes().write(shelf).file();
        Path packed = Jar.empty().with("index.xml", Files.readString(index)).write(shelf.resolve("shelf-index.jar"));
        assertEquals(1, indexes().read(packed).offers().size());
        indexes().install(packed, List.of("nets"), false);
        assertEquals(List.of("nets.jar"), installedFiles());
        indexes().write(shelf); // the packed index is none of the bundles
        assertEquals(1, indexes().read(shelf).offers().size());
        faults.put("shelf-index.jar", "seal");
        assertEquals(
                "shelf/shelf-index.jar cannot be installed: it is signed, and was changed since. Copy it again, or ask its"
                        + " author for another.",
                told(() -> indexes().read(packed)));
        faults.clear();
        Jar.empty().with("other.xml", "x").write(packed);
        assertTrue(told(() -> indexes().read(packed)).startsWith("There is no index shelf/shelf-index.jar."));
        Files.delete(packed);
        assertTrue(told(() -> indexes().read(packed)).startsWith("There is no index shelf/shelf-index.jar."));
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
