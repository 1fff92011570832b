package org.hidewright.addons;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.jar.JarFile;
import org.hidewright.core.addons.AddOn;
import org.hidewright.core.addons.AddOn.Origin;
import org.hidewright.core.addons.AddOn.State;
import org.hidewright.core.addons.Carried;
import org.hidewright.core.template.TemplateFiles;
import org.hidewright.launcher.DecidedChange;
import org.junit.jupiter.api.Test;

/** Installing: all or nothing, and nothing is lost. */
class InstalledAddOnsTest extends MakersSettings {
    @Test
    void aJarIsInstalledUnderItsNameAndStartsNext() throws Exception {
        Path given = Jar.bundle("nets", "Bundle-Version", "1.0").write(folder.resolve("in/download (1).jar"));
        assertEquals(
                List.of(new AddOn(
                        "nets",
                        "nets",
                        "",
                        "1.0.0",
                        Origin.MAKER,
                        State.NEXT_START,
                        "",
                        List.of(),
                        List.of(),
                        jars.resolve("nets.jar"))),
                install(given));
        assertEquals(List.of("nets.jar"), installedFiles());
        assertArrayEquals(Files.readAllBytes(given), Files.readAllBytes(jars.resolve("nets.jar")));
    }

    @Test
    void aFolderOfJarsIsInstalledWhole() throws Exception {
        Jar.bundle("nets").write(folder.resolve("in/a.jar"));
        Jar.bundle("mats").write(folder.resolve("in/b.jar"));
        Files.writeString(folder.resolve("in/read-me.txt"), "no jar");
        Files.createDirectories(folder.resolve("in/folder.jar"));
        assertEquals(
                List.of("nets", "mats"),
                install(folder.resolve("in")).stream().map(AddOn::id).toList());
        assertEquals(List.of("mats.jar", "nets.jar"), installedFiles());
    }

    /** OSGi Core 8, 3.11: a header that begins with % is a key; the file without a language is for all that have none. */
    @Test
    void aBundleIsCalledInItsMakersLanguage() throws Exception {
        Jar.bundle("nets", "Bundle-Name", "%name")
                .with("OSGI-INF/l10n/bundle.properties", "name = Nets")
                .with("OSGI-INF/l10n/bundle_de.properties", "name = K\u00e4scher")
                .with("OSGI-INF/l10n/bundle_de_AT.properties", "name = Netze für drüben")
                .write(folder.resolve("nets.jar"));
        AddOn nets = install(folder.resolve("nets.jar")).get(0);
        assertEquals("Nets", nets.name());
        assertEquals("Nets", nets.name(Locale.FRENCH));
        assertEquals("Käscher", nets.name(Locale.GERMANY));
        assertEquals("Netze für drüben", nets.name(Locale.forLanguageTag("de-AT")));
    }

    @Test
    void textsOfItsHeadersLieWhereABundleSays() throws Exception {
        Jar.bundle("nets", "Bundle-Name", "%called", "Bundle-Localization", "words/said")
                .with("words/said.properties", "called = Nets\n")
                .with("words/said_de.properties", "called = \\u00")
                .write(folder.resolve("nets.jar"));
        assertEquals("Nets", install(folder.resolve("nets.jar")).get(0).name(Locale.GERMAN), "a broken text is none");
        Jar.bundle("mats", "Bundle-Name", "%called").write(folder.resolve("mats.jar"));
        assertEquals("called", install(folder.resolve("mats.jar")).get(0).name(Locale.GERMAN));
    }

