package org.hidewright.core.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.JsonScalar;
import org.hidewright.core.json.JsonNode.Member;

/**
 * JSON text and the tree read from it.
 *
 * <p>A change replaces the characters of one value and leaves every other character as it was: what a maker or another
 * program wrote there, understood or not, comes back byte for byte.
 */
public final class JsonText {
    /** By how many brackets stand around the text in the file: what is read alone must be readable there too. */
    private static final Map<Integer, JsonFactory> FACTORIES = new ConcurrentHashMap<>();

    private final String text;
    private final JsonNode root;
    private final int around;

    private JsonText(String text, JsonNode root, int around) {
        this.text = text;
        this.root = root;
        this.around = around;
    }

    private static JsonFactory factory(int around) {
        return JsonFactory.builder()
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .streamReadConstraints(StreamReadConstraints.builder()
                        .maxNestingDepth(StreamReadConstraints.DEFAULT_MAX_DEPTH - around)
                        .build())
                .build();
    }

    /**
     * Reads a text.
     *
     * @throws JsonTrouble if it is not JSON, has a key twice, or goes on after its end
     */
    public static JsonText read(String text) throws JsonTrouble {
        return read(text, 0);
    }

    private static JsonText read(String text, int around) throws JsonTrouble {
        int skipped = markOf(text).length();
        JsonFactory factory = FACTORIES.computeIfAbsent(around, JsonText::factory);
        try (JsonParser parser = factory.createParser(new StringReader(text.substring(skipped)))) {
            return new JsonText(text, root(text, parser, skipped), around);
        } catch (IOException e) {
            throw new UncheckedIOException("reading from memory cannot fail", e);
        }
    }

    /** The byte order mark at the beginning of a text, if there is one; it counts as no column. */
    public static String markOf(String text) {
        return text.startsWith("\uFEFF") ? "\uFEFF" : "";
    }

    private static JsonNode root(String text, JsonParser parser, int skipped) throws IOException, JsonTrouble {
        Reader reader = new Reader(parser, skipped);
        try {
            if (parser.nextToken() == null) {
                throw new JsonTrouble(new Place(1, 1), JsonTrouble.Kind.EMPTY, Phrase.of("json-empty"), null);
            }
            JsonNode root = reader.node();
            if (parser.nextToken() != null) {
                throw new JsonTrouble(
                        placeOf(parser.currentTokenLocation()),
                        JsonTrouble.Kind.MORE_AFTER_END,
                        Phrase.of("json-more"),
                        null);
            }
            return root;
        } catch (JsonProcessingException e) {
            JsonLocation location = e.getLocation() == null ? parser.currentLocation() : e.getLocation();
            int offset = (int) location.getCharOffset() + skipped;
            throw new JsonTrouble(
                    placeOf(location), JsonTrouble.Kind.SYNTAX, new JsonFault(e, parser, text, offset).words(), e);
        }
    }

    private static Place placeOf(JsonLocation location) {
        return new Place(Math.max(1, location.getLineNr()), Math.max(1, location.getColumnNr()));
    }

    public String text() {
        return text;
    }

    public JsonNode root() {
        return root;
    }

    /** The characters a node was read from. */
    public String textOf(JsonNode node) {
        return text.substring(node.start(), node.end());
    }

    /**
     * One value as a text of its own, with places counted from where it begins.
     *
     * @param within how many brackets stand around it
     */
    public JsonText alone(JsonNode node, int within) {
        return new JsonText(textOf(node), alone(node, node.start(), node.place()), around + within);
    }

    private static JsonNode alone(JsonNode node, int offset, Place start) {
        int from = node.start() - offset;
        int to = node.end() - offset;
        Place place = node.place().from(start);
        if (node instanceof JsonObject object) {
            Map<String, Member> members = new LinkedHashMap<>();
            for (Map.Entry<String, Member> member : object.members().entrySet()) {
                Member was = member.getValue();
                members.put(member.getKey(), new Member(was.place().from(start), alone(was.value(), offset, start)));
            }
            return new JsonObject(from, to, place, members);
        } else if (node instanceof JsonArray array) {
            List<JsonNode> items = new ArrayList<>();
            for (JsonNode item : array.items()) { // a lambda would take more of the stack, and brackets may be deep
                items.add(alone(item, offset, start));
            }
            return new JsonArray(from, to, place, items);
        }
        JsonScalar scalar = (JsonScalar) node;
        return new JsonScalar(from, to, place, scalar.type(), scalar.text());
    }

    /**
     * The text with one value replaced.
     *
     * @param node a node of this text
     * @param json what to put in its place
     * @throws JsonTrouble if that is not one value
     */
    public JsonText with(JsonNode node, String json) throws JsonTrouble {
        read(json);
        return read(text.substring(0, node.start()) + json + text.substring(node.end()), around);
    }

    /**
     * The text with a member added at the end of an object.
     *
     * @throws JsonTrouble if that is not one value, or the key is there already
     */
    public JsonText withMember(JsonObject object, String key, String json) throws JsonTrouble {
        read(json);
        int last = endOfMembers(object);
        String member = (object.members().isEmpty() ? "" : ", ") + quoted(key) + ": " + json;
        return read(text.substring(0, last) + member + text.substring(last), around);
    }

    /**
     * The text with a member added to an object, right behind another.
     *
     * @param before key of the other
     * @throws JsonTrouble if that is not one value, or the key is there already
     */
    public JsonText withMemberBehind(JsonObject object, String before, String key, String json) throws JsonTrouble {
        read(json);
        int at = object.get(before).orElseThrow().end();
        return read(text.substring(0, at) + ", " + quoted(key) + ": " + json + text.substring(at), around);
    }

