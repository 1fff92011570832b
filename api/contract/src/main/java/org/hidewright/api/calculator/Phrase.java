package org.hidewright.api.calculator;

import java.util.List;
import java.util.Objects;

/**
 * A text by key with arguments, put into words by the host in the maker's language and units.
 *
 * <p>Arguments may be quantities, sizes, numbers, enum constants (shown by their label), other phrases, and strings that
 * are data (an id, something typed).
 */
public final class Phrase {
    private final String key;
    private final List<Object> args;

    private Phrase(String key, List<Object> args) {
        this.key = key;
        this.args = args;
    }

    /** A text by its key, {@code phrase.KEY}, and what fills its places. */
    public static Phrase of(String key, Object... args) {
        return new Phrase(Objects.requireNonNull(key, "key"), List.of(args));
    }

    /** The key of the text; {@code phrase.} is put before it in the messages file. */
    public String key() {
        return key;
    }

    /** What fills the places of its text, in their order. */
    public List<Object> args() {
        return args;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Phrase && ((Phrase) other).key.equals(key) && ((Phrase) other).args.equals(args);
    }

    @Override
    public int hashCode() {
        return Objects.hash(key, args);
    }

    @Override
    public String toString() {
        return key + args;
    }
}
