package org.hidewright.api.declaration;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;

/** A {@link Calculator} of records, its declaration derived and checked. */
public final class RecordCalculator implements DeclaredCalculator {
    private final Calculator<Record, Record> calculator;
    private final Class<?> questions;
    private final Class<?> answers;
    private final Declaration declaration;
    private final Texts texts;
    private final QuestionPictures pictures;
    private final Optional<RecordSearch> search;

    private RecordCalculator(
            Calculator<Record, Record> calculator,
            Class<?> questions,
            Class<?> answers,
            Declaration declaration,
            Texts texts,
            QuestionPictures pictures,
            Optional<RecordSearch> search) {
        this.calculator = calculator;
        this.questions = questions;
        this.answers = answers;
        this.declaration = declaration;
        this.texts = texts;
        this.pictures = pictures;
        this.search = search;
    }

    /**
     * Derives the declaration of a calculator.
     *
     * @throws InvalidDeclaration if its annotations or records cannot be one; the message says where and why
     */
    public static RecordCalculator of(Calculator<?, ?> calculator) {
        Class<?> type = calculator.getClass();
        Calculates calculates = type.getAnnotation(Calculates.class);
        if (calculates == null) {
            throw new InvalidDeclaration(type, "annotate it with @Calculates(\"its-id\")");
        }
        Keys.checkId(type, calculates.value());
        if (calculates.version() < 1) {
            throw new InvalidDeclaration(type, "a version is 1 or more, not " + calculates.version());
        }
        Type[] records = typeArguments(type);
        Class<?> questions = (Class<?>) records[0];
        Class<?> answers = (Class<?>) records[1];
        Declaration declaration = new Declaration(
                calculates.value(),
                calculates.version(),
                QuestionReader.questions(questions, calculates.value()),
                AnswerReader.answers(answers, calculates.value() + ".answer"),
                calculator.formulas(),
                calculator.notices(),
                calculator.phrases(),
                calculator.sources());
        checkSources(type, declaration);
        List<Class<?>> homes = QuestionTexts.homes(type, questions);
        QuestionPictures pictures = new QuestionPictures(homes);
        pictures.check(type, declaration.questions());
        @SuppressWarnings("unchecked") // the records were just read off its type arguments
        Calculator<Record, Record> ofRecords = (Calculator<Record, Record>) calculator;
        return new RecordCalculator(
                ofRecords,
                questions,
                answers,
                declaration,
                QuestionTexts.of(homes),
                pictures,
                RecordSearch.of(calculator, questions, declaration.questions()));
    }

    private static Type[] typeArguments(Class<?> type) {
        for (Type implemented : type.getGenericInterfaces()) {
            if (implemented instanceof ParameterizedType
                    && ((ParameterizedType) implemented).getRawType() == Calculator.class) {
                Type[] arguments = ((ParameterizedType) implemented).getActualTypeArguments();
                if (arguments[0] instanceof Class<?> && arguments[1] instanceof Class<?>) {
                    return arguments;
                }
            }
        }
        throw new InvalidDeclaration(
                type, "implement Calculator<Questions, Answers> directly, with its two record classes");
    }

    /** All that are wrong are told, so that they are mended at once. */
    private static void checkSources(Class<?> type, Declaration declaration) {
        List<String> wrong = declaration.answers().stream()
                .filter(answer ->
                        answer.by().isPresent() && declaration.sourceOf(answer).isEmpty())
                .map(answer -> "the answer " + answer.key() + " has by = \""
                        + answer.by().get() + "\", and no formula or source is called so")
                .toList();
        if (!wrong.isEmpty()) {
            String known = Stream.concat(
                            declaration.formulas().stream().map(Formula::key),
                            declaration.sources().stream().map(Source::key))
                    .distinct()
                    .collect(Collectors.joining(", "));
            throw new InvalidDeclaration(
                    type,
                    String.join("; ", wrong) + ". Write the key of one that is listed in formulas() or sources() ("
                            + (known.isEmpty() ? "there is none yet" : known) + "), or list the one you mean");
        }
    }

    @Override
    public Declaration declaration() {
        return declaration;
    }

    @Override
    public Outcome<Values> work(Values values, Working working) {
        Record bound = RecordBinder.of(questions).bind(Objects.requireNonNull(values, "values"));
        Outcome<Record> outcome = calculator.calculate(bound, working);
        if (outcome == null) {
            throw new IllegalStateException("calculate gave null where an outcome belongs");
        }
        return outcome.map(this::taken);
    }

    private Values taken(Record record) {
        if (record.getClass() != answers) {
            throw new IllegalStateException(
                    "answered with " + record.getClass().getName() + ", and declared is " + answers.getName());
        }
        return RecordBinder.of(answers).take(record);
    }

    @Override
    public Texts texts() {
        return texts;
    }

    @Override
    public Optional<String> picture(String name) {
        return pictures.text(name);
    }

    @Override
    public Optional<DeclaredSearch> search() {
        return search.map(DeclaredSearch.class::cast);
    }
}
