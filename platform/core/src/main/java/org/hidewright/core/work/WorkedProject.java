package org.hidewright.core.work;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.hidewright.api.calculator.NoticeKind.Severity;
import org.hidewright.core.project.Project;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.workshop.Copies;
import org.hidewright.core.workshop.Shelf;
import org.hidewright.core.workshop.StockLink;

/** A project and what each of its slips came to. Immutable but for what is worked out late. */
public final class WorkedProject {
    private final Project project;
    private final Shelf shelf;
    private final Map<String, WorkedSlip> slips;
    private final Map<String, Optional<SlipRanges>> ranges = new ConcurrentHashMap<>();

    WorkedProject(Project project, Shelf shelf, Map<String, WorkedSlip> slips) {
        this.project = project;
        this.shelf = shelf;
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

    /** What the slips take from the workshop, each link once, in the order of the file. */
    public Set<StockLink> stock() {
        Set<StockLink> links = new LinkedHashSet<>();
        slips.values().forEach(slip -> slip.read().stock().forEach(use -> links.add(use.link())));
        return links;
    }

    /** The rows it was worked with. */
    public Shelf shelf() {
        return shelf;
    }

    /**
     * What is to be told of the project as a whole: about its file, about the copies it keeps, and where they differ from
     * the workshop file in use.
     */
    public List<Remark> general() {
        List<Remark> general = new ArrayList<>(project.remarks());
        general.addAll(shelf.remarks());
        general.addAll(new Copies(shelf, stock()).differences());
        return general;
    }

    /** All remarks: those about the file first, then slip by slip. */
    public List<Remark> remarks() {
        List<Remark> all = general();
        slips.values().forEach(slip -> all.addAll(slip.remarks()));
        return all;
    }

    public List<Remark> remarks(Severity severity) {
        return remarks().stream()
                .filter(remark -> remark.severity() == severity)
                .toList();
    }
}
