package org.hidewright.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProgramHomeTest {

    @TempDir
    Path folder;

    @Test
    void bundlesComeLowestLevelFirstByTheNumberNotByTheText() throws IOException {
        jar("bundles/100-late/a.jar");
        jar("bundles/20-early/b.jar");
        jar("bundles/20-early/a.jar");
        assertEquals("20 a.jar, 20 b.jar, 100 a.jar", listed());
    }

    @Test
    void onlyJarsAreBundles() throws IOException {
        jar("bundles/10-libraries/notes.txt");
        jar("bundles/10-libraries/a.jar");
        jar("bundles/readme");
        assertEquals("10 a.jar", listed());
    }

    @Test
    void aMissingFolderHasNoBundles() {
        assertTrue(new ProgramHome(folder.toFile()).bundles().isEmpty());
    }

    @Test
    void aFolderWithoutALevelIsToldByItsName() throws IOException {
        jar("bundles/libraries/a.jar");
        var told = assertThrows(IllegalStateException.class, this::listed);
        assertTrue(told.getMessage().contains("libraries has no start level"), told.getMessage());
    }

    @Test
    void levelZeroBelongsToTheFramework() throws IOException {
        jar("bundles/0-mine/a.jar");
        assertThrows(IllegalStateException.class, this::listed);
    }

    @Test
    void librariesAreKnownByTheNamesOfTheirFiles() throws IOException {
        jar("lib/org.hidewright.core-0.1.0-SNAPSHOT.jar");
        jar("lib/commons-lang3-3.22.0.jar");
        jar("lib/nameless.jar");
        jar("lib/path-17.jsa");
        assertEquals(
                "commons-lang3, org.hidewright.core",
                String.join(", ", new ProgramHome(folder.toFile()).libraryNames()));
    }

    private void jar(String path) throws IOException {
        Path file = folder.resolve(path);
        Files.createDirectories(file.getParent());
        Files.createFile(file);
    }

    private String listed() {
        return String.join(
                ", ",
                new ProgramHome(folder.toFile())
                        .bundles().stream().map(b -> b.level() + " " + b.name()).toList());
    }
}
