package org.hidewright.core.work;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.hidewright.api.calculator.NoticeKind.Severity;
import org.hidewright.core.project.Project;
import org.hidewright.core.wording.Remark;

/** A project and what each of its slips came to. Immutable but for what is worked out late. */
public final class WorkedProject {
    private final Project project;
    private final Map<String, WorkedSlip> slips;
    private final Map<String, Optional<SlipRanges>> ranges = new ConcurrentHashMap<>();

    WorkedProject(Project project, Map<String, WorkedSlip> slips) {
        this.project = project;
        this.slips = Collections.unmodifiableMap(slips);
    }

    public Project project() {
        return project;
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
        return ranges.computeIfAbsent(slip, id -> RangeWork.of(this, id));
    }

    /** All remarks: those about the file first, then slip by slip. */
    public List<Remark> remarks() {
        List<Remark> all = new ArrayList<>(project.remarks());
        slips.values().forEach(slip -> all.addAll(slip.remarks()));
        return all;
    }

    public List<Remark> remarks(Severity severity) {
        return remarks().stream()
                .filter(remark -> remark.severity() == severity)
                .toList();
    }
}
