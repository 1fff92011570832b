package org.hidewright.core.project;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
        List<Slip> changed = new ArrayList<>(slips);
        for (int i = 0; i < changed.size(); i++) {
            if (changed.get(i).id().equals(slipId)) {
                changed.set(i, changed.get(i).answering(question, json));
                return new Project(source, changed, written, remarks);
            }
        }
        throw new IllegalArgumentException("no slip " + slipId);
    }

    /** The text to save: every character that was not changed is as it was read. */
    public String text() {
        StringBuilder text = new StringBuilder();
        int from = 0;
        for (int i = 0; i < slips.size(); i++) {
            Slip was = written.get(i);
            text.append(source.text(), from, was.node().start()).append(slips.get(i).text());
            from = was.node().end();
        }
        return text.append(source.text().substring(from)).toString();
    }
}
