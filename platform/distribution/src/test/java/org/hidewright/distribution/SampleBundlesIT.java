package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.hidewright.distribution.BuiltProgram.Ended;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The samples put into the program as built, and a project of a field kit that takes from all of them. */
class SampleBundlesIT {
    private static final String SLIDES = Path.of("../../samples/strap-slides/strap-slides.json")
            .toAbsolutePath()
            .toString();

    private static final String PROJECT = """
            {"hidewright": 1, "name": "Field kit", "slips": [
              {"id": "sleeve", "calculator": "jar-sleeve", "questions": {"diameter": "65 mm", "thickness": "2 mm"}},
              {"id": "book", "calculator": "book-strap", "questions": {"sheet": "a5", "book-thickness": "18 mm"}},
              {"id": "bag", "calculator": "kit-list", "title": "Day bag", "questions": {"things": [
                {"id": "hand-lens", "mass": "45 g"}, {"id": "specimen-jar", "mass": "95 g", "count": 6}]}},
              {"id": "pad", "calculator": "strap-pad", "questions": {
                "slide": {"workshop": "hardware", "row": "slide-20"}, "length": "213.25 mm"}},
              {"id": "tags", "calculator": "specimen-tag", "questions": {"tags": 3}}]}
            """;

    @TempDir
    Path scratch;

    private BuiltProgram program;

    @BeforeEach
    void copy() throws IOException {
        program = BuiltProgram.copyInto(scratch);
    }

    private void install(String... samples) throws Exception {
        List<String> arguments = new ArrayList<>(List.of("addons", "install"));
        for (String sample : samples) {
            arguments.add(BuiltProgram.sample(sample).toString());
        }
        Ended ended = program.run(arguments.toArray(String[]::new));
        assertEquals("", ended.told());
        assertEquals(0, ended.code());
    }

    private Ended make() throws Exception {
        Path project = Files.writeString(scratch.resolve("kit.json"), PROJECT);
        return program.run(
                "make", project.toString(), "--workshop", SLIDES, "--into", out().toString(), "--language", "en");
    }

    private Path out() {
        return scratch.resolve("out");
    }

    @Test
    void oneProjectTakesFromAllOfThem() throws Exception {
        install("jar-sleeve", "book-strap", "kit-list", "strap-pad", "strap-slides");
        Path tag = Path.of("../../samples/specimen-tag").toAbsolutePath();
        assertEquals(0, program.run("addons", "install", tag.toString()).code());
        Ended made = make();
        assertEquals(0, made.code(), made.told());
        String card = PrintedText.of(out().resolve("job-card.pdf"));
        // pi * (65 + 1 + 2) + 12
        assertTrue(card.contains("226.0"), card);
        // 2 * (148 + 18) + 2 * pi + 40 = 378.3, up to whole millimetres
        assertTrue(card.contains("379"), card);
        assertTrue(card.contains("750"), "the cord of three tags: " + card);
        // the row of the workshop: a slide of 20 mm for straps of 2.5 mm, a millimetre of room in both
        assertTrue(card.contains("21.0") && card.contains("3.5"), card);
        String list = PrintedText.of(out().resolve("packing-list.pdf"));
        assertTrue(list.contains("6 × specimen jar"), list);
        assertTrue(list.contains("Day bag: 7 things, 615"), list);
        assertFalse(card.contains("6 × specimen jar"), "it stands apart");
        assertTrue(Files.readString(out().resolve("patterns-pad.svg")).contains("213.25"), "as long as it was asked");
        assertTrue(Files.exists(out().resolve("patterns-tags.svg")));
    }

    @Test
    void withoutItsColumnTheRowDoesNotAnswer() throws Exception {
        install("jar-sleeve", "book-strap", "kit-list", "strap-pad");
        Ended made = make();
        assertEquals(1, made.code());
        assertTrue(
                made.told().contains("question “slide.strap-at-most”): “Strap at most” has not been answered."),
                made.told());
        assertFalse(Files.exists(out().resolve("patterns-pad.svg")));
        assertTrue(Files.exists(out().resolve("packing-list.pdf")), "the others are worked");
    }

    @Test
    void theColumnsAreListedWithTheirTexts() throws Exception {
        install("strap-slides");
        String explained =
                program.run("workshop", "--columns", "--language", "en").answer();
        assertTrue(explained.contains("slide-height"), explained);
        assertTrue(explained.contains("The thickest strap that goes through the slide."), explained);
        assertTrue(explained.contains("inside-width"), "beside those that were there: " + explained);
        String listed = program.run("workshop", SLIDES, "--language", "en").answer();
        assertTrue(listed.contains("Three-bar slide 20 mm"), listed);
    }

    @Test
    void aBundleSpeaksItsLanguages() throws Exception {
        install("book-strap");
        String german = program.run("work", "book-strap", "sheet=a5", "book-thickness=18 mm", "--language", "de")
                .answer();
        assertTrue(german.contains("Zuschnittlänge"), german);
        assertTrue(german.contains("379"), german);
        String english = program.run("work", "book-strap", "sheet=a5", "book-thickness=18 mm", "--language", "en")
                .answer();
        assertTrue(english.contains("Cut length"), english);
        Ended told = program.run("work", "book-strap", "book-thickness=18 mm", "overlap=10 mm", "--language", "de");
        assertTrue((told.answer() + told.told()).contains("Eine Überlappung von 10"), told.answer() + told.told());
    }
}
