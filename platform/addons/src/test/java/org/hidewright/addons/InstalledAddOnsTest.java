package org.hidewright.addons;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.ArgumentMatchers.anyString;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.core.addons.AddOn;
import org.hidewright.core.addons.AddOn.Origin;
import org.hidewright.core.addons.AddOn.State;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;

class InstalledAddOnsTest {
    @TempDir
    Path folder;

    private final Map<String, String> states = new HashMap<>();
    private Path settings;
    private Path jars;

    @BeforeEach
    void aProgram() throws IOException {
        settings = folder.resolve("settings");
        jars = settings.resolve("addons");
        Path straps = Jar.bundle("straps", "Bundle-Version", "1.0.0.BUILD").write(folder.resolve("program/s.jar"));
        states.put(straps.toString(), "on");
    }

    private InstalledAddOns addOns() {
        return new InstalledAddOns(settings, states, Set.of("command", "core"));
    }

    private Path there(String file, String state, Jar jar) throws IOException {
        Path path = jar.write(jars.resolve(file));
        states.put(path.toString(), state);
        return path;
    }

    private List<AddOn> install(Path... given) throws FileTrouble {
        return addOns().install(List.of(given), false);
    }

    /** What is told: what and next, without the folder of the test. */
    private String told(Executable doing) {
        Wording wording = new Wording(Locale.ENGLISH, UnitSystem.METRIC);
        FileTrouble trouble = assertThrows(FileTrouble.class, doing);
        assertEquals(1, trouble.remarks().size());
        assertTrue(trouble.remarks().get(0).stops());
        return (wording.what(trouble.remarks().get(0)) + " "
                        + wording.next(trouble.remarks().get(0)))
                .replace(folder + "/", "");
    }

