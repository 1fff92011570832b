package org.hidewright.core.work;

import java.util.BitSet;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Notice;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.Nearest;
import org.hidewright.core.SharedList;
import org.hidewright.core.catalogue.Away;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.ProjectNotices;
import org.hidewright.core.project.Slip;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.work.WorkedSlip.State;

/** One step from a worked project to the next: reads the slips that changed, and works what they reach in its order. */
final class Edit {
    private final Project project;
    private final Looked looked;
    /** What a slip came to before, by its place in the project; null where it was not there. */
    private final IntFunction<WorkedSlip> before;

    private final SharedList.Draft<WorkedSlip> worked;
    private final SharedList.Draft<LateRanges> ranges;
    private final Map<Integer, ReadSlip> read = new HashMap<>();
    /** Slips whose answers are not what they were. */
    private final Set<Integer> moved = new HashSet<>();

    private final Links links;
    private LinkGraph graph;

    private Edit(
            Project project,
            Looked looked,
            LinkGraph graph,
            IntFunction<WorkedSlip> before,
            SharedList<WorkedSlip> worked,
            SharedList<LateRanges> ranges) {
        this.project = project;
        this.looked = looked;
        this.graph = graph;
        this.before = before;
        this.worked = worked.draft();
        this.ranges = ranges.draft();
        this.links = new Links(
                id -> this.worked.get(project.index().get(id)), project.index().keySet());
    }

    /** A step to a project with the same slips in the same order, and the same calculators installed. */
    static Edit of(WorkedProject before, Project project, Looked looked) {
        SharedList<WorkedSlip> worked = before.worked();
        return new Edit(project, looked, before.graph(), worked::get, worked, before.lateRanges());
    }

    /** A step to any project; before may be null. */
    static Edit ofAll(WorkedProject before, Project project, Looked looked) {
        int size = project.slips().size();
        return new Edit(
                project,
                looked,
                LinkGraph.of(size),
                slip -> before == null
                        ? null
                        : before.slips().get(project.slips().get(slip).id()),
                SharedList.of(Collections.nCopies(size, null)),
                SharedList.of(Collections.nCopies(size, null)));
    }

    /** Works what changed slips reach. */
    WorkedProject work(Collection<Integer> changed) {
        Map<Integer, int[]> sources = new HashMap<>();
        for (int slip : changed) {
            ReadSlip reading = read(project.slips().get(slip), before.apply(slip));
            read.put(slip, reading);
            sources.put(slip, sources(reading));
        }
        graph = graph.with(sources);
        BitSet reached = graph.reachedFrom(changed);
        for (List<Integer> group : graph.inOrder(reached)) {
            if (graph.isCircle(group)) {
                circle(group);
            } else {
                one(group.get(0));
            }
        }
        reached.stream().forEach(slip -> ranges.set(slip, new LateRanges()));
        return new WorkedProject(project, looked, graph, worked.done(), ranges.done());
    }

