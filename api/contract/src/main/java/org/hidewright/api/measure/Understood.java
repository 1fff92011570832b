package org.hidewright.api.measure;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * A text that was understood.
 *
 * @param <T> what was asked for
 */
public final class Understood<T> implements Reading<T> {
    private final T value;

    private Understood(T value) {
        this.value = Objects.requireNonNull(value, "value");
    }

    /** Wraps an understood value, which must not be null. */
    public static <T> Understood<T> of(T value) {
        return new Understood<>(value);
    }

    /** The value; never null. */
    public T value() {
        return value;
    }

    @Override
    public Optional<T> understood() {
        return Optional.of(value);
    }

    @Override
    public Optional<Unreadable<T>> unreadable() {
        return Optional.empty();
    }

    @Override
    public <R> Reading<R> map(Function<? super T, ? extends R> change) {
        return new Understood<>(change.apply(value));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Understood<?> that && value.equals(that.value);
    }

    @Override
    public int hashCode() {
        return value.hashCode();
    }

    @Override
    public String toString() {
        return "understood: " + value;
    }
}
