package org.hidewright.api.declaration;

import java.util.function.Consumer;
import org.hidewright.api.calculator.Budget;
import org.osgi.annotation.versioning.ProviderType;

/** The search of a calculator as the host sees it: which question it answers, and a function over values. */
@ProviderType
public interface DeclaredSearch {
    /** The question that is searched for: an optional group. */
    Question sought();

    /**
     * Searches until the budget is spent or nothing better can be hoped for.
     *
     * @param questions a value for every question that is not optional, of the type its kind names
     * @param better takes the values of the question searched for, each better than those before, from any thread, one at a time
     */
    void search(Values questions, Budget budget, Consumer<Values> better);
}