    @Test
    void anUnpackedBundleIsPackedTheSameEachTime() throws Exception {
        Path unpacked = Jar.bundle("nets", "Bundle-Name", "Net Pack")
                .with("a/B.txt", "inside")
                .with("0.txt", "before the manifest by name")
                .unpack(folder.resolve("in"));
        Files.createSymbolicLink(unpacked.resolve("link.txt"), Files.writeString(folder.resolve("secret"), "x"));
        assertEquals("Net Pack", install(unpacked).get(0).name());
        Path jar = jars.resolve("nets.jar");
        assertEquals("inside", entry(jar, "a/B.txt"));
        try (JarFile file = new JarFile(jar.toFile())) {
            assertEquals(
                    List.of(JarFile.MANIFEST_NAME, "0.txt", "a/B.txt"),
                    file.stream().map(found -> found.getName()).toList());
        }
        states.put(jar.toString(), "on");
        byte[] first = Files.readAllBytes(jar);
        assertEquals(State.ON, install(unpacked).get(0).state());
        assertArrayEquals(first, Files.readAllBytes(jar));
    }

    @Test
    void anAuthorHasTheFolderFollowed() throws Exception {
        Path unpacked = Jar.bundle("nets", TemplateFiles.HEADER, "net.json")
                .with("net.json", "{}")
                .unpack(folder.resolve("in"));
        addOns().install(List.of(unpacked), false, true);
        try (JarFile file = new JarFile(jars.resolve("nets.jar").toFile())) {
            assertEquals(
                    unpacked.toAbsolutePath().normalize().toString(),
                    file.getManifest().getMainAttributes().getValue(TemplateFiles.FOLLOWS));
            assertEquals("net.json", file.getManifest().getMainAttributes().getValue(TemplateFiles.HEADER));
        }
        states.put(jars.resolve("nets.jar").toString(), "on");
        addOns().install(List.of(unpacked), true, false);
        try (JarFile file = new JarFile(jars.resolve("nets.jar").toFile())) {
            assertEquals(null, file.getManifest().getMainAttributes().getValue(TemplateFiles.FOLLOWS));
        }
    }

    @Test
    void whatItCarriesIsReadWithoutInstallingIt() throws Exception {
        Path unpacked = Jar.bundle("nets", TemplateFiles.HEADER, "in/net.json, in/gone.json, Odd.json")
                .with("in/net.json", "{}")
                .with("META-INF/maven/pom.properties", "version = 1")
                .with("OSGI-INF/l10n/bundle_de.properties", "name = Netze")
                .with("in/net_de.properties", "net.title = Gr\u00f6\u00dfe")
                .unpack(folder.resolve("in"));
        Carried carried = addOns().carried(List.of(unpacked)).get(0);
        assertEquals(Map.of("in/net.json", "{}"), carried.templates());
        assertEquals(Map.of("in/net_de.properties", "net.title = Gr\u00f6\u00dfe"), carried.properties());
        assertEquals(List.of("Odd.json", "in/gone.json"), carried.missing());
        assertFalse(carried.code());
        assertFalse(Files.exists(jars.resolve("nets.jar")));
    }

    @Test
    void whatIsNoBundleIsToldAndNothingIsInstalled() throws Exception {
        Path good = Jar.bundle("good").write(folder.resolve("good.jar"));
        Path text = Files.writeString(folder.resolve("text.jar"), "text");
        Path plain = Jar.empty().with("a.txt", "a").write(folder.resolve("plain.jar"));
        Path nameless = Jar.bundle("").write(folder.resolve("nameless.jar"));
        Path climbs = Jar.bundle("../../climbs").write(folder.resolve("climbs.jar"));
        Path undated = Jar.bundle("a", "Bundle-Version", "soon").write(folder.resolve("undated.jar"));
        Path follows = Jar.bundle("follows", TemplateFiles.FOLLOWS, "/home").write(folder.resolve("follows.jar"));
        Path none = Files.createDirectories(folder.resolve("none"));
        assertEquals(
                "follows.jar names a folder of its own to read templates from. Ask its author for the bundle without"
                        + " Hidewright-Follows in its manifest; a folder of yours is followed with --follow.",
                told(() -> install(good, follows)));
        assertEquals(
                "text.jar is no bundle: it cannot be read as a jar. Copy it again, or ask its author for the jar of the"
                        + " bundle.",
                told(() -> install(good, text)));
        String noBundle = " is a jar, but no bundle. Ask its author for the bundle; a library without a name belongs"
                + " inside the bundle that needs it.";
        assertEquals("plain.jar" + noBundle, told(() -> install(good, plain)));
        assertEquals("nameless.jar" + noBundle, told(() -> install(good, nameless)));
        assertEquals(
                "climbs.jar is no bundle: “../../climbs” can be the name of none. Ask its author for a bundle whose"
                        + " Bundle-SymbolicName is in order.",
                told(() -> install(good, climbs)));
        assertEquals(
                "undated.jar is no bundle: “soon” can be the version of none. Ask its author for a bundle whose"
                        + " Bundle-Version is in order.",
                told(() -> install(good, undated)));
        assertEquals(
                "There is no bundle in the folder none. Name the jar, or the folder it lies in. A folder of texts inside this"
                        + " one is a bundle of its own: name that; for an index make a jar of it, as the author’s guide shows.",
                told(() -> install(good, none)));
        assertEquals(
                "There is no file or folder nowhere. Check the name, and the folder you are in.",
                told(() -> install(good, folder.resolve("nowhere"))));
        assertEquals(List.of(), installedFiles());
    }

