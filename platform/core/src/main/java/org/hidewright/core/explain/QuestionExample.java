package org.hidewright.core.explain;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Variant;
import org.hidewright.core.json.JsonOut;
import org.hidewright.core.wording.UnitSystem;

/** Examples as they would stand in a project file. */
public final class QuestionExample {
    private QuestionExample() {}

    /** An example for all questions that have one and are not simply preset; together they run. */
    static Map<String, Object> all(List<Question> questions) {
        Map<String, Object> example = new LinkedHashMap<>();
        for (Question question : questions) {
            example(question).ifPresent(value -> example.put(question.key(), value));
        }
        return example;
    }

    /** What a maker could write there, in one line; empty where nothing can be made up. */
    public static Optional<String> line(Question question) {
        return made(question).map(JsonOut::line);
    }

    /** The example a question gives itself, as it would stand in a project file of somebody who sees these units. */
    public static Optional<Object> given(Question question, UnitSystem system) {
        return new ExampleInUnits(system).of(question).map(text -> asJson(question, text));
    }

    /** The example given; where what holds others has none, it is made of those inside: the first variant, one row. */
    private static Optional<Object> example(Question question) {
        return question.example().isEmpty() && question.optional() ? Optional.empty() : made(question);
    }

    private static Optional<Object> made(Question question) {
        return given(question, UnitSystem.METRIC).or(() -> Optional.ofNullable(inside(question)));
    }

    private static Object inside(Question question) {
        return switch (question.kind()) {
            case GROUP -> all(question.questions());
            case VARIANTS -> first(question);
            case ROWS -> List.of(question.variants().isEmpty() ? all(question.questions()) : first(question));
            case ITEM -> Map.of("from", "…", "answer", "item");
            default -> null;
        };
    }

    private static Map<String, Object> first(Question question) {
        Variant variant = question.variants().get(0);
        return Map.of(variant.key(), all(variant.questions()));
    }

    /** A preset or example: tables, groups and variants are JSON already, anything else is a typed text. */
    static Object asJson(Question question, String text) {
        boolean json =
                question.kind() == Kind.ROWS || question.kind() == Kind.GROUP || question.kind() == Kind.VARIANTS;
        return json ? new JsonOut.Raw(text) : text;
    }
}
