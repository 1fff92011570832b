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
    private static final String SLIDES = "net.example.fieldkit.strap-slides";

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
            Path unpacked = Path.of("../../samples", sample).toAbsolutePath();
            boolean built = Files.exists(unpacked.resolve("pom.xml"));
            arguments.add((built ? BuiltProgram.sample(sample) : unpacked).toString());
        }
        Ended ended = program.run(arguments.toArray(String[]::new));
        assertEquals("", ended.told());
        assertEquals(0, ended.code());
    }

    private Path project() throws IOException {
        Path project = scratch.resolve("kit.json");
        return Files.exists(project) ? project : Files.writeString(project, PROJECT);
    }

    private Ended make(String... more) throws Exception {
        List<String> arguments =
                new ArrayList<>(List.of("make", project().toString(), "--into", out().toString(), "--language", "en"));
        arguments.addAll(List.of(more));
        return program.run(arguments.toArray(String[]::new));
    }

    private Path out() {
        return scratch.resolve("out");
    }

    @Test
    void oneProjectTakesFromAllOfThem() throws Exception {
        install("jar-sleeve", "book-strap", "kit-list", "strap-pad", "strap-slides", "specimen-tag");
        Ended made = make();
        assertEquals(0, made.code(), made.told());
        String card = PrintedText.of(out().resolve("job-card.pdf"));
        // pi * (65 + 1 + 2) + 12
        assertTrue(card.contains("226.0"), card);
        // 2 * (148 + 18) + 2 * pi + 40 = 378.3, up to whole millimetres
        assertTrue(card.contains("379"), card);
        assertTrue(card.contains("750"), "the cord of three tags: " + card);
        // the row that a bundle brings: a slide of 20 mm for straps of 2.5 mm, a millimetre of room in both
        assertTrue(card.contains("21.0") && card.contains("3.5"), card);
        assertTrue(card.replace("- ", "-").contains("Three-bar slide 20 mm is a row of the bundle " + SLIDES), card);
        assertTrue(card.contains("Made up for this sample; no slide was measured."), card);
        String list = PrintedText.of(out().resolve("packing-list.pdf"));
        assertTrue(list.contains("6 × specimen jar"), list);
        assertTrue(list.contains("Day bag: 7 things, 615"), list);
        assertFalse(card.contains("6 × specimen jar"), "it stands apart");
        assertTrue(Files.readString(out().resolve("patterns-pad.svg")).contains("213.25"), "as long as it was asked");
        assertTrue(Files.exists(out().resolve("patterns-tags.svg")));
    }

    @Test
    void withoutTheBundleItsRowIsToldAsMissing() throws Exception {
        install("jar-sleeve", "book-strap", "kit-list", "strap-pad");
        Ended made = make();
        assertEquals(1, made.code());
        assertTrue(
                made.told().contains("This is to come from the workshop, Hardware, slide 20, and there is none."),
                made.told());
        assertFalse(Files.exists(out().resolve("patterns-pad.svg")));
        assertTrue(Files.exists(out().resolve("packing-list.pdf")), "the others are worked");
    }

    @Test
    void aRowThatIsKeptStaysWhenItsBundleGoes() throws Exception {
        install("jar-sleeve", "book-strap", "kit-list", "strap-pad", "strap-slides", "specimen-tag");
        Ended kept = program.run("keep", project().toString(), "--language", "en");
        assertEquals(0, kept.code(), kept.told());
        assertTrue(kept.answer().contains("hardware[slide-20]"), kept.answer());
        assertTrue(Files.readString(project()).contains("\"from\": {\"bundle\": \"" + SLIDES + "\""));
        assertEquals(0, program.run("addons", "remove", SLIDES).code());
        Ended made = make();
        assertEquals(0, made.code(), made.told());
        String card = PrintedText.of(out().resolve("job-card.pdf"));
        assertTrue(card.contains("21.0") && card.contains("3.5"), card);
        assertTrue(card.contains("which does not bring it now"), card);
    }

    @Test
    void theMakersOwnRowOfTheSameNameGoesBefore() throws Exception {
        install("strap-pad", "strap-slides");
        Path own = Files.writeString(scratch.resolve("own.json"), """
                {"workshop": 1, "tables": {"hardware": [
                  {"id": "slide-20", "name": "Mine", "kind": "other", "inside-width": "22 mm", "bar-diameter": "3 mm",
                   "strap-at-most": "2.5 mm", "slide-height": "18 mm"}]}}
                """);
        String[] work = {
            "work", "strap-pad", "slide={\"workshop\": \"hardware\", \"row\": \"slide-20\"}", "--language", "en"
        };
        String bundles = program.run(work).answer();
        assertTrue(bundles.contains("Three-bar slide 20 mm is a row of the bundle " + SLIDES), bundles);
        List<String> withOwn = new ArrayList<>(List.of(work));
        withOwn.addAll(List.of("--workshop", own.toString()));
        String mine = program.run(withOwn.toArray(String[]::new)).answer();
        assertTrue(mine.contains("22 mm"), mine);
        assertFalse(mine.contains(SLIDES), mine);
    }

    @Test
    void columnsAndRowsAreListedWithTheirTexts() throws Exception {
        install("strap-slides");
        String explained = program.run("workshop", "--language", "en").answer();
        assertTrue(explained.contains("slide-height"), explained);
        assertTrue(explained.contains("The thickest strap that goes through the slide."), explained);
        assertTrue(explained.contains("inside-width"), "beside those that were there: " + explained);
        assertTrue(explained.contains("Rows of the bundle " + SLIDES), explained);
        assertTrue(explained.contains("Three-bar slide 20 mm"), explained);
        String listed = program.run("addons", "--language", "en").answer();
        assertTrue(listed.contains("tables of the workshop: hardware"), listed);
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