    @Test
    void whatIsPackedAsNoHonestJarIsIsNotInstalled() throws Exception {
        Path given = Jar.bundle("nets").write(folder.resolve("in/given.jar"));
        String next = ". Copy it again, or ask its author for another.";
        faults.put("given.jar", "seal");
        String changed = "in/given.jar cannot be installed: it is signed, and was changed since" + next;
        assertEquals(changed, told(() -> install(given)));
        assertEquals(changed, told(() -> install(given.getParent())));
        Map<String, String> words = Map.of(
                "leads-out", "the name of a file in it leads out of the folder it lies in, as no honest jar does",
                "too-much", "it unpacks to more than a bundle needs (100 MB, 1 MB for one text, or 65535 files)",
                "damaged", "what is in it is not what was packed into it",
                "doubled", "a file is in it twice, and nobody can tell which is meant");
        words.forEach((fault, said) -> {
            faults.put("given.jar", fault);
            assertEquals("in/given.jar cannot be installed: " + said + next, told(() -> install(given)));
        });
        assertEquals(List.of(), installedFiles());
    }

    @Test
    void nothingBecomesAPartOfTheProgram() throws Exception {
        for (String host : List.of("straps", "command;bundle-version=1.0")) {
            Path given = Jar.bundle("nets", "Fragment-Host", host).write(folder.resolve("given.jar"));
            assertEquals(
                    "given.jar cannot be installed: it wants to become a part of " + host.split(";")[0]
                            + ", which belongs to the program. Copy it again, or ask its author for another.",
                    told(() -> install(given)));
        }
        assertEquals(List.of(), installedFiles());
        there("mats.jar", "on", Jar.bundle("mats"));
        install(Jar.bundle("nets", "Fragment-Host", "mats").write(folder.resolve("given.jar")));
        assertEquals(List.of("mats.jar", "nets.jar"), installedFiles());
    }

    @Test
    void aManifestThatContradictsItselfIsTold() throws Exception {
        Path given = Jar.bundle("nets", "bundle-symbolicname", "mats").write(folder.resolve("given.jar"));
        assertEquals(
                "given.jar cannot be read: bundle-symbolicname stands twice in its manifest. Check its permissions, or copy"
                        + " it again.",
                told(() -> install(given)));
        install(Jar.bundle("nets", "Bundle-Name", "a\n Bundle-Version: b\n\nName: c\nBundle-Name: d")
                .write(folder.resolve("given.jar")));
        assertEquals(List.of("nets.jar"), installedFiles());
    }

    @Test
    void twoOfOneNameAreTold() throws Exception {
        Path one = Jar.bundle("nets").write(folder.resolve("one.jar"));
        Path two = Jar.bundle("nets", "Bundle-Version", "2").write(folder.resolve("two.jar"));
        assertEquals(
                "one.jar and two.jar are both called nets. Leave one of the two out.", told(() -> install(one, two)));
        assertEquals(List.of(), installedFiles());
    }

