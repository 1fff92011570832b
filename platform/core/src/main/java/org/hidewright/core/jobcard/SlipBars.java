package org.hidewright.core.jobcard;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.document.Bars;
import org.hidewright.api.document.JobView;
import org.hidewright.api.document.Section;
import org.hidewright.core.catalogue.BundleFault;
import org.hidewright.core.catalogue.Contributor;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.GivenSections;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;

/** What bundles show of a slip as bars: those in the sections that they add to the papers of a job of this slip alone. */
public final class SlipBars {
    private final SeenJob job;
    private final List<Contributor> contributors;

    /** @param contributors what adds sections; one that fails shows nothing here, since the job card tells of it */
    public SlipBars(WorkedProject worked, Wording wording, List<Contributor> contributors) {
        this.job = new SeenJob(worked, wording, new JobCard(worked, wording));
        this.contributors = contributors;
    }

    /** Those of a slip, in the order they have on paper; none unless it is worked. */
    public List<Bars> of(WorkedSlip slip) {
        List<Bars> bars = new ArrayList<>();
        if (slip.state() == WorkedSlip.State.WORKED && !contributors.isEmpty()) {
            JobView view = job.view(List.of(slip));
            contributors.forEach(contributor -> sections(contributor, view).stream()
                    .flatMap(section -> section.blocks().stream())
                    .filter(Bars.class::isInstance)
                    .forEach(block -> bars.add((Bars) block)));
        }
        return bars;
    }

    private static List<Section> sections(Contributor contributor, JobView view) {
        try {
            return GivenSections.of(contributor.sections().apply(view));
        } catch (BundleFault e) {
            return List.of();
        }
    }
}
