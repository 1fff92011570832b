package org.hidewright.core.project;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hidewright.core.SharedList;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.Member;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.json.Place;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.workshop.Workshop;

/**
 * A project: its head and its slips in order. Immutable; a change gives another project that shares all that was not
 * touched: the other slips, and the text between them. Where a slip stands in the file is reckoned when somebody asks.
 */
public final class Project {
    /** The key under which a project keeps copies of what it took from the workshop. */
    static final String WORKSHOP = "workshop";

    private final JsonObject head;
    private final Workshop kept;
    private final Gaps gaps;
    private final SharedList<Slip> slips;
    /** What was said of each slip when it was read, but for its questions. */
    private final SharedList<List<Remark>> said;
    /** The first slip of each id. One and the same object as long as no slip comes, goes or is renamed. */
    private final Map<String, Integer> index;

    private volatile List<Place> starts;

    private Project(
            JsonObject head,
            Workshop kept,
            Gaps gaps,
            SharedList<Slip> slips,
            SharedList<List<Remark>> said,
            Map<String, Integer> index) {
        this.head = head;
        this.kept = kept;
        this.gaps = gaps;
        this.slips = slips;
        this.said = said;
        this.index = index;
    }

    /**
     * A project that was read from a text.
     *
     * @param nodes its slips
     * @param remarks what was said of the rest
     */
    static Project read(JsonText source, List<JsonObject> nodes, List<Remark> remarks) {
        JsonObject root = (JsonObject) source.root();
        Map<String, Member> head = new LinkedHashMap<>(root.members());
        head.remove("slips");
        List<Slip> slips = new ArrayList<>();
        List<List<Remark>> said = new ArrayList<>();
        Map<String, Integer> index = new LinkedHashMap<>();
        for (JsonObject node : nodes) {
            Slip slip = Slip.in(source, node);
            boolean again = !slip.id().isEmpty() && index.putIfAbsent(slip.id(), slips.size()) != null;
            said.add(ProjectReader.remarks(slip, again));
            slips.add(slip);
        }
        return new Project(
                new JsonObject(root.start(), root.end(), root.place(), head),
                root.get(WORKSHOP)
                        .filter(JsonObject.class::isInstance)
                        .map(node -> Workshop.alone(source.textOf(node)))
                        .orElse(null),
                Gaps.around(nodes, source, remarks),
                SharedList.of(slips),
                SharedList.of(said),
                Collections.unmodifiableMap(index));
    }

    /** The project's name, empty where none is given. */
    public String name() {
        return head.text("name").orElse("");
    }

    /** What it is, in the maker's words. */
    public Optional<String> about() {
        return head.text("about");
    }

    /** A setting of how it is shown: {@code units}, {@code paper} or {@code language}. */
    public Optional<String> shown(String setting) {
        return head.get("show")
                .filter(show -> show instanceof JsonObject)
                .flatMap(show -> ((JsonObject) show).text(setting));
    }

    /** The copies it keeps of what it took from the workshop; one and the same object as long as they are not changed. */
    public Optional<Workshop> kept() {
        return Optional.ofNullable(kept);
    }

    /** In the order of the file. */
    public List<Slip> slips() {
        return slips;
    }

    /** Where in {@link #slips()} the slip of an id stands, the first where several have it; in the order of the file. */
    public Map<String, Integer> index() {
        return index;
    }

    public Optional<Slip> slip(String id) {
        return Optional.ofNullable(index.get(id)).map(slips::get);
    }

    /** Which slips are other ones than in a project before; empty where slips have come or gone as well. */
    public Optional<IntStream> changedSince(Project before) {
        if (index != before.index) {
            return Optional.empty();
        }
        IntStream.Builder changed = IntStream.builder();
        slips.differences(before.slips, changed::add);
        return Optional.of(changed.build());
    }

    /** What was noticed about the file when it was read, besides what concerns single questions. */
    public List<Remark> remarks() {
        List<Remark> remarks = new ArrayList<>(gaps.remarks(slips, starts()));
        for (int i = 0; i < said.size(); i++) {
            for (Remark remark : said.get(i)) {
                remarks.add(placed(remark, i));
            }
        }
        return remarks;
    }

    /**
     * A remark at its place in the file.
     *
     * @param remark about a slip, with its place counted from where the slip begins, if it has one
     * @param slip where in {@link #slips()} that is
     */
    public Remark placed(Remark remark, int slip) {
        return remark.place() == null ? remark : remark.atPlace(remark.place().within(starts().get(slip)));
    }

    private List<Place> starts() {
        List<Place> known = starts;
        if (known == null) {
            known = gaps.starts(slips);
            starts = known;
        }
        return known;
    }

    /**
     * The project with one question of one slip answered anew.
     *
     * @param json the answer as JSON, a quoted text for what was typed
     * @throws JsonTrouble if that is no JSON
     * @throws IllegalArgumentException if there is no such slip
     */
    public Project answering(String slipId, String question, String json) throws JsonTrouble {
        Integer at = index.get(slipId);
        if (at == null) {
            throw new IllegalArgumentException("no slip " + slipId);
        }
        Slip changed = slips.get(at).answering(question, json);
        return new Project(
                head,
                kept,
                gaps,
                slips.draft().set(at, changed).done(),
                said.draft().set(at, ProjectReader.remarks(changed, false)).done(),
                index);
    }

    /**
     * The project with other copies of what it takes from the workshop, indented as its file is.
     *
     * @param json an object, as the reader of this key expects it
     * @throws JsonTrouble if that is no JSON
     */
    public Project keeping(String json) throws JsonTrouble {
        String changed = JsonText.read(text()).withLines(WORKSHOP, json).text();
        return ProjectReader.read(changed).project().orElseThrow();
    }

    /** The text to save: every character that was not changed is as it was read. */
    public String text() {
        return gaps.text(slips);
    }
}
