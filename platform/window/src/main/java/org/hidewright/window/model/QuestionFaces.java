package org.hidewright.window.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.calculator.NoticeKind.Severity;
import org.hidewright.api.declaration.Chosen;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Variant;
import org.hidewright.core.jobcard.LinkText;
import org.hidewright.core.jobcard.SlipWording;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.JsonScalar;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.project.AnswerEdit;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.core.project.ProjectNotices;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.AskedLine;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;
import org.hidewright.window.model.QuestionFace.Origin;

/** The questions of one slip as they are shown: also those nobody has answered, and of variants those of the one chosen. */
final class QuestionFaces {
    private final WorkedProject worked;
    private final WorkedSlip slip;
    private final Wording wording;
    private final SlipWording words;
    private final DeclaredFaces declared;
    private final Map<String, AskedLine> asked = new HashMap<>();

    QuestionFaces(WorkedProject worked, WorkedSlip slip, Wording wording) {
        this.worked = worked;
        this.slip = slip;
        this.wording = wording;
        this.words = new SlipWording(slip, wording);
        this.declared = new DeclaredFaces(words.fields());
        slip.asked().forEach(line -> asked.put(line.path().toString(), line));
    }

    /** Key of the question that is searched for; empty where none is. */
    String sought() {
        return slip.installed()
                .flatMap(known -> known.calculator().search())
                .map(search -> search.sought().key())
                .orElse("");
    }

    /** Whether a remark is of the search as a whole: where nothing is found yet no row could tell it, so the slip does. */
    boolean isOfSearch(Remark remark) {
        return !remark.question().isEmpty() && remark.question().equals(sought());
    }

    /** Whether a remark is told at one of these questions. */
    static boolean isTold(Remark remark, List<QuestionFace> questions) {
        return questions.stream()
                .anyMatch(question -> question.path().toString().equals(remark.question())
                        || question.rows().stream()
                                .anyMatch(row -> isTold(remark, row.variant()) || isTold(remark, row.questions())));
    }

    List<QuestionFace> all() {
        List<QuestionFace> faces = new ArrayList<>();
        slip.installed()
                .ifPresent(known -> known.calculator()
                        .declaration()
                        .questions()
                        .forEach(question -> add(question, AnswerPath.of(question.key()), 0, faces)));
        return List.copyOf(faces);
    }

    private void add(Question question, AnswerPath path, int depth, List<QuestionFace> faces) {
        Optional<AskedLine> line = Optional.ofNullable(asked.get(path.toString()));
        faces.add(new QuestionFace(
                path,
                question,
                depth,
                words.label(question),
                help(question),
                text(question, line),
                origin(line),
                line.map(this::understood).orElse(""),
                declared.limits(question),
                declared.choices(question),
                said(path, true),
                said(path, false),
                question.kind() == Kind.ROWS ? rows(question, path) : List.of()));
        if (question.kind() == Kind.GROUP) {
            question.questions().forEach(inner -> add(inner, path.key(inner.key()), depth + 1, faces));
        } else if (question.kind() == Kind.VARIANTS) {
            chosen(question, path).ifPresent(key -> addVariant(question, key, path, depth + 1, faces));
        }
    }

    private void addVariant(Question question, String key, AnswerPath path, int depth, List<QuestionFace> faces) {
        question.variants().stream()
                .filter(variant -> variant.key().equals(key))
                .forEach(variant -> variant.questions()
                        .forEach(inner -> add(inner, path.key(key).key(inner.key()), depth, faces)));
    }

    /** The rows as they stand in the file, or in the preset where nobody has typed any. */
    private List<RowFace> rows(Question question, AnswerPath path) {
        List<RowFace> rows = new ArrayList<>();
        List<JsonNode> items = items(question, path);
        for (int i = 0; i < items.size(); i++) {
            if (items.get(i) instanceof JsonObject row) {
                String id = row.text("id").orElse("row-" + (i + 1));
                rows.add(row(question, path.row(id), id, row));
            }
        }
        return List.copyOf(rows);
    }

    private List<JsonNode> items(Question question, AnswerPath path) {
        return slip.slip().answer(path).or(() -> preset(question)).orElse(null) instanceof JsonArray rows
                ? rows.items()
                : List.of();
    }

