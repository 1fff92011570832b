package org.hidewright.api.declaration;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Source;

/** All there is to know of a calculator without calling it. */
public final class Declaration {
    private final String id;
    private final int version;
    private final List<Question> questions;
    private final List<Answer> answers;
    private final List<Formula> formulas;
    private final List<NoticeKind> notices;
    private final List<String> phrases;
    private final List<Source> sources;

    Declaration(
            String id,
            int version,
            List<Question> questions,
            List<Answer> answers,
            List<Formula> formulas,
            List<NoticeKind> notices,
            List<String> phrases,
            List<Source> moreSources) {
        this.id = id;
        this.version = version;
        this.questions = List.copyOf(questions);
        this.answers = List.copyOf(answers);
        this.formulas = List.copyOf(formulas);
        this.notices = List.copyOf(notices);
        this.phrases = List.copyOf(phrases);
        this.sources = Stream.concat(formulas.stream().map(Formula::source), moreSources.stream())
                .distinct()
                .toList();
    }

    /** The calculator's id: lower-case words joined by hyphens. */
    public String id() {
        return id;
    }

    /** Goes up when a question changes its meaning. */
    public int version() {
        return version;
    }

    /** In the order declared. */
    public List<Question> questions() {
        return questions;
    }

    /** In the order declared. */
    public List<Answer> answers() {
        return answers;
    }

    /** What answers are worked out by. */
    public List<Formula> formulas() {
        return formulas;
    }

    /** What may be told beside the answers, or in place of them. */
    public List<NoticeKind> notices() {
        return notices;
    }

    /** Keys of texts that may stand among the answers. */
    public List<String> phrases() {
        return phrases;
    }

    /** Every source, those of the formulas first. */
    public List<Source> sources() {
        return sources;
    }

    /** The question with a key, of the outermost ones; empty where there is none. */
    public Optional<Question> question(String key) {
        return questions.stream().filter(question -> question.key().equals(key)).findFirst();
    }

    /** The answer with a key; empty where there is none. */
    public Optional<Answer> answer(String key) {
        return answers.stream().filter(answer -> answer.key().equals(key)).findFirst();
    }

    /** The source an answer names by its formula or directly; empty where it names none. */
    public Optional<Source> sourceOf(Answer answer) {
        return answer.by()
                .flatMap(by -> Stream.concat(
                                formulas.stream()
                                        .filter(formula -> formula.key().equals(by))
                                        .map(Formula::source),
                                sources.stream().filter(source -> source.key().equals(by)))
                        .findFirst());
    }

    /** Message keys of the title and of the one line that says what it is for. */
    public String titleKey() {
        return id + ".title";
    }

    /** Message key of the one line that says what it is for. */
    public String purposeKey() {
        return id + ".purpose";
    }
}
