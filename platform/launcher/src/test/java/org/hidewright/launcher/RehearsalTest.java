package org.hidewright.launcher;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RehearsalTest {

    @TempDir
    Path folder;

    @AfterEach
    void noRehearsal() {
        System.clearProperty("hidewright.rehearsal");
    }

    @Test
    void everyLineIsACommandButNotes() throws IOException {
        Path lines = Files.writeString(folder.resolve("lines"), "# note\n\nwork\tthickness\tthickness=2-3 oz\n");
        System.setProperty("hidewright.rehearsal", lines.toString());
        List<String[]> commands = Rehearsal.commands(new String[] {"never"});
        assertEquals(2, commands.size());
        assertArrayEquals(new String[0], commands.get(0));
        assertArrayEquals(new String[] {"work", "thickness", "thickness=2-3 oz"}, commands.get(1));
    }

    @Test
    void withoutARehearsalTheCommandAskedForIsTheOnlyOne() throws IOException {
        assertArrayEquals(
                new String[] {"explain"},
                Rehearsal.commands(new String[] {"explain"}).get(0));
    }
}
