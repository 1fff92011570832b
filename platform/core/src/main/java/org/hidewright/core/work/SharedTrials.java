package org.hidewright.core.work;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Values;
import org.hidewright.core.wording.Remark;

/**
 * What the studies of one worked project share: which ranges each slip hangs on, and what slips came to at values that were
 * tried already, so that the next slip of a chain goes on from the one before it. No more is held than {@link #MOST}
 * results; the slips that were asked for longest ago go first. For one thread at a time.
 */
final class SharedTrials {
    /** Some 400 bytes each for a slip of a few numbers. */
    static final int MOST = 100_000;

    /**
     * What a slip came to.
     *
     * @param slip with the answers that can be linked to; null where it was refused
     * @param refusal why; null where it was not
     */
    record Came(WorkedSlip slip, Remark refusal) {}

    /**
     * The ranges a slip hangs on.
     *
     * @param inputs those of the slips it is linked to, then its own
     * @param own where among them its own are, by their paths
     */
    record Reach(List<RangedInput> inputs, Map<String, Integer> own) {}

    private final WorkedProject project;
    private final Map<String, Reach> reaches = new HashMap<>();
    private final Map<String, Map<List<Double>, Came>> known = new LinkedHashMap<>(16, 0.75f, true);
    private int held;

    SharedTrials(WorkedProject project) {
        this.project = project;
    }

    /** The slips a slip is linked to, the last first. */
    List<String> sources(String slip) {
        List<String> sources = new ArrayList<>();
        for (String source : project.slips().get(slip).read().sources().keySet()) {
            if (project.slips().containsKey(source)) {
                sources.add(0, source);
            }
        }
        return sources;
    }

    /** The ranges of a slip that is linked to none but slips with answers. */
    Reach reach(String slip) {
        for (String each : after(slip, reaches::containsKey)) {
            reaches.put(each, reachOf(each));
        }
        return reaches.get(slip);
    }

    /**
     * A slip and those it hangs on that are not known, each after its own sources; a loop, as a chain may be longer than a
     * stack is deep.
     */
    List<String> after(String slip, Predicate<String> isKnown) {
        Set<String> done = new LinkedHashSet<>();
        Set<String> opened = new HashSet<>();
        Deque<String> open = new ArrayDeque<>(List.of(slip));
        while (!open.isEmpty()) {
            String next = open.peek();
            if (isKnown.test(next)) {
                open.pop();
            } else if (opened.add(next)) {
                List<String> sources = sources(next);
                for (int i = sources.size() - 1; i >= 0; i--) {
                    if (!opened.contains(sources.get(i))) {
                        open.push(sources.get(i));
                    }
                }
            } else {
                open.pop();
                done.add(next);
            }
        }
        return List.copyOf(done);
    }

    private Reach reachOf(String slip) {
        if (SlipSearch.isFor(project.slips().get(slip))) {
            return new Reach(List.of(), Map.of()); // what was found was found for the nominal values
        }
        List<RangedInput> inputs = List.of();
        for (String source : sources(slip)) {
            inputs = joined(inputs, reaches.get(source).inputs());
        }
        List<RangedInput> typed = new ArrayList<>();
        Map<String, Integer> own = new HashMap<>();
        for (var range :
                TypedRanges.of(project.slips().get(slip).read().entries()).entrySet()) {
            RangedInput input = TypedRanges.input(slip, range.getKey(), range.getValue());
            int known = TypedRanges.cell(range.getKey()).isEmpty() ? -1 : position(input, inputs, typed);
            own.put(range.getKey(), known < 0 ? inputs.size() + typed.size() : known);
            if (known < 0) {
                typed.add(input);
            }
        }
        return new Reach(joined(inputs, typed), own);
    }

    /** Where a cell of the workshop stands that was taken already; -1 where it was not. */
    private static int position(RangedInput cell, List<RangedInput> inputs, List<RangedInput> typed) {
        int before = inputs.indexOf(cell);
        int here = typed.indexOf(cell);
        return before >= 0 ? before : here < 0 ? -1 : inputs.size() + here;
    }

    /** One list where the other adds nothing: slips of a chain share theirs. */
    private static List<RangedInput> joined(List<RangedInput> one, List<RangedInput> other) {
        if (one.isEmpty() || one == other || other.isEmpty()) {
            return one.isEmpty() ? other : one;
        }
        Set<RangedInput> all = new LinkedHashSet<>(one);
        all.addAll(other);
        return List.copyOf(all);
    }

    /** What a slip came to at values of its inputs; null where that is not held. */
    Came at(String slip, List<Double> values) {
        Map<List<Double>, Came> results = known.get(slip);
        return results == null ? null : results.get(values);
    }

    /** Holds what a slip came to, in place of what was asked for longest ago. */
    void hold(String slip, List<Double> values, Came came) {
        if (known.computeIfAbsent(slip, key -> new HashMap<>()).put(values, light(came)) == null) {
            held++;
        }
        Iterator<Map.Entry<String, Map<List<Double>, Came>>> oldest =
                known.entrySet().iterator();
        while (held > MOST && known.size() > 1) {
            held -= oldest.next().getValue().size();
            oldest.remove();
        }
    }

    int held() {
        return held;
    }

    /** Without what nobody is linked to: drawings and sentences, the working, the remarks. */
    private static Came light(Came came) {
        if (came.slip() == null) {
            return came;
        }
        Values answers = came.slip().answers().orElseThrow();
        Map<String, Object> linkable = new LinkedHashMap<>();
        for (Answer answer :
                came.slip().installed().orElseThrow().calculator().declaration().answers()) {
            if (answer.kind() != Kind.DRAWING && answer.kind() != Kind.PHRASE) {
                answers.get(answer.key()).ifPresent(value -> linkable.put(answer.key(), value));
            }
        }
        return new Came(came.slip().answering(Values.of(linkable)), null);
    }
}
