package org.hidewright.core.work;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.item.Item;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Quantity;
import org.hidewright.api.measure.Size;
import org.hidewright.core.catalogue.BundleFault;
import org.hidewright.core.item.PartDrawing;

/** Whether answers are what their declaration says, down to the cells of tables; what is not could not be shown. */
final class Completeness {
    /** Far more than anybody cuts by, and what a card can still be made of. */
    static final int MOST_ROWS = 5000;

    /** Some hundred pages. */
    static final int MOST_CHARACTERS = 200_000;

    /** What is put away into the workshop goes onto no page: the outline of a hide, and a hole in it for every piece. */
    static final int MOST_PUT_AWAY = 5_000_000;

    private final int longestText;
    private final int mostCharacters;
    private long characters;

    private Completeness(int longestText, int mostCharacters) {
        this.longestText = longestText;
        this.mostCharacters = mostCharacters;
    }

    /** @throws BundleFault naming the first answer that is null, no finite number, of another kind, or too much */
    static void check(List<Answer> declared, Values answers) {
        new Completeness(Sayable.LONGEST_TEXT, MOST_CHARACTERS).checkAll(declared, answers);
    }

    private void checkAll(List<Answer> declared, Values answers) {
        for (Map.Entry<String, Object> entry : answers.entries().entrySet()) {
            Answer answer = declared.stream()
                    .filter(candidate -> candidate.key().equals(entry.getKey()))
                    .findFirst()
                    .orElseThrow(() -> Nonsense.of("undeclared", entry.getKey()));
            boolean putAway = answer.stock().isPresent();
            Completeness by = putAway ? new Completeness(MOST_PUT_AWAY, MOST_PUT_AWAY) : this;
            by.check(answer, entry.getValue());
        }
    }

    private void check(Answer answer, Object value) {
        if (answer.kind() == Kind.LIST || answer.kind() == Kind.ROWS) {
            if (!(value instanceof List<?> items)) {
                throw wrong(answer, answer.kind(), value);
            }
            if (items.size() > MOST_ROWS) {
                throw Nonsense.of("rows", answer.key(), items.size(), MOST_ROWS);
            }
            items.forEach(item -> one(answer, item));
        } else {
            one(answer, value);
        }
    }

    private void one(Answer answer, Object value) {
        if (!answer.columns().isEmpty() && value instanceof Values row) {
            text(answer, row.rowId());
            checkAll(answer.columns(), row);
        } else if (!fits(answer.itemKind(), value)) {
            throw wrong(answer, answer.itemKind(), value);
        } else if (value instanceof String text) {
            text(answer, text);
        } else if (value instanceof Phrase phrase) {
            Sayable.check(List.of(phrase));
        } else if (value instanceof Drawing drawing) {
            Drawable.check(answer.key(), drawing);
        } else if (value instanceof Item item) {
            item.parts().forEach(part -> Drawable.check(answer.key(), PartDrawing.of(part)));
            item.parts().forEach(part -> text(answer, part.name()));
        }
    }

    private void text(Answer answer, String text) {
        if (text.length() > longestText) {
            throw Nonsense.of("text", answer.key(), text.length(), longestText);
        }
        characters += text.length();
        if (characters > mostCharacters) {
            throw Nonsense.of("characters", mostCharacters);
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
            case ITEM -> value instanceof Item;
            case ROWS, GROUP -> value instanceof Values;
            case LIST, VARIANTS -> false;
            default ->
                value instanceof Quantity<?> quantity
                        && quantity.dimension() == kind.dimension().orElseThrow();
        };
    }

    private static BundleFault wrong(Answer answer, Kind kind, Object value) {
        if (value == null) {
            return Nonsense.of("missing", answer.key());
        }
        return value instanceof Double number && !Double.isFinite(number)
                ? Nonsense.of("number", answer.key(), number.toString())
                : Nonsense.of("kind", answer.key(), kind, value.getClass().getName());
    }
}
