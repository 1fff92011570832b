package org.hidewright.core.range;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What a model came to at one place of its inputs.
 *
 * @param <R> what tells why it was refused
 */
public sealed interface Trial<R> {
    /**
     * Answers by their place: a {@code Double} for what is measured or counted on a scale, anything else for a choice.
     */
    record Answered<R>(Map<String, Object> answers) implements Trial<R> {
        public Answered {
            answers = Collections.unmodifiableMap(new LinkedHashMap<>(answers)); // in the order given
        }
    }

    /** No answer there, and why. */
    record Refused<R>(R why) implements Trial<R> {}
}
