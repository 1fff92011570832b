package org.hidewright.core.work;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import org.hidewright.api.calculator.Budget;
import org.hidewright.api.declaration.DeclaredSearch;
import org.hidewright.api.declaration.Values;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.catalogue.BundleFault;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.ProjectNotices;
import org.hidewright.core.project.Slip;
import org.hidewright.core.search.AskedPrint;
import org.hidewright.core.search.FoundText;
import org.hidewright.core.search.Searched;
import org.hidewright.core.wording.Remark;

/** The search of one slip: begun by the maker, with the answers as they stand when it is begun. */
public final class SlipSearch {
    private final Installed installed;
    private final DeclaredSearch search;
    private final String slip;
    private final Values asked;

    private SlipSearch(Installed installed, DeclaredSearch search, String slip, Values asked) {
        this.installed = installed;
        this.search = search;
        this.slip = slip;
        this.asked = asked;
    }

    /** Whether a slip has something that is searched for, however its other answers stand. */
    public static boolean isFor(WorkedSlip slip) {
        return slip.installed().flatMap(known -> known.calculator().search()).isPresent();
    }

    /** The search of a slip; empty where there is none, or where another of its answers is missing. */
    public static Optional<SlipSearch> of(WorkedSlip slip) {
        return slip.installed()
                .flatMap(known -> known.calculator()
                        .search()
                        .flatMap(search -> slip.questions()
                                .map(asked -> new SlipSearch(
                                        known, search, slip.slip().id(), asked))));
    }

    /** What was found, as it is put into the project. */
    public final class Find {
        private final Values values;
        private final Searched searched;

        private Find(Values values, Searched searched) {
            this.values = values;
            this.searched = searched;
        }

        /** The project with what was found on its slip; as it was where the slip is gone. */
        public Project in(Project project) throws JsonTrouble {
            Optional<Slip> now = project.slip(slip);
            return now.isEmpty()
                    ? project
                    : project.with(now.get()
                            .finding(search.sought().key(), FoundText.json(search.sought(), values), searched.json()));
        }
    }

    /**
     * Searches on this thread until the budget is spent or nothing better can be hoped for.
     *
     * @param better takes each finding that is better than those before, from any thread
     * @return what is to be told where its code failed; what was found before holds all the same
     */
    public Optional<Remark> run(Budget budget, Consumer<Find> better) {
        String print = AskedPrint.of(asked, search.sought().key());
        Tried tried = new Tried(budget);
        Consumer<Values> found =
                values -> better.accept(new Find(values, new Searched(print, budget.seed(), tried.most.get())));
        try {
            search.search(asked, tried, found);
            return Optional.empty();
        } catch (BundleFault e) {
            return Optional.of(failed(e.leftAlone(), e.words()));
        } catch (Exception | LinkageError | StackOverflowError | AssertionError e) {
            return Optional.of(failed(false, e.toString())); // where no guard stands between
        }
    }

    private Remark failed(boolean leftAlone, Object words) {
        return Remark.of(ProjectNotices.failed(installed, leftAlone, words), CoreTexts.TEXTS)
                .onSlip(slip);
    }

    /** A budget that knows how often it was tried. */
    private record Tried(Budget budget, AtomicLong most) implements Budget {
        Tried(Budget budget) {
            this(budget, new AtomicLong());
        }

        @Override
        public int workers() {
            return budget.workers();
        }

        @Override
        public void sideBySide(List<? extends Runnable> searches) {
            budget.sideBySide(searches);
        }

        @Override
        public long seed() {
            return budget.seed();
        }

        @Override
        public double spent(long tried) {
            if (tried > most.get()) {
                most.accumulateAndGet(tried, Math::max);
            }
            return budget.spent(tried);
        }
    }
}
