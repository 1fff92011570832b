package org.hidewright.core.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hidewright.api.calculator.NoticeKind.Severity;
import org.hidewright.api.measure.Range;
import org.hidewright.core.range.RangeStudy;
import org.hidewright.core.range.Trial;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.work.SharedTrials.Came;
import org.hidewright.core.work.SharedTrials.Reach;

/**
 * Works one slip again and again over the ranges typed on it and on all it hangs on. A range is one input wherever it goes,
 * so that answers fed by one thickness move together. What slips before it came to is taken from trials for other slips,
 * where it is held.
 */
final class RangeWork {
    /** Calls of a study beside its sample: steps and two for the first order, and some bisection. */
    private static final int CALLS_PER_INPUT = 25;

    private final WorkedProject project;
    private final SharedTrials trials;
    private final String id;
    private final List<RangedInput> inputs;
    private final Map<String, int[]> inputsOf = new HashMap<>();
    /** Slips whose results are held: as many of the last before this one as there is room for. */
    private Set<String> held;

    private RangeWork(WorkedProject project, SharedTrials trials, String id) {
        this.project = project;
        this.trials = trials;
        this.id = id;
        this.inputs = trials.reach(id).inputs();
    }

    /**
     * The study of a slip; empty where nothing it hangs on is a range, where another slip or its bundle keeps it from
     * being worked, or where it is refused all over.
     */
    static Optional<SlipRanges> of(WorkedProject project, SharedTrials trials, String id) {
        WorkedSlip slip = project.slips().get(id);
        boolean refused = slip.state() == WorkedSlip.State.REFUSED
                && trials.sources(id).stream()
                        .allMatch(
                                source -> project.slips().get(source).answers().isPresent());
        if (slip.answers().isEmpty() && !refused) {
            return Optional.empty();
        }
        RangeWork work = new RangeWork(project, trials, id);
        if (work.inputs.isEmpty()) {
            return Optional.empty();
        }
        List<Range> ranges =
                work.inputs.stream().map(input -> input.typed().range()).toList();
        return RangeStudy.of(ranges, work::trial).map(study -> new SlipRanges(work.inputs, study));
    }

    private Trial<Remark> trial(double[] values) {
        Map<String, Came> here = new HashMap<>();
        List<String> order = trials.after(id, slip -> !slip.equals(id) && isKnown(slip, values, here));
        if (held == null) {
            int calls = RangeStudy.SAMPLE
                    + CALLS_PER_INPUT * inputs.size()
                    + (inputs.size() > RangeStudy.MOST_WITH_CORNERS ? 0 : 1 << inputs.size());
            int room = Math.max(1, SharedTrials.MOST / calls - 1);
            held = new HashSet<>(order.subList(Math.max(0, order.size() - room), order.size()));
        }
        for (String slip : order) {
            Came came = work(slip, values, here);
            here.put(slip, came);
            if (held.contains(slip)) {
                trials.hold(slip, valuesOf(slip, values), came);
            }
        }
        Came result = here.get(id);
        return result.refusal() != null ? new Trial.Refused<>(result.refusal()) : answered(result.slip());
    }

    private boolean isKnown(String slip, double[] values, Map<String, Came> here) {
        if (here.containsKey(slip)) {
            return true;
        }
        Came came = trials.reach(slip).inputs().isEmpty()
                ? new Came(project.slips().get(slip), null)
                : trials.at(slip, valuesOf(slip, values));
        if (came != null) {
            here.put(slip, came);
        }
        return came != null;
    }

    /** The values of the inputs that a slip hangs on itself. */
    private List<Double> valuesOf(String slip, double[] values) {
        int[] positions = inputsOf.computeIfAbsent(slip, this::positions);
        List<Double> own = new ArrayList<>(positions.length);
        for (int position : positions) {
            own.add(values[position]);
        }
        return own;
    }

    private int[] positions(String slip) {
        Map<RangedInput, Integer> places = new HashMap<>();
        for (RangedInput input : inputs) {
            places.put(input, places.size());
        }
        return trials.reach(slip).inputs().stream().mapToInt(places::get).toArray();
    }

    private Came work(String slip, double[] values, Map<String, Came> here) {
        for (String source : trials.sources(slip)) {
            if (here.get(source).refusal() != null) {
                return here.get(source);
            }
        }
        Reach reach = trials.reach(slip);
        int[] positions = inputsOf.computeIfAbsent(slip, this::positions);
        RangePick pick = (path, range) ->
                reach.own().containsKey(path) ? values[positions[reach.own().get(path)]] : range.nominal();
        Links links = new Links(
                source -> here.get(source).slip(), project.project().index().keySet());
        WorkedSlip tried = new SlipWork(project.slips().get(slip).read()).trial(links, pick);
        return tried.answers().isPresent()
                ? new Came(tried, null)
                : new Came(
                        null,
                        tried.remarks().stream()
                                .filter(Remark::stops)
                                .findFirst()
                                .orElseThrow());
    }

    private static Trial<Remark> answered(WorkedSlip result) {
        Map<Object, Remark> told = new LinkedHashMap<>();
        for (Remark remark : result.remarks()) {
            if (remark.severity() == Severity.CHECK || remark.severity() == Severity.CAUTION) {
                told.putIfAbsent(new About(remark.key(), remark.question()), remark);
            }
        }
        return new Trial.Answered<>(
                AnswerPlaces.of(
                        result.installed()
                                .orElseThrow()
                                .calculator()
                                .declaration()
                                .answers(),
                        result.answers().orElseThrow()),
                told);
    }

    /** What makes two remarks of a slip one, whatever numbers they name. */
    private record About(String key, String question) {}
}
