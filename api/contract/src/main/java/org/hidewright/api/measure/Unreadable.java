package org.hidewright.api.measure;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * A text that was not understood: why, where, and what would be right.
 *
 * <p>The sentences for the maker stand in {@code messages.properties} of this package under {@link #key()} followed by
 * {@code .what}, {@code .why} and {@code .next}; {@link #args()} fill their places in order.
 *
 * @param <T> what was asked for
 */
public final class Unreadable<T> implements Reading<T> {
    private final String key;
    private final List<String> args;
    private final int column;
    private final String suggestion;

    private Unreadable(String key, List<String> args, int column, String suggestion) {
        this.key = Objects.requireNonNull(key, "key");
        this.args = List.copyOf(args);
        this.column = column;
        this.suggestion = suggestion;
    }

    /**
     * Describes a text that cannot be read.
     *
     * @param key message key, for example {@code reading.no-unit}
     * @param args what fills the places of the message, in order
     * @param column where in the text, counted from 1
     * @param suggestion a text that would be read, if one is near
     * @throws IllegalArgumentException if the column is below 1
     */
    public static <T> Unreadable<T> of(String key, List<String> args, int column, Optional<String> suggestion) {
        if (column < 1) {
            throw new IllegalArgumentException("columns count from 1, not " + column);
        }
        return new Unreadable<>(key, args, column, suggestion.orElse(null));
    }

    /** Stable message key, for example {@code reading.no-unit}. */
    public String key() {
        return key;
    }

    /** What fills the places of the message, in order. */
    public List<String> args() {
        return args;
    }

    /**
     * Where in the text, in {@code char}s counted from 1; it lies inside the text, and is 1 for an empty text.
     */
    public int column() {
        return column;
    }

    /** The whole text as it would be right; it reads without trouble where the faulty text stood. */
    public Optional<String> suggestion() {
        return Optional.ofNullable(suggestion);
    }

    @Override
    public Optional<T> understood() {
        return Optional.empty();
    }

    @Override
    public Optional<Unreadable<T>> unreadable() {
        return Optional.of(this);
    }

    @Override
    public <R> Reading<R> map(Function<? super T, ? extends R> change) {
        return new Unreadable<>(key, args, column, suggestion);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Unreadable<?> that
                && key.equals(that.key)
                && args.equals(that.args)
                && column == that.column
                && Objects.equals(suggestion, that.suggestion);
    }

    @Override
    public int hashCode() {
        return Objects.hash(key, args, column, suggestion);
    }

    @Override
    public String toString() {
        return key + args + " at column " + column
                + suggestion().map(text -> ", perhaps \"" + text + "\"").orElse("");
    }
}
