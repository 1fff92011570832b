package org.hidewright.window.model;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Two slips of a kind, line by line.
 *
 * @param left title of the one
 * @param right title of the other
 * @param answers what they come to
 * @param questions what they were asked, where either was answered
 */
public record Comparison(String left, String right, List<Line> answers, List<Line> questions) {
    /**
     * One thing of both.
     *
     * @param label what it is called
     * @param left of the one; empty where it has none
     * @param right of the other
     */
    public record Line(String label, String left, String right) {
        /** Whether the two are not the same. */
        public boolean differs() {
            return !left.equals(right);
        }
    }

    /** Two slips beside each other. */
    public static Comparison of(SlipFace left, SlipFace right) {
        return new Comparison(
                left.title(),
                right.title(),
                lines(left.answers(), right.answers(), AnswerFace::key, AnswerFace::label, Comparison::answer),
                lines(
                        left.questions(),
                        right.questions(),
                        face -> face.path().toString(),
                        QuestionFace::label,
                        QuestionFace::read));
    }

    private static String answer(AnswerFace face) {
        return face.inline()
                + face.met()
                        .map(met -> " (" + met.least() + "–" + met.most() + ")")
                        .orElse("");
    }

    private static <F> List<Line> lines(
            List<F> left,
            List<F> right,
            Function<F, String> key,
            Function<F, String> label,
            Function<F, String> value) {
        Map<String, Line> lines = new LinkedHashMap<>();
        left.forEach(face -> lines.put(key.apply(face), new Line(label.apply(face), value.apply(face), "")));
        right.forEach(face -> lines.merge(
                key.apply(face),
                new Line(label.apply(face), "", value.apply(face)),
                (one, other) -> new Line(one.label(), one.left(), other.right())));
        return new ArrayList<>(lines.values())
                .stream()
                        .filter(line -> !line.left().isEmpty() || !line.right().isEmpty())
                        .toList();
    }

    /** How many things differ. */
    public long differences() {
        return answers.stream().filter(Line::differs).count()
                + questions.stream().filter(Line::differs).count();
    }
}
