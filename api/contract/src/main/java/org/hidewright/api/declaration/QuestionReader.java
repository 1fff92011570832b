package org.hidewright.api.declaration;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Dimension;
import org.hidewright.api.measure.Range;
import org.hidewright.api.measure.Reading;
import org.hidewright.api.measure.Typed;
import org.hidewright.api.measure.TypedText;
import org.hidewright.api.measure.Understood;
import org.hidewright.api.measure.Unit;
import org.hidewright.api.measure.Unreadable;

/** Reads the declaration of questions off an annotated record. */
final class QuestionReader {
    private static final Set<Kind> ANSWERS_ONLY = Set.of(Kind.PHRASE, Kind.DRAWING);

    /** What a text asks for that names what of an item is of one leather. */
    private static final String LEATHERS = "item.leather";

    private static final Pattern FROM = Pattern.compile("[a-z][a-z0-9-]*\\.[a-z][a-z0-9-]*");

    private static final Pattern PICTURE = Pattern.compile("[a-z][a-z0-9-]*(#[a-z][a-z0-9-]*)?");

    private QuestionReader() {}

    /**
     * The questions of a record.
     *
     * @param owner the first part of their label keys: the calculator's id, or the key of a nested record
     */
    static List<Question> questions(Class<?> record, String owner) {
        return questions(record, owner, new Nesting());
    }

    private static List<Question> questions(Class<?> record, String owner, Nesting nesting) {
        nesting.into(record);
        List<Question> questions = new ArrayList<>();
        for (RecordComponent component : record.getRecordComponents()) {
            if (!ComponentType.isRowId(component)) {
                questions.add(question(record, owner, component, nesting));
            }
        }
        Keys.checkDistinct(
                record, "questions", questions.stream().map(Question::key).toList());
        nesting.outOf(record);
        return questions;
    }

    private static Question question(Class<?> record, String owner, RecordComponent component, Nesting nesting) {
        Asked asked = component.getAnnotation(Asked.class);
        if (asked == null) {
            throw new InvalidDeclaration(record, component.getName(), "annotate it with @Asked");
        }
        ComponentType type = ComponentType.of(record, component);
        if (ANSWERS_ONLY.contains(type.itemKind())) {
            throw new InvalidDeclaration(
                    record, component.getName(), "a " + type.itemKind() + " can only be an answer");
        }
        if (type.optional() && !asked.preset().isEmpty()) {
            throw new InvalidDeclaration(
                    record, component.getName(), "with a preset it is never absent: leave Optional out");
        }
        String key = Keys.of(component.getName());
        String where = InvalidDeclaration.where(record, component.getName());
        Unit unit = type.unit(record, component, asked.unit());
        Question question = new Question(
                key,
                owner + "." + key,
                type.kind(),
                type.kind() == Kind.LIST ? type.itemKind() : type.kind(),
                unit,
                type.options(),
                limits(where, type.itemKind(), asked.min(), asked.max(), asked.usual(), unit),
                asked.preset(),
                asked.example(),
                from(where, type.kind(), asked.from()),
                stock(where, type.kind(), asked.stock()),
                picture(where, asked.picture()),
                type.optional(),
                type.itemKind() == Kind.VARIANTS ? variants(type.type(), nesting) : List.of(),
                type.itemKind() == Kind.GROUP ? questions(type.type(), Keys.of(type.type()), nesting) : List.of());
        reserved(record, component, question);
        Exemplar exemplar = new Exemplar(where, question, asked.min(), asked.max());
        exemplar.check(asked.preset());
        exemplar.check(asked.example());
        return question;
    }

    /** Keys that stand beside those of the maker in a row or a variant. */
    private static void reserved(Class<?> record, RecordComponent component, Question question) {
        List<String> inside = question.variants().isEmpty()
                ? question.questions().stream().map(Question::key).toList()
                : question.variants().stream().map(Variant::key).toList();
        if (question.kind() == Kind.ROWS && inside.contains("id")) {
            throw new InvalidDeclaration(record, component.getName(), "the key id is kept for the row's id");
        }
        if (inside.contains("workshop")) {
            throw new InvalidDeclaration(
                    record, component.getName(), "the key workshop is kept for links to the workshop");
        }
        if (!question.variants().isEmpty() && inside.contains("is")) {
            throw new InvalidDeclaration(
                    record, component.getName(), "the key is is kept for saying which variant is chosen");
        }
    }

