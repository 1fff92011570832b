package org.hidewright.core.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.Member;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.json.Place;

/** Where in the text of a template its questions, tells, answers and parts stand. */
final class TemplatePlaces {
    private static final Pattern EXPRESSION = Pattern.compile("\\{[^}]*}");

    private final JsonObject head;

    /** @param text that was read as a template before */
    TemplatePlaces(String text) {
        try {
            this.head = (JsonObject) JsonText.read(text).root();
        } catch (JsonTrouble e) {
            throw new IllegalStateException("what was read can be read", e);
        }
    }

    Place head() {
        return head.place();
    }

    /** Where a key of the head stands; the head where it does not. */
    Place of(String key) {
        return Optional.ofNullable(head.members().get(key)).map(Member::place).orElse(head.place());
    }

    /** The objects in a list of the head: questions, tells, answers. */
    List<JsonObject> all(String list) {
        List<JsonObject> objects = new ArrayList<>();
        if (head.get(list).orElse(null) instanceof JsonArray array) {
            array.items().stream()
                    .filter(JsonObject.class::isInstance)
                    .map(JsonObject.class::cast)
                    .forEach(objects::add);
        }
        return objects;
    }

    /** The object of a key in a list; the head where there is none. */
    Place of(String list, String key) {
        return all(list).stream()
                .filter(object -> object.text("key").filter(key::equals).isPresent())
                .map(JsonObject::place)
                .findFirst()
                .orElse(head.place());
    }

    /** The row that draws a part: the first whose id it can have come of; all that draws where there is none. */
    Place ofPart(String id) {
        JsonNode draws = head.get("draws").orElse(head);
        return rows(draws)
                .filter(row ->
                        row.text("id").filter(drawn -> comesOf(id, drawn)).isPresent())
                .map(JsonObject::place)
                .findFirst()
                .orElse(draws.place());
    }

    private static boolean comesOf(String id, String drawn) {
        StringBuilder pattern = new StringBuilder();
        for (String fixed : EXPRESSION.split(drawn, -1)) {
            pattern.append(pattern.isEmpty() ? "" : ".*").append(Pattern.quote(fixed));
        }
        return Pattern.matches(pattern.toString(), id);
    }

    private static Stream<JsonObject> rows(JsonNode node) {
        if (node instanceof JsonObject object) {
            return Stream.concat(
                    Stream.of(object),
                    object.members().values().stream().map(Member::value).flatMap(TemplatePlaces::rows));
        }
        return node instanceof JsonArray array ? array.items().stream().flatMap(TemplatePlaces::rows) : Stream.empty();
    }

    /** The key that a text stands under in an object of the head; empty where it is blank. */
    static Optional<Place> blank(JsonObject object, String key) {
        return Optional.ofNullable(object.members().get(key))
                .filter(member -> object.text(key).filter(String::isBlank).isPresent())
                .map(Member::place);
    }

    /** Texts of the head itself that are blank. */
    JsonObject itself() {
        return head;
    }
}
