package org.hidewright.api.document;

import java.util.List;
import java.util.Objects;

/** How answers were worked out, line by line. */
public final class Working implements Block {
    private final List<Line> lines;

    private Working(List<Line> lines) {
        this.lines = List.copyOf(lines);
    }

    /** A working of these lines. */
    public static Working of(List<Line> lines) {
        return new Working(lines);
    }

    /** A working of these lines. */
    public static Working of(Line... lines) {
        return of(List.of(lines));
    }

    /** In the order they were worked. */
    public List<Line> lines() {
        return lines;
    }

    /** One formula in symbols, with the numbers put in, its result and where it comes from. */
    public static final class Line {
        private final String what;
        private final String formula;
        private final String numbers;
        private final String result;
        private final String source;

        private Line(String what, String formula, String numbers, String result, String source) {
            this.what = Objects.requireNonNull(what, "what");
            this.formula = Objects.requireNonNull(formula, "formula");
            this.numbers = Objects.requireNonNull(numbers, "numbers");
            this.result = Objects.requireNonNull(result, "result");
            this.source = Objects.requireNonNull(source, "source");
        }

        /**
         * A line.
         *
         * @param what name of what is worked out
         * @param formula in symbols: {@code L = α · (r + k · t)}
         * @param numbers the same with numbers: {@code π · (1.5 + 0.5 · 2.4)}; empty where there is nothing to put in
         * @param result with its unit
         * @param source where the formula comes from; empty if it is said elsewhere
         */
        public static Line of(String what, String formula, String numbers, String result, String source) {
            return new Line(what, formula, numbers, result, source);
        }

        /** What was worked out. */
        public String what() {
            return what;
        }

        /** The formula in symbols; empty for a line without one. */
        public String formula() {
            return formula;
        }

        /** The same with the numbers put in. */
        public String numbers() {
            return numbers;
        }

        /** What came of it. */
        public String result() {
            return result;
        }

        /** Where the formula comes from. */
        public String source() {
            return source;
        }
    }
}
