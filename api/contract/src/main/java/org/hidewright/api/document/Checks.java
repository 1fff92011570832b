package org.hidewright.api.document;

import java.util.List;
import java.util.Objects;

/** What the maker must look at, each with its reason and what to do next. */
public final class Checks implements Block {
    private final List<Check> checks;

    private Checks(List<Check> checks) {
        this.checks = List.copyOf(checks);
    }

    /** A block of these, in their order. */
    public static Checks of(List<Check> checks) {
        return new Checks(checks);
    }

    /** A block of these, in their order. */
    public static Checks of(Check... checks) {
        return of(List.of(checks));
    }

    /** In the order they are printed. */
    public List<Check> checks() {
        return checks;
    }

    /** One thing to look at. */
    public static final class Check {
        private final Severity severity;
        private final String severityText;
        private final String what;
        private final String why;
        private final String next;

        private Check(Severity severity, String severityText, String what, String why, String next) {
            this.severity = Objects.requireNonNull(severity, "severity");
            this.severityText = Objects.requireNonNull(severityText, "severityText");
            this.what = Objects.requireNonNull(what, "what");
            this.why = Objects.requireNonNull(why, "why");
            this.next = Objects.requireNonNull(next, "next");
        }

        /**
         * A check.
         *
         * @param severityText the severity as a word in the reader's language
         * @param what what is wrong, and where
         * @param why the reason; may be empty
         * @param next what to do; may be empty
         */
        public static Check of(Severity severity, String severityText, String what, String why, String next) {
            return new Check(severity, severityText, what, why, next);
        }

        /** How much it matters. */
        public Severity severity() {
            return severity;
        }

        /** The same in words, as it is printed before the rest. */
        public String severityText() {
            return severityText;
        }

        /** What is the matter. */
        public String what() {
            return what;
        }

        /** Why it matters. */
        public String why() {
            return why;
        }

        /** What to do. */
        public String next() {
            return next;
        }
    }
}
