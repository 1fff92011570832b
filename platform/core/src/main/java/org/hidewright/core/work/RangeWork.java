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
import org.hidewright.api.calculator.NoticeKind.Severity;
import org.hidewright.api.measure.Range;
import org.hidewright.core.range.RangeStudy;
import org.hidewright.core.range.Trial;
import org.hidewright.core.wording.Remark;

/**
 * Works one slip again and again over the ranges typed on it and on all it hangs on. A range is one input wherever it goes,
 * so that answers fed by one thickness move together.
 */
final class RangeWork {
    private final WorkedProject project;
    private final String id;
    private final List<RangedInput> inputs = new ArrayList<>();
    private final Map<String, Map<String, Integer>> inputOf = new HashMap<>();
    private final List<String> moving = new ArrayList<>();
    private final Map<String, WorkedSlip> still = new HashMap<>();

    private RangeWork(WorkedProject project, String id) {
        this.project = project;
        this.id = id;
        Set<String> moved = new HashSet<>();
        for (String slip : upstream()) {
            ReadSlip read = project.slips().get(slip).read();
            Map<String, Integer> own = new HashMap<>();
            TypedRanges.of(read.entries()).forEach((path, typed) -> {
                own.put(path, inputs.size());
                inputs.add(new RangedInput(slip, path, typed));
            });
            if (!own.isEmpty() || read.sources().keySet().stream().anyMatch(moved::contains)) {
                inputOf.put(slip, own);
                moved.add(slip);
                moving.add(slip);
            } else {
                still.put(slip, project.slips().get(slip));
            }
        }
    }

    /** The study of a slip; empty where it has no answer or nothing it hangs on is a range. */
    static Optional<SlipRanges> of(WorkedProject project, String id) {
        WorkedSlip slip = project.slips().get(id);
        if (slip == null || slip.answers().isEmpty()) {
            return Optional.empty();
        }
        RangeWork work = new RangeWork(project, id);
        if (work.inputs.isEmpty()) {
            return Optional.empty();
        }
        List<Range> ranges =
                work.inputs.stream().map(input -> input.typed().range()).toList();
        return RangeStudy.of(ranges, work::trial).map(study -> new SlipRanges(work.inputs, study));
    }

    /** The slip and all it hangs on, each after what it hangs on itself; without recursion, as a chain may be long. */
    private List<String> upstream() {
        Set<String> done = new LinkedHashSet<>();
        Set<String> opened = new HashSet<>();
        Deque<String> open = new ArrayDeque<>(List.of(id));
        while (!open.isEmpty()) {
            String slip = open.peek();
            if (opened.add(slip)) {
                project.slips().get(slip).read().sources().keySet().stream()
                        .filter(project.slips()::containsKey)
                        .filter(source -> !opened.contains(source))
                        .forEach(open::push);
            } else {
                open.pop();
                done.add(slip);
            }
        }
        return List.copyOf(done);
    }

    private Trial<Remark> trial(double[] values) {
        Map<String, WorkedSlip> worked = new HashMap<>(still);
        Links links = new Links(worked::get, project.slips().keySet());
        for (String slip : moving) {
            Map<String, Integer> own = inputOf.get(slip);
            RangePick pick = (path, range) -> own.containsKey(path) ? values[own.get(path)] : range.nominal();
            WorkedSlip tried = new SlipWork(project.slips().get(slip).read()).trial(links, pick);
            if (tried.answers().isEmpty()) {
                return new Trial.Refused<>(tried.remarks().stream()
                        .filter(Remark::stops)
                        .findFirst()
                        .orElseThrow());
            }
            worked.put(slip, tried);
        }
        WorkedSlip result = worked.get(id);
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
