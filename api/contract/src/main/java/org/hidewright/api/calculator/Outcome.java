package org.hidewright.api.calculator;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * What a calculation came to: answers, perhaps with notices, or a refusal, which has at least one.
 *
 * @param <A> the answers
 */
public final class Outcome<A> {
    private final A answers;
    private final List<Notice> notices;

    private Outcome(A answers, List<Notice> notices) {
        this.answers = answers;
        this.notices = notices;
    }

    /** Answers, and nothing to tell beside them. */
    public static <A> Outcome<A> of(A answers) {
        return of(answers, List.of());
    }

    /**
     * Answers with notices.
     *
     * @throws IllegalArgumentException if a notice is a stop: with one there are no answers
     */
    public static <A> Outcome<A> of(A answers, List<Notice> notices) {
        for (Notice notice : notices) {
            if (notice.kind().severity() == NoticeKind.Severity.STOP) {
                throw new IllegalArgumentException("answers given although " + notice);
            }
        }
        return new Outcome<>(Objects.requireNonNull(answers, "answers"), List.copyOf(notices));
    }

    /** No answer, for the reasons given. */
    public static <A> Outcome<A> refuse(Notice reason, Notice... more) {
        List<Notice> all = new ArrayList<>();
        all.add(reason);
        all.addAll(List.of(more));
        return refuse(all);
    }

    /**
     * No answer, for the reasons given.
     *
     * @throws IllegalArgumentException if none of them is a stop
     */
    public static <A> Outcome<A> refuse(List<Notice> reasons) {
        if (reasons.stream().noneMatch(notice -> notice.kind().severity() == NoticeKind.Severity.STOP)) {
            throw new IllegalArgumentException("a refusal needs a notice that is a stop");
        }
        return new Outcome<>(null, List.copyOf(reasons));
    }

    /** The answers, empty for a refusal. */
    public Optional<A> answers() {
        return Optional.ofNullable(answers);
    }

    /** Whether there are no answers. */
    public boolean refused() {
        return answers == null;
    }

    /** What is told beside the answers, or why there are none. */
    public List<Notice> notices() {
        return notices;
    }

    /** The same outcome with its answers put another way. */
    public <B> Outcome<B> map(Function<? super A, ? extends B> change) {
        return new Outcome<>(answers == null ? null : change.apply(answers), notices);
    }

    @Override
    public String toString() {
        return (answers == null ? "refused" : answers.toString()) + " " + notices;
    }
}
