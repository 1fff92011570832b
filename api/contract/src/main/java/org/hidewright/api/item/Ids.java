package org.hidewright.api.item;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;

/** What holds for all ids. */
final class Ids {
    private Ids() {}

    static String of(String id) {
        if (Objects.requireNonNull(id, "id").isBlank()) {
            throw new IllegalArgumentException("an id has at least one letter");
        }
        return id;
    }

    static <T> List<T> distinct(List<T> things, Function<T, String> id) {
        Set<String> known = new HashSet<>();
        for (T thing : things) {
            if (!known.add(id.apply(thing))) {
                throw new IllegalArgumentException("the id " + id.apply(thing) + " is there twice");
            }
        }
        return List.copyOf(things);
    }

    static double atLeast0(double mm, String what) {
        if (!(mm >= 0 && Double.isFinite(mm))) {
            throw new IllegalArgumentException(what + " is 0 mm or more, not " + mm);
        }
        return mm;
    }

    static double above0(double mm, String what) {
        if (!(mm > 0 && Double.isFinite(mm))) {
            throw new IllegalArgumentException(what + " is above 0 mm, not " + mm);
        }
        return mm;
    }
}
