package org.hidewright.core.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Option;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Texts;
import org.hidewright.api.declaration.Variant;
import org.hidewright.core.Nearest;
import org.hidewright.core.explain.QuestionExample;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.JsonScalar;
import org.hidewright.core.json.JsonNode.Member;
import org.hidewright.core.json.JsonNotices;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.json.Place;
import org.hidewright.core.project.Link;
import org.hidewright.core.project.ProjectNotices;
import org.hidewright.core.wording.Called;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.work.Entry.Answered;
import org.hidewright.core.work.Entry.Origin;
import org.hidewright.core.workshop.Shelf;
import org.hidewright.core.workshop.StockLink;

/** Reads what was typed on a slip against the questions of its calculator. */
final class EntryReader {
    private static final String CHOSEN = "is";
    private static final String ROW_ID = "id";
    private static final List<String> LINK = List.of("from", "answer", "row", "column");

    private final Shelf shelf;
    private final Texts texts;
    private final List<StockUse> stock = new ArrayList<>();
    private final EntryRemarks remarks;

    /** A preset that the maker of the calculator has written wrongly. */
    static final class BadPreset extends RuntimeException {
        private static final long serialVersionUID = 1L;

        private BadPreset(String path, JsonTrouble trouble) {
            super("the preset of " + path + " is no JSON: " + trouble.getMessage(), trouble);
        }
    }

    /**
     * A reader of one slip.
     *
     * @param texts those of the bundle that asks, in which its questions have their labels
     */
    EntryReader(String slip, Shelf shelf, Texts texts) {
        this.remarks = new EntryRemarks(slip);
        this.shelf = shelf;
        this.texts = texts;
    }

    /** What was taken from the workshop. */
    List<StockUse> stock() {
        return stock;
    }

    List<Remark> remarks() {
        return remarks.all();
    }

    /** The entries for all questions; unknown keys are named with the nearest right one. */
    Map<String, Answered> read(List<Question> questions, JsonObject typed, String path, List<String> alsoKnown) {
        List<String> known = questions.stream().map(Question::key).toList();
        Map<String, String> misspelt = new HashMap<>();
        for (Map.Entry<String, Member> member : typed.members().entrySet()) {
            String key = member.getKey();
            if (known.contains(key) || alsoKnown.contains(key)) {
                continue;
            }
            Optional<Question> meant = Nearest.to(key, known)
                    .filter(near -> typed.get(near).isEmpty())
                    .flatMap(near -> questions.stream()
                            .filter(question -> question.key().equals(near))
                            .findFirst())
                    .filter(EntryReader::needed);
            if (meant.isPresent()) {
                misspelt.putIfAbsent(meant.get().key(), key);
            } else {
                remarks.unknownKey(member, known, path);
            }
        }
        Map<String, Answered> entries = new LinkedHashMap<>();
        for (Question question : questions) {
            String key = question.key();
            entries.put(
                    key,
                    misspelt.containsKey(key)
                            ? new Answered(
                                    remarks.misspelt(typed, misspelt.get(key), key, path), Origin.TYPED, "", null)
                            : one(question, typed.get(key), EntryRemarks.below(path, key), typed.place()));
        }
        return entries;
    }

    /** Whether nothing stands in for an answer, so that it is missing where its key is misspelt. */
    private static boolean needed(Question question) {
        return question.preset().isEmpty()
                && !question.optional()
                && (question.kind() != Kind.GROUP
                        || question.questions().stream().anyMatch(EntryReader::needed));
    }

