package org.hidewright.core.project;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hidewright.core.SharedList;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.Member;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.json.Place;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.workshop.StockLink;
import org.hidewright.core.workshop.Workshop;

/**
 * A project: its head and its slips in order. Immutable; a change gives another project that shares all that was not
 * touched: the other slips, and the text between them. Where a slip stands in the file is reckoned when somebody asks.
 */
public final class Project {
    /** The key under which a project keeps copies of what it took from the workshop. */
    static final String WORKSHOP = "workshop";

    private static final String SLIPS = "slips";

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
        head.remove(SLIPS);
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
        return with(slip(slipId).orElseThrow(() -> noSlip(slipId)).answering(AnswerPath.of(question), json));
    }

    /**
     * The project with a changed slip in place of the one with its id.
     *
     * @throws IllegalArgumentException if there is none
     */
    public Project with(Slip changed) {
        int at = at(changed.id());
        return new Project(
                head,
                kept,
                gaps,
                slips.draft().set(at, changed).done(),
                said.draft().set(at, ProjectReader.remarks(changed, false)).done(),
                index);
    }

    private static IllegalArgumentException noSlip(String id) {
        return new IllegalArgumentException("no slip " + id);
    }

    /**
     * The project with one more slip.
     *
     * @param at how many slips stand before it
     * @param json the slip, an object
     * @throws JsonTrouble if that is no JSON
     */
    public Project adding(int at, String json) throws JsonTrouble {
        JsonText text = JsonText.read(text());
        JsonObject root = (JsonObject) text.root();
        Optional<JsonNode> there = root.get(SLIPS);
        if (there.isPresent() && !(there.get() instanceof JsonArray)) {
            throw new IllegalArgumentException("the slips of this project are no list");
        }
        boolean none = there.isEmpty() || ((JsonArray) there.get()).items().isEmpty();
        return read(
                none
                        ? text.withLines(SLIPS, "[\n" + json.strip() + "\n]")
                        : text.withItem(
                                (JsonArray) there.get(), item((JsonArray) there.get(), at), text.indented(json, 2)));
    }

    /** The project without a slip. */
    public Project removing(String slipId) throws JsonTrouble {
        JsonText text = JsonText.read(text());
        JsonArray all = slipsOf(text);
        return read(text.withoutItem(all, item(all, at(slipId))));
    }

    /**
     * The project with a slip at another place, as it is written.
     *
     * @param to how many of the other slips stand before it then
     */
    public Project moving(String slipId, int to) throws JsonTrouble {
        String slip = slip(slipId).orElseThrow(() -> noSlip(slipId)).text();
        JsonText without = JsonText.read(removing(slipId).text());
        JsonArray rest = slipsOf(without);
        return read(without.withItem(rest, item(rest, to), slip));
    }

    private int at(String slipId) {
        Integer at = index.get(slipId);
        if (at == null) {
            throw noSlip(slipId);
        }
        return at;
    }

    private static JsonArray slipsOf(JsonText text) {
        return (JsonArray) ((JsonObject) text.root()).get(SLIPS).orElseThrow();
    }

    /** Where in the list the nth slip stands, or its end; what is no slip stands there too, and stays. */
    private static int item(JsonArray all, int slip) {
        int before = 0;
        for (int i = 0; i < all.items().size(); i++) {
            if (all.items().get(i) instanceof JsonObject && before++ == slip) {
                return i;
            }
        }
        return all.items().size();
    }

    /** What its slips take from the workshop, be they worked out already or not. */
    public List<StockLink> stock() {
        return slips.stream()
                .flatMap(slip -> StockLink.within(slip.questions()).stream())
                .distinct()
                .toList();
    }

    /** The project under another name. */
    public Project named(String name) throws JsonTrouble {
        return read(JsonText.read(text()).withLines("name", JsonText.quoted(name)));
    }

    /** The project with other words on what it is about. */
    public Project describedAs(String about) throws JsonTrouble {
        return read(JsonText.read(text()).withLines("about", JsonText.quoted(about)));
    }

    /** The project shown otherwise: {@code units}, {@code paper} or {@code language}. */
    public Project showing(String setting, String value) throws JsonTrouble {
        JsonText text = JsonText.read(text());
        JsonObject root = (JsonObject) text.root();
        String json = JsonText.quoted(value);
        if (root.get("show").orElse(null) instanceof JsonObject show) {
            Optional<JsonNode> there = show.get(setting);
            return read(there.isPresent() ? text.with(there.get(), json) : text.withMember(show, setting, json));
        }
        return read(text.withLines("show", "{" + JsonText.quoted(setting) + ": " + json + "}"));
    }

    private static Project read(JsonText text) {
        return ProjectReader.read(text.text()).project().orElseThrow();
    }

    /**
     * The project with other copies of what it takes from the workshop, indented as its file is.
     *
     * @param json an object, as the reader of this key expects it
     * @throws JsonTrouble if that is no JSON
     */
    public Project keeping(String json) throws JsonTrouble {
        return read(JsonText.read(text()).withLines(WORKSHOP, json));
    }

    /** The text to save: every character that was not changed is as it was read. */
    public String text() {
        return gaps.text(slips);
    }
}
