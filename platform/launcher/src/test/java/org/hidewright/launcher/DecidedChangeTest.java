package org.hidewright.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.RandomAccessFile;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a start does with a change that it finds; how changes are killed is tested where they are made. */
class DecidedChangeTest {
    @TempDir
    Path settings;

    private Path change;

    @BeforeEach
    void aChangeThatWasDecided() throws Exception {
        change = settings.resolve("addons-change");
        for (String folder : new String[] {"come", "go", "new", "before"}) {
            Files.createDirectories(change.resolve(folder));
        }
        Files.createDirectories(settings.resolve("addons"));
        Files.writeString(settings.resolve("addons/goes.jar"), "goes");
        Files.writeString(change.resolve("before/goes.jar"), "goes");
        Files.writeString(change.resolve("go/goes.jar"), "");
        Files.writeString(change.resolve("come/comes.jar"), "comes");
        Files.writeString(change.resolve("new/comes.jar"), "");
    }

    private void isDone() {
        assertTrue(Files.exists(settings.resolve("addons/comes.jar")));
        assertFalse(Files.exists(settings.resolve("addons/goes.jar")));
        assertTrue(Files.exists(settings.resolve("addons-before/goes.jar")));
        assertFalse(Files.exists(change));
        assertFalse(Files.exists(settings.resolve("addons-change.part")));
    }

    @Test
    void itIsDoneToItsEnd() {
        assertEquals("", new DecidedChange().whenFree(settings.toFile()));
        isDone();
        assertEquals("", new DecidedChange().whenFree(settings.toFile()));
        assertEquals("", new DecidedChange().apply(settings.toFile()));
    }

    @Test
    void aStartSeesWhatItLeaves() {
        LineUp lineUp = LineUp.of(
                new ProgramHome(settings.resolve("program").toFile()),
                new String[] {"--settings", settings.toString()});
        isDone();
        assertEquals("comes.jar", lineUp.files().get(0).name());
        assertEquals(1, lineUp.files().size());
        assertTrue(lineUp.told().isEmpty());
    }

    @Test
    void whereItCannotBeDoneNoAddOnStartsAndThatIsSaid() throws Exception {
        Files.delete(settings.resolve("addons/goes.jar"));
        Files.createDirectories(settings.resolve("addons/goes.jar/full"));
        Files.writeString(settings.resolve("addons/other.jar"), "other");
        LineUp lineUp = LineUp.of(
                new ProgramHome(settings.resolve("program").toFile()),
                new String[] {"--settings", settings.toString()});
        assertTrue(lineUp.files().isEmpty(), "neither the old nor the new, and no mix of them");
        assertEquals(
                "left-out",
                lineUp.states().get(settings.resolve("addons/other.jar").toString()));
        assertTrue(
                lineUp.told().get(0).startsWith("A change of the add-ons in " + settings + " was begun"),
                lineUp.told().get(0));
        assertTrue(Files.exists(change), "the next start tries again");
    }

    @Test
    void anotherProgramThatIsAtItIsWaitedFor() throws Exception {
        Process other = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        DecidedChangeTest.class.getName(),
                        settings.toString())
                .redirectErrorStream(true)
                .start();
        assertEquals('l', other.getInputStream().read());
        long began = System.nanoTime();
        assertEquals("", new DecidedChange().whenFree(settings.toFile()));
        assertTrue(System.nanoTime() - began > 100_000_000L, "it was held for longer");
        isDone();
        assertEquals(0, other.waitFor());
    }

    /** The other program: takes the lock, says so, and gives it back after a while. */
    public static void main(String[] arguments) throws Exception {
        try (RandomAccessFile file = new RandomAccessFile(
                        Path.of(arguments[0], "addons.lock").toFile(), "rw");
                FileLock lock = file.getChannel().lock()) {
            System.out.print(lock.isValid() ? "l" : "n");
            System.out.flush();
            Thread.sleep(700);
        }
    }
}
