package org.hidewright.core.search;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.declaration.Chosen;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.declaration.Variant;
import org.hidewright.api.measure.Dimension;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Quantity;
import org.hidewright.api.measure.Size;
import org.hidewright.api.measure.Unit;
import org.hidewright.api.measure.Units;
import org.hidewright.core.json.JsonOut;

/**
 * What was found, written as a maker would type it, in the units of its questions and with all digits: it is read again like all that is
 * typed, and can be changed by hand.
 */
public final class FoundText {
    /** That a number of Java can have. */
    private static final int MOST_DIGITS = 17;

    private FoundText() {}

    /** The values of a group as JSON, its tables with a line for each row. */
    public static String json(Question group, Values values) {
        return JsonOut.write(tree(group.questions(), values, true)).strip();
    }

    private static Map<String, Object> tree(List<Question> questions, Values values, boolean outermost) {
        Map<String, Object> tree = new LinkedHashMap<>();
        if (!values.rowId().isEmpty()) {
            tree.put("id", values.rowId());
        }
        for (Question question : questions) {
            values.get(question.key()).ifPresent(value -> tree.put(question.key(), of(question, value, outermost)));
        }
        return tree;
    }

    private static Object of(Question question, Object value, boolean outermost) {
        return switch (question.kind()) {
            case GROUP -> tree(question.questions(), (Values) value, outermost);
            case VARIANTS -> chosen(question, (Chosen) value);
            case ROWS ->
                ((List<?>) value)
                        .stream().map(row -> row(question, row, outermost)).toList();
            case LIST ->
                ((List<?>) value).stream().map(item -> scalar(question, item)).toList();
            default -> scalar(question, value);
        };
    }

    private static Object row(Question table, Object row, boolean outermost) {
        Object tree =
                row instanceof Chosen chosen ? chosen(table, chosen) : tree(table.questions(), (Values) row, false);
        return outermost ? new JsonOut.Raw(JsonOut.line(tree)) : tree;
    }

    private static Map<String, Object> chosen(Question question, Chosen chosen) {
        List<Question> inside = question.variants().stream()
                .filter(variant -> variant.key().equals(chosen.variant()))
                .findFirst()
                .map(Variant::questions)
                .orElseThrow();
        Map<String, Object> tree = new LinkedHashMap<>();
        if (!chosen.values().rowId().isEmpty()) {
            tree.put("id", chosen.values().rowId());
        }
        tree.put(chosen.variant(), tree(inside, Values.of(chosen.values().entries()), false));
        return tree;
    }

    private static Object scalar(Question question, Object value) {
        if (value instanceof Boolean || value instanceof Integer) {
            return value;
        } else if (value instanceof Money money) {
            return money.amount().toPlainString() + " " + money.currency().symbol();
        } else if (value instanceof Quantity<?> quantity) {
            return inUnit(quantity.base(), question.unit());
        } else if (value instanceof Double number) {
            return inUnit(number, question.unit());
        } else if (value instanceof Size size) {
            return digits(size.width().mm()) + " x " + digits(size.height().mm()) + " " + Units.MM.symbol();
        }
        return String.valueOf(value);
    }

    /** In the unit of the question where it is read as the same number again, else in the base unit; a share as near as it comes. */
    private static String inUnit(double base, Optional<Unit> asked) {
        Unit unit = asked.orElse(Units.ONE);
        double number = unit.fromBase(base);
        if (unit.toBase(number) != base && unit.dimension() != Dimension.NUMBER) {
            unit = Units.base(unit.dimension());
            number = base;
        }
        String digits = digits(shortest(number, base, unit));
        return unit.symbol().isEmpty() ? digits : digits + " " + unit.symbol();
    }

    /** The number with the fewest digits that is read as the same; conversion to the unit may have put some behind it. */
    private static double shortest(double number, double base, Unit unit) {
        for (int digits = 1; digits < MOST_DIGITS; digits++) {
            double shorter =
                    new BigDecimal(number).round(new MathContext(digits)).doubleValue();
            if (unit.toBase(shorter) == base) {
                return shorter;
            }
        }
        return number;
    }

    private static String digits(double number) {
        return BigDecimal.valueOf(number + 0.0).toPlainString();
    }
}
