package org.hidewright.api.calculator;

import java.util.List;

/**
 * Thrown inside a calculator where something typed leaves no answer, and caught by it, so that what is read deep inside can
 * end a calculation with its reason. It never leaves a calculator: that would be a bug of the bundle.
 */
public final class Refusal extends Exception {
    private static final long serialVersionUID = 1;

    private final transient List<Notice> reasons;

    /** @param notice the reason, a stop */
    public Refusal(Notice notice) {
        this(List.of(notice));
    }

    /**
     * @param reasons in the order in which they are told: stops, one at least, and checks that may say more of them
     * @throws IllegalArgumentException when there is none
     */
    public Refusal(List<Notice> reasons) {
        super(reasons.toString());
        if (reasons.isEmpty()) {
            throw new IllegalArgumentException("A refusal has a reason.");
        }
        this.reasons = List.copyOf(reasons);
    }

    /** Why there is no answer: the first reason. */
    public Notice notice() {
        return reasons.get(0);
    }

    /** No answer, for these reasons. */
    public <A> Outcome<A> outcome() {
        return Outcome.refuse(reasons);
    }
}
