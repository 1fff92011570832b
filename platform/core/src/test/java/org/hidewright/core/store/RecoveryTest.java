package org.hidewright.core.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import org.hidewright.core.wording.Remark;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a save that was cut short left behind is seen on opening, and the best version is opened. */
class RecoveryTest {
    private static final FileTime EARLIER = FileTime.fromMillis(1_700_000_000_000L);

    @TempDir
    Path folder;

    private Path file;
    private Path left;

    @BeforeEach
    void names() throws Exception {
        file = folder.toRealPath().resolve("strap.json");
        left = folder.toRealPath().resolve(".strap.json.new");
    }

    private static List<String> told(List<Remark> remarks) {
        return remarks.stream().map(Saved::told).toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{", "{\"hidewright\": 1, \"name\": \"Tw", "{\"hidewright\": 1}}", "\0\0\0\0"})
    void aHalfWrittenVersionGoesAndTheFileIsOpened(String half) throws Exception {
        Saved.write(file, Saved.text("One"));
        Saved.write(left, half);
        ProjectFile opened = ProjectFile.open(file);
        assertEquals("One", opened.project().name());
        assertEquals(
                List.of("save-half-written: A save of " + file
                        + " was cut short before it was whole; what there was of it"
                        + " was removed. A project that is cut off cannot be read; that save changed nothing else. See"
                        + " whether your last changes are in the file, and make again what is missing."),
                told(opened.remarks()));
        assertEquals(List.of("strap.json"), Saved.names(folder));
        assertEquals(List.of(), ProjectFile.open(file).remarks(), "it is told once");
    }

    @Test
    void aHalfWrittenVersionIsToldToWhoSavesOverItToo() throws Exception {
        Saved.write(file, Saved.text("One"));
        ProjectFile opened = ProjectFile.open(file);
        Saved.write(left, "{");
        ProjectFile saved = opened.save(Saved.project("Two"));
        assertTrue(told(saved.remarks()).get(0).startsWith("save-half-written: "), told(saved.remarks())::toString);
        assertEquals(Saved.text("Two"), Files.readString(file));
    }

    @Test
    void everyCutOfAWholeVersionIsSeenAsHalf() throws Exception {
        String whole = "{\"hidewright\": 1, \"name\": \"Käfer\", \"slips\": [{\"id\": \"a\"}]}";
        byte[] bytes = whole.getBytes(java.nio.charset.StandardCharsets.UTF_8);
        for (int length = 0; length < bytes.length; length++) {
            Saved.write(file, Saved.text("One"));
            Files.write(left, java.util.Arrays.copyOf(bytes, length));
            ProjectFile.open(file);
            assertEquals(List.of("strap.json"), Saved.names(folder), "cut after " + length);
        }
    }

    @Test
    void aWholeVersionThatTheFileAlreadyHoldsGoes() throws Exception {
        Saved.write(file, Saved.text("One"));
        Saved.write(left, Saved.text("One"));
        assertEquals(List.of(), ProjectFile.open(file).remarks());
        assertEquals(List.of("strap.json"), Saved.names(folder));
    }

    @Test
    void aWholeVersionBesideAWholeFileIsPutAsideAndTold() throws Exception {
        Saved.write(file, Saved.text("One"));
        Saved.write(left, Saved.text("Two"));
        ProjectFile opened = ProjectFile.open(file);
        assertEquals("One", opened.project().name());
        assertEquals(
                List.of("save-cut-short: A save of " + file + " was cut short; what was to be saved is kept in " + file
                        + ".unsaved. It did not come to take the file’s place, so the file is as it was before that save."
                        + " Compare the two, take over what you miss, and delete the one you do not need."),
                told(opened.remarks()));
        assertEquals(Saved.text("Two"), Files.readString(folder.resolve("strap.json.unsaved")));
        assertEquals(List.of(), ProjectFile.open(file).remarks(), "it is told once");
    }

    @Test
    void aWholeVersionTakesThePlaceOfAFileThatIsMissing() throws Exception {
        Saved.write(left, Saved.text("Two"));
        ProjectFile opened = ProjectFile.open(file);
        assertEquals("Two", opened.project().name());
        assertTrue(told(opened.remarks()).get(0).startsWith("recovered: " + file + " was missing after a save"));
        assertEquals(List.of("strap.json"), Saved.names(folder));
        opened.save(Saved.project("Three"));
        assertEquals(Saved.text("Three"), Files.readString(file));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{\"hidewright\": 1, \"name\": \"O", "\0\0\0\0\0\0"})
    void aWholeVersionTakesThePlaceOfAFileThatIsBroken(String broken) throws Exception {
        Saved.write(file, broken);
        Files.setLastModifiedTime(file, EARLIER);
        Saved.write(left, Saved.text("Two"));
        ProjectFile opened = ProjectFile.open(file);
        assertEquals("Two", opened.project().name());
        assertTrue(told(opened.remarks()).get(0).startsWith("recovered-broken: " + file + " was broken after a save"));
        assertTrue(told(opened.remarks()).get(0).contains("is kept in " + file + ".broken."));
        assertEquals(broken, Files.readString(folder.resolve("strap.json.broken")));
        assertEquals(List.of("strap.json", "strap.json.broken"), Saved.names(folder));
    }

    /** Some file systems count whole seconds: what is as old as the version left may well be what the save broke. */
    @Test
    void aBrokenFileThatIsAsOldAsTheWholeVersionGivesWay() throws Exception {
        Saved.write(file, "{");
        Saved.write(left, Saved.text("Two"));
        Files.setLastModifiedTime(file, EARLIER);
        Files.setLastModifiedTime(left, EARLIER);
        assertEquals("Two", ProjectFile.open(file).project().name());
    }

    @ParameterizedTest
    @ValueSource(strings = {"{", "{\"hidewright\": 1, \"name\": \"Two\"}"})
    void whereNothingCanBePutRightAGoodFileIsOpenedAllTheSame(String beside) throws Exception {
        Files.createDirectory(folder.resolve(".strap.json.lock"));
        Saved.write(file, Saved.text("One"));
        Saved.write(left, beside);
        ProjectFile opened = ProjectFile.open(file);
        assertEquals("One", opened.project().name());
        assertEquals(List.of(), opened.remarks());
        assertEquals(beside, Files.readString(left));
    }

    @Test
    void whatAMakerMistypedLaterIsNotTakenForAFileThatASaveBroke() throws Exception {
        Saved.write(left, Saved.text("Two"));
        Files.setLastModifiedTime(left, EARLIER);
        Saved.write(file, "{\"hidewright\": 1 \"name\": \"Typed by hand\"}");
        String told = Saved.told(() -> ProjectFile.open(file));
        assertTrue(told.startsWith("not-json: "), told);
        assertEquals("{\"hidewright\": 1 \"name\": \"Typed by hand\"}", Files.readString(file));
        assertEquals(Saved.text("Two"), Files.readString(folder.resolve("strap.json.unsaved")));
    }

    @Test
    void whatIsLeftOfKeepingTheVersionBeforeAndALeftLockGo() throws Exception {
        Saved.write(file, Saved.text("One"));
        Saved.write(folder.resolve(".strap.json.before.new"), Saved.text("Ze"));
        Saved.write(folder.resolve(".strap.json.lock"), "");
        assertEquals("One", ProjectFile.open(file).project().name());
        assertEquals(List.of("strap.json"), Saved.names(folder));
    }

    @Test
    void aSaveThatIsUnderWayIsLeftToWhoIsAtIt() throws Exception {
        Saved.write(file, Saved.text("One"));
        try (SaveLock held = SaveLock.take(file)) {
            Saved.write(left, Saved.text("Two"));
            ProjectFile opened = ProjectFile.open(held.file());
            assertEquals("One", opened.project().name());
            assertEquals(List.of(), opened.remarks());
            assertEquals(Saved.text("Two"), Files.readString(left));
        }
    }

    /** A folder in the lock's place stands for one that may only be read: nothing can be put right there. */
    @Test
    void whereNothingCanBePutRightTheWholeVersionIsOpenedFromWhereItIs() throws Exception {
        Files.createDirectory(folder.resolve(".strap.json.lock"));
        Saved.write(left, Saved.text("Two"));
        ProjectFile opened = ProjectFile.open(file);
        assertEquals("Two", opened.project().name());
        assertTrue(told(opened.remarks()).get(0).startsWith("recovered: "));
        assertEquals(java.util.Optional.empty(), opened.fingerprint());
        assertArrayEquals(Saved.text("Two").getBytes("UTF-8"), Files.readAllBytes(left));
        Saved.write(file, "");
        Files.setLastModifiedTime(file, EARLIER);
        ProjectFile again = ProjectFile.open(file);
        assertEquals("Two", again.project().name());
        assertTrue(told(again.remarks()).get(0).startsWith("recovered-broken: "));
        Files.delete(folder.resolve(".strap.json.lock"));
        again.save(Saved.project("Three"));
        assertEquals(Saved.text("Three"), Files.readString(file));
    }

    @Test
    void aSaveSeesToWhatAnotherProgramLeftMeanwhile() throws Exception {
        Saved.write(file, Saved.text("One"));
        ProjectFile opened = ProjectFile.open(file);
        Saved.write(left, Saved.text("Left by another"));
        ProjectFile saved = opened.save(Saved.project("Two"));
        assertTrue(told(saved.remarks()).get(0).startsWith("save-cut-short: "));
        assertEquals(Saved.text("Left by another"), Files.readString(folder.resolve("strap.json.unsaved")));
        assertEquals(Saved.text("Two"), Files.readString(file));
    }
}
