package org.hidewright.api.measure;

import java.util.Optional;
import java.util.function.Function;

/**
 * What became of a typed text: {@link Understood} with its value, or {@link Unreadable} with the place and the reason.
 *
 * @param <T> what was asked for
 */
public sealed interface Reading<T> permits Understood, Unreadable {

    /** The value, if the text was understood. */
    Optional<T> understood();

    /** What is wrong with the text, if it was not understood. */
    Optional<Unreadable<T>> unreadable();

    /** The same outcome with another value; what is unreadable stays so. */
    <R> Reading<R> map(Function<? super T, ? extends R> change);
}
