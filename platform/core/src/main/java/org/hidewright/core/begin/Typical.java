package org.hidewright.core.begin;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Variant;
import org.hidewright.core.explain.QuestionExample;
import org.hidewright.core.wording.UnitSystem;

/** Answers to begin with where nothing is preset: the example a question gives, so that there is a piece to look at at once. */
final class Typical {
    private final UnitSystem system;

    /** @param system the units that are seen */
    Typical(UnitSystem system) {
        this.system = system;
    }

    /** Answers to all of several questions that have no preset and have to be answered. */
    Map<String, Object> answers(List<Question> questions) {
        Map<String, Object> answers = new LinkedHashMap<>();
        questions.forEach(question -> answer(question).ifPresent(answer -> answers.put(question.key(), answer)));
        return answers;
    }

    /** The same, and of several ways to answer one of them that is wanted, where it is among them. */
    Map<String, Object> answers(List<Question> questions, Optional<String> way) {
        Map<String, Object> answers = answers(questions);
        for (Question question : questions) {
            question.variants().stream()
                    .filter(variant -> question.kind() == Kind.VARIANTS)
                    .filter(variant -> way.filter(variant.key()::equals).isPresent())
                    .forEach(variant ->
                            answers.put(question.key(), Map.of(variant.key(), answers(variant.questions()))));
        }
        return answers;
    }

    /** An answer, as it stands in a project file; none for what need not be answered, and for what can only be linked. */
    Optional<Object> answer(Question question) {
        if (question.preset().isPresent() || question.optional()) {
            return Optional.empty();
        }
        return QuestionExample.given(question, system).or(() -> Optional.ofNullable(inside(question)));
    }

    private Object inside(Question question) {
        return switch (question.kind()) {
            case GROUP -> answers(question.questions());
            case VARIANTS -> {
                Variant first = question.variants().get(0);
                yield Map.of(first.key(), answers(first.questions()));
            }
            case CHOICE -> question.options().get(0).key();
            case FLAG -> "no";
            default -> null;
        };
    }
}