    private Answered one(Question question, Optional<JsonNode> typed, String path, Place parent) {
        Optional<JsonNode> node = typed.filter(given -> !isNull(given));
        if (node.isPresent()) {
            Optional<StockLink> fromStock = remarks.inPreset() ? Optional.empty() : StockLink.in(node.get());
            if (fromStock.isPresent()) {
                return stocked(question, fromStock.get(), (JsonObject) node.get(), path);
            }
            Entry entry = entry(question, node.get(), path);
            return new Answered(
                    entry,
                    remarks.inPreset() ? Origin.PRESET : entry instanceof Entry.Linked ? Origin.LINKED : Origin.TYPED,
                    node.get() instanceof JsonScalar scalar ? scalar.text() : "",
                    remarks.place(node.get()));
        }
        if (question.preset().isPresent()) {
            return preset(question, path);
        }
        if (question.optional()) {
            return new Answered(new Entry.Open(), Origin.PRESET, "", null);
        }
        if (question.kind() == Kind.GROUP) {
            JsonObject nothing = new JsonObject(0, 0, parent, Map.of());
            return new Answered(
                    new Entry.Group(read(question.questions(), nothing, path, List.of())), Origin.PRESET, "", null);
        }
        Called called = new Called(texts, question);
        Notice notice = question.example()
                .filter(example -> !structured(question.kind()))
                .map(example -> ProjectNotices.UNANSWERED.with(called, example))
                .orElseGet(() -> ProjectNotices.UNANSWERED_NO_EXAMPLE.with(called));
        return new Answered(remarks.bad(notice, path, remarks.place(parent)), Origin.TYPED, "", null);
    }

    private Answered stocked(Question question, StockLink link, JsonObject node, String path) {
        StockReader reader = taking(link, node, StockLink.KEYS, path);
        Entry entry = reader.read(question, path, node.place());
        reader.remarks().forEach(remark -> remarks.say(remark, path, node.place()));
        return new Answered(entry, Origin.WORKSHOP, reader.text().orElse(""), node.place());
    }

    /** What a row of the workshop answers of several questions; what is typed beside the link goes before its cells. */
    private Map<String, Answered> fromRow(List<Question> questions, StockLink link, JsonObject node, String path) {
        List<String> asked = questions.stream().map(Question::key).toList();
        StockReader reader = taking(
                link,
                node,
                Stream.concat(StockLink.KEYS.stream(), asked.stream()).toList(),
                path);
        Map<String, Answered> answers = reader.row(questions, path, node.place());
        reader.remarks().forEach(remark -> remarks.say(remark, path, node.place()));
        for (Question question : questions) {
            String key = question.key();
            Optional<JsonNode> typed = node.get(key).filter(given -> !isNull(given));
            if (typed.isPresent()) {
                answers.put(key, one(question, typed, EntryRemarks.below(path, key), node.place()));
            }
        }
        return answers;
    }

    private StockReader taking(StockLink link, JsonObject node, List<String> known, String path) {
        node.members().entrySet().stream()
                .filter(member -> !known.contains(member.getKey()))
                .forEach(member -> remarks.unknownKey(member, known, path));
        stock.add(StockUse.of(link, shelf));
        return new StockReader(
                shelf, link, (inner, innerPath) -> one(inner, Optional.empty(), innerPath, node.place()));
    }

    private Answered preset(Question question, String path) {
        boolean outer = remarks.inPreset();
        remarks.inPreset(true);
        try {
            String preset = question.preset().orElseThrow();
            Entry entry = structured(question.kind())
                    ? entry(question, JsonText.read(preset).root(), path)
                    : scalarEntry(question, preset, path, null);
            return new Answered(entry, Origin.PRESET, structured(question.kind()) ? "" : preset, null);
        } catch (JsonTrouble e) {
            throw new BadPreset(path, e);
        } finally {
            remarks.inPreset(outer);
        }
    }

    private static boolean structured(Kind kind) {
        return kind == Kind.ROWS || kind == Kind.VARIANTS || kind == Kind.GROUP;
    }

    private static boolean isNull(JsonNode node) {
        return node instanceof JsonScalar scalar && scalar.type() == JsonScalar.Type.NULL;
    }

