package org.hidewright.testkit;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Quantity;
import org.hidewright.api.measure.Size;

/** What the host cannot put into words: a missing thing, a number that is none, a too long text, an object of other classes. */
final class Unsayable {
    /** No page of a job card has room for more; the host refuses longer ones. */
    private static final int LONGEST_TEXT = 4000;

    private static final Set<Class<?>> PLAIN =
            Set.of(Integer.class, Long.class, Short.class, Byte.class, Boolean.class, Character.class);

    private Unsayable() {}

    /** Why something cannot be said, with what to do; empty where it can. */
    static Optional<String> in(Object said) {
        if (said == null) {
            return Optional.of("missing; give a value");
        } else if (said instanceof Phrase phrase) {
            return in(phrase.args());
        } else if (said instanceof String text) {
            return text.length() <= LONGEST_TEXT
                    ? Optional.empty()
                    : Optional.of("a text of " + text.length() + " characters; no page has room for more than "
                            + LONGEST_TEXT);
        } else if (said instanceof Double || said instanceof Float) {
            return Double.isFinite(((Number) said).doubleValue())
                    ? Optional.empty()
                    : Optional.of(said + ", which is no number; look for what is divided by nothing");
        }
        return plain(said)
                ? Optional.empty()
                : Optional.of(
                        "a " + said.getClass().getName()
                                + ", which the host has no words for; give a quantity, a number, an enum constant, a phrase or a text");
    }

    static Optional<String> in(List<?> said) {
        return said.stream().map(Unsayable::in).flatMap(Optional::stream).findFirst();
    }

    private static boolean plain(Object said) {
        return said instanceof Quantity<?>
                || said instanceof Size
                || said instanceof Money
                || said instanceof LocalDate
                || said instanceof BigDecimal
                || said instanceof Enum<?>
                || PLAIN.contains(said.getClass());
    }
}
