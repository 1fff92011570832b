package org.hidewright.core.project;

import java.util.Map;
import java.util.Optional;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.json.Place;

/**
 * One calculation on the bench: which calculator, and what was typed on it, kept as it was typed. Its text is one of its
 * own and every place in it is counted from where the slip begins, so that a slip is the same wherever it stands in a file.
 *
 * <p>Two slips are equal when their text is.
 */
public final class Slip {
    /** The brackets of the project and of its slips. */
    private static final int AROUND = 2;

    private final String id;
    private final String calculator;
    private final JsonText source;
    private final JsonObject node;
    private final Place end;

    private Slip(JsonText source) {
        this.source = source;
        this.node = (JsonObject) source.root();
        this.id = node.text("id").orElse("");
        this.calculator = node.text("calculator").orElse("");
        this.end = Place.START.behind(source.text());
    }

    /** A slip that stands in the text of a project; id and calculator may be empty where the text lacks them. */
    static Slip in(JsonText project, JsonObject node) {
        return new Slip(project.alone(node, AROUND));
    }

    /** The id by which links name it. */
    public String id() {
        return id;
    }

    /** Id of the calculator, which may not be installed. */
    public String calculator() {
        return calculator;
    }

    /** The version of the calculator's declaration it was written for; 1 where none is given. */
    public int version() {
        return node.get("version")
                .map(version -> source.textOf(version))
                .filter(text -> text.matches("\\d{1,9}"))
                .map(Integer::valueOf)
                .orElse(1);
    }

    /** The maker's own title. */
    public Optional<String> title() {
        return node.text("title");
    }

    /** The name of the bundle that brought the calculator when the slip was written. */
    public Optional<String> from() {
        return node.text("from");
    }

    /** What was typed, by question key; empty where nothing was. */
    public JsonObject questions() {
        return node.get("questions")
                .filter(questions -> questions instanceof JsonObject)
                .map(questions -> (JsonObject) questions)
                .orElseGet(() -> new JsonObject(node.start(), node.end(), node.place(), Map.of()));
    }

    /** The whole slip as an object. */
    public JsonObject node() {
        return node;
    }

    /** The slip exactly as it was written. */
    public String text() {
        return source.text();
    }

    /** The place behind it, counted from where it begins. */
    Place end() {
        return end;
    }

    /** The characters of one of its values. */
    public String textOf(JsonNode value) {
        return source.textOf(value);
    }

    /**
     * The slip with one question answered anew; everything else stays as it was written.
     *
     * @param json the answer as JSON, a quoted text for what was typed
     * @throws JsonTrouble if that is no JSON
     */
    Slip answering(String question, String json) throws JsonTrouble {
        var there = questions().get(question);
        if (there.isPresent()) {
            return new Slip(source.with(there.get(), json));
        } else if (node.get("questions").isPresent()) {
            return new Slip(source.withMember(questions(), question, json));
        }
        return new Slip(source.withMember(node, "questions", "{" + JsonText.quoted(question) + ": " + json + "}"));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Slip that && text().equals(that.text());
    }

    @Override
    public int hashCode() {
        return id.hashCode();
    }

    @Override
    public String toString() {
        return id + " (" + calculator + ")";
    }
}