    private Entry entry(Question question, JsonNode node, String path) {
        Optional<Link> link = Link.in(node);
        if (link.isPresent()) {
            ((JsonObject) node)
                    .members().entrySet().stream()
                            .filter(member -> !LINK.contains(member.getKey()))
                            .forEach(member -> remarks.unknownKey(member, LINK, path));
            return structured(question.kind())
                    ? remarks.bad(ProjectNotices.LINK_NOT_HERE.with(link.get().toString()), path, remarks.place(node))
                    : new Entry.Linked(link.get(), remarks.place(node));
        }
        return switch (question.kind()) {
            case GROUP ->
                node instanceof JsonObject group
                        ? new Entry.Group(read(question.questions(), group, path, List.of()))
                        : remarks.wrongShape(question.key(), example(question), path, node);
            case VARIANTS -> variant(question, node, path, List.of());
            case ROWS -> node instanceof JsonArray rows ? rows(question, rows, path) : noRows(question, path, node);
            case LIST -> node instanceof JsonArray array ? listed(question, array, path) : scalar(question, node, path);
            case ITEM -> remarks.bad(ProjectNotices.ITEM_TYPED.with(question.key()), path, remarks.place(node));
            default -> scalar(question, node, path);
        };
    }

    private Entry scalar(Question question, JsonNode node, String path) {
        return node instanceof JsonScalar scalar
                ? scalarEntry(question, scalar.text(), path, remarks.place(node))
                : remarks.wrongShape(question.key(), shape(question, node), path, node);
    }

    /** What a value looks like; for an object that was perhaps to be a link, what a link looks like. */
    private static String shape(Question question, JsonNode node) {
        boolean nearlyLink = node instanceof JsonObject object
                && LINK.stream().anyMatch(key -> object.get(key).isPresent());
        return nearlyLink
                ? "{\"from\": \"…\", \"answer\": \"…\"}"
                : "\"" + question.example().orElse("…") + "\"";
    }

    private Entry scalarEntry(Question question, String text, String path, Place place) {
        ScalarReader reader = ScalarReader.of(question, text);
        return reader.entry().orElseGet(() -> {
            remarks.say(reader.trouble(), path, place);
            return new Entry.Bad();
        });
    }

    private Entry listed(Question question, JsonArray array, String path) {
        List<Entry> items = new ArrayList<>();
        boolean good = true;
        for (JsonNode item : array.items()) {
            if (question.itemKind() == Kind.TEXT && item instanceof JsonScalar text) {
                items.add(new Entry.Plain(text.text()));
            } else if (scalar(question, item, path) instanceof Entry.Several several) {
                items.addAll(several.items());
            } else {
                good = false;
            }
        }
        return good ? new Entry.Several(List.copyOf(items)) : new Entry.Bad();
    }

    private Entry variant(Question question, JsonNode node, String path, List<String> alsoKnown) {
        List<String> keys = question.variants().stream().map(Variant::key).toList();
        if (node instanceof JsonScalar scalar) {
            return chosen(question, scalar.text(), emptyObject(node), path, remarks.place(node));
        }
        if (!(node instanceof JsonObject object)) {
            return remarks.wrongShape(question.key(), example(question), path, node);
        }
        List<String> present =
                keys.stream().filter(key -> object.get(key).isPresent()).toList();
        Optional<String> is = object.text(CHOSEN);
        List<String> unknown = object.members().keySet().stream()
                .filter(key -> !keys.contains(key) && !key.equals(CHOSEN) && !alsoKnown.contains(key))
                .filter(key -> !is.equals(Optional.of(key)))
                .toList();
        if (is.isEmpty() && present.isEmpty() && unknown.size() == 1) {
            Optional<String> near = Nearest.to(unknown.get(0), keys);
            if (near.isPresent()) {
                return remarks.misspelt(object, unknown.get(0), near.get(), path);
            }
        }
        for (Map.Entry<String, Member> member : object.members().entrySet()) {
            if (unknown.contains(member.getKey())) {
                remarks.unknownKey(member, keys, path);
            }
        }
        if (is.isEmpty() && present.size() != 1) {
            return remarks.bad(
                    ProjectNotices.WHICH_VARIANT.with(path, String.join(", ", keys)), path, remarks.place(node));
        }
        String choice = is.orElseGet(() -> present.get(0));
        JsonNode answers = object.get(choice)
                .or(() -> ScalarReader.inAnyCase(choice, keys).flatMap(object::get))
                .orElse(emptyObject(node));
        return answers instanceof JsonObject typed
                ? chosen(question, choice, typed, path, remarks.place(node))
                : remarks.wrongShape(question.key(), "{\"" + choice + "\": {…}}", path, answers);
    }

