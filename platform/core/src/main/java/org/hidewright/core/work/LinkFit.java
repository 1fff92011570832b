package org.hidewright.core.work;

import java.util.List;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;

/** Whether an answer can stand where a question asks: the same dimension, or the same kind where there is none. */
final class LinkFit {
    private LinkFit() {}

    static boolean fits(Question question, Answer answer, Object value) {
        Kind asked = question.itemKind();
        Kind given = answer.itemKind();
        boolean several = value instanceof List<?>;
        if (several != (question.kind() == Kind.LIST)) {
            return false;
        }
        if (asked == Kind.COUNT) {
            return given == Kind.COUNT || given == Kind.RATIO && wholeNumbers(value);
        }
        if (asked.dimension().isPresent()) {
            return given.dimension().equals(asked.dimension());
        }
        return asked == given && (asked != Kind.CHOICE || keysHeld(question, value));
    }

    private static boolean wholeNumbers(Object value) {
        return value instanceof List<?> items
                ? items.stream().allMatch(LinkFit::wholeNumbers)
                : value instanceof Number number && number.doubleValue() == number.intValue();
    }

    private static boolean keysHeld(Question question, Object value) {
        List<String> keys = EntryReader.keys(question.options());
        return value instanceof List<?> items ? keys.containsAll(items) : keys.contains(value);
    }

    /** The value as the question's kind holds it: a count as an int, a ratio as a double. */
    static Object converted(Question question, Object value) {
        if (value instanceof List<?> items) {
            return items.stream().map(item -> converted(question, item)).toList();
        }
        if (question.itemKind() == Kind.COUNT) {
            return ((Number) value).intValue();
        }
        return question.itemKind() == Kind.RATIO ? (Object) ((Number) value).doubleValue() : value;
    }
}
