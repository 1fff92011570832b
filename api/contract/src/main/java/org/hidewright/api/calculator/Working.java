package org.hidewright.api.calculator;

import org.osgi.annotation.versioning.ProviderType;

/** Takes down how answers were worked out, for the maker who asks why. Implemented by the host. */
@ProviderType
public interface Working {
    /** A working that keeps nothing, for tests and for calls whose steps nobody reads. */
    Working NONE = new Working() {
        @Override
        public void step(Formula formula, Object result, Object... symbolsAndValues) {}

        @Override
        public void source(String answer, Source source) {}
    };

    /**
     * One step.
     *
     * @param formula one of {@link Calculator#formulas()}
     * @param result what the left side came to: a quantity, a size or a number
     * @param symbolsAndValues each symbol of the right side followed by what is put in its place
     */
    void step(Formula formula, Object result, Object... symbolsAndValues);

    /**
     * Says that an answer stands on another source than its declaration names, for example on a strip measured in this
     * workshop instead of a habit of the trade.
     *
     * @param answer the answer's key
     */
    void source(String answer, Source source);
}
