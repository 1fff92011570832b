package org.hidewright.api.measure;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

/** What a test types, and what it must get. */
final class Shop {
    static final Optional<Unit> NO_UNIT = Optional.empty();

    private Shop() {}

    static Typed typed(String text, Dimension dimension) {
        return understood(TypedText.quantity(text, dimension, NO_UNIT));
    }

    static Typed length(String text) {
        return typed(text, Dimension.LENGTH);
    }

    static double mm(String text) {
        Range range = length(text).range();
        assertTrue(range.isExact(), () -> text + " has limits " + range);
        return range.nominal();
    }

    static TypedSize size(String text) {
        return understood(TypedText.size(text, NO_UNIT));
    }

    static List<Typed> lengths(String text) {
        return understood(TypedText.list(text, Dimension.LENGTH, NO_UNIT));
    }

    static <T> T understood(Reading<T> reading) {
        return reading.understood().orElseThrow(() -> new AssertionError(reading.toString()));
    }

    static <T> Unreadable<T> refused(Reading<T> reading) {
        return reading.unreadable().orElseThrow(() -> new AssertionError("read without trouble: " + reading));
    }
}
