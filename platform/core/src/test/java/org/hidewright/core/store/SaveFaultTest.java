package org.hidewright.core.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Whatever stands in the way of a save is told, the file stays as it was and nothing half-written stays behind. */
class SaveFaultTest {
    @TempDir
    Path folder;

    private Path file;
    private ProjectFile opened;

    @BeforeEach
    void aProject() throws Exception {
        folder = Files.createDirectory(folder.toRealPath().resolve("bench"));
        file = Saved.write(folder.resolve("strap.json"), Saved.text("One"));
        opened = ProjectFile.open(file);
    }

    private void untouched() throws IOException {
        assertEquals(Saved.text("One"), Files.readString(file));
        assertEquals(List.of("strap.json"), Saved.names(folder));
    }

    /** The file is made where it belongs, and what is written to it goes to a device that is always full. */
    private static final class FullDisk implements Disk {
        private final String of;

        FullDisk(String of) {
            this.of = of;
        }

        @Override
        public FileChannel create(Path fresh, FileAttribute<?>... attributes) throws IOException {
            FileChannel made = Disk.REAL.create(fresh, attributes);
            if (!fresh.getFileName().toString().equals(of)) {
                return made;
            }
            made.close();
            return FileChannel.open(Path.of("/dev/full"), StandardOpenOption.WRITE);
        }
    }

    @ParameterizedTest
    @CsvSource({".strap.json.new", ".strap.json.before.new"})
    @EnabledOnOs(OS.LINUX)
    void aFullDiskIsToldAsSuch(String full) throws Exception {
        assertEquals(
                "disk-full: " + file
                        + " was not saved: the disk is full. A new version is written whole before it takes"
                        + " the place of the old one. Make room on the disk and try again. The file is as it was, and"
                        + " what was to be saved is in no file yet.",
                Saved.told(() -> opened.save(Saved.project("Two"), new FullDisk(full))));
        untouched();
        opened.save(Saved.project("Two"));
        assertEquals(Saved.text("Two"), Files.readString(file), "with room again");
    }

    /** The system's own folders take no files, not even from root. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void aFolderThatTakesNoFilesIsToldAsSuch() throws Exception {
        Path device = Path.of("/sys/strap.json");
        assertEquals(
                WriteFault.NOT_ALLOWED,
                WriteFault.of(assertThrows(IOException.class, () -> WholeFile.write(device, new byte[1]))));
        Disk readOnly = new Disk() {
            @Override
            public FileChannel create(Path fresh, FileAttribute<?>... attributes) throws IOException {
                return Disk.REAL.create(Path.of("/sys").resolve(fresh.getFileName()), attributes);
            }
        };
        String told = Saved.told(() -> opened.save(Saved.project("Two"), readOnly));
        assertTrue(told.startsWith("may-not-write: " + file + " was not saved: you may not write there."), told);
        untouched();
    }

    @Test
    void aFolderThatIsGoneIsToldAsSuch() throws Exception {
        Files.delete(file);
        Files.delete(folder);
        assertEquals(
                "folder-gone: " + file + " was not saved: there is no folder " + folder
                        + " any more. Since the file was"
                        + " opened its folder was moved, renamed or deleted, or its disk was taken out. Bring the folder"
                        + " back and try again. What was to be saved is in no file yet.",
                Saved.told(() -> opened.save(Saved.project("Two"))));
    }

    @Test
    void aFileWhereTheFolderWasIsToldAsSuch() throws Exception {
        Files.delete(file);
        Files.delete(folder);
        Saved.write(folder, "a file");
        assertTrue(Saved.told(() -> opened.save(Saved.project("Two"))).startsWith("folder-gone: "));
        assertEquals("a file", Files.readString(folder));
    }

    @ParameterizedTest
    @CsvSource({".strap.json.lock", ".strap.json.new", "strap.json.before"})
    void aFolderThatStandsWhereASaveWritesIsTold(String name) throws Exception {
        Path there = Files.createDirectory(folder.resolve(name));
        Saved.write(there.resolve("inside"), "theirs");
        assertTrue(Saved.told(() -> opened.save(Saved.project("Two"))).startsWith("not-saved: " + file));
        assertEquals(Saved.text("One"), Files.readString(file));
        assertEquals("theirs", Files.readString(there.resolve("inside")));
        assertEquals(List.of(name, "strap.json").stream().sorted().toList(), Saved.names(folder));
    }

    @ParameterizedTest
    @EnumSource(SaveStep.class)
    void aDiskThatFailsInAnyStepLeavesTheFileAndNothingElse(SaveStep failing) throws Exception {
        Disk faulty = new Disk() {
            @Override
            public void begins(SaveStep step, Path of) throws IOException {
                if (step == failing) {
                    throw new IOException("Input/output error");
                }
            }
        };
        assertTrue(Saved.told(() -> opened.save(Saved.project("Two"), faulty))
                .startsWith("not-saved: " + file + " was not saved: Input/output error."));
        untouched();
    }

    @Test
    void anotherThatSavesForLongIsTold() throws Exception {
        try (SaveLock held = SaveLock.take(file)) {
            assertEquals(file, held.file());
            assertTrue(Saved.told(() -> opened.save(Saved.project("Two"))).startsWith("being-saved: " + file));
        }
        untouched();
    }

    @Test
    void faultsAreToldApartByWhatJavaOrTheSystemSays() {
        assertEquals(WriteFault.NOT_ALLOWED, WriteFault.of(new AccessDeniedException("a")));
        assertEquals(WriteFault.NOT_ALLOWED, system("Read-only file system"));
        assertEquals(WriteFault.NOT_ALLOWED, system("Operation not permitted"));
        assertEquals(WriteFault.NO_FOLDER, WriteFault.of(new NoSuchFileException("a")));
        assertEquals(WriteFault.NO_FOLDER, system("Not a directory"));
        assertEquals(WriteFault.FULL, WriteFault.of(new IOException("No space left on device")));
        assertEquals(WriteFault.FULL, system("There is not enough space on the disk"));
        assertEquals(WriteFault.FULL, system("Disk quota exceeded"));
        assertEquals(WriteFault.BUSY, WriteFault.of(new HeldByAnother(Path.of("a"))));
        assertEquals(WriteFault.OTHER, system("File name too long"));
        assertEquals("File name too long", WriteFault.reason(new FileSystemException("a", null, "File name too long")));
        assertEquals("IOException", WriteFault.reason(new IOException()));
    }

    private static WriteFault system(String reason) {
        return WriteFault.of(new FileSystemException("a", null, reason));
    }
}
