package org.hidewright.command;

import java.util.Optional;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.project.Project;
import org.hidewright.core.search.SearchBudget;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.store.ProjectFile;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.work.Bench;
import org.hidewright.core.work.SlipSearch;
import org.hidewright.core.work.WorkedProject;

/** Searches slip after slip of a project, and saves what was found after each. */
final class SearchRun {
    private final Bench bench;
    private final Session session;
    private final SearchPrinter printer;
    private ProjectFile file;
    private WorkedProject worked;
    private boolean whole = true;

    SearchRun(ProjectFile file, Bench bench, Session session, SearchPrinter printer) {
        this.file = file;
        this.bench = bench;
        this.session = session;
        this.printer = printer;
        this.worked = bench.work(file.project());
    }

    /** Whether each search could be made, and came to its end. */
    boolean whole() {
        return whole;
    }

    /** Searches on a slip of the project. */
    void search(String slip, SearchBudget budget) throws FileTrouble {
        Optional<SlipSearch> search = SlipSearch.of(worked.slips().get(slip));
        if (search.isEmpty()) {
            whole = false;
            printer.notYet(worked, slip);
            return;
        }
        Project before = worked.project();
        long from = System.nanoTime();
        Optional<Remark> failed = search.get().run(budget, find -> {
            worked = bench.work(with(find, before), worked);
            printer.found((System.nanoTime() - from) / 1e9, worked.slips().get(slip));
        });
        failed.ifPresent(remark -> session.tell(session.err(), remark));
        whole &= failed.isEmpty();
        if (worked.project() == before) {
            printer.noBetter(slip);
        } else {
            file = file.save(worked.project());
        }
        printer.searched(worked, slip);
    }

    private static Project with(SlipSearch.Find find, Project before) {
        try {
            return find.in(before);
        } catch (JsonTrouble e) {
            throw new IllegalStateException("what was found is written as JSON", e);
        }
    }
}
