package org.hidewright.core.wording;

import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.measure.Unit;

/**
 * Numbers that are typed without a unit. In a file such a number has the unit of its question; somebody who sees everything in
 * inches means inches, so the unit that is seen is written behind it.
 */
public final class BareNumbers {
    /** Numbers, fractions and ranges, and sizes of two numbers; nothing that could be a unit. */
    private static final String DIGIT = "[\\d\u00BC-\u00BE\u2150-\u215E]";

    private static final String BETWEEN = "[\\s.,/\u2044\u00B1+\u2212\u2013x\u00D7-]";
    private static final Pattern BARE = Pattern.compile(BETWEEN + "*(" + DIGIT + BETWEEN + "*)+");

    private BareNumbers() {}

    /**
     * What was typed, with the unit that is shown where it has none of its own.
     *
     * @param typed one value, or several with {@code ;} between them
     * @param system the units that were seen when it was typed
     */
    public static String withUnitShown(String typed, Question question, UnitSystem system) {
        return question.unit()
                .map(unit -> withUnit(typed, unit, system.shown(unit)))
                .orElse(typed);
    }

    private static String withUnit(String typed, Unit own, Unit shown) {
        if (own.equals(shown)) {
            return typed;
        }
        return Stream.of(typed.split(";", -1))
                .map(value -> BARE.matcher(value).matches() ? value.stripTrailing() + " " + shown.symbol() : value)
                .collect(Collectors.joining(";"));
    }
}
