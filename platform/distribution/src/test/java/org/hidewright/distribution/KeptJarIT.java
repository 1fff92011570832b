package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.distribution.BuiltProgram.Ended;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A bundle that was built once against the contract of its day and is kept as a jar: every later build of the program has to run it.
 * Where this fails, the contract was broken for everybody who has built against it; the jar is not what is to be changed.
 */
class KeptJarIT {
    private static final Path KEPT =
            Path.of("../../samples/kept").toAbsolutePath().normalize();
    private static final Path JAR = KEPT.resolve("net.example.kept-1.0.0.jar");
    private static final String SHA_256 = "b345dd8e1044d65eb9959e6d8e80686195db62d513d3cc823022d24b5227508f";

    private static final String PROJECT = """
            {"hidewright": 1, "name": "Field kit", "slips": [
              {"id": "cords", "calculator": "kept-cord", "title": "Cords of the kit", "questions": {
                "cord": {"workshop": "kept-cords", "row": "linen"}, "way": "double",
                "end": {"wound": {"core": "8 mm"}}, "waxed": "yes", "price-per-metre": "0.40 EUR",
                "bought": "2026-03-01", "colour": "red",
                "things": [{"id": "hand-lens", "length": "24 in"}, {"id": "jars", "length": "250 mm", "count": 3}]}},
              {"id": "tight", "calculator": "kept-cord", "questions": {
                "cord": {"diameter": "2 mm", "density": "1.4 g/cm3"}, "end": {"wound": {"core": "1 mm"}}}},
              {"id": "short", "calculator": "kept-cord", "questions": {
                "cord": {"diameter": "2 mm", "density": "1.4 g/cm3"}, "waste": "3 %",
                "things": [{"id": "jars", "length": "40 mm"}]}},
              {"id": "case", "calculator": "kept-case", "questions": {
                "held": {"width": "60 mm", "height": "90 mm", "thickness": "10 mm"}, "ring": "20 mm"}},
              {"id": "strap", "calculator": "strap-width", "questions": {
                "hardware-inside-width": {"from": "case", "answer": "width"}}}]}
            """;

    private static final String WORKSHOP = """
            {"workshop": 1, "name": "Field bench", "tables": {"kept-cords": [
              {"id": "linen", "name": "Waxed linen", "diameter": "2 mm", "density": "1.4 g/cm3"}]}}
            """;

    @TempDir
    Path scratch;

    private BuiltProgram program;

    @BeforeEach
    void install() throws Exception {
        program = BuiltProgram.inPlace(scratch);
        Ended installed = program.run("addons", "install", JAR.toString());
        assertEquals("", installed.told());
        assertEquals(0, installed.code());
    }

