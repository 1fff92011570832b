package org.hidewright.api.document;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a contributor may see of a job: the project's name and its slips with their answers, ready to print. */
public final class JobView {
    private final String project;
    private final Locale language;
    private final List<Slip> slips;

    private JobView(String project, Locale language, List<Slip> slips) {
        this.project = Objects.requireNonNull(project, "project");
        this.language = Objects.requireNonNull(language, "language");
        this.slips = List.copyOf(slips);
    }

    /** A job as it is shown to whoever adds to its papers. */
    public static JobView of(String project, Locale language, List<Slip> slips) {
        return new JobView(project, language, slips);
    }

    /** The name of the project. */
    public String project() {
        return project;
    }

    /** The language that sections are asked for in. */
    public Locale language() {
        return language;
    }

    /** In the order of the project. */
    public List<Slip> slips() {
        return slips;
    }

    /** The slips of one calculator that have answers, in the order of the project; nobody works by an old number. */
    public List<Slip> worked(String calculatorId) {
        return slips.stream()
                .filter(slip -> slip.state() == State.WORKED)
                .filter(slip -> slip.calculatorId().equals(calculatorId))
                .toList();
    }

    /** The slip with an id; empty where there is none. */
    public Optional<Slip> slip(String id) {
        return slips.stream().filter(slip -> slip.id().equals(id)).findFirst();
    }

    /** Where a slip stands. More may be added. */
    public enum State {
        /** It has answers. */
        WORKED,
        /** It was refused; the notices say why. */
        REFUSED,
        /** Waits for the answer of another slip. */
        WAITING,
        /** Its bundle is not there. */
        DORMANT
    }

    /** One calculation of the job. */
    public static final class Slip {
        private final String id;
        private final String calculatorId;
        private final String title;
        private final State state;
        private final Map<String, Answer> questions;
        private final Map<String, Answer> answers;
        private final List<Checks.Check> notices;

        private Slip(Builder from) {
            id = from.id;
            calculatorId = from.calculatorId;
            title = from.title;
            state = from.state;
            questions = Collections.unmodifiableMap(new LinkedHashMap<>(from.questions));
            answers = Collections.unmodifiableMap(new LinkedHashMap<>(from.answers));
            notices = List.copyOf(from.notices);
        }

        /** A slip to be put together. */
        public static Builder of(String id, String calculatorId, String title, State state) {
            return new Builder(id, calculatorId, title, state);
        }

        /** Its id in the project. */
        public String id() {
            return id;
        }

        /** Id of the calculator that it asks. */
        public String calculatorId() {
            return calculatorId;
        }

        /** What it is called. */
        public String title() {
            return title;
        }

        /** How it stands. */
        public State state() {
            return state;
        }

        /** What it was worked from by key, in the calculator's order; empty unless worked. */
        public Map<String, Answer> questions() {
            return questions;
        }

        /** Answers by key, in the calculator's order; empty unless worked. */
        public Map<String, Answer> answers() {
            return answers;
        }

        /** What is told of it, in words. */
        public List<Checks.Check> notices() {
            return notices;
        }

        /** Not for use by several threads. */
        public static final class Builder {
            private final String id;
            private final String calculatorId;
            private final String title;
            private final State state;
            private final Map<String, Answer> questions = new LinkedHashMap<>();
            private final Map<String, Answer> answers = new LinkedHashMap<>();
            private final List<Checks.Check> notices = new ArrayList<>();

            private Builder(String id, String calculatorId, String title, State state) {
                this.id = Objects.requireNonNull(id, "id");
                this.calculatorId = Objects.requireNonNull(calculatorId, "calculatorId");
                this.title = Objects.requireNonNull(title, "title");
                this.state = Objects.requireNonNull(state, "state");
            }

            /** Adds what was asked, with what it was worked from. */
            public Builder question(String key, Answer asked) {
                questions.put(Objects.requireNonNull(key, "key"), Objects.requireNonNull(asked, "asked"));
                return this;
            }

            /** Adds an answer. */
            public Builder answer(String key, Answer answer) {
                answers.put(Objects.requireNonNull(key, "key"), Objects.requireNonNull(answer, "answer"));
                return this;
            }

            /** Adds something that is told. */
            public Builder notice(Checks.Check notice) {
                notices.add(Objects.requireNonNull(notice, "notice"));
                return this;
            }

            /** The slip as it was put together. */
            public Slip build() {
                return new Slip(this);
            }
        }
    }

    /** One answer, or one question with what it was given, as it is shown, as a number and as rows. */
    public static final class Answer {
        private final String label;
        private final String value;
        private final String unit;
        private final OptionalDouble number;
        private final List<Row> rows;

        private Answer(String label, String value, String unit, OptionalDouble number, List<Row> rows) {
            this.label = Objects.requireNonNull(label, "label");
            this.value = Objects.requireNonNull(value, "value");
            this.unit = Objects.requireNonNull(unit, "unit");
            this.number = Objects.requireNonNull(number, "number");
            this.rows = List.copyOf(rows);
        }

        /** An answer in words. */
        public static Answer text(String label, String value) {
            return new Answer(label, value, "", OptionalDouble.empty(), List.of());
        }

        /**
         * A number.
         *
         * @param unit empty where the value is written with it
         * @param number in the base unit of its dimension: mm, rad, mm², g; an amount of money in its currency
         */
        public static Answer number(String label, String value, String unit, double number) {
            return new Answer(label, value, unit, OptionalDouble.of(number), List.of());
        }

        /**
         * A table.
         *
         * @param value how it is told in a line
         */
        public static Answer rows(String label, String value, List<Row> rows) {
            return new Answer(label, value, "", OptionalDouble.empty(), rows);
        }

        /** What it is, in the language asked for. */
        public String label() {
            return label;
        }

        /** The value as it is printed. */
        public String value() {
            return value;
        }

        /** Its unit as it is printed; empty where it has none. */
        public String unit() {
            return unit;
        }

        /** The value with its unit, as it stands in a line of text; they do not part at its end. */
        public String inline() {
            return unit.isEmpty() ? value : value + "\u00A0" + unit;
        }

        /** The number in the base unit of its dimension, where the answer is one. */
        public OptionalDouble number() {
            return number;
        }

        /** The rows in their order, where the answer is a table; else empty. */
        public List<Row> rows() {
            return rows;
        }
    }

    /** A row of a table. */
    public static final class Row {
        private final String id;
        private final Map<String, Answer> cells;

        private Row(String id, Map<String, Answer> cells) {
            this.id = Objects.requireNonNull(id, "id");
            this.cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
        }

        /** @param cells by the key of their column, in the order of the columns; a column that holds nothing is left out */
        public static Row of(String id, Map<String, Answer> cells) {
            return new Row(id, cells);
        }

        /** The stable name of the row; empty where it has none. */
        public String id() {
            return id;
        }

        /** The cells by the keys of their columns. */
        public Map<String, Answer> cells() {
            return cells;
        }
    }
}
