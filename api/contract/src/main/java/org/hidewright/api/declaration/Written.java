package org.hidewright.api.declaration;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.measure.Unit;

/**
 * Declarations that are written down as a text and not derived from records, for a host that reads calculators without Java.
 *
 * <p>Attributes stand under the names they have in {@link org.hidewright.api.calculator.Asked} and
 * {@link org.hidewright.api.calculator.Answered}, as they would be typed there; one that is not given is empty.
 */
public final class Written {
    /** What a question can say of itself. */
    public static final Set<String> ASKED =
            Set.of("unit", "min", "max", "usual", "preset", "example", "from", "stock", "picture");

    /** What an answer can say of itself. */
    public static final Set<String> ANSWERED = Set.of("unit", "step", "round", "by");

    /** Kinds that are one value and typed as one text. */
    public static final Set<Kind> TYPED = Set.of(
            Kind.LENGTH,
            Kind.ANGLE,
            Kind.AREA,
            Kind.MASS,
            Kind.DENSITY,
            Kind.VOLUME,
            Kind.DURATION,
            Kind.COUNT,
            Kind.RATIO,
            Kind.CHOICE,
            Kind.FLAG,
            Kind.TEXT);

    private Written() {}

    /**
     * A question of one value.
     *
     * @param owner the first part of its label key
     * @param kind one of {@link #TYPED}
     * @param attributes of {@link #ASKED}
     * @param options of a choice, its keys; else none
     * @throws InvalidDeclaration if an attribute cannot be read or contradicts another
     */
    public static Question question(
            String owner, String key, Kind kind, Map<String, String> attributes, List<String> options) {
        return question(owner, key, kind, attributes, options, false);
    }

    /**
     * A column of a table of the workshop: a row may leave it open, unless it has a preset.
     *
     * @param owner id of the table
     * @param kind one of {@link #TYPED}
     * @param attributes of {@link #ASKED}
     * @param options of a choice, its keys; else none
     * @throws InvalidDeclaration if an attribute cannot be read or contradicts another
     */
    public static Question column(
            String owner, String key, Kind kind, Map<String, String> attributes, List<String> options) {
        return question(
                owner,
                key,
                kind,
                attributes,
                options,
                attributes.getOrDefault("preset", "").isEmpty());
    }

    private static Question question(
            String owner,
            String key,
            Kind kind,
            Map<String, String> attributes,
            List<String> options,
            boolean optional) {
        if (!TYPED.contains(kind)) {
            throw new InvalidDeclaration(key, Keys.of(kind.name()) + " is not one value");
        }
        if ((kind == Kind.CHOICE) == options.isEmpty()) {
            throw new InvalidDeclaration(key, "a choice, and nothing else, has options");
        }
        String label = owner + "." + key;
        String min = attributes.getOrDefault("min", "");
        String max = attributes.getOrDefault("max", "");
        String preset = attributes.getOrDefault("preset", "");
        String example = attributes.getOrDefault("example", "");
        Unit unit = ComponentType.unit(key, kind, attributes.getOrDefault("unit", ""));
        Question question = new Question(
                key,
                label,
                kind,
                kind,
                unit,
                options.stream()
                        .map(option -> new Option(option, label + "." + option))
                        .toList(),
                QuestionReader.limits(key, kind, min, max, attributes.getOrDefault("usual", ""), unit),
                preset,
                example,
                QuestionReader.from(key, kind, attributes.getOrDefault("from", "")),
                QuestionReader.stock(key, kind, attributes.getOrDefault("stock", "")),
                QuestionReader.picture(key, attributes.getOrDefault("picture", "")),
                optional,
                List.of(),
                List.of());
        Exemplar exemplar = new Exemplar(key, question, min, max);
        exemplar.check(preset);
        exemplar.check(example);
        return question;
    }

    /**
     * An answer of one value.
     *
     * @param owner the first part of its label key
     * @param kind one of {@link #TYPED}, but no choice
     * @param attributes of {@link #ANSWERED}
     * @throws InvalidDeclaration if an attribute cannot be read or contradicts another
     */
    public static Answer answer(String owner, String key, Kind kind, Map<String, String> attributes, boolean lead) {
        if (!TYPED.contains(kind) || kind == Kind.CHOICE) {
            throw new InvalidDeclaration(key, "no answer is a " + Keys.of(kind.name()));
        }
        Unit unit = ComponentType.unit(key, kind, attributes.getOrDefault("unit", ""));
        String step = attributes.getOrDefault("step", "");
        return new Answer(
                key,
                owner + "." + key,
                kind,
                kind,
                unit,
                List.of(),
                false,
                step.isEmpty() ? 0 : AnswerReader.step(key, kind, step, unit),
                rounding(key, attributes.getOrDefault("round", "nearest")),
                attributes.getOrDefault("by", ""),
                lead,
                "",
                false,
                List.of());
    }

    private static Rounding rounding(String key, String word) {
        for (Rounding rounding : Rounding.values()) {
            if (Keys.of(rounding.name()).equals(word)) {
                return rounding;
            }
        }
        throw new InvalidDeclaration(key, "\"" + word + "\" is no way to round");
    }

    /** An answer that is the item to make. */
    public static Answer item(String owner, String key) {
        return new Answer(
                key,
                owner + "." + key,
                Kind.ITEM,
                Kind.ITEM,
                null,
                List.of(),
                false,
                0,
                Rounding.NEAREST,
                "",
                false,
                "",
                false,
                AnswerReader.ofItem());
    }

    /**
     * All there is to know of a calculator.
     *
     * @throws InvalidDeclaration if the id is none, the version is below 1, or a key stands twice
     */
    public static Declaration declaration(
            String id,
            int version,
            List<Question> questions,
            List<Answer> answers,
            List<Formula> formulas,
            List<NoticeKind> notices,
            List<Source> sources) {
        Objects.requireNonNull(id, "id");
        Keys.checkId(Written.class, id);
        if (version < 1) {
            throw new InvalidDeclaration(id, "a version is 1 or more, not " + version);
        }
        Keys.checkDistinct(
                Written.class,
                "questions",
                questions.stream().map(Question::key).toList());
        Keys.checkDistinct(
                Written.class, "answers", answers.stream().map(Answer::key).toList());
        return new Declaration(id, version, questions, answers, formulas, notices, List.of(), sources);
    }
}
