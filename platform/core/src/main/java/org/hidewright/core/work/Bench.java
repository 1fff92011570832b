package org.hidewright.core.work;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.catalogue.Contributor;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.Slip;
import org.hidewright.core.workshop.Shelf;
import org.hidewright.core.workshop.Stock;

/**
 * Works out the slips of a project in the order of their links.
 *
 * <p>Given what came out before, only slips that were changed and what hangs on them are looked at, and of these only those
 * are worked again to which something new comes. Working from nothing is the edit that changes every slip. Nothing is kept
 * here between calls.
 */
public final class Bench {
    private final Catalogue catalogue;
    private final Stock stock;

    /** A bench without a workshop file. */
    public Bench(Catalogue catalogue) {
        this(catalogue, Stock.of(catalogue::tables));
    }

    public Bench(Catalogue catalogue, Stock stock) {
        this.catalogue = catalogue;
        this.stock = stock;
    }

    /** Works a project out from nothing. */
    public WorkedProject work(Project project) {
        return work(project, null);
    }

    /**
     * Works a project out, taking over from before what has not changed. Where nothing has changed at all, slips whose
     * calculator failed are tried again.
     */
    public WorkedProject work(Project project, WorkedProject before) {
        Shelf shelf = shelf(project);
        Optional<List<Integer>> changed = Optional.ofNullable(before)
                .flatMap(known -> project.changedSince(known.project()))
                .map(slips -> slips.boxed().toList());
        if (changed.isPresent()) {
            Looked again = Looked.up(before.looked().found().keySet(), catalogue, shelf);
            if (again.sameAs(before.looked())) {
                return Edit.of(before, project, again).work(changed.get().isEmpty() ? broken(before) : changed.get());
            }
        }
        Set<String> wanted = project.slips().stream().map(Slip::calculator).collect(Collectors.toSet());
        return Edit.ofAll(before, project, Looked.up(wanted, catalogue, shelf))
                .work(project.index().values());
    }

    /** The rows within reach of a project here. */
    public Shelf shelf(Project project) {
        return Shelf.of(project.kept(), stock);
    }

    /** What adds sections to the papers of what is worked here. */
    public List<Contributor> contributors() {
        return catalogue.contributors();
    }

    private static List<Integer> broken(WorkedProject worked) {
        return worked.project().index().values().stream()
                .filter(slip -> worked.worked().get(slip).state() == WorkedSlip.State.BROKEN)
                .toList();
    }
}
