package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Every version of a sample project that was ever landed still opens and is worked. The files are never changed: when a
 * sample changes, the new one is added under the next number.
 */
class LandedProjectsIT {
    private static final Path LANDED = Path.of("src/test/resources/landed");
    private static final Path SAMPLES = Path.of("../../samples/projects");
    private static final Pattern STOP =
            Pattern.compile("(?m)^Stop \\(line \\d+, column \\d+, slip “([^”]+)”, question “([^”]+)”\\)");

    @TempDir
    static Path scratch;

    private static BuiltProgram program;

    @BeforeAll
    static void copy() throws IOException {
        program = BuiltProgram.copyInto(scratch);
    }

    /** The first notebook cover was landed before two questions were asked that nothing can be preset for. */
    @ParameterizedTest
    @CsvSource({
        "binocular-neck-strap-1.json,",
        "binocular-neck-strap-2.json,",
        "field-book-cover-costed-1.json,",
        "field-notebook-cover-1.json,cover-work/finish strap-keeper/corner-radius",
        "field-notebook-cover-2.json,strap-keeper/corner-radius",
        "field-notebook-cover-3.json,",
        "field-notebook-cover-4.json,",
        "field-notebook-cover-5.json,",
        "hand-lens-pouch-1.json,",
        "hand-lens-pouch-2.json,",
        "hand-lens-pouch-3.json,",
        "hand-lens-pouch-4.json,",
        "hand-lens-pouch-5.json,",
        "lens-pouches-laid-out-1.json,",
        "plant-press-straps-1.json,",
        "plant-press-straps-2.json,"
    })
    void aProjectOfAnyTimeOpensAndStopsOnlyWhereAQuestionWasAddedSince(String name, String stops) throws Exception {
        Path project = Files.copy(LANDED.resolve(name), scratch.resolve(name));
        byte[] before = Files.readAllBytes(project);
        Path packet = scratch.resolve("packet-of-" + name);
        var ended = program.run("make", project.toString(), "--into", packet.toString(), "--language", "en");
        assertEquals(stops == null ? "" : stops, String.join(" ", stopsIn(ended.told())), ended.told());
        assertEquals(stops == null ? 0 : 1, ended.code(), ended.told());
        assertEquals(
                stops != null,
                ended.told().contains("Stop"),
                "a stop that names no slip and question: " + ended.told());
        assertTrue(Files.size(packet.resolve("job-card.pdf")) > 0);
        assertArrayEquals(before, Files.readAllBytes(project));
    }

    private static List<String> stopsIn(String told) {
        List<String> stops = new ArrayList<>();
        Matcher matcher = STOP.matcher(told);
        while (matcher.find()) {
            stops.add(matcher.group(1) + "/" + matcher.group(2));
        }
        return stops;
    }

    @Test
    void theSamplesAsTheyAreNowAreAmongThem() throws IOException {
        List<String> landed = new ArrayList<>();
        for (Path file : files(LANDED)) {
            landed.add(Files.readString(file));
        }
        for (Path sample : files(SAMPLES)) {
            assertTrue(landed.contains(Files.readString(sample)), sample + " is not kept in " + LANDED);
        }
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            List<Path> files =
                    all.filter(file -> file.toString().endsWith(".json")).toList();
            assertTrue(!files.isEmpty(), folder + " is empty");
            return files;
        }
    }
}
