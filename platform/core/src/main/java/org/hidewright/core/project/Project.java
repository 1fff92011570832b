package org.hidewright.core.project;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.wording.Remark;

/**
 * A project: its head and its slips in order. Immutable; a change gives another project that shares every slip that was
 * not touched.
 */
public final class Project {
    private final JsonText source;
    private final List<Slip> slips;
    /** The same slips, each where it stands in the source; what is in {@link #slips} may come from an older text. */
    private final List<Slip> written;

    private final List<Remark> remarks;

    private Project(JsonText source, List<Slip> slips, List<Slip> written, List<Remark> remarks) {
        this.source = source;
        this.slips = List.copyOf(slips);
        this.written = written;
        this.remarks = List.copyOf(remarks);
    }

    static Project read(JsonText source, List<Slip> slips, List<Remark> remarks) {
        return new Project(source, slips, List.copyOf(slips), remarks);
    }

    /** The key under which a project keeps copies of what it took from the workshop. */
    public static final String WORKSHOP = "workshop";

    /** What stands under a key of the head. */
    public Optional<JsonNode> member(String key) {
        return head().get(key);
    }

    /** The text it stands in, with the places of {@link #member}. */
    public JsonText source() {
        return source;
    }

    private JsonObject head() {
        return (JsonObject) source.root();
    }

    /** The project's name, empty where none is given. */
    public String name() {
        return head().text("name").orElse("");
    }

    /** What it is, in the maker's words. */
    public Optional<String> about() {
        return head().text("about");
    }

    /** A setting of how it is shown: {@code units}, {@code paper} or {@code language}. */
    public Optional<String> shown(String setting) {
        return head().get("show")
                .filter(show -> show instanceof JsonObject)
                .flatMap(show -> ((JsonObject) show).text(setting));
    }

    /** In the order of the file. */
    public List<Slip> slips() {
        return slips;
    }

    public Optional<Slip> slip(String id) {
        return slips.stream().filter(slip -> slip.id().equals(id)).findFirst();
    }

    /** What was noticed about the file when it was read, besides what concerns single questions. */
    public List<Remark> remarks() {
        return remarks;
    }

    /**
     * The project with one question of one slip answered anew.
     *
     * @param json the answer as JSON, a quoted text for what was typed
     * @throws JsonTrouble if that is no JSON
     * @throws IllegalArgumentException if there is no such slip
     */
    public Project answering(String slipId, String question, String json) throws JsonTrouble {
        for (int i = 0; i < slips.size(); i++) {
            if (slips.get(i).id().equals(slipId)) {
                return withSlip(i, slips.get(i).answering(question, json));
            }
        }
        throw new IllegalArgumentException("no slip " + slipId);
    }

    /** Read anew, so that whatever is said of it stands at its place in the new text. */
    private Project withSlip(int index, Slip changed) throws JsonTrouble {
        JsonNode was = written.get(index).node();
        String before = source.text();
        String text = before.substring(0, was.start()) + changed.text() + before.substring(was.end());
        JsonText.read(text);
        Project reread = ProjectReader.read(text).project().orElseThrow();
        List<Slip> shared = new ArrayList<>();
        for (int i = 0; i < reread.slips.size(); i++) {
            shared.add(slips.get(i).sameAs(reread.slips.get(i)) ? slips.get(i) : reread.slips.get(i));
        }
        return new Project(reread.source, shared, reread.written, reread.remarks);
    }

    /**
     * The project with other copies of what it takes from the workshop.
     *
     * @param json an object, as the reader of this key expects it
     * @throws JsonTrouble if that is no JSON
     */
    public Project keeping(String json) throws JsonTrouble {
        JsonText text = head().get(WORKSHOP).isPresent()
                ? source.with(head().get(WORKSHOP).get(), json)
                : source.withMember(head(), WORKSHOP, json);
        return ProjectReader.read(text.text()).project().orElseThrow();
    }

    /** The text to save: every character that was not changed is as it was read. */
    public String text() {
        return source.text();
    }
}
