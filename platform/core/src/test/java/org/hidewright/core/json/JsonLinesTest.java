package org.hidewright.core.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JsonLinesTest {
    private static final int SEEDS = 400;
    private static final ObjectMapper ANOTHER_READER = new ObjectMapper();

    private static final String PUT = "{\n  \"tables\": {\n    \"t\": [\n      {\"id\": \"]}\", \"\\\"[\": 1},\r\n"
            + "\t\t{\"id\": \"b\",\r\n\t\t \"x\": [1, {\r\"y\": 2}]}\n    ]\n  }\n}";

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                "{~  `a`: 1,~  `b`: 2~}~ | {~  `a`: 1,~  `b`: 2,~  `w`: {~    `u`: [~      {`v`: 1}~    ]~  }~}~",
                "{~>`a`: 1~}| {~>`a`: 1,~>`w`: {~>>`u`: [~>>>{`v`: 1}~>>]~>}~}",
                "{~`a`: 1~}| {~`a`: 1,~`w`: {~`u`: [~{`v`: 1}~]~}~}",
                "{`a`: 1,~   `b`: 2}| {`a`: 1,~   `b`: 2,~   `w`: {~      `u`: [~         {`v`: 1}~      ]~   }~}",
                "{`a`: [~1~]}| {`a`: [~1~],~  `w`: {~    `u`: [~      {`v`: 1}~    ]~  }~}",
                "{`a`:1}~| {`a`:1, `w`: { `u`: [ {`v`: 1} ] }}~",
                "{}| { `w`: { `u`: [ {`v`: 1} ] }}",
                "{~}| {~  `w`: {~    `u`: [~      {`v`: 1}~    ]~  }~}",
                "{~  `w`: 0,~  `b`: 2}| {~  `w`: {~    `u`: [~      {`v`: 1}~    ]~  },~  `b`: 2}",
                "{`w`: 0}| {`w`: { `u`: [ {`v`: 1} ] }}",
            })
    void whatIsPutInIsIndentedAndEndedLikeTheRest(String before, String after) throws Exception {
        for (String end : List.of("\n", "\r\n", "\r")) {
            for (String mark : List.of("", "\uFEFF")) {
                String written = mark + spelt(before, end);
                assertEquals(
                        mark + spelt(after, end),
                        JsonText.read(written)
                                .withLines("w", "{\n  \"u\": [\n    {\"v\": 1}\n  ]\n}")
                                .text());
            }
        }
    }

    private static String spelt(String text, String end) {
        return text.replace('`', '"').replace('>', '\t').replace("~", end);
    }

    @Test
    void everythingOutsideWhatIsPutInIsAsItWas() throws Exception {
        for (int seed = 0; seed < SEEDS; seed++) {
            String written = (seed % 5 == 0 ? "\uFEFF" : "") + RandomJson.of(seed);
            JsonText text = JsonText.read(written);
            JsonObject root = (JsonObject) text.root();
            String key = root.members().isEmpty() || seed % 2 == 0
                    ? "new key"
                    : List.copyOf(root.members().keySet())
                            .get(seed % root.members().size());
            JsonText changed = text.withLines(key, PUT);
            JsonNode put = ((JsonObject) changed.root()).get(key).orElseThrow();
            assertEquals(ANOTHER_READER.readTree(PUT), ANOTHER_READER.readTree(changed.textOf(put)), "seed " + seed);
            JsonNode replaced = root.get(key).orElse(null);
            if (replaced == null) {
                addedWhole(written, changed.text(), changed.textOf(put), "seed " + seed);
            } else {
                assertEquals(
                        written.substring(0, replaced.start())
                                + changed.textOf(put)
                                + written.substring(replaced.end()),
                        changed.text(),
                        "seed " + seed);
            }
            assertEquals(changed.text(), changed.withLines(key, PUT).text(), "the same again changes nothing");
            assertEquals(
                    changed.text(), changed.withLines(key, changed.textOf(put)).text(), "seed " + seed);
        }
    }

    /** One piece was put in, and nothing is in it but the member and blanks around it. */
    private static void addedWhole(String before, String after, String value, String seed) {
        int at = 0;
        while (before.charAt(at) == after.charAt(at)) {
            at++;
        }
        int more = after.length() - before.length();
        String piece = after.substring(at, at + more);
        assertEquals(before, after.substring(0, at) + after.substring(at + more), seed);
        assertTrue(piece.contains("\"new key\": " + value), seed);
        assertTrue(piece.replace("\"new key\": " + value, "").matches("[,\\s]*"), seed);
    }

    @Test
    void whatIsNotOneValueIsRefused() throws Exception {
        JsonText text = JsonText.read("{\n  \"a\": 1\n}");
        assertThrows(JsonTrouble.class, () -> text.withLines("b", "2, \"c\": 3"));
        assertThrows(JsonTrouble.class, () -> text.withLines("a", "2, \"c\": 3"));
        assertThrows(JsonTrouble.class, () -> text.withLines("a", ""));
    }
}
