package org.hidewright.core.project;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.hidewright.api.calculator.Notice;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.Nearest;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.JsonScalar;
import org.hidewright.core.json.JsonNode.Member;
import org.hidewright.core.json.JsonNotices;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.json.Place;
import org.hidewright.core.paper.Paper;
import org.hidewright.core.wording.LanguageTag;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.workshop.WorkshopReader;

/** Reads the text of a project file. What it does not understand it names and leaves in place. */
public final class ProjectReader {
    /** The format of project files written by this version. */
    public static final int FORMAT = 1;

    private static final List<String> HEAD = List.of("hidewright", "name", "about", "show", Project.WORKSHOP, "slips");
    private static final List<String> SHOW = List.of("units", "paper", "language");
    private static final List<String> SLIP = List.of(
            "id", "calculator", "version", "from", "title", "what-if", "questions", Slip.EXAMPLES, Slip.SEARCHED);

    private static final String A_SLIP = "{\"id\": \"…\", \"calculator\": \"…\", \"questions\": {…}}";

    private static final List<String> OF_SLIPS = List.of("calculator", "questions");

    /** Words for units and papers, right and nearly right, each with the one that is read. */
    private static final Map<String, String> UNITS =
            words("mm", "mm", "millimetres", "mm", "metric", "mm", "in", "in", "inches", "in", "imperial", "in");

    private static final Map<String, String> PAPERS = papers();
    private static final String LANGUAGES = "en, de, pt-BR, …";

    private final List<Remark> remarks = new ArrayList<>();

    private ProjectReader() {}

    private static Map<String, String> words(String... wordsAndMeanings) {
        Map<String, String> words = new LinkedHashMap<>();
        for (int i = 0; i < wordsAndMeanings.length; i += 2) {
            words.put(wordsAndMeanings[i], wordsAndMeanings[i + 1]);
        }
        return words;
    }

    private static Map<String, String> papers() {
        Map<String, String> papers = words("US Letter", Paper.LETTER.title());
        for (Paper paper : Paper.values()) {
            papers.put(paper.title(), paper.title());
        }
        return papers;
    }

    /** What reading came to: a project, or the reason there is none. */
    public record Result(Optional<Project> project, List<Remark> remarks) {}

    /** Reads a project file's text. */
    public static Result read(String text) {
        return new ProjectReader().readText(text);
    }

    private Result readText(String text) {
        JsonText source;
        try {
            source = JsonText.read(text);
        } catch (JsonTrouble e) {
            say(notJson(e), e.place());
            return new Result(Optional.empty(), remarks);
        }
        if (!(source.root() instanceof JsonObject head)) {
            say(ProjectNotices.NOT_A_PROJECT.with(), source.root().place());
            return new Result(Optional.empty(), remarks);
        }
        if (head.get("hidewright").isEmpty()) {
            if (misspelt(head, "hidewright", HEAD, "").isEmpty()) {
                say(ProjectNotices.NOT_A_PROJECT.with(), head.place());
            }
            return new Result(Optional.empty(), remarks);
        }
        format(source, head.members().get("hidewright"));
        headKeys(head);
        text(head, "name", "");
        text(head, "about", "");
        head.get(Project.WORKSHOP).ifPresent(kept -> {
            if (kept instanceof JsonObject copies) {
                remarks.addAll(WorkshopReader.checkKept(copies));
            } else {
                wrongShape(Project.WORKSHOP, "{\"tables\": {…}}", kept);
            }
        });
        head.get("show").ifPresent(show -> {
            if (show instanceof JsonObject settings) {
                unknownKeys(settings, SHOW);
                SHOW.forEach(setting -> text(settings, setting, ""));
                known(settings, "units", UNITS, given -> UnitSystem.of(given).isPresent());
                known(settings, "paper", PAPERS, given -> Paper.of(given).isPresent());
                known(
                        settings,
                        "language",
                        Map.of(),
                        given -> LanguageTag.of(given).isPresent());
            } else {
                wrongShape("show", "{\"units\": \"mm\"}", show);
            }
        });
        Project project = Project.read(source, slips(head), remarks);
        return new Result(Optional.of(project), project.remarks());
    }

    private static Notice notJson(JsonTrouble trouble) {
        return switch (trouble.kind()) {
            case EMPTY -> ProjectNotices.EMPTY_FILE.with();
            case MORE_AFTER_END -> ProjectNotices.MORE_AFTER_END.with();
            case SYNTAX -> JsonNotices.NOT_JSON.with(trouble.words());
        };
    }

    private void format(JsonText source, Member member) {
        String format = source.textOf(member.value());
        if (!format.matches("[1-9]\\d{0,5}")) {
            wrongShape("hidewright", String.valueOf(FORMAT), member.value());
        } else if (Integer.parseInt(format) > FORMAT) {
            say(ProjectNotices.NEWER_FORMAT.with(format, FORMAT), member.place());
        }
    }

    private List<JsonObject> slips(JsonObject head) {
        List<JsonObject> slips = new ArrayList<>();
        JsonNode node = head.get("slips").orElse(null);
        if (node != null && !(node instanceof JsonArray)) {
            wrongShape("slips", "[" + A_SLIP + ", …]", node);
        }
        List<JsonNode> items = node instanceof JsonArray array ? array.items() : List.of();
        for (int i = 0; i < items.size(); i++) {
            if (items.get(i) instanceof JsonObject object) {
                slips.add(object);
            } else {
                wrongShape(JsonNotices.item("slips", i), A_SLIP, items.get(i));
            }
        }
        return slips;
    }

