package org.hidewright.api.document;

import java.util.List;
import java.util.Objects;

/** What the maker must look at, each with its reason and what to do next. */
public final class Checks implements Block {
    private final List<Check> checks;

    private Checks(List<Check> checks) {
        this.checks = List.copyOf(checks);
    }

    public static Checks of(List<Check> checks) {
        return new Checks(checks);
    }

    public static Checks of(Check... checks) {
        return of(List.of(checks));
    }

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

        public Severity severity() {
            return severity;
        }

        public String severityText() {
            return severityText;
        }

        public String what() {
            return what;
        }

        public String why() {
            return why;
        }

        public String next() {
            return next;
        }
    }
}