    @Test
    void theNamesOfTheProgramAreTaken() throws Exception {
        for (String taken : List.of("straps", "command")) {
            Path given = Jar.bundle(taken).write(folder.resolve("given.jar"));
            assertEquals(
                    "given.jar cannot be installed: " + taken
                            + " is the name of a bundle that came with the program. Ask its author for a bundle with a"
                            + " name of its own.",
                    told(() -> addOns().install(List.of(given), true, false)));
        }
        assertEquals(List.of(), installedFiles());
    }

    @Test
    void oneThatIsInstalledGivesWayOnlyWhenAsked() throws Exception {
        Path old = there("old name.jar", "on", Jar.bundle("nets", "Bundle-Version", "1.0"));
        Path given = Jar.bundle("nets", "Bundle-Version", "1.1").write(folder.resolve("given.jar"));
        assertEquals(
                "nets 1.0.0 is installed already, and given.jar would put 1.1.0 in its place. Add --replace if that is"
                        + " what you want.",
                told(() -> install(given)));
        assertEquals(List.of("old name.jar"), installedFiles());
        assertEquals(
                "1.1.0", addOns().install(List.of(given), true, false).get(0).version());
        assertEquals(List.of("nets.jar"), installedFiles());
        assertFalse(Files.exists(old));
    }

    @Test
    void theSameAgainIsNoTroubleAndWritesNothing() throws Exception {
        Path there = there("nets-1.jar", "on", Jar.bundle("nets"));
        Path given = Jar.bundle("nets").write(folder.resolve("given.jar"));
        assertArrayEquals(Files.readAllBytes(there), Files.readAllBytes(given));
        AddOn same = install(given).get(0);
        assertEquals(State.ON, same.state());
        assertEquals(there, same.file());
        assertEquals(List.of("nets-1.jar"), installedFiles());
    }

    @Test
    void aTornCopyGivesWayToAWholeOne() throws Exception {
        Files.createDirectories(jars);
        states.put(Files.writeString(jars.resolve("nets.jar"), "torn").toString(), "nets.jar was not started.");
        states.put(Files.writeString(jars.resolve("mats.jar"), "torn").toString(), "mats.jar was not started.");
        install(Jar.bundle("nets").write(folder.resolve("given.jar")));
        assertEquals(List.of("mats.jar", "nets.jar"), installedFiles());
        assertTrue(entry(jars.resolve("nets.jar"), JarFile.MANIFEST_NAME).contains("nets"));
        assertEquals("torn", Files.readString(jars.resolve("mats.jar")));
    }

    @Test
    void anotherBundleThatHasTheNameOfTheFileIsNotWrittenOver() throws Exception {
        there("nets.jar", "on", Jar.bundle("mats"));
        there("nets-2.jar", "on", Jar.bundle("mugs"));
        AddOn installed =
                install(Jar.bundle("nets").write(folder.resolve("given.jar"))).get(0);
        assertEquals(jars.resolve("nets-3.jar"), installed.file());
        assertEquals(List.of("nets-2.jar", "nets-3.jar", "nets.jar"), installedFiles());
        assertTrue(entry(jars.resolve("nets.jar"), JarFile.MANIFEST_NAME).contains("mats"));
    }

    @Test
    void twoCopiesOfOneBundleBothGiveWay() throws Exception {
        there("a.jar", "on", Jar.bundle("nets"));
        there("b.jar", "nets was not started.", Jar.bundle("nets"));
        Path given = Jar.bundle("nets").write(folder.resolve("given.jar"));
        assertTrue(told(() -> install(given)).startsWith("nets 0.0.0 is installed already"));
        addOns().install(List.of(given), true, false);
        assertEquals(List.of("nets.jar"), installedFiles());
    }

