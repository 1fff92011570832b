package org.hidewright.api.declaration;

import java.util.Optional;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.osgi.annotation.versioning.ProviderType;

/** A calculator as the host sees it: a declaration, a function over values, and texts. */
@ProviderType
public interface DeclaredCalculator {
    /** What it asks, answers and may tell. */
    Declaration declaration();

    /**
     * Works the answers out.
     *
     * @param questions a value for every question that is not optional, of the type its kind names
     */
    Outcome<Values> work(Values questions, Working working);

    /** Where the words for all of it are found. */
    Texts texts();

    /**
     * The text of a drawing that a question names.
     *
     * @param name as in {@link Question#picture()}, without its part
     */
    default Optional<String> picture(String name) {
        return Optional.empty();
    }

    /** The search for one of its questions, where there is one. */
    default Optional<DeclaredSearch> search() {
        return Optional.empty();
    }
}