    /** Built anew it would test nothing: this sum is changed by intent alone, and never to make a test pass. */
    @Test
    void theJarIsTheOneThatWasKept() throws Exception {
        byte[] sum = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(JAR));
        assertEquals(SHA_256, HexFormat.of().formatHex(sum));
        assertTrue(Files.readString(KEPT.resolve("README.md")).contains(SHA_256), "as its README says");
        Path sources = KEPT.resolve("source/src/main/java");
        try (JarFile jar = new JarFile(JAR.toFile());
                Stream<Path> all = Files.walk(sources)) {
            List<Path> java = all.filter(Files::isRegularFile).toList();
            assertEquals(5, java.size());
            for (Path source : java) {
                try (var packed = jar.getInputStream(jar.getEntry("OSGI-OPT/src/" + sources.relativize(source)))) {
                    assertEquals(
                            new String(packed.readAllBytes(), StandardCharsets.UTF_8),
                            Files.readString(source),
                            "what lies beside it is what it was built from");
                }
            }
        }
    }

    @Test
    void itAnswersAsOnTheFirstDay() throws Exception {
        Path out = scratch.resolve("out");
        Ended made = make(out);
        assertEquals(1, made.code(), "one slip is refused: " + made.told());
        // An inch is 25.4 mm (International Yard and Pound Agreement, 1959); a turn of cord is a circle round its
        // middle.
        double ends = 2 * Math.PI * (8 + 2) * 3;
        double cord = 1.1 * (2 * 24 * 25.4 + ends + 3 * (2 * 250 + ends));
        assertEquals(3820.5, cord, 0.001, "worked by hand");
        JsonObject cords = slip(out, "cords");
        near(cord, cords, "cord");
        near(Math.PI, cords, "section"); // of a cord 2 mm thick, mm²
        near(Math.PI * cord / 1000 * 1.4, cords, "mass");
        near(4, cords, "pieces");
        near(0.40 * cord / 1000, cords, "price");
        assertEquals("Cut Double, colour red", text(cords, "made"));
        JsonObject kept = slip(out, "case");
        near(60 + 10 + 4 + 2 * 4, kept, "width");
        near(90 + 10 / 2.0 + 4, kept, "height");
        // A rectangle without what is outside of two quarters of a circle, cm²
        near((82 * 99 - (2 - Math.PI / 2) * 20.5 * 20.5) / 100, kept, "front");
        near(82 - 1, slip(out, "strap"), "width"); // a calculator of the program, linked to it
        near(40 * 1.03, slip(out, "short"), "cord");
    }

    @Test
    void itsNoticesAreToldInItsWords() throws Exception {
        String told = make(scratch.resolve("out")).told();
        for (String sentence : List.of(
                "Caution (line 2, column 3, slip “cords”): Melted wax burns.",
                "slip “tight”, question “end.wound.core”): A core of 1\u00a0mm is thinner than its cord of 2\u00a0mm.",
                "slip “short”, question “waste”): Only 0.03 is left for waste.",
                "slip “case”): A knife cuts what is in its way.")) {
            assertTrue(told.contains(sentence), sentence + " in " + told);
        }
        assertFalse(told.contains("broken"), told);
    }

    @Test
    void itsPapersAndPatternsAreMade() throws Exception {
        Path out = scratch.resolve("out");
        make(out);
        String reel = PrintedText.of(out.resolve("reel.pdf"));
        assertTrue(reel.contains("Cords of the kit: 3821"), reel);
        assertTrue(reel.contains("2066"), "three jars, each 688.5 mm, up to whole millimetres: " + reel);
        String card = PrintedText.of(out.resolve("job-card.pdf"));
        assertTrue(card.contains("L = S · (1 + w)"), card);
        assertTrue(card.contains("Sew the pocket for the cloth on the inside of the back"), card);
        String patterns = Files.readString(out.resolve("patterns-case.svg"));
        for (String part : List.of("Back", "Front", "Pocket", "Tab")) {
            assertTrue(patterns.contains(part), part);
        }
        JsonObject item = (JsonObject) slip(out, "case").get("answers").orElseThrow();
        assertTrue(item.toString().contains("tab.turn"), "the fold of the tab can be linked to");
    }

    @Test
    void itsTableAndItsDeclarationAreExplained() throws Exception {
        String columns =
                program.run("workshop", "--columns", "--language", "en").answer();
        assertTrue(columns.contains("kept-cords") && columns.contains("Of what it is made of."), columns);
        Ended explained = program.run("explain", "kept-case", "--language", "en");
        assertEquals("", explained.told());
        assertTrue(
                explained.answer().contains("A case of two panels with a pocket for the cloth."), explained.answer());
    }

    private Ended make(Path out) throws Exception {
        Path project = Files.writeString(scratch.resolve("kit.json"), PROJECT);
        Path workshop = Files.writeString(scratch.resolve("workshop.json"), WORKSHOP);
        return program.run(
                "make",
                project.toString(),
                "--workshop",
                workshop.toString(),
                "--into",
                out.toString(),
                "--language",
                "en");
    }

    private static JsonObject slip(Path out, String id) throws Exception {
        JsonObject card = StrangeRun.read(Files.readString(out.resolve("job-card.json")));
        return ((JsonArray) card.get("slips").orElseThrow())
                .items().stream()
                        .map(JsonObject.class::cast)
                        .filter(slip -> slip.text("id").orElse("").equals(id))
                        .findFirst()
                        .orElseThrow();
    }

    private static String text(JsonObject slip, String answer) {
        JsonObject answers = (JsonObject) slip.get("answers").orElseThrow();
        JsonObject given = (JsonObject) answers.get(answer).orElseThrow();
        return StrangeRun.scalar(given.get("value").orElseThrow());
    }

    private static void near(double expected, JsonObject slip, String answer) {
        assertEquals(expected, Double.parseDouble(text(slip, answer)), 1e-9 * expected, answer);
    }
}
