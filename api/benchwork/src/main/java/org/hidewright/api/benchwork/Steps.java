package org.hidewright.api.benchwork;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Operation;
import org.hidewright.api.measure.Duration;

/** What is done to make a piece, each step after the one before it. */
public final class Steps {
    private static final int SECONDS = 60;

    private final List<Operation> operations = new ArrayList<>();

    /**
     * Adds a step.
     *
     * @param what the verb and what it is done to, as it is read at the bench
     * @param minutes hands are at it
     * @param on ids of parts, seams and fittings
     */
    public Steps then(String id, String what, int minutes, String... on) {
        return add(id, what, minutes, 0, on);
    }

    /**
     * Adds a step after which something must dry or set.
     *
     * @param wait least minutes before the next step
     */
    public Steps thenWait(String id, String what, int minutes, int wait, String... on) {
        return add(id, what, minutes, wait, on);
    }

    private Steps add(String id, String what, int minutes, int wait, String... on) {
        Operation.Builder operation =
                Operation.of(id, what).on(List.of(on)).handsOn(Duration.ofSeconds(minutes * SECONDS));
        if (!operations.isEmpty()) {
            operation.after(List.of(operations.get(operations.size() - 1).id()));
        }
        if (wait > 0) {
            operation.leastWait(Duration.ofSeconds(wait * SECONDS));
        }
        operations.add(operation.build());
        return this;
    }

    /** Puts the steps into an item whose parts, seams and fittings are there already. */
    public void into(Item.Builder item) {
        operations.forEach(item::operation);
    }
}
