package org.hidewright.core.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.core.project.Project;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ProjectFileTest {
    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void aProject() throws Exception {
        file = Saved.write(folder.toRealPath().resolve("strap.json"), Saved.text("One"));
    }

    @Test
    void aSaveReplacesTheFileAndKeepsTheVersionBefore() throws Exception {
        ProjectFile saved = ProjectFile.open(file).save(Saved.project("Two"));
        assertEquals(Saved.text("Two"), Files.readString(file));
        assertEquals(Saved.text("One"), Files.readString(folder.resolve("strap.json.before")));
        saved.save(Saved.project("Three"));
        assertEquals(Saved.text("Three"), Files.readString(file));
        assertEquals(Saved.text("Two"), Files.readString(folder.resolve("strap.json.before")));
        assertEquals(List.of("strap.json", "strap.json.before"), Saved.names(folder));
    }

    @Test
    void theStepsComeInTheirOrderAndTheVersionBeforeIsKeptBeforeTheNewOneTakesItsPlace() throws Exception {
        List<String> steps = new ArrayList<>();
        ProjectFile.open(file).save(Saved.project("Two"), new Disk() {
            @Override
            public void begins(SaveStep step, Path of) {
                steps.add(step + " " + of.getFileName());
            }
        });
        assertEquals(
                List.of(
                        "WRITE strap.json",
                        "SYNC strap.json",
                        "WRITE strap.json.before",
                        "SYNC strap.json.before",
                        "RENAME strap.json.before",
                        "RENAME strap.json"),
                steps);
    }

    @Test
    void anUnchangedTextWritesNothing() throws Exception {
        FileTime longAgo = FileTime.fromMillis(1_000_000_000_000L);
        Files.setLastModifiedTime(file, longAgo);
        Object inode = Files.readAttributes(file, "*").get("fileKey");
        ProjectFile opened = ProjectFile.open(file);
        ProjectFile saved = opened.save(opened.project());
        assertSame(opened.project(), saved.project());
        assertEquals(longAgo, Files.getLastModifiedTime(file));
        assertEquals(inode, Files.readAttributes(file, "*").get("fileKey"));
        assertEquals(List.of("strap.json"), Saved.names(folder));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\uFEFF{\"hidewright\": 1,\r\n\t\"slips\": [{\"id\": \"a\", \"questions\": {\"b\": 1.50}}] , \"x\": \"\\u00e9é\"}\r\n\r\n",
                "{\"hidewright\": 1,\n\"slips\": [{\"id\": \"a\",\"questions\":{\"b\" :  1.50}}]}",
                "{\"hidewright\": 1,\r\"slips\": [{\"id\": \"a\",\"questions\":{\"b\" :  1.50}}]}\n\n \n",
                "  {\"hidewright\": 1, \"slips\": [{\"id\": \"a\",\"questions\":{\"b\":1.50, \"c\": \"\uD83E\uDEA1\"}}]}  "
            })
    void everyByteThatWasNotChangedComesBack(String text) throws Exception {
        Saved.write(file, text);
        byte[] before = Files.readAllBytes(file);
        ProjectFile opened = ProjectFile.open(file);
        opened.save(opened.project().answering("a", "b", "2.250"));
        assertArrayEquals(
                new String(before, StandardCharsets.UTF_8)
                        .replace("1.50", "2.250")
                        .getBytes(StandardCharsets.UTF_8),
                Files.readAllBytes(file));
        assertArrayEquals(before, Files.readAllBytes(folder.resolve("strap.json.before")));
    }

    /** The digest is the second example of FIPS 180-4 as NIST publishes it, "abc" with SHA-256; from memory. */
    @Test
    void theFingerprintIsTheSha256AndTheSize() throws Exception {
        assertEquals(
                new Fingerprint("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", 3),
                Fingerprint.of("abc".getBytes(StandardCharsets.US_ASCII)));
        assertEquals(
                Optional.of(Fingerprint.of(Files.readAllBytes(file))),
                ProjectFile.open(file).fingerprint());
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void whatALinkLeadsToIsSavedAndTheLinkStays() throws Exception {
        Path drawer = Files.createDirectory(folder.resolve("drawer"));
        Path real = Files.move(file, drawer.resolve("real.json"));
        Path near = Files.createSymbolicLink(folder.resolve("near.json"), Path.of("drawer/real.json"));
        Path far = Files.createSymbolicLink(folder.resolve("far.json"), near);
        ProjectFile.open(far).save(Saved.project("Two"));
        assertEquals(Saved.text("Two"), Files.readString(real));
        assertTrue(Files.isSymbolicLink(near) && Files.isSymbolicLink(far));
        assertEquals(List.of("real.json", "real.json.before"), Saved.names(drawer));
        assertEquals(List.of("drawer", "far.json", "near.json"), Saved.names(folder));
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void linksInACircleAreTold() throws Exception {
        Path one = Files.createSymbolicLink(folder.resolve("one"), Path.of("two"));
        Files.createSymbolicLink(folder.resolve("two"), Path.of("one"));
        assertTrue(Saved.told(() -> ProjectFile.open(one)).startsWith("not-read: " + one + " could not be read"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"rw-r-----", "rw-rw-rw-", "rwx------"})
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void permissionsOfTheOldFileAreKept(String permissions) throws Exception {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(permissions));
        ProjectFile.open(file).save(Saved.project("Two"));
        assertEquals(permissions, PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void nobodyButTheOwnerSeesAVersionThatIsNotReady() throws Exception {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
        List<String> seen = new ArrayList<>();
        ProjectFile.open(file).save(Saved.project("Two"), new Disk() {
            @Override
            public void begins(SaveStep step, Path of) throws java.io.IOException {
                Path fresh = Beside.newVersion(of);
                if (step == SaveStep.SYNC && of.equals(file)) {
                    seen.add(PosixFilePermissions.toString(Files.getPosixFilePermissions(fresh)));
                }
            }
        });
        assertEquals(List.of("rw-------"), seen);
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void aLinkLaidWhereTheNewVersionIsWrittenIsNotFollowed() throws Exception {
        Path other = Saved.write(folder.resolve("other.txt"), "mine");
        Files.createSymbolicLink(Beside.newVersion(file), other);
        ProjectFile.open(file).save(Saved.project("Two"));
        assertEquals("mine", Files.readString(other));
        assertTrue(Files.isRegularFile(file, java.nio.file.LinkOption.NOFOLLOW_LINKS));
        assertEquals(Saved.text("Two"), Files.readString(file));
    }

    @Test
    void whatCannotBeOpenedSaysWhy() throws Exception {
        assertTrue(Saved.told(() -> ProjectFile.open(folder.resolve("nowhere.json")))
                .startsWith("no-file: There is no file " + folder.resolve("nowhere.json") + "."));
        assertTrue(Saved.told(() -> ProjectFile.open(folder.resolve("up/nowhere.json")))
                .startsWith("no-file: There is no file " + folder.resolve("up/nowhere.json") + "."));
        assertTrue(Saved.told(() -> ProjectFile.open(file.resolve("in-a-file"))).startsWith("not-read: "));
        assertTrue(Saved.told(() -> ProjectFile.open(folder)).startsWith("is-folder: " + folder + " is a folder."));
        assertTrue(Saved.told(() -> ProjectFile.open(Path.of("/"))).startsWith("is-folder: "));
        Files.write(file, new byte[] {'{', (byte) 0xE4, '}'});
        assertTrue(Saved.told(() -> ProjectFile.open(file)).startsWith("not-utf-8: " + file + " is no text in UTF-8."));
        Saved.write(file, "{\"hidewright\": 1,");
        assertTrue(Saved.told(() -> ProjectFile.open(file)).startsWith("not-json: "));
    }

    @Test
    void aFileThatIsNotThereIsToldWithTheNearestThatIs() throws Exception {
        Saved.write(folder.resolve("plant-press.json"), Saved.text("One"));
        Saved.write(folder.resolve(".plant-pres.json"), "hidden");
        Files.createDirectory(folder.resolve("plantpress.json"));
        for (String near : List.of("plant-pres.json", "plantpres.json", "plant-press", "Plant-press.JSON")) {
            Path named = folder.resolve(near);
            assertTrue(
                    Saved.told(() -> ProjectFile.open(named))
                            .startsWith("no-file-nearest: There is no file " + named + "; "
                                    + folder.resolve("plant-press.json") + " is there."),
                    near);
        }
        assertTrue(Saved.told(() -> ProjectFile.open(folder.resolve("keeper-loop.json")))
                .startsWith("no-file: "));
    }

    @Test
    void theVersionBeforeIsNotTakenForTheNearestName() throws Exception {
        ProjectFile.open(file).save(Saved.project("Two"));
        Files.delete(file);
        assertTrue(Saved.told(() -> ProjectFile.open(file)).startsWith("no-file: "));
    }

    @Test
    void aProjectThatDoesNotOpenNamesTheVersionBefore() throws Exception {
        ProjectFile.open(file).save(Saved.project("Two"));
        Saved.write(file, "{\"hidewright\": 1 \"name\"}");
        List<String> told = org.junit.jupiter.api.Assertions.assertThrows(
                        FileTrouble.class, () -> ProjectFile.open(file))
                .remarks()
                .stream()
                .map(Saved::told)
                .toList();
        assertEquals(2, told.size());
        assertTrue(told.get(0).startsWith("not-json: "), told.get(0));
        assertTrue(
                told.get(1).startsWith("earlier-version: An earlier version is kept in " + file + ".before."),
                told.get(1));
        assertEquals("{\"hidewright\": 1 \"name\"}", Files.readString(file), "what a maker mistyped is theirs to mend");
    }

    @Test
    void anAnswerWithHalfACharacterIsRefusedRatherThanSavedAsAnother() throws Exception {
        Saved.write(file, "{\"hidewright\": 1, \"slips\": [{\"id\": \"a\",\"questions\":{\"b\":1}}]}");
        ProjectFile opened = ProjectFile.open(file);
        Project half = opened.project().answering("a", "b", "\"\uD83E\"");
        String before = Files.readString(file);
        assertTrue(Saved.told(() -> opened.save(half))
                .startsWith("not-saved: " + file + " was not saved: it holds half of a character."));
        assertEquals(before, Files.readString(file));
    }
}
