package org.hidewright.window.model;

import java.util.List;
import java.util.stream.Stream;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.core.project.AnswerPath;

/**
 * A question as it is shown on a slip.
 *
 * @param path where its answer stands
 * @param question as declared
 * @param depth 0 for a question of the slip, more for those inside groups, variants and rows
 * @param label what it is called
 * @param help the line that explains it
 * @param text what was typed, the preset that stands for it, or the link in words; empty where nothing does
 * @param origin where it comes from
 * @param understood the value as it was understood, where that reads otherwise than it was typed
 * @param limits what may be typed, with its unit
 * @param choices what can be chosen; empty for what is typed
 * @param wrong what is wrong with it or to be looked at, in sentences
 * @param notes what else is to be known of it, in sentences
 * @param rows of a table; empty for anything else
 */
public record QuestionFace(
        AnswerPath path,
        Question question,
        int depth,
        String label,
        String help,
        String text,
        Origin origin,
        String understood,
        String limits,
        List<Choice> choices,
        List<String> wrong,
        List<String> notes,
        List<RowFace> rows) {
    /** Whether it can be left to its preset: nobody has answered it, and nothing is wrong with it. */
    public boolean isLeft() {
        return (origin == Origin.PRESET || origin == Origin.OPEN && question.optional()) && wrong.isEmpty();
    }

    /** What stands for it, as it is read: the choice by its label, a value as it was understood. */
    public String read() {
        return choices.stream()
                .filter(choice -> choice.key().equals(text))
                .map(Choice::label)
                .findFirst()
                .orElse(understood.isEmpty() ? text : understood);
    }

    /** Whether answers stand inside it rather than for it. */
    public boolean holdsOthers() {
        return question.kind() == Kind.GROUP || question.kind() == Kind.ROWS;
    }

    /** Whether its answer is taken from another slip or from the workshop. */
    public boolean isTaken() {
        return origin == Origin.LINKED || origin == Origin.WORKSHOP;
    }

    /** Whether something is wrong with it or inside its rows. */
    public boolean isWrong() {
        return urgent() > 0;
    }

    /** How many things are wrong with it and inside its rows. */
    long urgent() {
        return wrong.size()
                + rows.stream()
                        .flatMap(row -> Stream.concat(row.variant().stream(), row.questions().stream()))
                        .mapToLong(QuestionFace::urgent)
                        .sum();
    }

    /** Where an answer comes from; each looks different. */
    public enum Origin {
        TYPED,
        PRESET,
        LINKED,
        WORKSHOP,
        /** Nobody has answered. */
        OPEN
    }

    /**
     * One of several that can be chosen.
     *
     * @param key as it stands in the file
     * @param label what it is called
     */
    public record Choice(String key, String label) {}
}
