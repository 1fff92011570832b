package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.distribution.BuiltProgram.Ended;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A hide of the workshop is cut from, what is left is put away, and the next job is laid round what was cut; an invented hide. */
class PutAwayIT {
    private static final String TAKEN = "\"hide\": {\"workshop\": \"hides\", \"row\": \"side\"}";

    @TempDir
    Path scratch;

    private BuiltProgram program;
    private Path workshop;

    @BeforeEach
    void files() throws Exception {
        program = BuiltProgram.inPlace(scratch);
        workshop = Files.writeString(scratch.resolve("workshop.json"), """
                {"workshop": 1, "tables": {"hides": [
                  {"id": "side", "name": "Side", "outline": "0,0 400,0 400,300 0,300", "rim": "5 mm", "price": "40 EUR"}]}}
                """);
    }

    /** Two pieces of 100 by 60 that reach up to 70: above lie 400 by 230 of 400 by 300, so 30.67 of 40 EUR are left. */
    private Path project(String name, String layout) throws Exception {
        return Files.writeString(scratch.resolve(name), """
                {"hidewright": 1, "slips": [
                  {"id": "tag", "calculator": "parts", "questions": {"parts": [
                    {"id": "tag", "shape": {"rectangle": {"width": "100 mm", "height": "60 mm"}}, "thickness": "2 mm"}]}},
                  {"id": "cut", "calculator": "cutting-layout", "questions": {
                    "item": {"from": "tag", "answer": "item"}, "pieces": 2,
                    "sheets": [{"id": "first", %s}]%s}}]}
                """.formatted(TAKEN, layout));
    }

    private static final String LAID = ", \"layout\": {\"pieces\": ["
            + "{\"id\": \"tag-1\", \"sheet\": \"first\", \"x\": \"60 mm\", \"y\": \"40 mm\", \"turned\": \"0 deg\"},"
            + "{\"id\": \"tag-2\", \"sheet\": \"first\", \"x\": \"200 mm\", \"y\": \"40 mm\", \"turned\": \"0 deg\"}]}";

    private Ended run(String... arguments) throws Exception {
        return program.run(arguments);
    }

    private String cell(String column) throws Exception {
        JsonObject root = StrangeRun.read(Files.readString(workshop));
        JsonObject tables = (JsonObject) root.get("tables").orElseThrow();
        JsonObject row = (JsonObject)
                ((JsonArray) tables.get("hides").orElseThrow()).items().get(0);
        return row.text(column).orElseThrow();
    }

    @Test
    void theNextJobIsLaidRoundWhatWasCut() throws Exception {
        Path first = project("first.json", LAID);
        Ended away = run("put-away", first.toString(), "--workshop", workshop.toString(), "--language", "en");
        assertEquals(0, away.code(), away.told());
        assertTrue(away.answer().contains("hides[side]  is what is left of it now"), away.answer());
        assertEquals("hole 10,10 110,10 110,70 10,70; hole 150,10 250,10 250,70 150,70", cell("flaws"));
        assertEquals("30.67 EUR", cell("price"));
        assertEquals("0,0 400,0 400,300 0,300", cell("outline"));

        Ended again = run(
                "make",
                first.toString(),
                "--into",
                scratch.resolve("out").toString(),
                "--workshop",
                workshop.toString());
        assertEquals(0, again.code(), "worked as it was cut, with its own copies: " + again.told());

        Path same = project("same.json", LAID);
        Ended refused = run(
                "make",
                same.toString(),
                "--into",
                scratch.resolve("no").toString(),
                "--workshop",
                workshop.toString(),
                "--language",
                "en");
        assertTrue(refused.told().contains("lies over a hole of first"), refused.told());

        Path second = project("second.json", LAID.replace("40 mm", "140 mm"));
        Path before = Files.writeString(
                scratch.resolve("before.json"),
                Files.readString(workshop)
                        .replaceAll(", \"flaws\": \"[^\"]*\"", "")
                        .replace("30.67 EUR", "40 EUR"));
        assertEquals(
                0,
                run("keep", second.toString(), "--workshop", before.toString()).code());
        String workshopNow = Files.readString(workshop);
        Ended other = run("put-away", second.toString(), "--workshop", workshop.toString(), "--language", "en");
        assertEquals(1, other.code(), "the holes of the first would be forgotten: " + other.answer());
        assertTrue(other.answer().contains("left alone: it is not as this project took it"), other.answer());
        assertEquals(workshopNow, Files.readString(workshop));

        Path next = project("next.json", "");
        Ended searched = run("search", next.toString(), "--workshop", workshop.toString(), "--tries", "20000");
        assertEquals(0, searched.code(), searched.told());
        assertTrue(Files.readString(next).contains("\"tag-2\""), "both have a place");
        run("put-away", next.toString(), "--workshop", workshop.toString());
        assertEquals(4, cell("flaws").split("hole", -1).length - 1);
        double price = Double.parseDouble(cell("price").replace(" EUR", ""));
        assertTrue(price > 0 && price < 30.67, "less is left: " + price);
        assertFalse(cell("flaws").contains("region"));
    }
}
