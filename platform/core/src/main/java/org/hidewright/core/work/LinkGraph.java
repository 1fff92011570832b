package org.hidewright.core.work;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hidewright.core.SharedList;

/**
 * Which slips are linked to which, each by its place in the project. Immutable; a changed one shares what was not touched.
 * All walks are loops, since a chain may be longer than a stack is deep.
 */
final class LinkGraph {
    private static final int[] NONE = {};

    private final SharedList<int[]> sources;
    private final SharedList<int[]> dependents;

    private LinkGraph(SharedList<int[]> sources, SharedList<int[]> dependents) {
        this.sources = sources;
        this.dependents = dependents;
    }

    /** So many slips without a link. */
    static LinkGraph of(int slips) {
        SharedList<int[]> none = SharedList.of(Collections.nCopies(slips, NONE));
        return new LinkGraph(none, none);
    }

    /** The graph with other links of some slips. */
    LinkGraph with(Map<Integer, int[]> newSources) {
        SharedList.Draft<int[]> changed = sources.draft();
        Map<Integer, Set<Integer>> touched = new HashMap<>();
        newSources.forEach((slip, now) -> {
            int[] was = sources.get(slip);
            if (!Arrays.equals(was, now)) {
                changed.set(slip, now);
                for (int source : was) {
                    dependents(source, touched).remove(slip);
                }
                for (int source : now) {
                    dependents(source, touched).add(slip);
                }
            }
        });
        if (touched.isEmpty()) {
            return this;
        }
        SharedList.Draft<int[]> hanging = dependents.draft();
        touched.forEach((source, slips) ->
                hanging.set(source, slips.stream().mapToInt(Integer::intValue).toArray()));
        return new LinkGraph(changed.done(), hanging.done());
    }

    private Set<Integer> dependents(int source, Map<Integer, Set<Integer>> touched) {
        return touched.computeIfAbsent(source, key -> {
            Set<Integer> slips = new LinkedHashSet<>();
            for (int slip : dependents.get(key)) {
                slips.add(slip);
            }
            return slips;
        });
    }

    /** The slips a slip is linked to, in the order of its questions. */
    int[] sources(int slip) {
        return sources.get(slip);
    }

    /** Slips and all that hang on them. */
    BitSet reachedFrom(Collection<Integer> slips) {
        BitSet reached = new BitSet();
        slips.forEach(reached::set);
        Deque<Integer> open = new ArrayDeque<>(slips);
        while (!open.isEmpty()) {
            for (int dependent : dependents.get(open.pop())) {
                if (!reached.get(dependent)) {
                    reached.set(dependent);
                    open.push(dependent);
                }
            }
        }
        return reached;
    }

    /** Slips each after all it is linked to among them; those of a circle together. */
    List<List<Integer>> inOrder(BitSet slips) {
        return new Order(slips).groups;
    }

    /** Whether a group of {@link #inOrder} is a circle, or a slip linked to itself. */
    boolean isCircle(List<Integer> group) {
        int first = group.get(0);
        return group.size() > 1 || Arrays.stream(sources.get(first)).anyMatch(source -> source == first);
    }

    /** The shortest way from a slip along links within its group and back to it, both ends named. */
    List<Integer> circleThrough(int start, Set<Integer> group) {
        Map<Integer, Integer> cameFrom = new HashMap<>();
        Deque<Integer> open = new ArrayDeque<>(List.of(start));
        while (!open.isEmpty()) {
            int slip = open.remove();
            for (int source : sources.get(slip)) {
                if (source == start) {
                    return way(start, slip, cameFrom);
                }
                if (group.contains(source) && cameFrom.putIfAbsent(source, slip) == null) {
                    open.add(source);
                }
            }
        }
        throw new IllegalArgumentException("slip " + start + " stands in no circle");
    }

    private static List<Integer> way(int start, int last, Map<Integer, Integer> cameFrom) {
        List<Integer> way = new ArrayList<>(List.of(start));
        for (int slip = last; slip != start; slip = cameFrom.get(slip)) {
            way.add(slip);
        }
        way.add(start);
        Collections.reverse(way);
        return way;
    }

    /** Tarjan's strongly connected components (SIAM J. Comput. 1, 1972), which come out sources first. */
    private final class Order {
        private final List<List<Integer>> groups = new ArrayList<>();
        private final BitSet among;
        private final Map<Integer, Visit> visits = new HashMap<>();
        private final Deque<Visit> path = new ArrayDeque<>();
        private final Deque<Visit> ungrouped = new ArrayDeque<>();

        private static final class Visit {
            private final int slip;
            private final int number;
            private int next;
            private int lowest;
            private boolean grouped;

            Visit(int slip, int number) {
                this.slip = slip;
                this.number = number;
                this.lowest = number;
            }
        }

        Order(BitSet among) {
            this.among = among;
            for (int slip = among.nextSetBit(0); slip >= 0; slip = among.nextSetBit(slip + 1)) {
                if (!visits.containsKey(slip)) {
                    open(slip);
                    while (!path.isEmpty()) {
                        step(path.peek());
                    }
                }
            }
        }

        private void open(int slip) {
            Visit visit = new Visit(slip, visits.size());
            visits.put(slip, visit);
            path.push(visit);
            ungrouped.push(visit);
        }

        private void step(Visit visit) {
            int[] linked = sources.get(visit.slip);
            if (visit.next < linked.length) {
                int source = linked[visit.next++];
                Visit seen = visits.get(source);
                if (seen == null && among.get(source)) {
                    open(source);
                } else if (seen != null && !seen.grouped) {
                    visit.lowest = Math.min(visit.lowest, seen.number);
                }
                return;
            }
            path.pop();
            if (!path.isEmpty()) {
                path.peek().lowest = Math.min(path.peek().lowest, visit.lowest);
            }
            if (visit.lowest == visit.number) {
                close(visit);
            }
        }

        private void close(Visit first) {
            if (ungrouped.peek() == first) { // as nearly all are
                ungrouped.pop().grouped = true;
                groups.add(List.of(first.slip));
                return;
            }
            List<Integer> group = new ArrayList<>();
            Visit member;
            do {
                member = ungrouped.pop();
                member.grouped = true;
                group.add(member.slip);
            } while (member != first);
            Collections.sort(group);
            groups.add(group);
        }
    }
}
