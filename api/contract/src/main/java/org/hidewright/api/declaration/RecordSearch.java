package org.hidewright.api.declaration;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.hidewright.api.calculator.Budget;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Search;

/** A {@link Search} of records, its question found among those of its calculator. */
final class RecordSearch implements DeclaredSearch {
    private final Search<Record, Record> search;
    private final Class<?> questions;
    private final Class<?> found;
    private final Question sought;

    private RecordSearch(Search<Record, Record> search, Class<?> questions, Class<?> found, Question sought) {
        this.search = search;
        this.questions = questions;
        this.found = found;
        this.sought = sought;
    }

    /**
     * The search of a calculator; empty where it has none.
     *
     * @param questions the question record of the calculator
     * @throws InvalidDeclaration if it searches for what it does not ask, or for other questions
     */
    static Optional<RecordSearch> of(Calculator<?, ?> calculator, Class<?> questions, List<Question> declared) {
        if (!(calculator instanceof Search<?, ?>)) {
            return Optional.empty();
        }
        Class<?> type = calculator.getClass();
        List<Class<?>> records = records(type);
        if (records.get(0) != questions) {
            throw new InvalidDeclaration(
                    type,
                    "it searches with " + records.get(0).getSimpleName() + " and calculates with "
                            + questions.getSimpleName() + "; let it be the same record");
        }
        Class<?> found = records.get(1);
        List<RecordComponent> sought = Arrays.stream(questions.getRecordComponents())
                .filter(component -> component.getType() == Optional.class
                        && ComponentType.of(questions, component).type() == found
                        && ComponentType.of(questions, component).kind() == Kind.GROUP)
                .toList();
        if (sought.size() != 1) {
            throw new InvalidDeclaration(
                    questions,
                    "let one component, and one alone, be an Optional<" + found.getSimpleName()
                            + ">, where what the search finds is kept");
        }
        String key = Keys.of(sought.get(0).getName());
        Question question = declared.stream()
                .filter(asked -> asked.key().equals(key))
                .findFirst()
                .orElseThrow();
        @SuppressWarnings("unchecked") // the records were just read off its type arguments
        Search<Record, Record> ofRecords = (Search<Record, Record>) calculator;
        return Optional.of(new RecordSearch(ofRecords, questions, found, question));
    }

    private static List<Class<?>> records(Class<?> type) {
        for (Type implemented : type.getGenericInterfaces()) {
            if (implemented instanceof ParameterizedType parameterized && parameterized.getRawType() == Search.class) {
                Type[] arguments = parameterized.getActualTypeArguments();
                if (arguments[0] instanceof Class<?> asked && arguments[1] instanceof Class<?> found) {
                    return List.of(asked, found);
                }
            }
        }
        throw new InvalidDeclaration(type, "implement Search<Questions, Found> directly, with its two record classes");
    }

    @Override
    public Question sought() {
        return sought;
    }

    @Override
    public void search(Values values, Budget budget, Consumer<Values> better) {
        search.search(RecordBinder.of(questions).bind(values), budget, record -> {
            if (record == null || record.getClass() != found) {
                throw new IllegalStateException("found " + record + ", and declared is " + found.getName());
            }
            better.accept(RecordBinder.of(found).take(record));
        });
    }
}
