package org.hidewright.core.work;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.drawing.DimensionLine;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Shape;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Quantity;
import org.hidewright.api.measure.Size;

/** Whether answers are what their declaration says, down to the cells of tables; what is not could not be shown. */
final class Completeness {
    /** Far more than anybody cuts by, and what a card can still be made of. */
    static final int MOST_ROWS = 5000;

    static final int MOST_SHAPES = 50_000;

    private Completeness() {}

    /** @throws Nonsense naming the first answer that is null, no finite number, of another kind, or too much */
    static void check(List<Answer> declared, Values answers) {
        for (Map.Entry<String, Object> entry : answers.entries().entrySet()) {
            Answer answer = declared.stream()
                    .filter(candidate -> candidate.key().equals(entry.getKey()))
                    .findFirst()
                    .orElseThrow(() -> new Nonsense("undeclared", entry.getKey()));
            check(answer, entry.getValue());
        }
    }

    private static void check(Answer answer, Object value) {
        if (answer.kind() == Kind.LIST || answer.kind() == Kind.ROWS) {
            if (!(value instanceof List<?> items)) {
                throw wrong(answer, answer.kind(), value);
            }
            if (items.size() > MOST_ROWS) {
                throw new Nonsense("rows", answer.key(), items.size(), MOST_ROWS);
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
            throw wrong(answer, answer.itemKind(), value);
        } else if (value instanceof String text && text.length() > Sayable.LONGEST_TEXT) {
            throw new Nonsense("text", answer.key(), text.length(), Sayable.LONGEST_TEXT);
        } else if (value instanceof Phrase phrase) {
            Sayable.check(phrase.args());
        } else if (value instanceof Drawing drawing) {
            check(answer, drawing);
        }
    }

    private static void check(Answer answer, Drawing drawing) {
        int parts = 0;
        for (Shape shape : drawing.shapes()) {
            parts += shape instanceof Path path ? path.segments().size() : 1;
            if (shape instanceof Label label) {
                Sayable.check(List.of(label.words()));
            } else if (shape instanceof DimensionLine line) {
                Sayable.check(List.of(line.words()));
            }
        }
        if (parts > MOST_SHAPES) {
            throw new Nonsense("shapes", answer.key(), parts, MOST_SHAPES);
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
            case MONEY -> value instanceof Money money && Sayable.printable(money);
            case PHRASE -> value instanceof Phrase;
            case DRAWING -> value instanceof Drawing;
            case ROWS, GROUP -> value instanceof Values;
            case LIST, VARIANTS -> false;
            default ->
                value instanceof Quantity<?> quantity
                        && quantity.dimension() == kind.dimension().orElseThrow();
        };
    }

    private static Nonsense wrong(Answer answer, Kind kind, Object value) {
        if (value == null) {
            return new Nonsense("missing", answer.key());
        }
        return value instanceof Double number && !Double.isFinite(number)
                ? new Nonsense("number", answer.key(), number.toString())
                : new Nonsense("kind", answer.key(), kind, value.getClass().getName());
    }
}
