package org.hidewright.core.project;

import java.util.Map;
import java.util.Optional;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonArray;
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

    /** The key under which is kept how what stands on the slip was searched for. */
    public static final String SEARCHED = "searched";

    /** The key under which stand the answers that were examples of the calculator when the slip was begun. */
    public static final String EXAMPLES = "examples";

    private static final String WHAT_IF = "what-if";

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

    /** Id of the slip it tries something out for, so that it is worked and compared but not made; empty for all others. */
    public Optional<String> whatIf() {
        return node.text(WHAT_IF);
    }

    /** What was typed, by question key; empty where nothing was. */
    public JsonObject questions() {
        return node.get("questions")
                .filter(questions -> questions instanceof JsonObject)
                .map(questions -> (JsonObject) questions)
                .orElseGet(() -> new JsonObject(node.start(), node.end(), node.place(), Map.of()));
    }

    /**
     * Whether a question is still answered by the example of its calculator that the slip was begun with: then nobody has measured
     * it yet. Another answer in its place is the maker's.
     */
    public boolean isExample(String question) {
        return node.get(EXAMPLES).orElse(null) instanceof JsonObject begun
                && begun.get(question)
                        .map(this::textOf)
                        .equals(questions().get(question).map(this::textOf))
                && begun.get(question).isPresent();
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

    /** What was typed at a place; empty where nothing was. */
    public Optional<JsonNode> answer(AnswerPath path) {
        return AnswerEdit.find(questions(), path.steps());
    }

    /**
     * The slip with an answer at a place; everything else stays as it was written.
     *
     * @param json the answer as JSON, a quoted text for what was typed
     * @throws JsonTrouble if that is no JSON
     * @throws IllegalArgumentException if it is in a row that is not there
     */
    public Slip answering(AnswerPath path, String json) throws JsonTrouble {
        Slip asked = asked();
        return new Slip(AnswerEdit.put(asked.source, asked.questions(), path.steps(), json));
    }

    /** The slip without what was typed at a place, so that its preset stands; a row goes with all that is in it. */
    public Slip clearing(AnswerPath path) throws JsonTrouble {
        return new Slip(AnswerEdit.clear(source, questions(), path.steps()));
    }

    /** The slip with another variant chosen at a place; what was typed for the others stays. */
    public Slip choosing(AnswerPath path, String variant) throws JsonTrouble {
        return answering(path, AnswerEdit.choosing(source, answer(path), variant));
    }

    /**
     * The slip with a row put into a table.
     *
     * @param path of the table, which is there
     * @param at how many rows stand before it
     * @param json the row, an object with an id that no other has
     * @throws IllegalArgumentException if there is no such table
     */
    public Slip withRow(AnswerPath path, int at, String json) throws JsonTrouble {
        if (answer(path).orElse(null) instanceof JsonArray rows) {
            return new Slip(source.withItem(rows, at, json));
        }
        throw new IllegalArgumentException("no table " + path);
    }

    /** The slip with the maker's own title; an empty one takes it away. */
    public Slip titled(String title) throws JsonTrouble {
        return title.isEmpty() ? without("title") : with("title", JsonText.quoted(title));
    }

    /** The slip as one that tries something out for another. */
    public Slip asWhatIf(String of) throws JsonTrouble {
        return with(WHAT_IF, JsonText.quoted(of));
    }

    /** The slip with all that was typed on another of its kind, and was found by a search there, in place of its own. */
    public Slip answeredAs(Slip other) throws JsonTrouble {
        Slip answered = with("questions", other.asked().textOf(other.asked().questions()));
        Optional<JsonNode> searched = other.node.get(SEARCHED);
        return searched.isPresent()
                ? answered.with(SEARCHED, other.textOf(searched.get()))
                : answered.without(SEARCHED);
    }

    /**
     * The slip with what a search has found, and how.
     *
     * @param found the answer as JSON
     * @param searched how it was found, as JSON
     */
    public Slip finding(String question, String found, String searched) throws JsonTrouble {
        return answering(AnswerPath.of(question), found).with(SEARCHED, searched);
    }

    private Slip with(String key, String json) throws JsonTrouble {
        Optional<JsonNode> there = node.get(key);
        return new Slip(there.isPresent() ? source.with(there.get(), json) : source.withMember(node, key, json));
    }

    private Slip without(String key) throws JsonTrouble {
        return node.get(key).isPresent() ? new Slip(source.without(node, key)) : this;
    }

    /** The slip under another id. */
    public Slip called(String other) throws JsonTrouble {
        return new Slip(source.with(node.get("id").orElseThrow(), JsonText.quoted(other)));
    }

    private Slip asked() throws JsonTrouble {
        return node.get("questions")
                        .filter(questions -> questions instanceof JsonObject)
                        .isPresent()
                ? this
                : new Slip(source.withMember(node, "questions", "{}"));
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
