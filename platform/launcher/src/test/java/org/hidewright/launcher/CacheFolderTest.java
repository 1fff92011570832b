package org.hidewright.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CacheFolderTest {

    private static final SystemExports EXPORTS = SystemExports.read("a.b\ncapability\n");

    @TempDir
    Path folder;

    private Path jar;

    @BeforeEach
    void oneBundle() throws IOException {
        jar = Files.createDirectories(folder.resolve("program/bundles/10-libraries"))
                .resolve("a.jar");
        Files.writeString(jar, "one");
    }

    @Test
    void theFirstStartFindsNothingAndTheSecondWhatTheFirstKept() throws IOException {
        try (CacheFolder first = take()) {
            assertFalse(first.isCurrent());
            Files.createDirectories(first.felix().toPath());
            first.keep(EXPORTS, Set.of());
        }
        try (CacheFolder second = take()) {
            assertTrue(second.isCurrent());
            assertEquals("a.b", second.systemExports().packages());
        }
    }

    @Test
    void theAddOnsThatWereFoundSoundAreKnown() throws IOException {
        try (CacheFolder first = take()) {
            assertEquals(Set.of(), first.soundAddOns());
            first.keep(EXPORTS, Set.of("one.jar", "another one.jar"));
        }
        try (CacheFolder second = take()) {
            assertEquals(Set.of("one.jar", "another one.jar"), second.soundAddOns());
        }
    }

    @Test
    void aChangedBundleMakesTheNotesStale() throws IOException {
        try (CacheFolder first = take()) {
            first.keep(EXPORTS, Set.of());
        }
        Files.writeString(jar, "another");
        try (CacheFolder second = take()) {
            assertFalse(second.isCurrent());
        }
    }

    @Test
    void whatTheMakerSaysOfAddOnsMakesTheNotesStale() throws IOException {
        for (String said : List.of("addons-trust.txt", "addons-agreed.txt")) {
            try (CacheFolder first = take()) {
                first.keep(EXPORTS, Set.of());
            }
            Files.createDirectories(folder.resolve("settings"));
            Files.writeString(folder.resolve("settings").resolve(said), "said");
            try (CacheFolder second = take()) {
                assertFalse(second.isCurrent(), said);
            }
        }
    }

    @Test
    void anAddOnThatComesOrIsTurnedOffMakesTheNotesStale() throws IOException {
        try (CacheFolder first = take()) {
            first.keep(EXPORTS, Set.of());
        }
        Path addOn = Files.createDirectories(folder.resolve("settings/addons")).resolve("net.example.kit.jar");
        AddOnJar.write(addOn, "net.example.kit");
        try (CacheFolder second = take()) {
            assertFalse(second.isCurrent());
            second.keep(EXPORTS, Set.of());
        }
        Files.writeString(folder.resolve("settings/addons.txt"), "off net.example.kit\n");
        try (CacheFolder third = take()) {
            assertFalse(third.isCurrent());
            third.keep(EXPORTS, Set.of());
        }
        try (CacheFolder fourth = take()) {
            assertTrue(fourth.isCurrent());
        }
    }

    @Test
    void aStartThatBreaksOffLeavesNoNotes() throws IOException {
        try (CacheFolder first = take()) {
            first.keep(EXPORTS, Set.of());
        }
        try (CacheFolder broken = take()) {
            broken.renew();
        }
        try (CacheFolder next = take()) {
            assertFalse(next.isCurrent());
        }
    }

    @Test
    void twoStartsAtOnceDoNotShareAndTheSecondTidiesUp() throws IOException {
        try (CacheFolder first = take()) {
            Path second;
            try (CacheFolder other = take()) {
                second = other.felix().toPath();
                assertNotEquals(first.felix(), other.felix());
                Files.createDirectories(second);
            }
            assertFalse(Files.exists(second.getParent()), "the temporary cache is left behind");
        }
    }

    @Test
    void aPlaceThatCannotBeACacheIsNoReasonNotToStart() throws IOException {
        Path file = Files.createFile(folder.resolve("caches"));
        try (CacheFolder cache = CacheFolder.take(file.toFile(), lineUp())) {
            assertFalse(cache.felix().toPath().startsWith(file));
            assertFalse(cache.isCurrent());
        }
    }

    private LineUp lineUp() {
        return LineUp.of(
                new ProgramHome(folder.resolve("program").toFile()),
                new String[] {SettingsFolder.OPTION, folder.resolve("settings").toString()});
    }

    private CacheFolder take() throws IOException {
        return CacheFolder.take(folder.resolve("caches").toFile(), lineUp());
    }
}
