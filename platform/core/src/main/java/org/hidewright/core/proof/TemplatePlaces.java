package org.hidewright.core.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.JsonScalar;
import org.hidewright.core.json.JsonNode.Member;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.json.Place;

/** Where in the text of a template its questions, tells, answers and parts stand. */
final class TemplatePlaces {
    private static final Pattern STEP = Pattern.compile("([a-z][a-z0-9-]*)(?:\\[([^\\]]*)])?");
    private static final Pattern NAMES = Pattern.compile("[a-zA-Z]");
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

    /**
     * What is asked of another calculator.
     *
     * @param calculator the id under which it is asked
     */
    record Asks(JsonScalar calculator, JsonObject questions) {}

    /** What draws, and the values that others answer. */
    List<Asks> asks() {
        List<Asks> asks = new ArrayList<>();
        asks(head.get("draws"), "calculator").ifPresent(asks::add);
        if (head.get("values").orElse(null) instanceof JsonObject values) {
            values.members()
                    .values()
                    .forEach(member -> asks(Optional.of(member.value()), "asks").ifPresent(asks::add));
        }
        return asks;
    }

    private static Optional<Asks> asks(Optional<JsonNode> node, String by) {
        return node.orElse(null) instanceof JsonObject object
                        && object.get(by).orElse(null) instanceof JsonScalar calculator
                        && object.get("questions").orElse(null) instanceof JsonObject questions
                ? Optional.of(new Asks(calculator, questions))
                : Optional.empty();
    }

    /** Where a question that is asked of what draws stands, as notices name it: {@code parts[back].shape}; as near as can be found. */
    Place ofDrawn(String question) {
        JsonNode draws = head.get("draws").orElse(head);
        Place place = draws.place();
        JsonNode here =
                draws instanceof JsonObject object ? object.get("questions").orElse(draws) : draws;
        Matcher step = STEP.matcher(question);
        while (step.find()
                && here instanceof JsonObject object
                && object.members().containsKey(step.group(1))) {
            Member member = object.members().get(step.group(1));
            here = member.value();
            place = member.place();
            if (step.group(2) != null && here instanceof JsonArray rows) {
                Optional<JsonNode> row = row(rows, step.group(2));
                if (row.isEmpty()) {
                    return place;
                }
                here = row.get();
                place = here.place();
            }
        }
        return place;
    }

    private static Optional<JsonNode> row(JsonArray rows, String id) {
        return rows.items().stream()
                .filter(item -> item instanceof JsonObject row
                        && row.text("id").filter(drawn -> comesOf(id, drawn)).isPresent())
                .findFirst();
    }

    /** The first text that is this one, else the first with it in it. */
    Optional<Place> ofText(String text) {
        List<JsonScalar> all = scalars(head).toList();
        return Stream.<Predicate<JsonScalar>>of(
                        scalar -> scalar.text().equals(text),
                        scalar -> scalar.text().contains(text))
                .flatMap(is -> all.stream().filter(is))
                .map(JsonScalar::place)
                .findFirst();
    }

    /** Whether the drawing has an id, or a leather or tool in lower-case words joined by hyphens, that can be this. */
    boolean draws(String word) {
        return head.get("draws").stream()
                .flatMap(TemplatePlaces::scalars)
                .map(JsonScalar::text)
                .filter(text ->
                        NAMES.matcher(EXPRESSION.matcher(text).replaceAll("")).find())
                .anyMatch(text -> comesOf(word, text)
                        || comesOf(word, text.strip().toLowerCase(Locale.ROOT).replace(' ', '-')));
    }

    private static Stream<JsonScalar> scalars(JsonNode node) {
        if (node instanceof JsonObject object) {
            return object.members().values().stream().map(Member::value).flatMap(TemplatePlaces::scalars);
        }
        return node instanceof JsonArray array
                ? array.items().stream().flatMap(TemplatePlaces::scalars)
                : Stream.of((JsonScalar) node);
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
