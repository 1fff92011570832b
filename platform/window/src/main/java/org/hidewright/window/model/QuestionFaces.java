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
import org.hidewright.core.explain.Limits;
import org.hidewright.core.jobcard.LinkText;
import org.hidewright.core.jobcard.SlipWording;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.AskedLine;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;
import org.hidewright.window.model.QuestionFace.Choice;
import org.hidewright.window.model.QuestionFace.Origin;

/** The questions of one slip as they are shown: also those nobody has answered, and of variants those of the one chosen. */
final class QuestionFaces {
    private final WorkedProject worked;
    private final WorkedSlip slip;
    private final Wording wording;
    private final SlipWording words;
    private final Map<String, AskedLine> asked = new HashMap<>();
    private final List<QuestionFace> faces = new ArrayList<>();

    QuestionFaces(WorkedProject worked, WorkedSlip slip, Wording wording) {
        this.worked = worked;
        this.slip = slip;
        this.wording = wording;
        this.words = new SlipWording(slip, wording);
        slip.asked().forEach(line -> asked.put(line.path().toString(), line));
    }

    /** Whether a remark is told at one of these questions. */
    static boolean isTold(Remark remark, List<QuestionFace> questions) {
        return questions.stream()
                .anyMatch(question -> question.path().toString().equals(remark.question()));
    }

    List<QuestionFace> all() {
        slip.installed()
                .ifPresent(known -> known.calculator()
                        .declaration()
                        .questions()
                        .forEach(question -> add(question, AnswerPath.of(question.key()), 0)));
        return List.copyOf(faces);
    }

    private void add(Question question, AnswerPath path, int depth) {
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
                limits(question),
                choices(question),
                said(path, true),
                said(path, false)));
        if (question.kind() == Kind.GROUP) {
            question.questions().forEach(inner -> add(inner, path.key(inner.key()), depth + 1));
        } else if (question.kind() == Kind.VARIANTS) {
            question.variants().stream()
                    .filter(variant ->
                            chosen(path).filter(variant.key()::equals).isPresent())
                    .forEach(variant -> variant.questions()
                            .forEach(inner -> add(inner, path.key(variant.key()).key(inner.key()), depth + 1)));
        }
    }

    private List<String> said(AnswerPath path, boolean urgent) {
        return slip.remarks().stream()
                .filter(remark -> remark.question().equals(path.toString()))
                .filter(remark -> urgent == (remark.severity() != Severity.NOTE))
                .map(wording::what)
                .toList();
    }

    private String help(Question question) {
        return slip.installed()
                .map(known -> wording.text(known.calculator().texts(), question.helpKey()))
                .orElse("");
    }

    /** The variant in use: the one whose questions stand among what is asked, or that was taken. */
    private Optional<String> chosen(AnswerPath path) {
        return Optional.ofNullable(asked.get(path.toString()))
                .flatMap(AskedLine::value)
                .filter(value -> value instanceof Chosen)
                .map(value -> ((Chosen) value).variant());
    }

    private String text(Question question, Optional<AskedLine> line) {
        if (line.isEmpty()) {
            return "";
        }
        if (line.get().link().isPresent()) {
            return LinkText.of(line.get().link().get(), worked, wording);
        }
        if (question.kind() == Kind.VARIANTS) {
            return chosen(line.get().path())
                    .map(key -> words.variant(question, key))
                    .orElse("");
        }
        if (question.kind() == Kind.ROWS) {
            return line.get().value().map(value -> words.text(question, value)).orElse("");
        }
        return line.get().text();
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
                .filter(value -> !(value instanceof List<?>))
                .map(value -> words.text(line.question(), value))
                .filter(value -> !value.replace('\u00A0', ' ')
                        .equalsIgnoreCase(line.text().strip()))
                .orElse("");
    }

    private static String limits(Question question) {
        Limits limits = new Limits(question);
        return limits.usual()
                .or(() -> limits.min().flatMap(min -> limits.max().map(max -> min + " – " + max)))
                .orElse("");
    }

    private List<Choice> choices(Question question) {
        List<Choice> choices = new ArrayList<>();
        if (question.kind() == Kind.FLAG) {
            choices.add(new Choice("yes", wording.host("value.yes")));
            choices.add(new Choice("no", wording.host("value.no")));
        } else if (question.kind() == Kind.CHOICE) {
            question.options()
                    .forEach(option -> choices.add(new Choice(option.key(), words.text(question, option.key()))));
        } else if (question.kind() == Kind.VARIANTS) {
            question.variants()
                    .forEach(variant -> choices.add(new Choice(variant.key(), words.variant(question, variant.key()))));
        }
        return List.copyOf(choices);
    }
}
