package org.hidewright.core.json;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A piece of JSON with its place: {@code start} and {@code end} are offsets into the text it was read from. */
public sealed interface JsonNode {
    int start();

    int end();

    Place place();

    /**
     * An object, its members in the order of the text.
     *
     * @param start offset of the opening brace
     * @param end offset after the closing brace
     * @param place of the opening brace
     * @param members by key
     */
    record JsonObject(int start, int end, Place place, Map<String, Member> members) implements JsonNode {
        public JsonObject {
            members = Collections.unmodifiableMap(new LinkedHashMap<>(members));
        }

        public Optional<JsonNode> get(String key) {
            return Optional.ofNullable(members.get(key)).map(Member::value);
        }

        /** The text under a key, empty where there is none or it is no text. */
        public Optional<String> text(String key) {
            return get(key).filter(node -> node instanceof JsonScalar scalar && scalar.type() == JsonScalar.Type.TEXT)
                    .map(node -> ((JsonScalar) node).text());
        }
    }

    /**
     * A member of an object.
     *
     * @param place of its key
     * @param value what stands under the key
     */
    record Member(Place place, JsonNode value) {}

    /**
     * An array.
     *
     * @param start offset of the opening bracket
     * @param end offset after the closing bracket
     * @param place of the opening bracket
     * @param items in order
     */
    record JsonArray(int start, int end, Place place, List<JsonNode> items) implements JsonNode {
        public JsonArray {
            items = List.copyOf(items);
        }
    }

    /**
     * A text, number, truth value or null.
     *
     * @param start offset of its first character
     * @param end offset after its last
     * @param place of its first character
     * @param type what it is
     * @param text a text without its quotes and escapes; anything else as written
     */
    record JsonScalar(int start, int end, Place place, Type type, String text) implements JsonNode {
        /** The kinds of scalar. */
        public enum Type {
            TEXT,
            NUMBER,
            TRUTH,
            NULL
        }
    }
}
