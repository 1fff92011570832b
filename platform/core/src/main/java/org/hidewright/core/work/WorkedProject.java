package org.hidewright.core.work;

import java.util.AbstractMap;
import java.util.AbstractSet;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hidewright.api.calculator.NoticeKind.Severity;
import org.hidewright.core.SharedList;
import org.hidewright.core.project.Project;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.workshop.Copies;
import org.hidewright.core.workshop.Shelf;
import org.hidewright.core.workshop.StockLink;

/**
 * A project and what each of its slips came to. Immutable but for what is worked out late. What an edit does not reach it
 * shares with the one before.
 */
public final class WorkedProject {
    private final Project project;
    private final Looked looked;
    private final LinkGraph graph;
    private final SharedList<WorkedSlip> worked;
    private final SharedList<LateRanges> ranges;
    private final Set<String> leftOut;
    private final Map<String, WorkedSlip> slips;
    private final SharedTrials trials = new SharedTrials(this);

    /**
     * A worked project.
     *
     * @param looked what was found installed
     * @param worked by the place of the slip in the project; null where its id is none or another slip's
     * @param ranges the same
     */
    WorkedProject(
            Project project,
            Looked looked,
            LinkGraph graph,
            SharedList<WorkedSlip> worked,
            SharedList<LateRanges> ranges) {
        this(project, looked, graph, worked, ranges, Set.of());
    }

    private WorkedProject(
            Project project,
            Looked looked,
            LinkGraph graph,
            SharedList<WorkedSlip> worked,
            SharedList<LateRanges> ranges,
            Set<String> leftOut) {
        this.project = project;
        this.looked = looked;
        this.graph = graph;
        this.worked = worked;
        this.ranges = ranges;
        this.leftOut = leftOut;
        this.slips = leftOut.isEmpty() ? new ById() : without(new ById(), leftOut);
    }

    private static Map<String, WorkedSlip> without(Map<String, WorkedSlip> all, Set<String> leftOut) {
        Map<String, WorkedSlip> kept = new LinkedHashMap<>(all);
        kept.keySet().removeAll(leftOut);
        return Collections.unmodifiableMap(kept);
    }

    /** The same without the slips that only try something out: what is made by. One that another takes from stays. */
    public WorkedProject toMake() {
        Set<String> trying = new LinkedHashSet<>();
        slips.forEach((id, slip) -> slip.slip().whatIf().ifPresent(of -> trying.add(id)));
        boolean fewer = true;
        while (fewer) {
            Set<String> taken = new LinkedHashSet<>();
            slips.values().stream()
                    .filter(slip -> !trying.contains(slip.slip().id()))
                    .flatMap(slip -> slip.asked().stream())
                    .forEach(line -> line.link().ifPresent(link -> taken.add(link.slip())));
            fewer = trying.removeAll(taken);
        }
        return new WorkedProject(project, looked, graph, worked, ranges, Collections.unmodifiableSet(trying));
    }

    /** What {@link #toMake} has left out, in the order of the file. */
    public List<WorkedSlip> leftOut() {
        return leftOut.stream().map(id -> worked.get(project.index().get(id))).toList();
    }

    public Project project() {
        return project;
    }

    Looked looked() {
        return looked;
    }

    LinkGraph graph() {
        return graph;
    }

    SharedList<WorkedSlip> worked() {
        return worked;
    }

    SharedList<LateRanges> lateRanges() {
        return ranges;
    }

    SharedTrials trials() {
        return trials;
    }

    /** By id, in the order of the file. */
    public Map<String, WorkedSlip> slips() {
        return slips;
    }

    /**
     * What becomes of a slip's answers over the ranges typed on it and on the slips it hangs on; worked out when first
     * asked for.
     *
     * @return empty where it has no answers, or nothing it hangs on is a range
     */
    public Optional<SlipRanges> ranges(String slip) {
        Integer at = project.index().get(slip);
        return at == null ? Optional.empty() : ranges.get(at).of(this, trials, slip);
    }

    /** What the slips take from the workshop, each link once, in the order of the file. */
    public Set<StockLink> stock() {
        Set<StockLink> links = new LinkedHashSet<>();
        slips.values().forEach(slip -> slip.read().stock().forEach(use -> links.add(use.link())));
        return links;
    }

    /** The rows it was worked with. */
    public Shelf shelf() {
        return looked.shelf();
    }

    /**
     * What is to be told of the project as a whole: about its file, and where the copies it keeps differ from the workshop
     * file in use.
     */
    public List<Remark> general() {
        List<Remark> general = new ArrayList<>(project.remarks());
        general.addAll(new Copies(shelf(), stock()).differences());
        return general;
    }

    /** All remarks: those about the file first, then slip by slip. */
    public List<Remark> remarks() {
        List<Remark> all = general();
        slips.values().forEach(slip -> all.addAll(remarks(slip)));
        return all;
    }

    /** The remarks of one of the slips, where they stand in the file. */
    public List<Remark> remarks(WorkedSlip slip) {
        int at = project.index().get(slip.slip().id());
        return slip.remarks().stream().map(remark -> project.placed(remark, at)).toList();
    }

    public List<Remark> remarks(Severity severity) {
        return remarks().stream()
                .filter(remark -> remark.severity() == severity)
                .toList();
    }

    private final class ById extends AbstractMap<String, WorkedSlip> {
        @Override
        public boolean containsKey(Object id) {
            return project.index().containsKey(id);
        }

        @Override
        public WorkedSlip get(Object id) {
            Integer at = project.index().get(id);
            return at == null ? null : worked.get(at);
        }

        @Override
        public Set<Entry<String, WorkedSlip>> entrySet() {
            return new AbstractSet<>() {
                @Override
                public int size() {
                    return project.index().size();
                }

                @Override
                public Iterator<Entry<String, WorkedSlip>> iterator() {
                    return project.index().entrySet().stream()
                            .map(slip -> Map.entry(slip.getKey(), worked.get(slip.getValue())))
                            .iterator();
                }
            };
        }
    }
}
