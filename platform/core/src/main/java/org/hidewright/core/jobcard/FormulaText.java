package org.hidewright.core.jobcard;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Quantity;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.WorkedSlip.Step;

/** The right side of a formula with numbers in place of its symbols. */
final class FormulaText {
    /** A letter with letters, digits, an index or a prime after it; a power is not part of it. */
    private static final Pattern SYMBOL = Pattern.compile("\\p{L}[\\p{L}\\p{Nd}_\\u2080-\\u209c'\\u2032]*");

    private static final String POWERS = "²³";

    /** A number that needs no bracket before a power. */
    private static final Pattern PLAIN = Pattern.compile("[\\d.,]+");

    private FormulaText() {}

    /** The numbers put in; empty where the step gives none. */
    static String numbers(Step step, Wording wording) {
        Map<String, String> numbers = new HashMap<>();
        List<Object> given = step.symbolsAndValues();
        for (int i = 0; i + 1 < given.size(); i += 2) {
            numbers.put(String.valueOf(given.get(i)), number(given.get(i + 1), wording));
        }
        if (numbers.isEmpty()) {
            return "";
        }
        String formula = wording.formula(rightSide(step));
        return SYMBOL.matcher(formula).replaceAll(found -> Matcher.quoteReplacement(put(found, numbers, formula)));
    }

    /** What stands in a symbol's place; in brackets where a power follows that is not of the unit alone. */
    private static String put(MatchResult found, Map<String, String> numbers, String formula) {
        String number = numbers.get(found.group());
        if (number == null) {
            return found.group();
        }
        boolean power = found.end() < formula.length() && POWERS.indexOf(formula.charAt(found.end())) >= 0;
        return power && !PLAIN.matcher(number).matches() ? "(" + number + ")" : number;
    }

    /** Whether the formula itself says the result, as {@code k = 0.5} does. */
    static boolean says(Step step, String result, Wording wording) {
        return wording.formula(rightSide(step)).equals(result);
    }

    private static String rightSide(Step step) {
        String symbols = step.formula().symbols();
        return symbols.substring(symbols.indexOf('=') + 1).strip();
    }

    private static String number(Object value, Wording wording) {
        if (value instanceof Quantity<?> quantity) {
            return wording.inFormula(quantity);
        }
        return numberOrMoney(value, wording);
    }

    private static String numberOrMoney(Object value, Wording wording) {
        if (value instanceof Money money) {
            return wording.values().moneyInFormula(money);
        }
        return value instanceof Number number ? wording.values().plain(number) : String.valueOf(value);
    }

    /** What a step came to, with its unit. */
    static String result(Step step, Wording wording) {
        Object result = step.result();
        if (result instanceof Quantity<?> quantity) {
            return wording.ofFormula(quantity);
        }
        return numberOrMoney(result, wording);
    }
}