    private List<String> installedFiles() throws IOException {
        if (!Files.exists(jars)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(jars)) {
            return all.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    private String choices() throws IOException {
        return Files.readString(settings.resolve("addons.txt"));
    }

    private static String entry(Path jar, String name) throws IOException {
        try (JarFile file = new JarFile(jar.toFile())) {
            return new String(file.getInputStream(file.getEntry(name)).readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void eachIsListedWithWhatItSaysOfItselfAndWhatBecameOfIt() throws IOException {
        Path nets = there(
                "n.jar",
                "off",
                Jar.bundle(
                                "nets;singleton:=true",
                                "Bundle-Name",
                                " Net Pack ",
                                "Bundle-Version",
                                "2.1",
                                "Service-Component",
                                "OSGI-INF/a.xml, OSGI-INF/t*.xml;x=1,../../outside.xml")
                        .component("OSGI-INF/a.xml", Calculates.ID_PROPERTY, "net")
                        .component("OSGI-INF/t1.xml", "workshop.tabulates", "meshes")
                        .component("OSGI-INF/t2.xml", Calculates.ID_PROPERTY, "cord")
                        .component("OSGI-INF/deep/t3.xml", Calculates.ID_PROPERTY, "not-named")
                        .component("OSGI-INF/b.xml", Calculates.ID_PROPERTY, "not-named"));
        Path torn = jars.resolve("torn.jar");
        Files.writeString(torn, "no jar");
        states.put(torn.toString(), "torn.jar was not started.");
        there(
                "m.jar",
                "left-out",
                Jar.bundle("mats", "Service-Component", "x.xml").with("x.xml", "<torn"));
        assertEquals(
                List.of(
                        new AddOn(
                                "straps",
                                "straps",
                                "1.0.0",
                                Origin.PROGRAM,
                                State.ON,
                                "",
                                List.of(),
                                List.of(),
                                folder.resolve("program/s.jar")),
                        new AddOn(
                                "",
                                "torn.jar",
                                "",
                                Origin.MAKER,
                                State.FAILED,
                                "torn.jar was not started.",
                                List.of(),
                                List.of(),
                                torn),
                        new AddOn(
                                "mats",
                                "mats",
                                "0.0.0",
                                Origin.MAKER,
                                State.LEFT_OUT,
                                "",
                                List.of(),
                                List.of(),
                                jars.resolve("m.jar")),
                        new AddOn(
                                "nets",
                                "Net Pack",
                                "2.1.0",
                                Origin.MAKER,
                                State.OFF,
                                "",
                                List.of("cord", "net"),
                                List.of("meshes"),
                                nets)),
                addOns().all());
    }

    @Test
    void aDescriptionFetchesNothing() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret"), "secret");
        there(
                "n.jar",
                "on",
                Jar.bundle("nets", "Service-Component", "x.xml")
                        .with(
                                "x.xml",
                                "<!DOCTYPE c [<!ENTITY e SYSTEM \"" + secret.toUri() + "\">]><c><property name=\""
                                        + Calculates.ID_PROPERTY + "\" value=\"a\"/>&e;</c>"));
        assertFalse(
                addOns().all().toString().contains("secret]"), addOns().all().toString());
    }

    @Test
    void aJarIsInstalledUnderItsNameAndStartsNext() throws Exception {
        Path given = Jar.bundle("nets", "Bundle-Version", "1.0").write(folder.resolve("in/download (1).jar"));
        assertEquals(
                List.of(new AddOn(
                        "nets",
                        "nets",
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
    void whatIsNoBundleIsToldAndNothingIsInstalled() throws Exception {
        Path good = Jar.bundle("good").write(folder.resolve("good.jar"));
        Path text = Files.writeString(folder.resolve("text.jar"), "text");
        Path plain = Jar.empty().with("a.txt", "a").write(folder.resolve("plain.jar"));
        Path nameless = Jar.bundle("").write(folder.resolve("nameless.jar"));
        Path climbs = Jar.bundle("../../climbs").write(folder.resolve("climbs.jar"));
        Path undated = Jar.bundle("a", "Bundle-Version", "soon").write(folder.resolve("undated.jar"));
        Path none = Files.createDirectories(folder.resolve("none"));
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
                "There is no bundle in the folder none. Name the jar, or the folder it lies in.",
                told(() -> install(good, none)));
        assertEquals(
                "There is no file or folder nowhere. Check the name, and the folder you are in.",
                told(() -> install(good, folder.resolve("nowhere"))));
        assertEquals(List.of(), installedFiles());
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
                    told(() -> addOns().install(List.of(given), true)));
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
        assertEquals("1.1.0", addOns().install(List.of(given), true).get(0).version());
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
        addOns().install(List.of(given), true);
        assertEquals(List.of("nets.jar"), installedFiles());
    }

    @Test
    void whatIsTurnedOffStaysOffWhenItIsReplaced() throws Exception {
        there("nets.jar", "off", Jar.bundle("nets"));
        Path given = Jar.bundle("nets", "Bundle-Version", "2").write(folder.resolve("given.jar"));
        assertEquals(State.OFF, addOns().install(List.of(given), true).get(0).state());
    }

    @Test
    void whatCannotBeWrittenWholeIsUndone() throws Exception {
        Path old = there("aaa.jar", "on", Jar.bundle("aaa", "Bundle-Version", "1.0"));
        byte[] before = Files.readAllBytes(old);
        Path a = Jar.bundle("aaa", "Bundle-Version", "2.0").write(folder.resolve("in/a.jar"));
        Path b = Jar.bundle("bbb").write(folder.resolve("in/b.jar"));
        Path c = Jar.bundle("ccc").write(folder.resolve("in/c.jar"));
        Files.createDirectories(jars.resolve(".ccc.jar.new/full")); // in the way of what a write makes beside its place
        assertTrue(
                told(() -> addOns().install(List.of(a, b, c), true)).contains("addons/ccc.jar could not be changed: "));
        assertEquals(List.of(".ccc.jar.new", "aaa.jar"), installedFiles());
        assertArrayEquals(before, Files.readAllBytes(old));
    }

    @Test
    void aFolderThatCannotBeMadeIsTold() throws Exception {
        Files.writeString(settings, "a file where the folder should be");
        Path given = Jar.bundle("nets").write(folder.resolve("given.jar"));
        assertEquals(
                "settings/addons could not be changed: its folder is not there, and cannot be made. Mend this and try"
                        + " again, or name another folder of settings with --settings.",
                told(() -> install(given)));
    }

    @Test
    void whatIsInstalledIsRemovedByItsNameOrItsFile() throws Exception {
        there("n.jar", "on", Jar.bundle("nets"));
        there("m.jar", "on", Jar.bundle("mats"));
        there("k.jar", "on", Jar.bundle("kits"));
        states.put(Files.writeString(jars.resolve("torn.jar"), "torn").toString(), "torn.jar was not started.");
        assertEquals("nets", addOns().remove("nets").id());
        assertEquals("mats", addOns().remove("m.jar").id());
        assertEquals("kits", addOns().remove("k").id());
        assertEquals("torn.jar", addOns().remove("torn").name());
        assertEquals(List.of(), installedFiles());
        assertFalse(Files.exists(settings.resolve("addons.txt")));
    }

    @Test
    void whatIsRemovedIsNotOffWhenItComesAgain() throws Exception {
        there("nets.jar", "off", Jar.bundle("nets"));
        Files.writeString(settings.resolve("addons.txt"), "off nets\noff straps\n");
        addOns().remove("nets");
        assertEquals("off straps\n", choices());
    }

    @Test
    void whatCameWithTheProgramIsNotRemovedUnlessTheMakerHasACopyOfTheName() throws Exception {
        assertEquals(
                "straps came with the program and cannot be removed. Turn it off: hidewright addons off straps",
                told(() -> addOns().remove("straps")));
        assertTrue(Files.exists(folder.resolve("program/s.jar")));
        there("copy.jar", "copy.jar was not started.", Jar.bundle("straps"));
        assertEquals(jars.resolve("copy.jar"), addOns().remove("straps").file());
        assertEquals(List.of(), installedFiles());
    }

    @Test
    void aFileThatIsGoneAlreadyIsTold() throws Exception {
        Files.delete(there("nets.jar", "on", Jar.bundle("nets")));
        assertTrue(
                told(() -> addOns().remove("nets.jar")).startsWith("settings/addons/nets.jar could not be changed: "));
    }

    @Test
    void aChoiceIsALineAndOtherLinesStay() throws Exception {
        assertEquals(State.ON, addOns().turn("straps", false).state());
        assertEquals(
                "# Bundles that are turned off. Changed by: hidewright addons off|on NAME\noff straps\n", choices());
        Files.writeString(settings.resolve("addons.txt"), "# mine\r\noffice\noff straps \noff strapsack\n");
        addOns().turn("straps", true);
        assertEquals("# mine\noffice\noff strapsack\n", choices());
        addOns().turn("s.jar", false);
        addOns().turn("straps", false);
        assertEquals("# mine\noffice\noff strapsack\noff straps\n", choices());
    }

    @Test
    void aChoiceThatChangesNothingWritesNothing() throws Exception {
        addOns().turn("straps", true);
        assertFalse(Files.exists(settings.resolve("addons.txt")));
        byte[] latin = {'o', 'f', 'f', ' ', (byte) 0xE9, '\n', 'x'};
        Files.createDirectories(settings);
        Files.write(settings.resolve("addons.txt"), latin);
        addOns().turn("straps", true);
        assertArrayEquals(latin, Files.readAllBytes(settings.resolve("addons.txt")));
        addOns().turn("straps", false);
        byte[] after = Files.readAllBytes(settings.resolve("addons.txt"));
        assertArrayEquals(latin, Arrays.copyOf(after, latin.length));
    }

    @Test
    void aChoiceThatCannotBeWrittenIsTold() throws Exception {
        Files.createDirectories(settings.resolve("addons.txt"));
        assertTrue(told(() -> addOns().turn("straps", false)).startsWith("settings/addons.txt could not be changed: "));
    }

    @Test
    void whatHasNoNameCannotBeTurnedOffButRemoved() throws Exception {
        Files.createDirectories(jars);
        states.put(Files.writeString(jars.resolve("torn.jar"), "torn").toString(), "torn.jar was not started.");
        assertEquals(
                "torn.jar cannot be turned on or off: it has no bundle’s name to know it by. Take it away: hidewright"
                        + " addons remove torn.jar",
                told(() -> addOns().turn("torn.jar", false)));
    }

    @Test
    void namesThatAreNotThereAreToldWithTheNearest() throws Exception {
        assertEquals(
                "There is no bundle “strabs” here; perhaps straps is meant. hidewright addons lists them all.",
                told(() -> addOns().turn("strabs", false)));
        there("nets.jar", "on", Jar.bundle("nets"));
        assertEquals(
                "There is no bundle “telephone” here. There are: straps, nets. hidewright addons says more about each.",
                told(() -> addOns().remove("telephone")));
        assertEquals(
                "command is a part of the program itself. hidewright addons lists what can be turned off.",
                told(() -> addOns().turn("command", false)));
        states.clear();
        assertEquals(
                "There is no bundle “straps” here, and no other that could be turned on or off. hidewright addons"
                        + " install FILE installs one.",
                told(() -> addOns().turn("straps", false)));
    }

    @Test
    @SuppressWarnings({"unchecked", "rawtypes"})
    void theLauncherTellsWhatBecameOfEachByAService() throws Exception {
        BundleContext context = mock(BundleContext.class);
        ServiceReference reference = mock(ServiceReference.class);
        when(context.getProperty("hidewright.settings")).thenReturn(settings.toString());
        when(context.getServiceReferences(Map.class.getName(), "(hidewright.addons=true)"))
                .thenReturn(new ServiceReference[] {reference});
        when(context.getService(reference)).thenReturn(states);
        when(reference.getProperty("hidewright.platform")).thenReturn(new String[] {"command"});
        InstalledAddOns told = new InstalledAddOns(context);
        assertEquals(List.of("straps"), told.all().stream().map(AddOn::id).toList());
        assertTrue(told(() -> told.turn("command", false)).startsWith("command is a part of the program"));
        when(context.getServiceReferences(anyString(), anyString())).thenReturn(null);
        assertThrows(IllegalStateException.class, () -> new InstalledAddOns(context));
    }
}
