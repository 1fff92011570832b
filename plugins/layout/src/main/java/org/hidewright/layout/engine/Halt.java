package org.hidewright.layout.engine;

/**
 * How much of the budget is spent. The engine has no clock: who asks for a search says by time, or by places tried, when
 * it is over; by the latter a search can be replayed.
 */
@FunctionalInterface
public interface Halt {
    /**
     * @param tried how many places were tried so far by whom asks
     * @return the share of the budget that is spent, 1 or more when the search has to stop
     */
    double spent(long tried);
}
