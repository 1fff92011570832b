package org.hidewright.core.work;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Quantity;
import org.hidewright.api.measure.Size;

/**
 * Whether something a calculator gave can be put into words. Objects of a bundle’s own classes cannot, as contract and
 * author’s guide say: their code would run wherever a page is laid out, out of reach of any limit of time.
 */
final class Sayable {
    /** No page of a job card has room for more. */
    static final int LONGEST_TEXT = 4000;

    /** The contract’s amounts have 34 digits; ones that take minutes to print have millions. */
    private static final int MOST_DIGITS = 60;

    private static final Set<Class<?>> PLAIN =
            Set.of(Integer.class, Long.class, Short.class, Byte.class, Boolean.class, Character.class);

    private Sayable() {}

    /** @throws BundleFault if one of them, or something in it, cannot be put into words */
    static void check(List<?> given) {
        given.forEach(Sayable::check);
    }

    private static void check(Object given) {
        if (given instanceof Phrase phrase) {
            check(List.of(phrase.key()));
            check(phrase.args());
        } else if (given instanceof String text) {
            if (text.length() > LONGEST_TEXT) {
                throw Nonsense.of("long-words", text.length(), LONGEST_TEXT);
            }
        } else if (given instanceof Drawing || !plain(given)) {
            throw Nonsense.of("words", given.getClass().getName());
        }
    }

    private static boolean plain(Object given) {
        return given instanceof Quantity<?>
                || given instanceof Size
                || given instanceof LocalDate
                || given instanceof Enum<?>
                || given instanceof Money money && printable(money)
                || given instanceof BigDecimal number && printable(number)
                || given instanceof Double number && Double.isFinite(number)
                || given instanceof Float number && Float.isFinite(number)
                || PLAIN.contains(given.getClass());
    }

    static boolean printable(Money money) {
        return printable(money.amount());
    }

    private static boolean printable(BigDecimal number) {
        return number.getClass() == BigDecimal.class
                && Math.abs((long) number.scale()) <= MOST_DIGITS
                && number.precision() <= 2 * MOST_DIGITS;
    }
}
