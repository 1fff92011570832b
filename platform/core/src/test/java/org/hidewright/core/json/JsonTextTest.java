package org.hidewright.core.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.JsonScalar;
import org.hidewright.core.json.JsonNode.Member;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class JsonTextTest {
    /** Enough for texts longer than any buffer of the parser, in every kind of nesting. */
    private static final int SEEDS = 400;

    private static final ObjectMapper ANOTHER_READER = new ObjectMapper();

    @Test
    void everyPieceIsFoundWhereItStands() throws Exception {
        for (int seed = 0; seed < SEEDS; seed++) {
            String written = (seed % 5 == 0 ? "\uFEFF" : "") + RandomJson.of(seed);
            JsonText text = JsonText.read(written);
            assertEquals(written, text.text());
            sameTree(ANOTHER_READER.readTree(written.replace("\uFEFF", "")), text.root(), text, "seed " + seed);
            for (JsonNode node : all(text.root())) {
                assertEquals(placeOf(written, node.start()), node.place(), "seed " + seed + " at " + node.start());
            }
        }
    }

    /** Each piece, cut out of the text, reads the same as what another reader has at that path. */
    private static void sameTree(
            com.fasterxml.jackson.databind.JsonNode expected, JsonNode node, JsonText text, String seed)
            throws Exception {
        String piece = text.textOf(node);
        assertEquals(piece.strip(), piece, seed);
        assertEquals(expected, ANOTHER_READER.readTree(piece), seed);
        if (node instanceof JsonArray array) {
            assertEquals(expected.size(), array.items().size(), seed);
            for (int i = 0; i < array.items().size(); i++) {
                sameTree(expected.get(i), array.items().get(i), text, seed);
            }
        } else if (node instanceof JsonObject object) {
            Iterator<String> keys = expected.fieldNames();
            for (Map.Entry<String, Member> member : object.members().entrySet()) {
                assertEquals(keys.next(), member.getKey(), seed);
                assertEquals(
                        '"',
                        text.text()
                                .charAt(offsetOf(text.text(), member.getValue().place())),
                        seed);
                sameTree(expected.get(member.getKey()), member.getValue().value(), text, seed);
            }
            assertFalse(keys.hasNext(), seed);
        }
    }

    @Test
    void replacingOneValueLeavesEveryOtherCharacter() throws Exception {
        for (int seed = 0; seed < SEEDS; seed++) {
            String written = (seed % 7 == 0 ? "\uFEFF" : "") + RandomJson.of(seed);
            JsonText text = JsonText.read(written);
            List<JsonNode> nodes = all(text.root());
            JsonNode node = nodes.get(seed % nodes.size());
            JsonText changed = text.with(node, "\"3/32 in\"");
            assertEquals(
                    written.substring(0, node.start()) + "\"3/32 in\"" + written.substring(node.end()), changed.text());
            assertEquals(
                    written,
                    changed.with(nodeAt(changed, node.start()), text.textOf(node))
                            .text(),
                    "seed " + seed);
        }
    }

    @Test
    void aMemberIsAddedBehindTheLastAndNothingElseChanges() throws Exception {
        for (int seed = 0; seed < SEEDS; seed++) {
            String written = RandomJson.of(seed);
            JsonText text = JsonText.read(written);
            JsonObject object = (JsonObject) all(text.root()).stream()
                    .filter(JsonObject.class::isInstance)
                    .reduce((first, second) -> second)
                    .orElseThrow();
            JsonText changed = text.withMember(object, "new key", "[1, 2]");
            JsonObject after = (JsonObject) nodeAt(changed, object.start());
            assertEquals(object.members().size() + 1, after.members().size());
            assertEquals("[1, 2]", changed.textOf(after.get("new key").orElseThrow()));
            String added = (object.members().isEmpty() ? "" : ", ") + "\"new key\": [1, 2]";
            int at = changed.text().indexOf(added);
            assertEquals(
                    written, changed.text().substring(0, at) + changed.text().substring(at + added.length()));
        }
    }

    @Test
    void placesCountLinesOfEverySystemAndColumnsFromOne() throws Exception {
        JsonObject root = (JsonObject) JsonText.read("{\r\n\t\"a\": 1,\n \"b\":\t[\r\n\"c\\u0041\uD83E\uDDF5\", 2]}")
                .root();
        assertEquals(new Place(1, 1), root.place());
        assertEquals(new Place(2, 2), root.members().get("a").place());
        assertEquals(new Place(2, 7), root.get("a").orElseThrow().place());
        assertEquals(new Place(3, 2), root.members().get("b").place());
        JsonArray b = (JsonArray) root.get("b").orElseThrow();
        assertEquals(new Place(3, 7), b.place());
        assertEquals(new Place(4, 1), b.items().get(0).place());
        assertEquals("4:14", b.items().get(1).place().toString()); // the reel of thread is two characters of Java
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1.50",
                "-0",
                "1E+05",
                "123456789012345678901234567890",
                "0.1000000000000000055511151231257827",
                "1e400"
            })
    void numbersAreKeptAsWritten(String number) throws Exception {
        JsonScalar scalar = (JsonScalar) JsonText.read(number).root();
        assertEquals(number, scalar.text());
        assertEquals(JsonScalar.Type.NUMBER, scalar.type());
        assertEquals(number.length(), scalar.end());
        assertEquals(
                " [" + number + " , " + number + "] ",
                JsonText.read(" [" + number + " , " + number + "] ").text());
    }

    @Test
    void everyScalarKnowsWhatItIs() throws Exception {
        JsonArray items =
                (JsonArray) JsonText.read("[\"true\", true, false, null, 0]").root();
        assertEquals(
                List.of("TEXT true", "TRUTH true", "TRUTH false", "NULL null", "NUMBER 0"),
                items.items().stream()
                        .map(item -> ((JsonScalar) item).type() + " " + ((JsonScalar) item).text())
                        .toList());
    }

    @Test
    void textIsTextWithoutQuotesAndEscapes() throws Exception {
        JsonObject root = (JsonObject) JsonText.read("{\"t\\u0065xt\": \"a\\n\\\"b\\\\ \\uD83E\\uDDF5\", \"n\": 3}")
                .root();
        assertEquals("a\n\"b\\ \uD83E\uDDF5", root.text("text").orElseThrow());
        assertTrue(root.text("n").isEmpty());
        assertTrue(root.text("absent").isEmpty());
    }

    @Test
    void quotedTextReadsBackAsItWas() throws Exception {
        for (String text :
                List.of("", "2-3 oz", "\"quoted\" \\ back", "line\nfeed\ttab\u0001", "é\uD83E\uDDF5", "½ in")) {
            assertEquals(
                    text, ((JsonScalar) JsonText.read(JsonText.quoted(text)).root()).text());
        }
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                "{`a`: 1, `a`: 2}|1|10",
                "{`a`: 1} x|1|10",
                "{`a`: 1} 2|1|10",
                "{`a`: 1,~ `b` 2}|2|6",
                "[1, 2|1|7",
                "{`a`: 1,}|1|9",
                "// no comments~{}|1|2",
                "{} /* none */|1|5",
                "{'a': 1}|1|3",
                "[01]|1|3",
                "[NaN]|1|4",
                "`open|1|6",
            })
    void whatIsNotJsonIsToldWithItsPlace(String written, int line, int column) {
        String text = written.replace('~', '\n').replace('`', '"');
        JsonTrouble trouble = assertThrows(JsonTrouble.class, () -> JsonText.read(text));
        assertEquals(line, trouble.place().line(), trouble.toString());
        assertTrue(Math.abs(column - trouble.place().column()) <= 3, trouble.place() + " " + trouble.getMessage());
        assertFalse(trouble.getMessage().isBlank());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " \n ", "\uFEFF", "\uFEFF \r\n"})
    void anEmptyTextIsTold(String text) {
        assertEquals(
                new Place(1, 1),
                assertThrows(JsonTrouble.class, () -> JsonText.read(text)).place());
    }

    @Test
    void nestingTooDeepIsToldAndDoesNotBreakTheStack() {
        for (String text :
                List.of("[".repeat(1_000_000), "{\"a\":".repeat(500_000), "[".repeat(2000) + "]".repeat(2000))) {
            assertThrows(JsonTrouble.class, () -> JsonText.read(text));
        }
    }

    @Test
    void deepButSensibleNestingIsRead() throws Exception {
        String text = "[".repeat(900) + "1" + "]".repeat(900);
        assertEquals(text, JsonText.read(text).text());
    }

    @Test
    void aChangeThatIsNoJsonIsRefused() throws Exception {
        JsonText text = JsonText.read("{\"a\": 1}");
        JsonObject root = (JsonObject) text.root();
        assertThrows(JsonTrouble.class, () -> text.with(root.get("a").orElseThrow(), "2-3 oz"));
        assertThrows(JsonTrouble.class, () -> text.withMember(root, "a", "2"));
    }

    @Test
    void aChangeCannotSmuggleInASecondValue() throws Exception {
        JsonText text = JsonText.read("{\"a\": 1}");
        JsonObject root = (JsonObject) text.root();
        assertThrows(JsonTrouble.class, () -> text.with(root.get("a").orElseThrow(), "2, \"b\": 3"));
        assertThrows(JsonTrouble.class, () -> text.withMember(root, "b", "2, \"c\": 3"));
        assertThrows(JsonTrouble.class, () -> text.with(root.get("a").orElseThrow(), ""));
    }

    private static JsonNode nodeAt(JsonText text, int start) {
        return all(text.root()).stream()
                .filter(node -> node.start() == start)
                .findFirst()
                .orElseThrow();
    }

    private static List<JsonNode> all(JsonNode node) {
        List<JsonNode> nodes = new ArrayList<>(List.of(node));
        if (node instanceof JsonArray array) {
            array.items().forEach(item -> nodes.addAll(all(item)));
        } else if (node instanceof JsonObject object) {
            object.members().values().forEach(member -> nodes.addAll(all(member.value())));
        }
        return nodes;
    }

    /** Line and column counted the plain way; a byte order mark is not counted. */
    private static Place placeOf(String text, int offset) {
        String before = text.substring(0, offset).replace("\uFEFF", "").replace("\r\n", "\n");
        int line = (int) before.chars().filter(c -> c == '\n').count() + 1;
        return new Place(line, before.length() - (before.lastIndexOf('\n') + 1) + 1);
    }

    private static int offsetOf(String text, Place place) {
        int offset = text.startsWith("\uFEFF") ? 1 : 0;
        for (int line = 1; line < place.line(); line++) {
            offset = text.indexOf('\n', offset) + 1;
        }
        return offset + place.column() - 1;
    }

    /** Every value of a text taken out, against the same value in the whole. */
    @Test
    void aValueAloneHasItsPlacesCountedFromItsBeginning() throws Exception {
        for (long seed = 0; seed < 200; seed++) {
            JsonText whole = JsonText.read((seed % 5 == 0 ? "\uFEFF" : "") + RandomJson.of(seed));
            each(whole.root(), node -> {
                JsonText alone = whole.alone(node, 0);
                assertEquals(whole.textOf(node), alone.text());
                assertEquals(read(alone.text()), alone.root());
                Place end = Place.START.behind(alone.text());
                assertEquals(node.place(), alone.root().place().within(node.place()));
                String through =
                        whole.text().substring(JsonText.markOf(whole.text()).length(), node.end());
                assertEquals(Place.START.behind(through), end.within(node.place()));
                assertEquals(end, end.within(node.place()).from(node.place()));
            });
        }
    }

    private static JsonNode read(String text) {
        try {
            return JsonText.read(text).root();
        } catch (JsonTrouble e) {
            throw new AssertionError(text, e);
        }
    }

    private static void each(JsonNode node, Consumer<JsonNode> look) {
        look.accept(node);
        if (node instanceof JsonObject object) {
            object.members().values().forEach(member -> each(member.value(), look));
        } else if (node instanceof JsonArray array) {
            array.items().forEach(item -> each(item, look));
        }
    }
}
