package org.hidewright.core.wording;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;

/**
 * What was typed where a maker sees it in a language and in units, as a file has it: bare numbers with the unit that was seen,
 * a day as year, month, day (ISO 8601).
 */
public final class AsFiled {
    /** 29.11.2026: who writes points puts the day first. */
    private static final Pattern POINTS = Pattern.compile("(\\d{1,2})\\.\\s*(\\d{1,2})\\.\\s*(\\d{4})");

    /** 29. Nov. 2026, 29 November 2026. */
    private static final Pattern DAY_FIRST = Pattern.compile("(\\d{1,2})\\.?\\s*(\\p{L}{3,})\\.?,?\\s*(\\d{4})");

    /** November 29, 2026. */
    private static final Pattern MONTH_FIRST = Pattern.compile("(\\p{L}{3,})\\.?\\s*(\\d{1,2}),?\\s+(\\d{4})");

    private AsFiled() {}

    /** @param wording the language and units that were seen when it was typed */
    public static String of(String typed, Question question, Wording wording) {
        return question.itemKind() == Kind.DATE
                ? day(typed.strip().replace('\u00A0', ' '), wording.language())
                        .map(LocalDate::toString)
                        .orElse(typed)
                : BareNumbers.withUnitShown(typed, question, wording.inches() ? UnitSystem.INCH : UnitSystem.METRIC);
    }

    private static Optional<LocalDate> day(String typed, Locale language) {
        Matcher points = POINTS.matcher(typed);
        if (points.matches()) {
            return day(points.group(3), Integer.parseInt(points.group(2)), points.group(1));
        }
        Matcher first = DAY_FIRST.matcher(typed);
        if (first.matches()) {
            return month(first.group(2), language).flatMap(month -> day(first.group(3), month, first.group(1)));
        }
        Matcher later = MONTH_FIRST.matcher(typed);
        return later.matches()
                ? month(later.group(1), language).flatMap(month -> day(later.group(3), month, later.group(2)))
                : Optional.empty();
    }

    private static Optional<LocalDate> day(String year, int month, String day) {
        try {
            return Optional.of(LocalDate.of(Integer.parseInt(year), month, Integer.parseInt(day)));
        } catch (DateTimeException e) {
            return Optional.empty(); // said to be no date where it is read
        }
    }

    /** The only month whose name begins so, in the language or in English. */
    private static Optional<Integer> month(String word, Locale language) {
        for (Locale one : List.of(language, Locale.ENGLISH)) {
            List<Integer> found = Arrays.stream(Month.values())
                    .filter(month -> month.getDisplayName(TextStyle.FULL, one)
                            .toLowerCase(one)
                            .startsWith(word.toLowerCase(one)))
                    .map(Month::getValue)
                    .toList();
            if (found.size() == 1) {
                return Optional.of(found.get(0));
            }
        }
        return Optional.empty();
    }
}
