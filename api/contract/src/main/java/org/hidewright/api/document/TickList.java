package org.hidewright.api.document;

import java.util.List;
import java.util.Objects;

/** Steps in the order of work, each with a box to tick. */
public final class TickList implements Block {
    private final List<Step> steps;

    private TickList(List<Step> steps) {
        this.steps = List.copyOf(steps);
    }

    /** A list of these, in the order they are done. */
    public static TickList of(List<Step> steps) {
        return new TickList(steps);
    }

    /** A list of these, in the order they are done. */
    public static TickList of(Step... steps) {
        return of(List.of(steps));
    }

    /** In the order they are done. */
    public List<Step> steps() {
        return steps;
    }

    /** One thing to do. */
    public static final class Step {
        private final String text;
        private final String detail;

        private Step(String text, String detail) {
            this.text = Objects.requireNonNull(text, "text");
            this.detail = Objects.requireNonNull(detail, "detail");
        }

        /** A step that says all by itself. */
        public static Step of(String text) {
            return new Step(text, "");
        }

        /** @param detail smaller, under the step: tool, time, what to watch */
        public static Step of(String text, String detail) {
            return new Step(text, detail);
        }

        /** What is done. */
        public String text() {
            return text;
        }

        /** How it is done; empty where nothing needs to be said. */
        public String detail() {
            return detail;
        }
    }
}
