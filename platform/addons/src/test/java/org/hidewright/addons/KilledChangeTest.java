package org.hidewright.addons;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.hidewright.addons.FolderChange.Wanted;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.launcher.DecidedChange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A change that is killed before any of its deeds: what a start finds is all as it was, or all as it should be. */
class KilledChangeTest {
    private static final int KILLED = 137;

    @TempDir
    Path scratch;

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** One jar gives way, one goes, one comes, one stays, and a choice changes. */
    private static Path shop(Path settings) throws IOException {
        Path addOns = Files.createDirectories(settings.resolve("addons"));
        Files.writeString(addOns.resolve("gives-way.jar"), "old");
        Files.writeString(addOns.resolve("goes.jar"), "goes");
        Files.writeString(addOns.resolve("stays.jar"), "stays");
        Files.writeString(addOns.resolve("notes.txt"), "somebody’s own");
        Files.writeString(settings.resolve("addons.txt"), "off stays\n");
        Files.createDirectories(settings.resolve("addons-before"));
        Files.writeString(settings.resolve("addons-before/earlier.jar"), "earlier");
        return settings;
    }

    private static final Wanted WANTED = new Wanted(
            Map.of("gives-way.jar", bytes("new"), "comes.jar", bytes("comes")),
            List.of("goes.jar"),
            Optional.of(bytes("off comes\n")));

    private static final Map<String, String> OLD = Map.of(
            "addons/gives-way.jar", "old",
            "addons/goes.jar", "goes",
            "addons/stays.jar", "stays",
            "addons/notes.txt", "somebody’s own",
            "addons.txt", "off stays\n");
    private static final Map<String, String> NEW = Map.of(
            "addons/gives-way.jar", "new",
            "addons/comes.jar", "comes",
            "addons/stays.jar", "stays",
            "addons/notes.txt", "somebody’s own",
            "addons.txt", "off comes\n");

    /** What a start reads. */
    private static Map<String, String> read(Path settings) throws IOException {
        Map<String, String> read = new TreeMap<>();
        try (Stream<Path> all = Files.list(settings.resolve("addons"))) {
            for (Path file : all.toList()) {
                read.put("addons/" + file.getFileName(), Files.readString(file));
            }
        }
        read.put("addons.txt", Files.readString(settings.resolve("addons.txt")));
        return read;
    }

    /** The program that is killed: makes the change, and ends at once before the deed of a number. */
    public static void main(String[] arguments) throws FileTrouble {
        int[] left = {Integer.parseInt(arguments[1])};
        change(Path.of(arguments[0]), () -> {
            if (left[0]-- == 0) {
                Runtime.getRuntime().halt(KILLED);
            }
        });
    }

    private static void change(Path settings, FolderChange.Watch watch) throws FileTrouble {
        new FolderChange(settings, new DecidedChange(watch::before), watch).make(WANTED);
    }

    private int killedBefore(int deed, Path settings) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xshare:auto",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        KilledChangeTest.class.getName(),
                        settings.toString(),
                        String.valueOf(deed))
                .inheritIO()
                .start();
        return process.waitFor();
    }

    @Test
    void aStartAfterItFindsAllOldOrAllNew() throws Exception {
        boolean decided = false;
        int deed = 0;
        for (int code = KILLED; code == KILLED; deed++) {
            Path settings = shop(scratch.resolve("kill-" + deed));
            code = killedBefore(deed, settings);
            assertEquals("", new DecidedChange(() -> {}).apply(settings.toFile()), "deed " + deed);
            Map<String, String> found = read(settings);
            assertTrue(found.equals(OLD) || found.equals(NEW), "killed before deed " + deed + ": " + found);
            assertFalse(decided && found.equals(OLD), "what was decided stays so; deed " + deed);
            decided = found.equals(NEW);
            assertFalse(Files.exists(settings.resolve("addons-change")));
            Optional<Wanted> before = new FolderChange(settings, new DecidedChange(() -> {})).before();
            assertEquals(
                    decided ? List.of("gives-way.jar", "goes.jar", "stays.jar") : List.of("earlier.jar"),
                    List.copyOf(before.orElseThrow().come().keySet()),
                    "what was before is kept whole; deed " + deed);
            change(settings, () -> {}); // and the same again goes through
            assertEquals(NEW, read(settings));
        }
        assertTrue(decided);
        assertTrue(deed > 25, "deeds seen: " + deed);
    }

    @Test
    void whatFailsInTheMiddleIsUndoneWhereverThatIs() throws Exception {
        for (int fails = 0; ; fails++) {
            Path settings = shop(scratch.resolve("fail-" + fails));
            int[] left = {fails};
            try {
                change(settings, () -> {
                    if (left[0]-- == 0) {
                        throw new IOException("a full disk");
                    }
                });
            } catch (FileTrouble told) {
                assertTrue(Files.exists(settings.resolve("addons/goes.jar")), "fails at deed " + fails);
                assertEquals(OLD, read(settings), "fails at deed " + fails);
                continue;
            }
            assertEquals(NEW, read(settings), "fails at deed " + fails);
            if (left[0] >= 0) {
                return; // went through without the fault
            }
        }
    }

    @Test
    void oneWhoseUndoingIsKilledIsUndoneByTheNextStart() throws Exception {
        for (int killed = 0; ; killed++) {
            Path settings = shop(scratch.resolve("undo-" + killed));
            int[] left = {killed};
            boolean[] undoing = {false};
            try {
                new FolderChange(settings, new DecidedChange(() -> {
                            if (Files.exists(settings.resolve("addons-change/undo"))) {
                                undoing[0] = true;
                                if (left[0]-- == 0) {
                                    throw new Killed();
                                }
                            } else if (!undoing[0]
                                    && Files.exists(settings.resolve("addons-change"))
                                    && !Files.exists(settings.resolve("addons/goes.jar"))) {
                                throw new IOException("a full disk");
                            }
                        }))
                        .make(WANTED);
            } catch (FileTrouble told) {
                assertEquals(OLD, read(settings));
                assertTrue(killed > 5, "deeds of the undoing: " + killed);
                return;
            } catch (Killed asByAKill) {
                assertEquals("", new DecidedChange(() -> {}).apply(settings.toFile()));
                assertEquals(OLD, read(settings), "killed before deed " + killed + " of the undoing");
            }
        }
    }

    /** Nothing that comes after it is done. */
    private static final class Killed extends Error {
        private static final long serialVersionUID = 1L;
    }
}
