package org.hidewright.window.model;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.LongSupplier;
import org.hidewright.core.search.SearchBudget;
import org.hidewright.core.search.Searched;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.work.SlipSearch;

/**
 * Searches on the slips of an open project, one at a time. What is found stands in the project at once, and all of one search is taken back
 * together. For the thread of the window.
 */
public final class Searches {
    private final OpenProject project;
    private final Executor threads;
    private final Executor window;
    private final LongSupplier nanos;
    private final int workers;
    private String slip = "";
    private SearchBudget budget;
    private int begun;
    private Optional<Remark> failed = Optional.empty();
    private final List<Runnable> watchers = new ArrayList<>();

    /**
     * @param threads where a search runs, off the thread of the window
     * @param window the thread of the window
     * @param nanos a clock that only goes forward, in nanoseconds
     * @param workers how many searches run side by side
     */
    public Searches(OpenProject project, Executor threads, Executor window, LongSupplier nanos, int workers) {
        this.project = project;
        this.threads = threads;
        this.window = window;
        this.nanos = nanos;
        this.workers = workers;
    }

    /** Calls somebody whenever a search begins or has ended. */
    public void watch(Runnable watcher) {
        watchers.add(watcher);
    }

    /** Calls them no more. */
    public void unwatch(Runnable watcher) {
        watchers.remove(watcher);
    }

    /** The slip that is searched on; empty while none is. */
    public Optional<String> on() {
        return Optional.of(slip).filter(id -> !id.isEmpty());
    }

    /** How much of its time is spent, at most 1; 0 while none runs. */
    public double share() {
        return budget == null ? 0 : Math.min(1, budget.spent(0));
    }

    /** What is to be told of the last search, where it was on that slip and its code failed. */
    public Optional<Remark> failed(String id) {
        return failed.filter(told -> told.slip().equals(id));
    }

    /** Whether a search can begin on a slip now: another answer may be missing, it may not be worked out yet, or another runs. */
    public boolean canBegin(String id) {
        return on().isEmpty() && search(id).isPresent();
    }

    private Optional<SlipSearch> search(String id) {
        return project.workedNow()
                .flatMap(worked -> Optional.ofNullable(worked.slips().get(id)))
                .flatMap(SlipSearch::of);
    }

    /** Begins a search; with another seed than the last on that slip, so that it looks elsewhere. Nothing happens where none can begin. */
    public void begin(String id, Duration time) {
        if (!canBegin(id)) {
            return;
        }
        SlipSearch search = search(id).orElseThrow();
        long seed = 1
                + project.project()
                        .slip(id)
                        .flatMap(Searched::on)
                        .map(Searched::seed)
                        .orElse(0L);
        SearchBudget spending = SearchBudget.ofTime(time, nanos, workers, seed);
        slip = id;
        budget = spending;
        failed = Optional.empty();
        int number = ++begun;
        List.copyOf(watchers).forEach(Runnable::run);
        threads.execute(() -> {
            Optional<Remark> told = search.run(spending, find -> window.execute(() -> project.find(find, number)));
            window.execute(() -> {
                slip = "";
                budget = null;
                failed = told;
                List.copyOf(watchers).forEach(Runnable::run);
            });
        });
    }

    /** Ends the search that runs, if one does; what it has found stays. */
    public void stop() {
        if (budget != null) {
            budget.stop();
        }
    }
}
