package org.hidewright.edges;

import java.util.Comparator;
import java.util.Optional;

/**
 * One thing to do to one edge or to the faces.
 *
 * @param coat which coat or rub, from 1; 0 where there is only one
 * @param grit what it is sanded with
 */
record Task(Stage stage, Work work, int coat, Optional<Grit> grit) {
    /** Stage, then kind of work; coats in turn with the sanding between them; coarse grades before fine ones. */
    static final Comparator<Task> ORDER = Comparator.comparing(Task::stage)
            .thenComparing(task -> task.work.phase())
            .thenComparingInt(Task::coat)
            .thenComparing(Task::work)
            .thenComparing(Comparator.<Task>comparingDouble(
                            task -> task.grit.map(Grit::micrometres).orElse(0.0))
                    .reversed())
            .thenComparing(task -> task.grit.map(Grit::label).orElse(""));

    static Task of(Stage stage, Work work) {
        return new Task(stage, work, 0, Optional.empty());
    }

    static Task coat(Stage stage, Work work, int coat) {
        return new Task(stage, work, coat, Optional.empty());
    }

    static Task sand(Stage stage, Grit grit) {
        return new Task(stage, Work.SAND, 0, Optional.of(grit));
    }
}
