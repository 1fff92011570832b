package org.hidewright.core.template;

import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.declaration.Question;
import org.hidewright.core.expression.Expression;
import org.hidewright.core.expression.Worth;

/**
 * On what a template tells something.
 *
 * @param kind what is told
 * @param when the expression, as its author wrote it
 * @param questions whose answers it hangs on, over the values between them, in the order they are asked
 * @param written the amounts and words in it and in those values, where it may turn from one to the other
 */
public record Condition(NoticeKind kind, String when, List<Question> questions, Set<Worth> written) {
    public Condition {
        questions = List.copyOf(questions);
        written = Collections.unmodifiableSet(new LinkedHashSet<>(written));
    }

    static Condition of(NoticeKind kind, Expression when, List<Question> questions, List<NamedValue> values) {
        Set<String> names = new HashSet<>();
        Set<Worth> written = new LinkedHashSet<>();
        Deque<Expression> ahead = new ArrayDeque<>(List.of(when));
        while (!ahead.isEmpty()) {
            Expression expression = ahead.pop();
            written.addAll(expression.written());
            for (String name : expression.names()) {
                if (names.add(name)) {
                    values.forEach(value -> {
                        if (value instanceof NamedValue.Worked worked
                                && worked.name().equals(name)) {
                            ahead.add(worked.expression());
                        } else if (value instanceof NamedValue.Answered answered && answered.gives(name)) {
                            questions.forEach(
                                    question -> names.add(question.key())); // whoever is asked may be asked by each
                        }
                    });
                }
            }
        }
        return new Condition(
                kind,
                when.text(),
                questions.stream()
                        .filter(question -> names.contains(question.key()))
                        .toList(),
                written);
    }
}