    private RowFace row(Question question, AnswerPath path, String id, JsonObject row) {
        List<QuestionFace> inside = new ArrayList<>();
        List<QuestionFace> variant = new ArrayList<>();
        if (question.variants().isEmpty()) {
            question.questions().forEach(inner -> add(inner, path.key(inner.key()), 1, inside));
        } else {
            Optional<String> chosen = question.variants().stream()
                    .map(Variant::key)
                    .filter(key -> row.get(key).isPresent())
                    .findFirst();
            variant.add(new QuestionFace(
                    path,
                    question,
                    0,
                    id,
                    help(question),
                    chosen.map(key -> words.variant(question, key)).orElse(""),
                    chosen.isPresent() ? Origin.TYPED : Origin.OPEN,
                    "",
                    "",
                    declared.variants(question),
                    said(path, true),
                    said(path, false),
                    List.of()));
            chosen.ifPresent(key -> addVariant(question, key, path, 1, inside));
        }
        List<String> cells = new ArrayList<>();
        variant.stream().map(QuestionFace::text).forEach(cells::add);
        inside.stream()
                .filter(face -> !face.holdsOthers())
                .map(QuestionFace::read)
                .filter(text -> !text.isEmpty())
                .forEach(cells::add);
        return new RowFace(path, id, List.copyOf(cells), List.copyOf(variant), List.copyOf(inside));
    }

    private List<String> said(AnswerPath path, boolean urgent) {
        return slip.remarks().stream()
                .filter(remark -> remark.question().equals(path.toString()))
                .filter(remark ->
                        !waits(remark) && !isOfSearch(remark) && urgent == (remark.severity() != Severity.NOTE))
                .map(wording::what)
                .toList();
    }

    /** What another slip has to be seen to for; it is told there. */
    static boolean waits(Remark remark) {
        return remark.key().equals("notice." + ProjectNotices.WAITS.key());
    }

    private String help(Question question) {
        return slip.installed()
                .map(known -> wording.text(known.calculator().texts(), question.helpKey()))
                .orElse("");
    }

    /**
     * The variant in use, also on a slip that is not worked: the one whose questions are asked, else the one that was taken, else
     * the one that is written down or preset.
     */
    private Optional<String> chosen(Question question, AnswerPath path) {
        List<String> keys = question.variants().stream().map(Variant::key).toList();
        return keys.stream()
                .filter(key -> asked.keySet().stream().anyMatch(other -> other.startsWith(path.key(key) + ".")))
                .findFirst()
                .or(() -> Optional.ofNullable(asked.get(path.toString()))
                        .flatMap(AskedLine::value)
                        .filter(value -> value instanceof Chosen)
                        .map(value -> ((Chosen) value).variant()))
                .or(() -> slip.slip().answer(path).or(() -> preset(question)).flatMap(json -> written(json, keys)));
    }

    private static Optional<String> written(JsonNode json, List<String> keys) {
        if (json instanceof JsonObject object) {
            return object.text(AnswerEdit.CHOSEN)
                    .filter(keys::contains)
                    .or(() -> keys.stream()
                            .filter(key -> object.get(key).isPresent())
                            .findFirst());
        }
        return json instanceof JsonScalar scalar ? Optional.of(scalar.text()).filter(keys::contains) : Optional.empty();
    }

    private static Optional<JsonNode> preset(Question question) {
        try {
            return question.preset().isPresent()
                    ? Optional.of(JsonText.read(question.preset().get()).root())
                    : Optional.empty();
        } catch (JsonTrouble plainText) {
            return Optional.empty();
        }
    }

    private String text(Question question, Optional<AskedLine> line) {
        if (line.isEmpty()) {
            return "";
        }
        if (line.get().link().isPresent()) {
            return LinkText.of(line.get().link().get(), worked, wording);
        }
        if (question.kind() == Kind.VARIANTS) {
            return chosen(question, line.get().path())
                    .map(key -> words.variant(question, key))
                    .orElse("");
        }
        if (question.kind() == Kind.ROWS) {
            return line.get().value().map(value -> words.text(question, value)).orElse("");
        }
        if (question.kind() == Kind.FLAG && line.get().value().isEmpty()) {
            return DeclaredFaces.written(line.get().text());
        }
        if (question.kind() == Kind.DATE && line.get().value().isPresent()) {
            return words.text(question, line.get().value().get()); // files write it as year, month, day
        }
        boolean otherUnits = wording.inches() && line.get().preset();
        return otherUnits
                        && question.unit().isPresent()
                        && !understood(line.get()).isEmpty()
                ? understood(line.get()) // what nobody has typed is shown in the units that are seen
                : line.get().text();
    }

    private static Origin origin(Optional<AskedLine> line) {
        if (line.isEmpty()) {
            return Origin.OPEN;
        } else if (line.get().link().isPresent()) {
            return Origin.LINKED;
        } else if (line.get().cell().isPresent()) {
            return Origin.WORKSHOP;
        }
        return line.get().preset() ? Origin.PRESET : Origin.TYPED;
    }

    /** The value of what was typed or linked, where it reads otherwise. */
    private String understood(AskedLine line) {
        return line.value()
                .map(value -> declared.understood(line.question(), value, line.text()))
                .orElse("");
    }
}
