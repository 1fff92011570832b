package org.hidewright.core.proof;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Values;

/** What was asked, as it would be typed behind {@code hidewright work ID}, so that an author can ask it again. */
final class AskedAgain {
    private final List<Question> questions;
    private final Values example;

    AskedAgain(List<Question> questions, Values example) {
        this.questions = questions;
        this.example = example;
    }

    /** What is not as in the example; what has no preset always, since it has to be typed. */
    String of(Values asked) {
        return questions.stream()
                .filter(question -> question.preset().isEmpty()
                        || !asked.get(question.key()).equals(example.get(question.key())))
                .map(question -> question.key() + "=" + quoted(typed(asked.get(question.key()))))
                .collect(Collectors.joining(" "));
    }

    private static String typed(Optional<Object> value) {
        return value.map(given -> given instanceof Boolean yes ? (yes ? "yes" : "no") : String.valueOf(given))
                .orElse("");
    }

    private static String quoted(String typed) {
        return typed.matches("[A-Za-z0-9.-]+") ? typed : "\"" + typed + "\"";
    }
}
