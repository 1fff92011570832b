package org.hidewright.core.work;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Quantity;
import org.hidewright.api.measure.Size;

/** Whether answers are what their declaration says, down to the cells of tables; what is not could not be shown. */
final class Completeness {
    private Completeness() {}

    /** @throws IllegalStateException naming the first answer that is null, no finite number, or of another kind */
    static void check(List<Answer> declared, Values answers) {
        for (Map.Entry<String, Object> entry : answers.entries().entrySet()) {
            Answer answer = declared.stream()
                    .filter(candidate -> candidate.key().equals(entry.getKey()))
                    .findFirst()
                    .orElseThrow(() -> new IllegalStateException("answer " + entry.getKey() + " is not declared"));
            check(answer, entry.getValue());
        }
    }

    private static void check(Answer answer, Object value) {
        if (answer.kind() == Kind.LIST || answer.kind() == Kind.ROWS) {
            if (!(value instanceof List<?> items)) {
                throw wrong(answer, value);
            }
            items.forEach(item -> one(answer, item));
        } else {
            one(answer, value);
        }
    }

    private static void one(Answer answer, Object value) {
        if (!answer.columns().isEmpty() && value instanceof Values row) {
            check(answer.columns(), row);
        } else if (!fits(answer.itemKind(), value)) {
            throw wrong(answer, value);
        }
    }

    private static boolean fits(Kind kind, Object value) {
        return switch (kind) {
            case RATIO -> value instanceof Double number && Double.isFinite(number);
            case COUNT -> value instanceof Integer;
            case SIZE -> value instanceof Size;
            case FLAG -> value instanceof Boolean;
            case CHOICE, TEXT -> value instanceof String;
            case DATE -> value instanceof LocalDate;
            case MONEY -> value instanceof Money;
            case PHRASE -> value instanceof Phrase;
            case DRAWING -> value instanceof Drawing;
            case ROWS, GROUP -> value instanceof Values;
            case LIST, VARIANTS -> false;
            default ->
                value instanceof Quantity<?> quantity
                        && quantity.dimension() == kind.dimension().orElseThrow();
        };
    }

    private static IllegalStateException wrong(Answer answer, Object value) {
        return new IllegalStateException("answer " + answer.key() + " is " + value);
    }
}
