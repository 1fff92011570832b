package org.hidewright.api.trials;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Values;

/** A typical answer to each question: its example, or its preset where it has none. */
public interface Typical {
    /** The answer to one question, of the type its kind names. */
    Object typical(Question question);

    /** Every question with its typical answer. */
    default Values all(List<Question> questions) {
        Map<String, Object> values = new LinkedHashMap<>();
        questions.forEach(question -> values.put(question.key(), typical(question)));
        return Values.of(values);
    }
}
