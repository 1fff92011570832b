package org.hidewright.core.work;

import java.util.Optional;
import java.util.function.Consumer;
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
import org.hidewright.core.search.SearchBudget;
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
     * @param better takes each finding that is better than those before, one at a time and from any thread; none any more once this
     *     method has come back
     * @return what is to be told where its code failed; what was found before holds all the same
     */
    public Optional<Remark> run(SearchBudget budget, Consumer<Find> better) {
        Findings findings = new Findings(budget, better);
        try {
            search.search(asked, budget, findings);
            return Optional.empty();
        } catch (BundleFault e) {
            return Optional.of(failed(e.leftAlone(), e.words()));
        } catch (Exception | LinkageError | StackOverflowError | AssertionError e) {
            return Optional.of(failed(false, e.toString())); // where no guard stands between
        } finally {
            findings.end();
        }
    }

    private Remark failed(boolean leftAlone, Object words) {
        return Remark.of(ProjectNotices.failed(installed, leftAlone, words), CoreTexts.TEXTS)
                .onSlip(slip);
    }

    /** Hands on what is found until the search has ended: code that was left alone may come upon something later. */
    private final class Findings implements Consumer<Values> {
        private final String print = AskedPrint.of(asked, search.sought().key());
        private final SearchBudget budget;
        private final Consumer<Find> better;
        private boolean ended;

        Findings(SearchBudget budget, Consumer<Find> better) {
            this.budget = budget;
            this.better = better;
        }

        @Override
        public synchronized void accept(Values values) {
            if (!ended) {
                better.accept(new Find(values, new Searched(print, budget.seed(), budget.tried())));
            }
        }

        synchronized void end() {
            ended = true;
        }
    }
}
