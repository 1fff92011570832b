package org.hidewright.core.project;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.JsonScalar;
import org.hidewright.core.json.JsonOut;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.project.AnswerPath.Step;

/** Changes answers at their places inside the text of a slip; every other character stays as it is. */
public final class AnswerEdit {
    /** The key that says which of several variants counts, where answers for more than one are written down. */
    public static final String CHOSEN = "is";

    private AnswerEdit() {}

    /** What stands at a place below a node; empty where nothing does. */
    static Optional<JsonNode> find(JsonNode from, List<Step> way) {
        JsonNode at = from;
        for (Step step : way) {
            Optional<JsonNode> next = inside(at, step);
            if (next.isEmpty()) {
                return Optional.empty();
            }
            at = next.get();
        }
        return Optional.of(at);
    }

    private static Optional<JsonNode> inside(JsonNode at, Step step) {
        if (step instanceof Step.Key key) {
            return at instanceof JsonObject object ? object.get(key.name()) : Optional.empty();
        }
        String id = ((Step.Row) step).id();
        List<JsonNode> rows = at instanceof JsonArray array ? array.items() : List.of();
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i) instanceof JsonObject row && idOf(row, i).equals(id)) {
                return Optional.of(row);
            }
        }
        return Optional.empty();
    }

    /** As its reader calls it. */
    static String idOf(JsonObject row, int at) {
        return row.text("id").filter(id -> !id.isEmpty()).orElse("row-" + (at + 1));
    }

    /**
     * The text with an answer put at a place below a node, replacing what stands there. What is missing on the way is put
     * there; a variant named by its key alone becomes an object with it.
     *
     * @throws IllegalArgumentException if there is no such row
     */
    static JsonText put(JsonText text, JsonNode from, List<Step> way, String json) throws JsonTrouble {
        if (way.isEmpty()) {
            return text.with(from, json);
        }
        Step step = way.get(0);
        List<Step> rest = way.subList(1, way.size());
        Optional<JsonNode> next = inside(from, step).filter(node -> !isNull(node));
        if (next.isPresent()) {
            return put(text, next.get(), rest, json);
        } else if (step instanceof Step.Row row) {
            throw new IllegalArgumentException("no row " + row.id());
        } else if (from instanceof JsonObject object) {
            String key = ((Step.Key) step).name();
            Optional<JsonNode> nothing = object.get(key);
            return nothing.isPresent()
                    ? text.with(nothing.get(), wrapped(rest, json))
                    : text.withMember(object, key, wrapped(rest, json));
        }
        return text.with(from, wrapped(way, json));
    }

    private static boolean isNull(JsonNode node) {
        return node instanceof JsonScalar scalar && scalar.type() == JsonScalar.Type.NULL;
    }

    private static String wrapped(List<Step> way, String json) {
        String wrapped = json;
        for (int i = way.size() - 1; i >= 0; i--) {
            if (!(way.get(i) instanceof Step.Key key)) {
                throw new IllegalArgumentException("no row " + ((Step.Row) way.get(i)).id());
            }
            wrapped = JsonOut.line(Map.of(key.name(), new JsonOut.Raw(wrapped)));
        }
        return wrapped;
    }

    /** The text without what stands at a place; the same text where nothing does. */
    static JsonText clear(JsonText text, JsonNode from, List<Step> way) throws JsonTrouble {
        Optional<JsonNode> holder = find(from, way.subList(0, way.size() - 1));
        Step last = way.get(way.size() - 1);
        if (holder.isEmpty() || inside(holder.get(), last).isEmpty()) {
            return text;
        }
        if (last instanceof Step.Key key) {
            return text.without((JsonObject) holder.get(), key.name());
        }
        JsonArray rows = (JsonArray) holder.get();
        return text.withoutItem(rows, rows.items().indexOf(inside(rows, last).orElseThrow()));
    }

    /** What a question with variants, or a row, is when another variant is chosen: what was answered in others stays. */
    static String choosing(JsonText text, Optional<JsonNode> now, String variant) throws JsonTrouble {
        String key = JsonText.quoted(variant);
        if (now.isEmpty() || !(now.get() instanceof JsonObject object)) {
            return "{" + key + ": {}}";
        }
        JsonText alone = text.alone(object, 0);
        JsonObject whole = (JsonObject) alone.root();
        return whole.get(CHOSEN).isPresent()
                ? alone.with(whole.get(CHOSEN).get(), key).text()
                : alone.withMember(whole, CHOSEN, key).text();
    }
}