    private int[] sources(ReadSlip reading) {
        return reading.sources().keySet().stream()
                .map(project.index()::get)
                .filter(Objects::nonNull)
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private ReadSlip read(Slip slip, WorkedSlip was) {
        Optional<Installed> installed = looked.found()
                .get(slip.calculator())
                .filter(found -> found.calculator().declaration().version() >= slip.version());
        if (was != null
                && installed.isPresent()
                && was.slip().equals(slip)
                && was.installed().equals(installed)
                && was.read().stock().stream().allMatch(use -> use.holdsFor(looked.shelf()))) {
            return was.read();
        }
        if (installed.isEmpty()) {
            List<Remark> why = slip.calculator().isEmpty() ? List.of() : List.of(dormant(slip));
            ReadSlip asleep = new ReadSlip(slip, installed, Map.of(), why, Map.of(), List.of());
            return was != null && asleep.equals(was.read()) ? was.read() : asleep;
        }
        EntryReader reader = new EntryReader(
                slip.id(), looked.shelf(), installed.get().calculator().texts());
        try {
            Map<String, Entry.Answered> entries = reader.read(
                    installed.get().calculator().declaration().questions(), slip.questions(), "", List.of());
            return new ReadSlip(
                    slip,
                    installed,
                    entries,
                    Stream.concat(byOther(slip, installed.get()), reader.remarks().stream())
                            .toList(),
                    Links.sources(entries),
                    List.copyOf(reader.stock()));
        } catch (EntryReader.BadPreset e) {
            return ReadSlip.broken(slip, installed.get(), e);
        }
    }

    /** Where the slip was written for another bundle than the one that works it: both may bring a calculator of one id. */
    private static Stream<Remark> byOther(Slip slip, Installed installed) {
        return slip.from().filter(named -> !named.equals(installed.bundle())).stream()
                .map(named -> Remark.of(
                                ProjectNotices.WORKED_BY_OTHER.with(installed.id(), named, installed.bundle()),
                                CoreTexts.TEXTS)
                        .onSlip(slip.id())
                        .atPlace(slip.node().place()));
    }

    private Remark dormant(Slip slip) {
        Optional<Installed> present = looked.found().get(slip.calculator());
        Notice notice;
        if (present.isPresent()) {
            notice = ProjectNotices.DORMANT_NEWER.with(
                    slip.calculator(),
                    slip.version(),
                    present.get().calculator().declaration().version(),
                    present.get().bundle());
        } else if (looked.ids().contains(slip.calculator())) {
            notice = ProjectNotices.DORMANT_UNUSABLE.with(slip.calculator());
        } else if (looked.away().containsKey(slip.calculator())) {
            notice = away(slip.calculator(), looked.away().get(slip.calculator()));
        } else if (slip.from().isPresent()) {
            notice = ProjectNotices.DORMANT_FROM.with(
                    slip.calculator(), slip.from().get());
        } else {
            notice = Nearest.to(slip.calculator(), looked.ids())
                    .map(near -> ProjectNotices.DORMANT_NEAREST.with(slip.calculator(), near))
                    .orElseGet(() -> ProjectNotices.DORMANT.with(slip.calculator()));
        }
        return Remark.of(notice, CoreTexts.TEXTS)
                .onSlip(slip.id())
                .atPlace(slip.node().place());
    }

    private static Notice away(String calculator, Away away) {
        return switch (away.why()) {
            case OFF -> ProjectNotices.DORMANT_OFF.with(calculator, away.bundle());
            case FAILED -> ProjectNotices.DORMANT_FAILED.with(calculator, away.bundle());
            case WAITING -> ProjectNotices.DORMANT_WAITING.with(calculator, away.bundle());
        };
    }

    /** A slip is as it was if it has answers, was not changed, and is linked to nothing that has moved. */
    private void one(int slip) {
        WorkedSlip was = before.apply(slip);
        boolean asItWas =
                was != null && was.answers().isPresent() && !read.containsKey(slip) && !anyMoved(graph.sources(slip));
        if (!asItWas) {
            settle(slip, workOne(reading(slip), was));
        }
    }

    private boolean anyMoved(int[] sources) {
        for (int source : sources) {
            if (moved.contains(source)) {
                return true;
            }
        }
        return false;
    }

    private ReadSlip reading(int slip) {
        ReadSlip changed = read.get(slip);
        return changed == null ? before.apply(slip).read() : changed;
    }

    private WorkedSlip workOne(ReadSlip slip, WorkedSlip was) {
        if (slip.installed().isEmpty()) {
            return WorkedSlip.without(slip, State.DORMANT);
        }
        if (slip.broken()) {
            return WorkedSlip.without(slip, State.BROKEN);
        }
        boolean sameCalculator = was != null && was.installed().equals(slip.installed());
        return new SlipWork(slip).work(links, sameCalculator ? was : null);
    }

    private void settle(int slip, WorkedSlip now) {
        WorkedSlip was = before.apply(slip);
        worked.set(slip, now.orSame(was));
        if (was == null
                || !was.answers().equals(now.answers())
                || !was.installed().equals(now.installed())) {
            moved.add(slip);
        }
    }

    /** The first slip of a circle tells it and the others on it point there; what is left may form a circle of its own. */
    private void circle(List<Integer> group) {
        Set<Integer> members = Set.copyOf(group);
        Map<Integer, Remark> told = new HashMap<>();
        for (int slip : group) {
            if (!told.containsKey(slip)) {
                tell(graph.circleThrough(slip, members), told);
            }
            settle(slip, WorkedSlip.without(reading(slip), State.REFUSED, told.get(slip)));
        }
    }

    private void tell(List<Integer> circle, Map<Integer, Remark> told) {
        List<String> ids = circle.stream().map(this::id).toList();
        String first = ids.get(0);
        for (int i = 0; i < circle.size() - 1; i++) {
            Notice notice = i > 0
                    ? ProjectNotices.IN_CIRCLE.with(first)
                    : ids.size() == 2
                            ? ProjectNotices.CIRCLE_OF_ONE.with(first)
                            : ProjectNotices.CIRCLE.with(String.join(" → ", ids));
            told.putIfAbsent(circle.get(i), reading(circle.get(i)).atLinkTo(ids.get(i + 1), notice));
        }
    }

    private String id(int slip) {
        return project.slips().get(slip).id();
    }
}
