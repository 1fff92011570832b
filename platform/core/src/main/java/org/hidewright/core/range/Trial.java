package org.hidewright.core.range;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What a model came to at one place of its inputs.
 *
 * @param <R> what tells why it was refused, or what to look at
 */
public sealed interface Trial<R> {
    /**
     * Answers, and what was told beside them.
     *
     * @param answers by their place: a {@code Double} for what is measured or counted on a scale, anything else for a choice
     * @param told by what makes it the same thing told again, whatever numbers it names
     */
    record Answered<R>(Map<String, Object> answers, Map<Object, R> told) implements Trial<R> {
        public Answered {
            answers = Collections.unmodifiableMap(new LinkedHashMap<>(answers)); // in the order given
            told = Collections.unmodifiableMap(new LinkedHashMap<>(told));
        }

        public Answered(Map<String, Object> answers) {
            this(answers, Map.of());
        }
    }

    /** No answer there, and why. */
    record Refused<R>(R why) implements Trial<R> {}
}