    /**
     * The text with a member of its outermost object replaced, or added behind the others on lines of its own; the lines put
     * in are indented as those of the text are.
     *
     * @throws JsonTrouble if that is not one value
     */
    public JsonText withLines(String key, String json) throws JsonTrouble {
        read(json);
        JsonObject object = (JsonObject) root;
        JsonLines lines = JsonLines.of(text, object);
        String value = lines.indented(json, 1);
        JsonNode before = object.get(key).orElse(null);
        if (before != null) {
            return with(before, value);
        }
        int last = endOfMembers(object);
        String member = (object.members().isEmpty() ? "" : ",") + lines.end() + lines.indent() + quoted(key) + ": "
                + value + lines.before(text.substring(last, object.end()));
        return read(text.substring(0, last) + member + text.substring(last), around);
    }

    /** JSON with its lines indented and ended as those of this text are, for what so many brackets stand around. */
    public String indented(String json, int around) {
        return JsonLines.of(text, (JsonObject) root).indented(json, around);
    }

    /**
     * The text without one member of an object.
     *
     * @throws IllegalArgumentException if there is no such member
     */
    public JsonText without(JsonObject object, String key) throws JsonTrouble {
        List<JsonNode> values =
                object.members().values().stream().map(Member::value).toList();
        int at = List.copyOf(object.members().keySet()).indexOf(key);
        if (at < 0) {
            throw new IllegalArgumentException("no member " + key);
        }
        return without(object, values, at);
    }

    /**
     * The text with an item put into an array, apart from its neighbours as they are from each other.
     *
     * @param at how many items stand before it
     * @throws JsonTrouble if that is not one value
     */
    public JsonText withItem(JsonArray array, int at, String json) throws JsonTrouble {
        read(json);
        List<JsonNode> items = array.items();
        if (items.isEmpty()) {
            return with(array, "[" + json + "]");
        }
        int first = items.get(0).start();
        String apart = items.size() > 1
                ? text.substring(items.get(0).end(), items.get(1).start())
                : "," + text.substring(array.start() + 1, first);
        int place = at == 0 ? first : items.get(at - 1).end();
        return read(text.substring(0, place) + (at == 0 ? json + apart : apart + json) + text.substring(place), around);
    }

    /** The text without one item of an array. */
    public JsonText withoutItem(JsonArray array, int at) throws JsonTrouble {
        return without(array, array.items(), at);
    }

    /** With its comma, and with what parts it from the one before or behind. */
    private JsonText without(JsonNode holder, List<JsonNode> values, int at) throws JsonTrouble {
        int from = at > 0 ? values.get(at - 1).end() : holder.start() + 1;
        int to = values.get(at).end();
        if (at == 0 && values.size() > 1) {
            from += blanks(from);
            to = text.indexOf(',', to) + 1;
            to += blanks(to);
        }
        return read(text.substring(0, from) + text.substring(to), around);
    }

    private int blanks(int from) {
        int to = from;
        while (Character.isWhitespace(text.charAt(to))) {
            to++;
        }
        return to - from;
    }

    /** Where the last member of an object ends; of an empty one, behind its bracket. */
    private static int endOfMembers(JsonObject object) {
        return object.members().values().stream()
                .mapToInt(member -> member.value().end())
                .max()
                .orElse(object.start() + 1);
    }

    /** A text as JSON, with quotes and escapes. */
    public static String quoted(String text) {
        return '"' + new String(JsonStringEncoder.getInstance().quoteAsString(text)) + '"';
    }

    /** One pass over the tokens; the depth is bounded by the parser's own limit. */
    private static final class Reader {
        private final JsonParser parser;
        private final int skipped;

        Reader(JsonParser parser, int skipped) {
            this.parser = parser;
            this.skipped = skipped;
        }

        JsonNode node() throws IOException {
            JsonLocation location = parser.currentTokenLocation();
            int start = (int) location.getCharOffset() + skipped;
            Place place = placeOf(location);
            JsonToken token = parser.currentToken();
            if (token == JsonToken.START_OBJECT) {
                return object(start, place);
            }
            if (token == JsonToken.START_ARRAY) {
                List<JsonNode> items = new ArrayList<>();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    items.add(node());
                }
                return new JsonArray(start, end(), place, items);
            }
            String text = parser.getText();
            if (token == JsonToken.VALUE_STRING) {
                return new JsonScalar(start, end(), place, JsonScalar.Type.TEXT, text);
            }
            JsonScalar.Type type = token.isNumeric()
                    ? JsonScalar.Type.NUMBER
                    : token.isBoolean() ? JsonScalar.Type.TRUTH : JsonScalar.Type.NULL;
            return new JsonScalar(start, start + text.length(), place, type, text);
        }

        private JsonObject object(int start, Place place) throws IOException {
            Map<String, Member> members = new LinkedHashMap<>();
            while (parser.nextToken() != JsonToken.END_OBJECT) {
                Place keyPlace = placeOf(parser.currentTokenLocation());
                String key = parser.currentName();
                parser.nextToken();
                members.put(key, new Member(keyPlace, node()));
            }
            return new JsonObject(start, end(), place, members);
        }

        private int end() throws IOException {
            parser.finishToken();
            return (int) parser.currentLocation().getCharOffset() + skipped;
        }
    }
}
