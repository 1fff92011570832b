package org.hidewright.api.calculator;

import java.util.function.Consumer;
import org.osgi.annotation.versioning.ConsumerType;

/**
 * Work that is too long to be done at every keystroke: implemented by a {@link Calculator} beside it, one of whose questions is
 * not typed but searched for.
 *
 * <p>That question is the component of {@code Q} whose type is {@code Optional<F>}. A search is begun by the maker alone. What it
 * finds is kept in the project where an answer that is typed would stand, and from then on the calculator works with it like with any other
 * answer: at once, and as a pure function. So the calculator has to see for itself whether what was found still holds when the
 * other questions have changed. Until something was found the question is empty, and the calculator says in its outcome that it has
 * to be searched for, or answers what it can.
 *
 * <p>The host tells a maker when other questions have changed since the search, and works no ranges out for such a calculator: its
 * answers are those for the nominal values.
 *
 * @param <Q> the question record of the calculator
 * @param <F> what is found: a record of components that carry {@link Asked}, as those of a group
 */
@ConsumerType
public interface Search<Q extends Record, F extends Record> {
    /**
     * Searches until the budget is spent or nothing better can be hoped for.
     *
     * @param questions every component filled and inside its hard limits; what was found before, or was changed by hand since, is
     *     in the question searched for, and a search may go on from there
     * @param better takes each finding that is better than those before, whole and fit to be worked with, from any thread, one at
     *     a time
     */
    void search(Q questions, Budget budget, Consumer<F> better);
}