    /**
     * What there is to say of a slip but for its questions, with places counted from where it begins.
     *
     * @param again whether another slip before it has the same id
     */
    static List<Remark> remarks(Slip slip, boolean again) {
        ProjectReader reader = new ProjectReader();
        reader.slip(slip, again);
        return List.copyOf(reader.remarks);
    }

    private void slip(Slip slip, boolean again) {
        JsonObject object = slip.node();
        Set<String> meant = new HashSet<>();
        if (slip.id().isEmpty()) {
            missing(object, "id", ProjectNotices.SLIP_WITHOUT_ID.with(), "").ifPresent(meant::add);
        } else if (again) {
            say(ProjectNotices.SLIP_ID_TWICE.with(slip.id()), object.place(), slip.id());
        } else if (slip.calculator().isEmpty()) {
            missing(object, "calculator", ProjectNotices.SLIP_WITHOUT_CALCULATOR.with(slip.id()), slip.id())
                    .ifPresent(meant::add);
        }
        unknownKeys(object, SLIP, slip.id(), meant);
        shapes(slip);
    }

    private void shapes(Slip slip) {
        JsonObject object = slip.node();
        List.of("from", "title", "what-if").forEach(key -> text(object, key, slip.id()));
        object.get("version")
                .filter(version -> !slip.textOf(version).matches("[1-9]\\d{0,8}"))
                .ifPresent(version -> wrongShape("version", "1", version, slip.id()));
        object.get("questions")
                .filter(questions -> !(questions instanceof JsonObject))
                .ifPresent(questions -> wrongShape("questions", "{\"thickness\": \"8 oz\"}", questions, slip.id()));
        object.get(Slip.EXAMPLES)
                .filter(examples -> !(examples instanceof JsonObject))
                .ifPresent(examples -> wrongShape(Slip.EXAMPLES, "{\"width\": \"70 mm\"}", examples, slip.id()));
    }

    private void text(JsonObject object, String key, String slip) {
        object.get(key)
                .filter(node -> !(node instanceof JsonScalar scalar && scalar.type() == JsonScalar.Type.TEXT))
                .ifPresent(node -> wrongShape(key, "\"…\"", node, slip));
    }

    private void known(JsonObject settings, String key, Map<String, String> words, Predicate<String> good) {
        String options = words.isEmpty()
                ? LANGUAGES
                : String.join(", ", words.values().stream().distinct().toList());
        settings.text(key)
                .filter(good.negate())
                .ifPresent(given -> say(
                        Nearest.to(given, words.keySet())
                                .map(words::get)
                                .map(near -> ProjectNotices.NO_SUCH_SETTING_NEAREST.with(key, given, options, near))
                                .orElseGet(() -> ProjectNotices.NO_SUCH_SETTING.with(key, given, options)),
                        settings.get(key).orElseThrow().place()));
    }

    /** Says that a key is missing, or which key it was written as; returns that key. */
    private Optional<String> missing(JsonObject object, String key, Notice otherwise, String slip) {
        Optional<String> meant = object.get(key).isPresent() ? Optional.empty() : misspelt(object, key, SLIP, slip);
        if (meant.isEmpty()) {
            say(otherwise, object.place(), slip);
        }
        return meant;
    }

    private Optional<String> misspelt(JsonObject object, String key, List<String> known, String slip) {
        Optional<String> meant = object.members().keySet().stream()
                .filter(candidate -> !known.contains(candidate))
                .filter(candidate ->
                        Nearest.to(candidate, known).filter(key::equals).isPresent())
                .findFirst();
        meant.ifPresent(candidate -> say(
                ProjectNotices.MISSPELT_KEY.with(candidate, key),
                object.members().get(candidate).place(),
                slip));
        return meant;
    }

    /** What is unknown at the head may be known one step further in. */
    private void headKeys(JsonObject head) {
        Set<String> told = new HashSet<>();
        head.members().forEach((key, member) -> {
            if (SHOW.contains(key) || OF_SLIPS.contains(key)) {
                say(ProjectNotices.MISPLACED_KEY.with(key, SHOW.contains(key) ? "show" : "slips"), member.place());
                told.add(key);
            }
        });
        unknownKeys(head, HEAD, "", told);
    }

    private void unknownKeys(JsonObject object, List<String> known) {
        unknownKeys(object, known, "", Set.of());
    }

    private void unknownKeys(JsonObject object, List<String> known, String slip, Set<String> told) {
        for (Map.Entry<String, Member> member : object.members().entrySet()) {
            if (!known.contains(member.getKey()) && !told.contains(member.getKey())) {
                remarks.add(Remark.of(JsonNotices.unknownKey(member.getKey(), known), CoreTexts.TEXTS)
                        .onSlip(slip)
                        .atPlace(member.getValue().place()));
            }
        }
    }

    private void wrongShape(String key, String like, JsonNode found) {
        wrongShape(key, like, found, "");
    }

    private void wrongShape(String key, String like, JsonNode found, String slip) {
        say(JsonNotices.wrongShape(key, like, found), found.place(), slip);
    }

    private void say(Notice notice, Place place) {
        say(notice, place, "");
    }

    private void say(Notice notice, Place place, String slip) {
        remarks.add(Remark.of(notice, CoreTexts.TEXTS).onSlip(slip).atPlace(place));
    }
}
