package org.hidewright.api.declaration;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hidewright.api.measure.Range;
import org.hidewright.api.measure.Unit;

/** One declared question. */
public final class Question extends Field {
    /** Hard and usual limits in base units; any part may be absent. */
    static final class Limits {
        static final Limits NONE = new Limits(OptionalDouble.empty(), OptionalDouble.empty(), null);
        final OptionalDouble min;
        final OptionalDouble max;
        final Range usual;

        Limits(OptionalDouble min, OptionalDouble max, Range usual) {
            this.min = min;
            this.max = max;
            this.usual = usual;
        }
    }

    private final Limits limits;
    private final String preset;
    private final String example;
    private final String from;
    private final String stock;
    private final String picture;
    private final boolean optional;
    private final List<Variant> variants;
    private final List<Question> questions;

    Question(
            String key,
            String labelKey,
            Kind kind,
            Kind itemKind,
            Unit unit,
            List<Option> options,
            Limits limits,
            String preset,
            String example,
            String from,
            String stock,
            String picture,
            boolean optional,
            List<Variant> variants,
            List<Question> questions) {
        super(key, labelKey, kind, itemKind, unit, options);
        this.limits = limits;
        this.preset = preset;
        this.example = example;
        this.from = from;
        this.stock = stock;
        this.picture = picture;
        this.optional = optional;
        this.variants = List.copyOf(variants);
        this.questions = List.copyOf(questions);
    }

    /** Hard lower limit in base units, itself allowed. */
    public OptionalDouble min() {
        return limits.min;
    }

    /** Hard upper limit in base units, itself allowed. */
    public OptionalDouble max() {
        return limits.max;
    }

    /** Usual limits in base units. */
    public Optional<Range> usual() {
        return Optional.ofNullable(limits.usual);
    }

    /** What is taken when nothing is typed, as it would be typed. */
    public Optional<String> preset() {
        return preset.isEmpty() ? Optional.empty() : Optional.of(preset);
    }

    /** A typical answer: the example given, else the preset. */
    public Optional<String> example() {
        return example.isEmpty() ? preset() : Optional.of(example);
    }

    /** The answer of another calculator that suits it, {@code id.answer}; of a group, which of its ways to begin with. */
    public Optional<String> from() {
        return from.isEmpty() ? Optional.empty() : Optional.of(from);
    }

    /** The column of a workshop’s table that suits it, {@code table.column}. */
    public Optional<String> stock() {
        return stock.isEmpty() ? Optional.empty() : Optional.of(stock);
    }

    /** The drawing of what is measured, {@code name} or {@code name#part}. */
    public Optional<String> picture() {
        return picture.isEmpty() ? Optional.empty() : Optional.of(picture);
    }

    /** Whether it may stay unanswered although it has no preset. */
    public boolean optional() {
        return optional;
    }

    /** For {@link Kind#VARIANTS}, and for {@link Kind#ROWS} whose rows are variants: what can be chosen. */
    public List<Variant> variants() {
        return variants;
    }

    /** For {@link Kind#GROUP}, and for {@link Kind#ROWS} whose rows are all alike: the questions inside. */
    public List<Question> questions() {
        return questions;
    }
}