    private static JsonObject emptyObject(JsonNode at) {
        return new JsonObject(at.start(), at.end(), at.place(), Map.of());
    }

    private Entry chosen(Question question, String choice, JsonObject typed, String path, Place place) {
        for (Variant variant : question.variants()) {
            if (variant.key().equalsIgnoreCase(choice)) {
                String inside = EntryRemarks.below(path, variant.key());
                Optional<StockLink> row = remarks.inPreset() ? Optional.empty() : StockLink.in(typed);
                Map<String, Answered> answers = row.isPresent()
                        ? fromRow(variant.questions(), row.get(), typed, inside)
                        : read(variant.questions(), typed, inside, List.of());
                return new Entry.OneOf(variant.key(), answers);
            }
        }
        return remarks.bad(
                ScalarReader.noSuchOption(
                        choice, question.variants().stream().map(Variant::key).toList()),
                path,
                place);
    }

    private Entry rows(Question question, JsonArray array, String path) {
        List<Entry.Row> rows = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        Set<String> given = new HashSet<>();
        array.items().forEach(item -> {
            if (item instanceof JsonObject row) {
                row.text(ROW_ID).ifPresent(given::add);
            }
        });
        boolean good = true;
        for (int i = 0; i < array.items().size(); i++) {
            JsonNode item = array.items().get(i);
            if (!(item instanceof JsonObject row)) {
                good = false;
                noRows(question, path, item);
                continue;
            }
            String id = row.text(ROW_ID).filter(text -> !text.isEmpty()).orElse(unused("row-" + (i + 1), given));
            String rowPath = path + "[" + id + "]";
            if (row.get(ROW_ID).isPresent() && row.text(ROW_ID).isEmpty()) {
                good = false;
                remarks.wrongShape(ROW_ID, "\"…\"", rowPath, row.get(ROW_ID).get());
                continue;
            }
            if (!ids.add(id)) {
                good = false;
                remarks.bad(JsonNotices.ROW_ID_TWICE.with(id), rowPath, remarks.place(item));
                continue;
            }
            Entry entry = question.variants().isEmpty()
                    ? new Entry.Group(read(question.questions(), row, rowPath, List.of(ROW_ID)))
                    : variant(question, row, rowPath, List.of(ROW_ID));
            rows.add(new Entry.Row(id, entry));
        }
        return good ? new Entry.Table(List.copyOf(rows)) : new Entry.Bad();
    }

    /** An id for a row without one that no row of the maker's has. */
    private static String unused(String id, Set<String> given) {
        String free = id;
        while (given.contains(free)) {
            free += "-";
        }
        return free;
    }

    /** Rows typed as one text, or a row that is none. */
    private Entry noRows(Question question, String path, JsonNode node) {
        return remarks.bad(
                ProjectNotices.ROWS_EXPECTED.with(question.key(), example(question)), path, remarks.place(node));
    }

    private static String example(Question question) {
        return QuestionExample.line(question).orElseThrow();
    }

    /** The option keys of a choice. */
    static List<String> keys(List<Option> options) {
        return options.stream().map(Option::key).toList();
    }
}
