package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is read of a drawing is what the bundle of layouts takes: a hide drawn elsewhere is put in, and pieces are laid on it. */
class OutlinesIT {
    /** A rectangle of 700 by 450 mm whose upper corners are rounded by 50 mm: 315,000 - (4 - π) / 2 · 2,500 mm². */
    private static final String SVG = """
            <svg xmlns="http://www.w3.org/2000/svg" width="800mm" height="500mm" viewBox="0 0 800 500">
              <path id="side" d="M50 475 V75 A50 50 0 0 1 100 25 H700 A50 50 0 0 1 750 75 V475 Z"/>
              <circle id="hole-1" cx="300" cy="250" r="15"/>
              <ellipse class="weak" cx="150" cy="120" rx="40" ry="15" transform="rotate(30 150 120)"/>
              <polygon id="marked-brand" points="500,100 560,100 560,150 500,150"/>
              <rect id="region-belly" x="50" y="415" width="700" height="60"/>
            </svg>
            """;

    /** 700 by 450 less two rounded corners of 50, and less a hole of 30 across, which is no leather. */
    private static final double AREA_DM2 = (315_000 - (4 - Math.PI) / 2 * 2500 - Math.PI * 15 * 15) / 10_000;

    private static final String DXF = dxf(
            "0 LWPOLYLINE 8 side 70 1 10 0 20 0 10 700 20 0 10 700 20 400 42 0.41421356 10 650 20 450"
                    + " 10 50 20 450 42 0.41421356 10 0 20 400",
            "0 CIRCLE 8 HOLE 10 250 20 225 40 15",
            "0 ELLIPSE 8 WEAK 10 100 20 355 11 40 21 0 40 0.375 41 0 42 6.283185307179586",
            "0 LINE 8 MARKED 10 450 20 325 11 510 21 325",
            "0 LINE 8 MARKED 10 510 20 375 11 510 21 325",
            "0 LINE 8 MARKED 10 510 20 375 11 450 21 325",
            "0 LWPOLYLINE 8 REGION-BELLY 70 1 10 0 20 0 10 700 20 0 10 700 20 60 10 0 20 60");

    private final ObjectMapper json = new ObjectMapper();

    @TempDir
    Path scratch;

    private static String dxf(String... entities) {
        return String.join(
                        " ",
                        "0 SECTION 2 HEADER 9 $INSUNITS 70 4 0 ENDSEC 0 SECTION 2 ENTITIES",
                        String.join(" ", entities),
                        "0 ENDSEC 0 EOF ")
                .replace(' ', '\n');
    }

    private JsonNode row(BuiltProgram program, String name, String drawing) throws Exception {
        Path file = Files.writeString(scratch.resolve(name), drawing);
        BuiltProgram.Ended ended = program.run("outlines", file.toString(), "--json");
        assertEquals(0, ended.code(), ended.told());
        assertEquals("", ended.told());
        return json.readTree(ended.answer());
    }

    @Test
    void aHideFromADrawingIsLaidOut() throws Exception {
        BuiltProgram program = BuiltProgram.inPlace(scratch);
        for (JsonNode row : new JsonNode[] {row(program, "left side.svg", SVG), row(program, "left side.dxf", DXF)}) {
            assertEquals("left-side", row.get("id").asText());
            StringBuilder kinds = new StringBuilder();
            row.get("hide")
                    .get("flaws")
                    .forEach(flaw -> kinds.append(flaw.asText().replaceAll("(?s) -?\\d.*", ""))
                            .append("; "));
            assertEquals("hole; weak; marked; region belly; ", kinds.toString());
            Path project = project(row);
            BuiltProgram.Ended searched =
                    program.run("search", project.toString(), "layout", "--tries", "3000", "--seed", "3");
            assertEquals(0, searched.code(), searched.told());
            assertFalse(searched.told().contains("region"), searched.told());
            String answer = searched.answer().replace('\u00a0', ' ');
            assertTrue(answer.matches("(?s).*Laid +12\n.*"), answer);
            assertTrue(
                    answer.contains(String.format(Locale.ROOT, "Leather taken          %.1f dm²", AREA_DM2)), answer);
        }
    }

    /**
     * An ellipse of 1,200 by 900 mm and a round hole in it: some hundred corners each, as a hide that somebody has drawn has. Its rest has the
     * same corners and is put away; what is left is the ellipse without the hole, and without twelve pieces of 8.0 dm² together, as the
     * sample says.
     */
    @Test
    void aHideOfManyCornersIsLaidOutAndItsRestPutAway() throws Exception {
        BuiltProgram program = BuiltProgram.inPlace(scratch);
        JsonNode row = row(program, "round side.svg", """
                <svg xmlns="http://www.w3.org/2000/svg" width="1300mm" height="1000mm" viewBox="0 0 1300 1000">
                  <ellipse cx="650" cy="500" rx="600" ry="450"/>
                  <circle id="hole" cx="650" cy="500" r="100"/>
                </svg>
                """);
        String outline = row.get("hide").get("outline").asText();
        assertTrue(outline.length() > 4000, "longer than a page shows: " + outline.length());
        Path project = project(row);
        BuiltProgram.Ended searched =
                program.run("search", project.toString(), "layout", "--tries", "3000", "--seed", "3");
        assertEquals(0, searched.code(), searched.told());
        String answer = searched.answer().replace('\u00a0', ' ');
        assertTrue(answer.matches("(?s).*Laid +12\n.*"), answer);
        double leather = Math.PI * (600 * 450 - 100 * 100) / 10_000;
        assertTrue(answer.contains(String.format(Locale.ROOT, "Leather taken          %.1f dm²", leather)), answer);
        Path workshop = Files.writeString(scratch.resolve("workshop.json"), "{\"workshop\": 1}");
        BuiltProgram.Ended away = program.run("put-away", project.toString(), "--workshop", workshop.toString());
        assertEquals(0, away.code(), away.told());
        JsonNode rest =
                json.readTree(workshop.toFile()).get("tables").get("hides").get(0);
        assertEquals(outline, rest.get("outline").asText());
        assertEquals(13, rest.get("flaws").asText().split("hole", -1).length - 1, "the hole and those of the pieces");
    }

    /** A sample project that lays out pieces, on this hide in place of its own; nothing is laid yet. */
    private Path project(JsonNode row) throws Exception {
        ObjectNode project = (ObjectNode) json.readTree(
                Path.of("../../samples/projects/lens-pouches-laid-out.json").toFile());
        ObjectNode slip = (ObjectNode) project.get("slips").get(1);
        slip.remove("searched");
        ObjectNode questions = (ObjectNode) slip.get("questions");
        questions.remove("layout");
        questions.putArray("sheets").add(row);
        Path file = scratch.resolve("project.json");
        json.writeValue(file.toFile(), project);
        return file;
    }

    @Test
    void aHideFromADrawingIsARowOfTheWorkshop() throws Exception {
        BuiltProgram program = BuiltProgram.inPlace(scratch);
        ObjectNode hide = ((ObjectNode) row(program, "side.svg", SVG).get("hide")).put("name", "Left side");
        ObjectNode workshop = json.createObjectNode().put("workshop", 1);
        ArrayNode rows = workshop.putObject("tables").putArray("hides");
        rows.add(hide.put("id", "left-side"));
        Path file = scratch.resolve("workshop.json");
        json.writeValue(file.toFile(), workshop);
        BuiltProgram.Ended ended = program.run("workshop", file.toString());
        assertEquals(0, ended.code(), ended.told());
        assertEquals("", ended.told());
        assertTrue(ended.answer().contains("region belly"), ended.answer());
    }
}
