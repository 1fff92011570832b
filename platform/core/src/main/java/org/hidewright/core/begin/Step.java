package org.hidewright.core.begin;

import java.util.List;

/**
 * A step of beginning a project.
 *
 * @param kind what it is about
 * @param asked what is to be answered in it
 * @param more what stands at its usual answer, or can stay open
 */
public record Step(Kind kind, List<Asked> asked, List<Asked> more) {
    public Step {
        asked = List.copyOf(asked);
        more = List.copyOf(more);
    }

    /** What a step is about, in the order they come. */
    public enum Kind {
        /** What is made. */
        PIECE,
        /** How large it is. */
        SIZE,
        /** How it is made: what is chosen rather than measured. */
        MADE,
        /** What the workshop has for it. */
        STOCK,
        /** What is worked out from it. */
        FOLLOWS
    }

    /**
     * A question of a slip, with all that is inside it.
     *
     * @param slip id of the slip
     * @param question its key
     */
    public record Asked(String slip, String question) {}

    boolean isEmpty() {
        return asked.isEmpty() && more.isEmpty();
    }
}
