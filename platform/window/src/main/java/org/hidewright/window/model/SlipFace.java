package org.hidewright.window.model;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.api.calculator.NoticeKind.Severity;
import org.hidewright.api.document.Bars;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.core.work.WorkedSlip;

/**
 * A slip as it is shown.
 *
 * @param id by which links name it
 * @param calculator id of what works it out
 * @param triesFor title of the slip it tries something out for; empty for a slip that is made
 * @param title the maker's, else the calculator's
 * @param purpose what the calculator is for, in one line
 * @param state how it stands
 * @param stateText how it stands, in a sentence; empty where it is worked
 * @param answers in the order declared, those that lead first
 * @param questions in the order asked
 * @param told checks, cautions and notes that belong to no single question
 * @param bars what bundles show of it as bars
 * @param tables answers that are tables
 * @param working formula, numbers and result, line by line
 * @param sources what it stands on, line by line
 * @param drawings what it draws
 * @param makes whether it is there to make a piece, with its parts
 * @param sought key of the question that is searched for; empty where none is
 * @param drives whether the piece hangs on it, or it makes the piece
 */
public record SlipFace(
        String id,
        String calculator,
        String triesFor,
        String title,
        String purpose,
        WorkedSlip.State state,
        String stateText,
        List<AnswerFace> answers,
        List<QuestionFace> questions,
        List<Told> told,
        List<Bars> bars,
        List<TableFace> tables,
        List<String> working,
        List<String> sources,
        List<DrawingFace> drawings,
        boolean makes,
        String sought,
        boolean drives) {
    /** One of its answers by its key. */
    public Optional<AnswerFace> answer(String key) {
        return answers.stream().filter(answer -> answer.key().equals(key)).findFirst();
    }

    /** One of its questions, also inside rows, by where its answer stands. */
    public Optional<QuestionFace> question(AnswerPath path) {
        return within(questions)
                .filter(question -> question.path().equals(path))
                .findFirst();
    }

    /** What is asked in a variant, directly; nothing where a question stands at the place, as that of a group. */
    Stream<QuestionFace> insideVariant(AnswerPath variant) {
        return question(variant).isPresent()
                ? Stream.empty()
                : within(questions).filter(question -> question.path().group().equals(Optional.of(variant)));
    }

    private static Stream<QuestionFace> within(List<QuestionFace> faces) {
        return faces.stream()
                .flatMap(face -> Stream.concat(
                        Stream.of(face),
                        face.rows().stream()
                                .flatMap(row -> Stream.concat(row.variant().stream(), within(row.questions())))));
    }

    /** How many things of it are to be put right or decided: a caution is to be kept in mind, a note to be known. */
    public long urgent() {
        return told.stream()
                        .filter(one -> one.how() == Severity.STOP || one.how() == Severity.CHECK)
                        .count()
                + questions.stream().mapToLong(QuestionFace::urgent).sum();
    }

    /** Where its answer stands that is to be put right first, or that is to be searched for; empty where neither is so. */
    public String firstWrong() {
        boolean toSearch = told.stream().anyMatch(one -> one.how() == Severity.CHECK);
        return questions.stream()
                .filter(QuestionFace::isWrong)
                .map(question -> question.path().toString())
                .findFirst()
                .orElse(toSearch ? sought : "");
    }

    /**
     * Something that is told on a slip.
     *
     * @param how how much it matters
     * @param severity the same in words
     * @param what what is the matter
     * @param why why that matters
     * @param next what to do
     */
    public record Told(Severity how, String severity, String what, String why, String next) {}
}
