package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.hidewright.distribution.planted.BreaksDown;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as built, started by its script. */
class BuiltProgramIT {

    @TempDir
    Path scratch;

    private BuiltProgram program;

    @BeforeEach
    void copy() throws IOException {
        program = BuiltProgram.copyInto(scratch);
    }

    @Test
    void startsFromAnyFolderAndSaysNothingOnTheSide() throws Exception {
        var first = program.run("explain");
        assertEquals("", first.told());
        assertEquals(0, first.code());
        assertTrue(first.answer().contains("thickness"), first.answer());
        assertEquals(first, program.run("explain"), "the second start answers otherwise than the first");
    }

    @Test
    void startsThroughALinkInAnotherFolder() throws Exception {
        Path link = Files.createSymbolicLink(
                scratch.resolve("link"), program.folder().resolve("hidewright"));
        Process process = new ProcessBuilder(link.toString(), "explain")
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), said);
    }

    @Test
    void withEveryCalculatorRemovedItStillStarts() throws Exception {
        program.run("explain");
        try (Stream<Path> jars = Files.list(program.calculators())) {
            for (Path jar : jars.toList()) {
                Files.delete(jar);
            }
        }
        var ended = program.run("explain");
        assertEquals("", ended.told());
        assertEquals(0, ended.code());
        assertFalse(ended.answer().contains("org.hidewright.thickness"), ended.answer());
    }

    @Test
    void aCalculatorPutIntoTheFolderIsFoundByTheNextStart() throws Exception {
        Path jar = program.calculators().resolve("org.hidewright.thickness.jar");
        Path aside = scratch.resolve("thickness.jar");
        Files.move(jar, aside);
        assertFalse(program.run("explain").answer().contains("thickness"));
        Files.move(aside, jar);
        assertTrue(program.run("explain").answer().contains("thickness"));
    }

    @Test
    void aJarWithoutABundlesNameIsToldAndTheRestWorks() throws Exception {
        program.plant("notes.jar", null);
        assertToldAndTheRestWorks("notes.jar was not started: it is a jar without a bundle’s name.");
    }

    @Test
    void aFileThatIsNoJarIsToldAndTheRestWorks() throws Exception {
        Files.writeString(program.calculators().resolve("torn.jar"), "not a jar");
        assertToldAndTheRestWorks("torn.jar was not started: it cannot be read as a bundle.");
    }

    @Test
    void aBundleForAnotherContractIsToldWithBothVersions() throws Exception {
        program.plant(
                "belts.jar",
                null,
                "Bundle-ManifestVersion",
                "2",
                "Bundle-SymbolicName",
                "com.example.belts",
                "Bundle-Name",
                "Belt Pack",
                "Import-Package",
                "org.hidewright.api.measure;version=\"[7.0,8)\"");
        assertToldAndTheRestWorks("Belt Pack was not started: it needs org.hidewright.api.measure [7.0.0,8.0.0), "
                + "and this workbench offers 1.1.0.");
    }

    @Test
    void aBundleWhosePackageNobodyOffersIsToldByThePackage() throws Exception {
        program.plant(
                "belts.jar",
                null,
                "Bundle-ManifestVersion",
                "2",
                "Bundle-SymbolicName",
                "com.example.belts",
                "Import-Package",
                "com.example.buckles");
        assertToldAndTheRestWorks(
                "com.example.belts was not started: it needs com.example.buckles, " + "and nothing here offers it.");
    }

    @Test
    void aBundleThatWaitsForOneThatFailedNamesIt() throws Exception {
        program.plant(
                "buckles.jar",
                null,
                "Bundle-ManifestVersion",
                "2",
                "Bundle-SymbolicName",
                "com.example.buckles",
                "Export-Package",
                "com.example.buckles",
                "Import-Package",
                "com.example.prongs");
        program.plant(
                "belts.jar",
                null,
                "Bundle-ManifestVersion",
                "2",
                "Bundle-SymbolicName",
                "com.example.belts",
                "Import-Package",
                "com.example.buckles");
        assertToldAndTheRestWorks(
                "com.example.belts was not started: it needs com.example.buckles, which did not start either.",
                "com.example.buckles was not started: it needs com.example.prongs, and nothing here offers it.");
    }

    @Test
    void aBundleForANewerJavaIsToldWithBothVersions() throws Exception {
        program.plant(
                "belts.jar",
                null,
                "Bundle-ManifestVersion",
                "2",
                "Bundle-SymbolicName",
                "com.example.belts",
                "Require-Capability",
                "osgi.ee;filter:=\"(&(osgi.ee=JavaSE)(version=99))\"");
        assertToldAndTheRestWorks("com.example.belts was not started: it needs Java 99, and this is Java "
                + Runtime.version().feature() + ".");
    }

    @Test
    void theSameBundleTwiceIsToldByTheSecondFile() throws Exception {
        Path thickness = program.calculators().resolve("org.hidewright.thickness.jar");
        Files.copy(thickness, program.calculators().resolve("z-again.jar"));
        assertToldAndTheRestWorks("z-again.jar was not started: another bundle of the same name and version");
    }

    @Test
    void aBundleThatBreaksDownWhileStartingIsToldWithItsReason() throws Exception {
        program.plant(
                "belts.jar",
                BreaksDown.class,
                "Bundle-ManifestVersion",
                "2",
                "Bundle-SymbolicName",
                "com.example.belts",
                "Bundle-Activator",
                BreaksDown.class.getName(),
                "Import-Package",
                "org.osgi.framework");
        assertToldAndTheRestWorks(
                "com.example.belts was not started: it broke down while starting (the edge paint ran out).");
    }

    @Test
    void withoutItsOwnBundlesItSaysWhatToDo() throws Exception {
        try (Stream<Path> jars = Files.list(program.folder().resolve("bundles/30-platform"))) {
            for (Path jar : jars.toList()) {
                Files.delete(jar);
            }
        }
        var ended = program.run("explain");
        assertEquals(70, ended.code());
        assertTrue(ended.told().contains("answers commands. Build or unpack Hidewright again"), ended.told());
    }

    /** One line for each, in order, on this start and on the next, which takes another way through the cache. */
    private void assertToldAndTheRestWorks(String... sentences) throws Exception {
        for (String start : List.of("first", "second")) {
            var ended = program.run("explain");
            List<String> told = ended.told().lines().toList();
            assertEquals(sentences.length, told.size(), start + " start told: " + ended.told());
            for (int i = 0; i < sentences.length; i++) {
                assertTrue(told.get(i).startsWith(sentences[i]), start + " start told: " + told.get(i));
            }
            assertEquals(0, ended.code());
            assertTrue(ended.answer().contains("thickness"), ended.answer());
        }
    }
}
