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

    public static JobView of(String project, Locale language, List<Slip> slips) {
        return new JobView(project, language, slips);
    }

    public String project() {
        return project;
    }

    public Locale language() {
        return language;
    }

    /** In the order of the project. */
    public List<Slip> slips() {
        return slips;
    }

    public Optional<Slip> slip(String id) {
        return slips.stream().filter(slip -> slip.id().equals(id)).findFirst();
    }

    /** Where a slip stands. More may be added. */
    public enum State {
        WORKED,
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
        private final Map<String, Answer> answers;
        private final List<Checks.Check> notices;

        private Slip(Builder from) {
            id = from.id;
            calculatorId = from.calculatorId;
            title = from.title;
            state = from.state;
            answers = Collections.unmodifiableMap(new LinkedHashMap<>(from.answers));
            notices = List.copyOf(from.notices);
        }

        public static Builder of(String id, String calculatorId, String title, State state) {
            return new Builder(id, calculatorId, title, state);
        }

        public String id() {
            return id;
        }

        public String calculatorId() {
            return calculatorId;
        }

        public String title() {
            return title;
        }

        public State state() {
            return state;
        }

        /** Answers by key, in the calculator's order; empty unless worked. */
        public Map<String, Answer> answers() {
            return answers;
        }

        public List<Checks.Check> notices() {
            return notices;
        }

        /** Not for use by several threads. */
        public static final class Builder {
            private final String id;
            private final String calculatorId;
            private final String title;
            private final State state;
            private final Map<String, Answer> answers = new LinkedHashMap<>();
            private final List<Checks.Check> notices = new ArrayList<>();

            private Builder(String id, String calculatorId, String title, State state) {
                this.id = Objects.requireNonNull(id, "id");
                this.calculatorId = Objects.requireNonNull(calculatorId, "calculatorId");
                this.title = Objects.requireNonNull(title, "title");
                this.state = Objects.requireNonNull(state, "state");
            }

            public Builder answer(String key, Answer answer) {
                answers.put(Objects.requireNonNull(key, "key"), Objects.requireNonNull(answer, "answer"));
                return this;
            }

            public Builder notice(Checks.Check notice) {
                notices.add(Objects.requireNonNull(notice, "notice"));
                return this;
            }

            public Slip build() {
                return new Slip(this);
            }
        }
    }

    /** One answer, as it is shown and as a number. */
    public static final class Answer {
        private final String label;
        private final String value;
        private final String unit;
        private final OptionalDouble number;

        private Answer(String label, String value, String unit, OptionalDouble number) {
            this.label = Objects.requireNonNull(label, "label");
            this.value = Objects.requireNonNull(value, "value");
            this.unit = Objects.requireNonNull(unit, "unit");
            this.number = Objects.requireNonNull(number, "number");
        }

        /** An answer in words. */
        public static Answer text(String label, String value) {
            return new Answer(label, value, "", OptionalDouble.empty());
        }

        /** @param number in the base unit of its dimension: mm, rad, mm², g */
        public static Answer number(String label, String value, String unit, double number) {
            return new Answer(label, value, unit, OptionalDouble.of(number));
        }

        public String label() {
            return label;
        }

        public String value() {
            return value;
        }

        public String unit() {
            return unit;
        }

        /** The number in the base unit of its dimension, where the answer is one. */
        public OptionalDouble number() {
            return number;
        }
    }
}
