package org.hidewright.core.json;

import java.util.List;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.core.Nearest;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.JsonScalar;

/** What can be wrong with any file of ours, whatever it holds. */
public final class JsonNotices {
    public static final NoticeKind NOT_JSON = NoticeKind.stop("not-json");
    public static final NoticeKind UNKNOWN_KEY = NoticeKind.check("unknown-key");
    public static final NoticeKind UNKNOWN_KEY_NEAREST = NoticeKind.check("unknown-key-nearest");
    public static final NoticeKind WRONG_SHAPE = NoticeKind.stop("wrong-shape");
    public static final NoticeKind ROW_ID_TWICE = NoticeKind.stop("row-id-twice");

    private JsonNotices() {}

    /** A key that means nothing where it stands, with the nearest one that does. */
    public static Notice unknownKey(String key, List<String> known) {
        return Nearest.to(key, known)
                .map(near -> JsonNotices.UNKNOWN_KEY_NEAREST.with(key, near))
                .orElseGet(() -> JsonNotices.UNKNOWN_KEY.with(key, String.join(", ", known)));
    }

    /**
     * Something else than what is read in its place.
     *
     * @param key where it stands
     * @param like what could stand there, as it would be written
     * @param found what stands there
     */
    public static Notice wrongShape(String key, String like, JsonNode found) {
        return JsonNotices.WRONG_SHAPE.with(key, like, shape(found), shapeOf(like));
    }

    private static Phrase shape(JsonNode node) {
        if (node instanceof JsonObject) {
            return Phrase.of("shape-group");
        } else if (node instanceof JsonArray) {
            return Phrase.of("shape-list");
        }
        JsonScalar scalar = (JsonScalar) node;
        return switch (scalar.type()) {
            case TEXT -> Phrase.of("shape-text");
            case NUMBER -> Phrase.of("shape-number", scalar.text());
            case TRUTH, NULL -> Phrase.of("shape-word", scalar.text());
        };
    }

    private static Phrase shapeOf(String json) {
        return switch (json.charAt(0)) {
            case '{' -> Phrase.of("shape-group");
            case '[' -> Phrase.of("shape-list");
            case '"' -> Phrase.of("shape-text");
            default -> Phrase.of("shape-whole-number");
        };
    }

    /** The name of one of several under a key, counted from one. */
    public static String item(String key, int index) {
        return key + "[" + (index + 1) + "]";
    }

    /** Every kind, so that texts can be checked and listed. */
    public static List<NoticeKind> all() {
        return List.of(NOT_JSON, UNKNOWN_KEY, UNKNOWN_KEY_NEAREST, WRONG_SHAPE, ROW_ID_TWICE);
    }
}
