package org.hidewright.window.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hidewright.core.project.Slip;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Samples in the language of the maker. */
class SampleTest {
    private static final Path SHIPPED = Path.of("../../samples");

    @TempDir
    Path folder;

    @Test
    void whatIsShippedIsCalledAndTitledInGerman() {
        List<Sample> english = Sample.in(SHIPPED, Locale.ENGLISH);
        List<Sample> german = Sample.in(SHIPPED, Locale.GERMANY);
        assertEquals(english.size(), german.size());
        assertTrue(german.size() > 10, german.toString());
        for (int i = 0; i < german.size(); i++) {
            var one = english.get(i).project();
            var other = german.get(i).project();
            assertNotEquals(one.name(), other.name());
            assertNotEquals(one.about(), other.about(), other.name());
            for (Slip slip : one.slips()) {
                Optional<String> title = other.slip(slip.id()).orElseThrow().title();
                assertTrue(title.isPresent() && !title.equals(slip.title()), other.name() + ": " + title);
            }
        }
    }

    @Test
    void aCopyDiffersFromItsSampleByThoseWordsAlone() throws Exception {
        Path file = Files.createDirectories(folder.resolve("templates")).resolve("cord.json");
        Files.writeString(file, """
                {
                  "hidewright": 1,
                  "name": "A cord", "about": "Round.",
                  "slips": [ {"id": "c", "calculator": "cord", "title": "Cord", "questions": {"round": "5 mm"}} ]
                }
                """);
        Files.writeString(
                folder.resolve("samples_de.properties"), "cord.name = Schnur für Netze\ncord.slip.c = Die Schnur\n");
        assertEquals("""
                {
                  "hidewright": 1,
                  "name": "Schnur für Netze", "about": "Round.",
                  "slips": [ {"id": "c", "calculator": "cord", "title": "Die Schnur", "questions": {"round": "5 mm"}} ]
                }
                """, Sample.in(folder, Locale.GERMAN).get(0).project().text());
        assertEquals(
                Files.readString(file),
                Sample.in(folder, Locale.FRENCH).get(0).project().text());
    }

    @Test
    void wordsThatCannotBeReadLeaveTheSamplesAsTheyAre() throws Exception {
        Path file = Files.createDirectories(folder.resolve("projects")).resolve("cord.json");
        Files.writeString(file, "{\"hidewright\": 1, \"name\": \"A cord\", \"slips\": []}");
        Files.writeString(folder.resolve("samples_de.properties"), "cord.name = \\u00");
        List<Sample> samples = Sample.in(folder, Locale.GERMAN);
        assertEquals("A cord", samples.get(0).project().name());
        assertEquals(Files.readString(file), samples.get(0).project().text());
    }
}
