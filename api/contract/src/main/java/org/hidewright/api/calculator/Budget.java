package org.hidewright.api.calculator;

import java.util.List;
import org.osgi.annotation.versioning.ProviderType;

/**
 * What a {@link Search} may spend. The clock, where there is one, is the host’s: a search only asks how much is left, so that it
 * can be replayed where the budget is one of tries. Any thread may ask.
 */
@ProviderType
public interface Budget {
    /** How many searches may run side by side, at least 1. With 1 nothing is left to the order in which threads run. */
    int workers();

    /**
     * Runs searches side by side, on threads of the host, and comes back when all have ended. What one of them throws is thrown here, when
     * the others have ended too.
     *
     * @param searches no more than {@link #workers()}
     */
    void sideBySide(List<? extends Runnable> searches);

    /** What chance begins with; the same seed gives the same search where it has one worker and a budget of tries. */
    long seed();

    /**
     * How much is spent. To be asked often, at least ten times a second, since a maker who stops a search waits for the answer.
     *
     * @param tried how many tries the worker that asks has made so far, whatever the search counts as one
     * @return from 0 on; at 1 or more the search has to come to its end
     */
    double spent(long tried);
}
