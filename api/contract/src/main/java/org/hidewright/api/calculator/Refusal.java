package org.hidewright.api.calculator;

import java.util.Objects;

/**
 * Thrown inside a calculator where something typed leaves no answer, and caught by it, so that what is read deep inside can
 * end a calculation with its reason. It never leaves a calculator: that would be a bug of the bundle.
 */
public final class Refusal extends Exception {
    private static final long serialVersionUID = 1;

    private final transient Notice notice;

    /** @param notice the reason, a stop */
    public Refusal(Notice notice) {
        super(notice.toString());
        this.notice = Objects.requireNonNull(notice, "notice");
    }

    /** Why there is no answer. */
    public Notice notice() {
        return notice;
    }

    /** No answer, for this reason. */
    public <A> Outcome<A> outcome() {
        return Outcome.refuse(notice);
    }
}
