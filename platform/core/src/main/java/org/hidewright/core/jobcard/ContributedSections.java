package org.hidewright.core.jobcard;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.hidewright.api.document.JobView;
import org.hidewright.api.document.Section;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.catalogue.BundleFault;
import org.hidewright.core.catalogue.CatalogueNotices;
import org.hidewright.core.catalogue.Contributor;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.GivenSections;
import org.hidewright.core.work.WorkedProject;

/** The sections that bundles add to a packet. */
final class ContributedSections {
    private final SeenJob job;
    private final Wording wording;
    private final JobCard card;

    ContributedSections(WorkedProject worked, Wording wording, JobCard card) {
        this.job = new SeenJob(worked, wording, card);
        this.wording = wording;
        this.card = card;
    }

    /**
     * The sections.
     *
     * @param told hears of each contributor that failed; its place on the card says so too
     */
    List<Section> sections(List<Contributor> contributors, Consumer<Remark> told) {
        if (contributors.isEmpty()) {
            return List.of();
        }
        JobView view = job.view();
        List<Section> sections = new ArrayList<>();
        contributors.forEach(contributor -> sections.addAll(sections(contributor, view, told)));
        return sections;
    }

    private List<Section> sections(Contributor contributor, JobView view, Consumer<Remark> told) {
        try {
            return GivenSections.of(contributor.sections().apply(view));
        } catch (BundleFault e) {
            Remark fault =
                    Remark.of(CatalogueNotices.SECTION_FAILED.with(contributor.bundle(), e.words()), CoreTexts.TEXTS);
            told.accept(fault);
            return List.of(Section.of(
                    contributor.bundle(), wording.host("job-card.section-failed"), card.checks(List.of(fault))));
        }
    }
}
