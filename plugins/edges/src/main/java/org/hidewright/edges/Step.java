package org.hidewright.edges;

import java.util.List;
import java.util.Locale;
import org.hidewright.api.measure.Duration;

/**
 * The same task on all edges and faces that need it.
 *
 * @param edges those it is done to, in the order they were typed
 * @param onFaces whether it is done to the faces too
 * @param coats how many coats there are of it in this stage; 0 where it has none
 * @param drying how long it is left alone after it, before anything else is done to these
 */
record Step(Task task, List<EdgePlan> edges, boolean onFaces, int coats, Duration handsOn, Wait drying) {
    /** Stable: work, and coat or grade; what comes after stitching says so. */
    String id() {
        String id = (task.stage() == Stage.AFTER_STITCHING ? "after-" : "")
                + word(task.work().name());
        if (task.coat() > 0) {
            id += "-" + task.coat();
        }
        return task.grit()
                .map(Grit::label)
                .map(Step::word)
                .map("-"::concat)
                .map(id::concat)
                .orElse(id);
    }

    private static String word(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }

    boolean is(Work work) {
        return task.work() == work;
    }
}