    @Test
    void whatIsTurnedOffStaysOffWhenItIsReplaced() throws Exception {
        there("nets.jar", "off", Jar.bundle("nets"));
        Path given = Jar.bundle("nets", "Bundle-Version", "2").write(folder.resolve("given.jar"));
        assertEquals(
                State.OFF, addOns().install(List.of(given), true, false).get(0).state());
    }

    @Test
    void whatCannotBeWrittenWholeIsUndone() throws Exception {
        Path old = there("aaa.jar", "on", Jar.bundle("aaa", "Bundle-Version", "1.0"));
        byte[] before = Files.readAllBytes(old);
        Path a = Jar.bundle("aaa", "Bundle-Version", "2.0").write(folder.resolve("in/a.jar"));
        Path b = Jar.bundle("bbb").write(folder.resolve("in/b.jar"));
        Path c = Jar.bundle("ccc").write(folder.resolve("in/c.jar"));
        InstalledAddOns failing = addOns(null, failingAt("ccc.jar"));
        assertTrue(told(() -> failing.install(List.of(a, b, c), true, false))
                .startsWith("settings/addons could not be changed: "));
        assertEquals(List.of("aaa.jar"), installedFiles());
        assertArrayEquals(before, Files.readAllBytes(old));
        assertFalse(Files.exists(settings.resolve("addons-change")));
    }

    /** A disk that fails when what comes under a name is to be moved. */
    private DecidedChange failingAt(String name) {
        return new DecidedChange(() -> {
            Path change = settings.resolve("addons-change");
            if (!Files.exists(change.resolve("undo"))
                    && Files.exists(change.resolve("come").resolve(name))
                    && Files.exists(jars.resolve("bbb.jar"))) {
                throw new IOException("a full disk");
            }
        });
    }

    @Test
    void aFileWhereTheFolderShouldBeIsTold() throws Exception {
        Files.createDirectories(settings);
        Files.writeString(jars, "a file");
        Path given = Jar.bundle("nets").write(folder.resolve("given.jar"));
        assertEquals(
                "settings/addons could not be changed: its folder is not there, and cannot be made. Mend this and try"
                        + " again, or name another folder of settings with --settings.",
                told(() -> install(given)));
    }

    @Test
    void aFolderThatCannotBeMadeIsTold() throws Exception {
        Files.writeString(settings, "a file where the folder should be");
        Path given = Jar.bundle("nets").write(folder.resolve("given.jar"));
        assertEquals(
                "settings/addons-agreed.txt could not be changed: its folder is not there, and cannot be made. Mend this and try"
                        + " again, or name another folder of settings with --settings.",
                told(() -> install(given)));
    }

    @Test
    void whatIsInstalledMayStartSinceItWasSaidWhatItMayDo() throws Exception {
        Path given = Jar.bundle("nets").write(folder.resolve("given.jar"));
        Path unpacked = Jar.bundle("mats").unpack(folder.resolve("mats"));
        waiting.add("given.jar");
        install(given, unpacked);
        List<String> agreed = Files.readAllLines(settings.resolve("addons-agreed.txt"));
        assertEquals(
                List.of(
                        Sha256.of(Files.readAllBytes(jars.resolve("mats.jar"))) + " mats",
                        Sha256.of(Files.readAllBytes(given)) + " nets"),
                agreed.subList(1, 3).stream()
                        .sorted(Comparator.comparing(line -> line.substring(65)))
                        .toList());
    }

    @Test
    void whatIsPackedHereIsLookedOverAsWell() throws Exception {
        Path unpacked = Jar.bundle("mats").unpack(folder.resolve("mats"));
        everyFault = "not-signed";
        assertEquals(
                "mats cannot be installed: this workshop starts only what is signed by somebody it has named, and it is not"
                        + " signed. Ask its maker for a jar that is signed by somebody named here; hidewright addons trust lists"
                        + " them. Or ask for no signature any more: hidewright addons distrust NAME",
                told(() -> install(unpacked)));
        assertEquals(List.of(), installedFiles());
    }
}
