package org.hidewright.addons;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

    /** The program that is killed: makes the change, and ends at once before the deed of a number. */
    public static void main(String[] arguments) throws FileTrouble {
        int[] left = {Integer.parseInt(arguments[1])};
        ChangedShop.change(Path.of(arguments[0]), () -> {
            if (left[0]-- == 0) {
                Runtime.getRuntime().halt(KILLED);
            }
        });
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
            Path settings = ChangedShop.shop(scratch.resolve("kill-" + deed));
            code = killedBefore(deed, settings);
            assertEquals("", new DecidedChange(() -> {}).apply(settings.toFile()), "deed " + deed);
            Map<String, String> found = ChangedShop.read(settings);
            assertTrue(
                    found.equals(ChangedShop.OLD) || found.equals(ChangedShop.NEW),
                    "killed before deed " + deed + ": " + found);
            assertFalse(decided && found.equals(ChangedShop.OLD), "what was decided stays so; deed " + deed);
            decided = found.equals(ChangedShop.NEW);
            assertFalse(Files.exists(settings.resolve("addons-change")));
            Optional<Wanted> before = new FolderChange(settings, new DecidedChange(() -> {})).before();
            assertEquals(
                    decided ? List.of("gives-way.jar", "goes.jar", "stays.jar") : List.of("earlier.jar"),
                    List.copyOf(before.orElseThrow().come().keySet()),
                    "what was before is kept whole; deed " + deed);
            ChangedShop.change(settings, () -> {}); // and the same again goes through
            assertEquals(ChangedShop.NEW, ChangedShop.read(settings));
        }
        assertTrue(decided);
        assertTrue(deed > 25, "deeds seen: " + deed);
    }
}