    private static List<Variant> variants(Class<?> sealed, Nesting nesting) {
        nesting.into(sealed);
        List<Variant> variants = new ArrayList<>();
        for (Class<?> variant : sealed.getPermittedSubclasses()) {
            if (!variant.isRecord()) {
                throw new InvalidDeclaration(sealed, "variant " + variant.getSimpleName() + " must be a record");
            }
            String key = Keys.of(variant);
            variants.add(new Variant(key, Keys.of(sealed) + "." + key, questions(variant, key, nesting)));
        }
        Keys.checkDistinct(
                sealed, "variants", variants.stream().map(Variant::key).toList());
        nesting.outOf(sealed);
        return variants;
    }

    /** Another calculator’s answer, as it is written; an empty text is none. */
    static String from(String where, Kind kind, String text) {
        if (!text.isEmpty()
                && !(kind == Kind.TEXT && text.equals(LEATHERS))
                && (kind.dimension().isEmpty() && kind != Kind.GROUP
                        || !FROM.matcher(text).matches())) {
            throw new InvalidDeclaration(
                    where, "\"" + text + "\" is no answer of a calculator, id.answer, for a single value");
        }
        return text;
    }

    /** The column of a table, as it is written; an empty text is none. */
    static String stock(String where, Kind kind, String text) {
        if (!text.isEmpty() && (!stocked(kind) || !FROM.matcher(text).matches())) {
            throw new InvalidDeclaration(
                    where, "\"" + text + "\" is no column of a workshop’s table, table.column, for a single value");
        }
        return text;
    }

    /** Whether a cell of a table can be such a value. */
    private static boolean stocked(Kind kind) {
        return Written.TYPED.contains(kind) || kind == Kind.MONEY;
    }

    /** A picture, as it is written; an empty text is none. */
    static String picture(String where, String text) {
        if (!text.isEmpty() && !PICTURE.matcher(text).matches()) {
            throw new InvalidDeclaration(where, "\"" + text + "\" is no picture, name or name#part");
        }
        return text;
    }

    /** Limits as they are written; empty texts are none. */
    static Question.Limits limits(String where, Kind itemKind, String min, String max, String usual, Unit unit) {
        Kind limited = itemKind == Kind.SIZE ? Kind.LENGTH : itemKind;
        // an amount of money is limited as a number, whatever its currency
        Optional<Dimension> dimension = limited == Kind.MONEY ? Optional.of(Dimension.NUMBER) : limited.dimension();
        if (dimension.isEmpty()) {
            if (!(min + max + usual).isEmpty()) {
                throw new InvalidDeclaration(where, Keys.of(itemKind.name()) + " has no limits");
            }
            return Question.Limits.NONE;
        }
        OptionalDouble least = limit(where, min, dimension.get(), unit);
        OptionalDouble most = limit(where, max, dimension.get(), unit);
        if (least.isPresent() && most.isPresent() && least.getAsDouble() > most.getAsDouble()) {
            throw new InvalidDeclaration(where, "min " + min + " is above max " + max);
        }
        Range range = usual.isEmpty()
                ? null
                : typed(where, usual, dimension.get(), unit).range();
        return new Question.Limits(least, most, range);
    }

    private static OptionalDouble limit(String where, String text, Dimension dimension, Unit unit) {
        return text.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(typed(where, text, dimension, unit).range().nominal());
    }

    /** Limits that are written the wrong way round are the slip most easily made. */
    private static String turned(Reading<Typed> reading) {
        return reading instanceof Unreadable<Typed> unreadable
                        && unreadable.key().equals("reading.reversed-range")
                ? "; the smaller number stands first"
                : "";
    }

    static Typed typed(String where, String text, Dimension dimension, Unit unit) {
        Reading<Typed> reading = TypedText.quantity(text, dimension, Optional.ofNullable(unit));
        if (reading instanceof Understood<Typed> understood) {
            return understood.value();
        }
        throw new InvalidDeclaration(
                where, "\"" + text + "\" cannot be read as " + Keys.of(dimension.name()) + turned(reading));
    }
}
