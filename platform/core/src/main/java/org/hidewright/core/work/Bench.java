package org.hidewright.core.work;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hidewright.api.calculator.Notice;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.Nearest;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.ProjectNotices;
import org.hidewright.core.project.Slip;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.workshop.Shelf;
import org.hidewright.core.workshop.Stock;

/**
 * Works out the slips of a project in the order of their links.
 *
 * <p>Given what came out before, a slip is worked again only if its text, its calculator or an answer it is linked to has
 * changed. Nothing is kept here between calls.
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

    /** Works a project out, taking over from before what has not changed. */
    public WorkedProject work(Project project, WorkedProject before) {
        Shelf shelf = Shelf.of(project, stock);
        Map<String, ReadSlip> read = new LinkedHashMap<>();
        for (Slip slip : project.slips()) {
            if (!slip.id().isEmpty()) {
                read.putIfAbsent(
                        slip.id(),
                        read(slip, shelf, before == null ? null : before.slips().get(slip.id())));
            }
        }
        Map<String, WorkedSlip> worked = new HashMap<>();
        for (String id : inOrder(read)) {
            WorkedSlip was = before == null ? null : before.slips().get(id);
            worked.put(id, workOne(read.get(id), worked, read, was));
        }
        circles(read, worked, before);
        Map<String, WorkedSlip> inFileOrder = new LinkedHashMap<>();
        read.keySet().forEach(id -> inFileOrder.put(id, worked.get(id)));
        return new WorkedProject(project, shelf, inFileOrder);
    }

    private ReadSlip read(Slip slip, Shelf shelf, WorkedSlip was) {
        Optional<Installed> installed = catalogue
                .find(slip.calculator())
                .filter(found -> found.calculator().declaration().version() >= slip.version());
        if (was != null
                && was.slip().sameAs(slip)
                && was.installed().equals(installed)
                && was.read().stock().stream().allMatch(use -> use.holdsFor(shelf))) {
            return was.read();
        }
        if (installed.isEmpty()) {
            List<Remark> why = slip.calculator().isEmpty() ? List.of() : List.of(dormant(slip));
            return new ReadSlip(slip, installed, Map.of(), why, Map.of(), List.of());
        }
        EntryReader reader = new EntryReader(slip.id(), shelf);
        try {
            Map<String, Entry.Answered> entries = reader.read(
                    installed.get().calculator().declaration().questions(), slip.questions(), "", List.of());
            return new ReadSlip(
                    slip,
                    installed,
                    entries,
                    List.copyOf(reader.remarks()),
                    Links.sources(entries),
                    List.copyOf(reader.stock()));
        } catch (EntryReader.BadPreset e) {
            return ReadSlip.broken(slip, installed.get(), e);
        }
    }

    private Remark dormant(Slip slip) {
        Optional<Installed> present = catalogue.find(slip.calculator());
        Notice notice;
        if (present.isPresent()) {
            notice = ProjectNotices.DORMANT_NEWER.with(
                    slip.calculator(),
                    slip.version(),
                    present.get().calculator().declaration().version(),
                    present.get().bundle());
        } else if (slip.from().isPresent()) {
            notice = ProjectNotices.DORMANT_FROM.with(
                    slip.calculator(), slip.from().get());
        } else {
            notice = Nearest.to(slip.calculator(), catalogue.ids())
                    .map(near -> ProjectNotices.DORMANT_NEAREST.with(slip.calculator(), near))
                    .orElseGet(() -> ProjectNotices.DORMANT.with(slip.calculator()));
        }
        return Remark.of(notice, CoreTexts.TEXTS)
                .onSlip(slip.id())
                .atPlace(slip.node().place());
    }

    /** Slips with all they link to before them; those in a circle, and what hangs on them, are left out. */
    private static List<String> inOrder(Map<String, ReadSlip> read) {
        Map<String, Integer> open = new HashMap<>();
        Map<String, List<String>> dependents = new HashMap<>();
        Deque<String> ready = new ArrayDeque<>();
        for (Map.Entry<String, ReadSlip> slip : read.entrySet()) {
            List<String> sources = slip.getValue().sources().keySet().stream()
                    .filter(read::containsKey)
                    .toList();
            open.put(slip.getKey(), sources.size());
            sources.forEach(source ->
                    dependents.computeIfAbsent(source, key -> new ArrayList<>()).add(slip.getKey()));
            if (sources.isEmpty()) {
                ready.add(slip.getKey());
            }
        }
        List<String> order = new ArrayList<>();
        while (!ready.isEmpty()) {
            String id = ready.remove();
            order.add(id);
            for (String dependent : dependents.getOrDefault(id, List.of())) {
                if (open.merge(dependent, -1, Integer::sum) == 0) {
                    ready.add(dependent);
                }
            }
        }
        return order;
    }

    private WorkedSlip workOne(
            ReadSlip slip, Map<String, WorkedSlip> worked, Map<String, ReadSlip> all, WorkedSlip was) {
        if (slip.installed().isEmpty()) {
            return WorkedSlip.without(slip, WorkedSlip.State.DORMANT).orSame(was);
        }
        if (slip.broken()) {
            return WorkedSlip.without(slip, WorkedSlip.State.BROKEN).orSame(was);
        }
        boolean sameCalculator = was != null && was.installed().equals(slip.installed());
        return new SlipWork(slip).work(new Links(worked, all.keySet()), sameCalculator ? was : null);
    }

    /** Slips without a place in the order: the first of a circle tells it, the others point to it, the rest wait. */
    private static void circles(Map<String, ReadSlip> read, Map<String, WorkedSlip> worked, WorkedProject before) {
        Set<String> left = new LinkedHashSet<>(read.keySet());
        left.removeAll(worked.keySet());
        Map<Set<String>, String> told = new HashMap<>();
        for (String id : left) {
            ReadSlip slip = read.get(id);
            List<String> circle = circleThrough(id, read);
            WorkedSlip stuck;
            if (circle.isEmpty()) {
                String source = slip.sources().keySet().stream()
                        .filter(left::contains)
                        .findFirst()
                        .orElseThrow();
                Remark waits = slip.atLinkTo(source, ProjectNotices.WAITS.with(source));
                stuck = WorkedSlip.without(slip, WorkedSlip.State.WAITING, waits);
            } else {
                String first = told.putIfAbsent(new HashSet<>(circle), id);
                Notice notice = first != null
                        ? ProjectNotices.IN_CIRCLE.with(first)
                        : circle.size() == 2
                                ? ProjectNotices.CIRCLE_OF_ONE.with(id)
                                : ProjectNotices.CIRCLE.with(String.join(" → ", circle));
                stuck = WorkedSlip.without(slip, WorkedSlip.State.REFUSED, slip.atLinkTo(circle.get(1), notice));
            }
            worked.put(id, stuck.orSame(before == null ? null : before.slips().get(id)));
        }
    }

    /** The ids along a circle that leads back to a slip; empty when none does. */
    private static List<String> circleThrough(String start, Map<String, ReadSlip> read) {
        Map<String, String> cameFrom = new HashMap<>();
        Deque<String> open = new ArrayDeque<>(List.of(start));
        Set<String> seen = new LinkedHashSet<>();
        while (!open.isEmpty()) {
            String id = open.remove();
            for (String source : read.get(id).sources().keySet()) {
                if (source.equals(start)) {
                    return path(start, id, cameFrom);
                }
                if (read.containsKey(source) && seen.add(source)) {
                    cameFrom.put(source, id);
                    open.add(source);
                }
            }
        }
        return List.of();
    }

    private static List<String> path(String start, String last, Map<String, String> cameFrom) {
        List<String> path = new ArrayList<>(List.of(start));
        for (String id = last; id != null && !id.equals(start); id = cameFrom.get(id)) {
            path.add(1, id);
        }
        path.add(start);
        return path;
    }
}
