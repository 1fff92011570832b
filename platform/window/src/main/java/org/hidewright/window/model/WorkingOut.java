package org.hidewright.window.model;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.hidewright.core.project.Project;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.Bench;
import org.hidewright.core.work.WorkedProject;

/**
 * Works a project out on a thread of its own, and shows it on that of the window: only what was changed last, where changes come
 * faster than answers.
 */
final class WorkingOut {
    private final Supplier<Bench> bench;
    private final Executor work;
    private final Executor window;
    private final Consumer<ProjectFace> shows;
    private ProjectFace face;
    private volatile boolean ranges = true;

    /** Counts the changes; what was worked out for an earlier one is not shown any more. */
    private volatile long latest;

    /** Known to the working thread alone. */
    private WorkedProject worked;

    /** What was worked out last, for whoever asks on the thread of the window. */
    private volatile WorkedProject last;

    /**
     * @param bench what works it out; asked for each time, since bundles come and go
     * @param work the one thread calculators are called on
     * @param window the thread of the window
     * @param shows what shows the project, called on the thread of the window
     */
    WorkingOut(Supplier<Bench> bench, Executor work, Executor window, Consumer<ProjectFace> shows) {
        this.bench = bench;
        this.work = work;
        this.window = window;
        this.shows = shows;
    }

    /** Works a project out as it is now, and shows it: first without ranges, then whole. */
    void start(Project project, Wording wording) {
        long mine = ++latest;
        ProjectFace before = face;
        work.execute(() -> {
            if (mine != latest) {
                return; // a later change is waiting
            }
            Bench at = bench.get();
            worked = at.work(project, worked);
            last = worked;
            show(mine, Faces.atOnce(worked, wording, at.contributors(), before));
            if (ranges) {
                Faces.whole(worked, wording, at.contributors(), () -> mine == latest)
                        .ifPresent(shown -> show(mine, shown));
            }
        });
    }

    private void show(long mine, ProjectFace shown) {
        window.execute(() -> {
            if (mine == latest) {
                face = shown;
                shows.accept(shown);
            }
        });
    }

    /** Forgets what was worked out, so that all of it is worked anew. */
    void forget() {
        work.execute(() -> worked = null);
    }

    /** Leaves out what ranges make of answers. */
    void leaveRangesOut() {
        ranges = false;
    }

    /** What is still being worked out is not shown any more. */
    void leave() {
        latest++;
    }

    /** What is shown; empty before the first is. */
    Optional<ProjectFace> face() {
        return Optional.ofNullable(face);
    }

    /** What was worked out last; empty before the first time. */
    Optional<WorkedProject> last() {
        return Optional.ofNullable(last);
    }
}
