package org.hidewright.core.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two programs on one file: neither writes over the other, and neither loses a text. */
class SaveConflictTest {
    @TempDir
    Path folder;

    private Path file;
    private ProjectFile opened;

    @BeforeEach
    void aProject() throws Exception {
        file = Saved.write(folder.toRealPath().resolve("strap.json"), Saved.text("One"));
        opened = ProjectFile.open(file);
    }

    @Test
    void whatAnotherProgramWroteIsNotWrittenOverAndTheMakersOwnIsPutBesideIt() throws Exception {
        Saved.write(file, Saved.text("Other"));
        String told = Saved.told(() -> opened.save(Saved.project("Mine")));
        assertEquals(
                "changed-by-another: " + file
                        + " was not saved: another program has changed it since it was opened here."
                        + " Saving would have lost what the other program wrote. Your own version is in " + file
                        + ".unsaved. Open both and take over what you want to keep.",
                told);
        assertEquals(Saved.text("Other"), Files.readString(file));
        assertEquals(Saved.text("Mine"), Files.readString(folder.resolve("strap.json.unsaved")));
        assertEquals(List.of("strap.json", "strap.json.unsaved"), Saved.names(folder));
    }

    @Test
    void whatWasPutAsideBeforeIsKeptToo() throws Exception {
        Saved.write(file, Saved.text("Other"));
        Saved.told(() -> opened.save(Saved.project("Mine")));
        assertTrue(Saved.told(() -> opened.save(Saved.project("Mine again"))).contains(file + ".unsaved-2."));
        assertEquals(Saved.text("Mine"), Files.readString(folder.resolve("strap.json.unsaved")));
        assertEquals(Saved.text("Mine again"), Files.readString(folder.resolve("strap.json.unsaved-2")));
    }

    @Test
    void twoThatOpenedTheSameAndSaveItGiveTheSecondAWarning() throws Exception {
        ProjectFile second = ProjectFile.open(file);
        opened.save(Saved.project("First"));
        assertTrue(Saved.told(() -> second.save(Saved.project("Second"))).startsWith("changed-by-another: "));
        assertEquals(Saved.text("First"), Files.readString(file));
        assertEquals(Saved.text("Second"), Files.readString(folder.resolve("strap.json.unsaved")));
    }

    @Test
    void twoThatSaveTheSameTextAgree() throws Exception {
        ProjectFile second = ProjectFile.open(file);
        opened.save(Saved.project("Both"));
        second.save(Saved.project("Both")).save(Saved.project("Then"));
        assertEquals(Saved.text("Then"), Files.readString(file));
        assertEquals(List.of("strap.json", "strap.json.before"), Saved.names(folder));
    }

    @Test
    void aChangeWhileTheVersionBeforeIsKeptIsNoticedToo() throws Exception {
        String told = Saved.told(() -> opened.save(Saved.project("Mine"), new Disk() {
            @Override
            public void begins(SaveStep step, Path of) throws IOException {
                if (step == SaveStep.RENAME && !of.equals(file)) {
                    Saved.write(file, Saved.text("Other"));
                }
            }
        }));
        assertTrue(told.startsWith("changed-by-another: "), told);
        assertEquals(Saved.text("Other"), Files.readString(file));
        assertEquals(Saved.text("Mine"), Files.readString(folder.resolve("strap.json.unsaved")));
    }

    @Test
    void aFileThatIsNotThereAnyMoreIsNotMadeAnewUnasked() throws Exception {
        Files.move(file, folder.resolve("moved.json"));
        assertEquals(
                "file-gone: " + file
                        + " was not saved: it is not there any more. Since it was opened here it was moved,"
                        + " renamed or deleted. Your own version is in " + file
                        + ".unsaved. Move it to where the project is to be, and open it there.",
                Saved.told(() -> opened.save(Saved.project("Mine"))));
        assertFalse(Files.exists(file));
        assertEquals(Saved.text("Mine"), Files.readString(folder.resolve("strap.json.unsaved")));
    }

    @Test
    void aFolderWhereTheFileWasIsLeftAlone() throws Exception {
        Files.delete(file);
        Path inside = Saved.write(Files.createDirectory(file).resolve("inside"), "theirs");
        assertTrue(Saved.told(() -> opened.save(Saved.project("Mine"))).startsWith("no-plain-file: " + file));
        assertEquals("theirs", Files.readString(inside));
        assertEquals(Saved.text("Mine"), Files.readString(folder.resolve("strap.json.unsaved")));
    }
}
