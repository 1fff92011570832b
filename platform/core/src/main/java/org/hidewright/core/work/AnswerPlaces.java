package org.hidewright.core.work;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.item.Item;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Quantity;
import org.hidewright.api.measure.Size;
import org.hidewright.api.measure.Unit;
import org.hidewright.api.measure.Units;
import org.hidewright.core.item.ItemFacts;

/**
 * Answers one by one, each under its place: {@code cut-length}, {@code panel.width}, {@code sections[leg].start}. Drawings,
 * texts and phrases with measures in them are left out; they are written from the numbers.
 */
public final class AnswerPlaces {
    /** What the sides of a size are called in its place. */
    public static final String WIDTH = "width";

    public static final String HEIGHT = "height";

    private final Map<String, Object> places = new LinkedHashMap<>();
    private final Map<String, Unit> currencies = new LinkedHashMap<>();

    private AnswerPlaces() {}

    /** Measured answers as {@code Double} in base units, money as the {@code Double} of its amount, counts, choices, flags and phrases as they are. */
    static Map<String, Object> of(List<Answer> declared, Values answers) {
        return all(declared, answers).places;
    }

    private static AnswerPlaces all(List<Answer> declared, Values answers) {
        AnswerPlaces places = new AnswerPlaces();
        places.addAll(declared, answers, "");
        return places;
    }

    /** The units of the numbers at the places of a slip that has answers. */
    public static Function<String, Unit> units(WorkedSlip slip) {
        List<Answer> declared =
                slip.installed().orElseThrow().calculator().declaration().answers();
        Map<String, Unit> currencies = all(declared, slip.answers().orElseThrow()).currencies;
        return place -> Optional.ofNullable(currencies.get(place))
                .or(() -> answer(declared, place).flatMap(Answer::unit))
                .orElse(Units.ONE);
    }

    /** The answer, or the column or part of it, that stands at a place. */
    public static Optional<Answer> answer(List<Answer> declared, String place) {
        List<Answer> level = declared;
        Answer found = null;
        for (String key : place.replaceAll("\\[[^\\]]*\\]", "").split("\\.")) {
            Optional<Answer> next =
                    level.stream().filter(answer -> answer.key().equals(key)).findFirst();
            if (next.isEmpty()) {
                break; // the width or height of a size
            }
            found = next.get();
            level = found.columns();
        }
        return Optional.ofNullable(found);
    }

    /** Whether a place is inside a table or a list. */
    public static boolean inRow(String place) {
        return place.indexOf('[') >= 0;
    }

    /** The place of a part, column or side within another. */
    public static String within(String place, String key) {
        return place.isEmpty() ? key : place + "." + key;
    }

    /** The place of a row by its id, or of an item of a list counted from 1. */
    public static String row(String place, Object idOrNumber) {
        return place + "[" + idOrNumber + "]";
    }

    private void addAll(List<Answer> declared, Values values, String at) {
        for (Answer answer : declared) {
            values.get(answer.key()).ifPresent(value -> add(answer, value, within(at, answer.key())));
        }
    }

    private void add(Answer answer, Object value, String place) {
        if (value instanceof List<?> items) {
            for (int i = 0; i < items.size(); i++) {
                Object id = items.get(i) instanceof Values row && !row.rowId().isEmpty() ? row.rowId() : i + 1;
                add(answer, items.get(i), row(place, id));
            }
        } else if (value instanceof Item item) {
            add(answer, ItemFacts.rows(item), place);
        } else if (value instanceof Values part) {
            addAll(answer.columns(), part, place);
        } else if (value instanceof Size size) {
            places.put(within(place, WIDTH), size.width().mm());
            places.put(within(place, HEIGHT), size.height().mm());
        } else if (value instanceof Quantity<?> quantity) {
            places.put(place, quantity.base());
        } else if (value instanceof Money money) {
            places.put(place, money.amount().doubleValue());
            currencies.put(place, money.currency());
        } else if (shown(answer.itemKind()) || value instanceof Phrase phrase && oneOfSeveral(phrase)) {
            places.put(place, value);
        }
    }

    /** A phrase with a measure in it would be another at every place. */
    private static boolean oneOfSeveral(Phrase phrase) {
        return phrase.args().stream()
                .noneMatch(arg -> arg instanceof Quantity
                        || arg instanceof Size
                        || arg instanceof Money
                        || arg instanceof Double
                        || arg instanceof Phrase inner && !oneOfSeveral(inner));
    }

    private static boolean shown(Kind kind) {
        return kind == Kind.RATIO || kind == Kind.COUNT || kind == Kind.CHOICE || kind == Kind.FLAG;
    }
}
