package org.hidewright.core.explain;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.core.json.JsonOut;

/** Examples as they would stand in a project file. */
final class QuestionExample {
    private QuestionExample() {}

    /** An example for all questions that have one and are not simply preset; together they run. */
    static Map<String, Object> all(List<Question> questions) {
        Map<String, Object> example = new LinkedHashMap<>();
        for (Question question : questions) {
            question.example().ifPresent(text -> example.put(question.key(), asJson(question, text)));
        }
        return example;
    }

    /** A preset or example: tables, groups and variants are JSON already, anything else is a typed text. */
    static Object asJson(Question question, String text) {
        boolean json =
                question.kind() == Kind.ROWS || question.kind() == Kind.GROUP || question.kind() == Kind.VARIANTS;
        return json && (text.startsWith("{") || text.startsWith("[")) ? new JsonOut.Raw(text) : text;
    }
}
