package org.hidewright.api.calculator;

import java.util.Objects;

/**
 * Where a number or a rule comes from. Its text is the message {@code source.KEY}: the standard and clause, the book and
 * page, or the habit in words.
 */
public final class Source {
    /** What the number stands on, strongest first. */
    public enum Kind {
        /** True by definition or by geometry. */
        DEFINITION,
        /** Read in a standard, handbook or data base that is named. */
        PUBLISHED,
        /** Measured by this maker on their own leather. */
        MEASURED_HERE,
        /** A habit of the trade without a published source. */
        COMMON_PRACTICE,
        /** Believed right, the source named was not opened. */
        FROM_MEMORY
    }

    private final String key;
    private final Kind kind;

    private Source(String key, Kind kind) {
        this.key = Objects.requireNonNull(key, "key");
        this.kind = Objects.requireNonNull(kind, "kind");
    }

    /** A source, with what it really is. */
    public static Source of(String key, Kind kind) {
        return new Source(key, kind);
    }

    /** Its key: the text {@code source.KEY} says what it is. */
    public String key() {
        return key;
    }

    /** What kind of source it is. */
    public Kind kind() {
        return kind;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Source && ((Source) other).key.equals(key) && ((Source) other).kind == kind;
    }

    @Override
    public int hashCode() {
        return Objects.hash(key, kind);
    }

    @Override
    public String toString() {
        return kind + " " + key;
    }
}
