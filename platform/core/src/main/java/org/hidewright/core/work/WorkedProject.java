package org.hidewright.core.work;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.hidewright.api.calculator.NoticeKind.Severity;
import org.hidewright.core.project.Project;
import org.hidewright.core.wording.Remark;

/** A project and what each of its slips came to. Immutable. */
public final class WorkedProject {
    private final Project project;
    private final Map<String, WorkedSlip> slips;

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
