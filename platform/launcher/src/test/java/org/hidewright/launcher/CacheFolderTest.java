package org.hidewright.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
            first.keep(EXPORTS);
        }
        try (CacheFolder second = take()) {
            assertTrue(second.isCurrent());
            assertEquals("a.b", second.systemExports().packages());
        }
    }

    @Test
    void aChangedBundleMakesTheNotesStale() throws IOException {
        try (CacheFolder first = take()) {
            first.keep(EXPORTS);
        }
        Files.writeString(jar, "another");
        try (CacheFolder second = take()) {
            assertFalse(second.isCurrent());
        }
    }

    @Test
    void aStartThatBreaksOffLeavesNoNotes() throws IOException {
        try (CacheFolder first = take()) {
            first.keep(EXPORTS);
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
        try (CacheFolder cache = CacheFolder.take(file.toFile(), home(), home().bundles())) {
            assertFalse(cache.felix().toPath().startsWith(file));
            assertFalse(cache.isCurrent());
        }
    }

    private ProgramHome home() {
        return new ProgramHome(folder.resolve("program").toFile());
    }

    private CacheFolder take() throws IOException {
        return CacheFolder.take(folder.resolve("caches").toFile(), home(), home().bundles());
    }
}
