package org.hidewright.core.jobcard;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.document.JobView;
import org.hidewright.api.document.Section;
import org.hidewright.api.measure.Quantity;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.catalogue.BundleFault;
import org.hidewright.core.catalogue.CatalogueNotices;
import org.hidewright.core.catalogue.Contributor;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.ValueText.Shown;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.GivenSections;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;

/** The sections that bundles add to the job card. */
final class ContributedSections {
    private final WorkedProject worked;
    private final Wording wording;
    private final JobCard card;

    ContributedSections(WorkedProject worked, Wording wording, JobCard card) {
        this.worked = worked;
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
        JobView view = view();
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

    private JobView view() {
        return JobView.of(
                worked.project().name(),
                wording.language(),
                worked.slips().values().stream().map(this::slip).toList());
    }

    private JobView.Slip slip(WorkedSlip slip) {
        SlipWording words = new SlipWording(slip, wording);
        JobView.Slip.Builder view =
                JobView.Slip.of(slip.slip().id(), slip.slip().calculator(), words.title(), state(slip.state()));
        slip.remarks().forEach(remark -> view.notice(card.check(remark)));
        slip.answers().ifPresent(answers -> {
            Map<String, Object> entries = answers.entries();
            slip.installed().orElseThrow().calculator().declaration().answers().stream()
                    .filter(answer -> entries.containsKey(answer.key())
                            && answer.kind() != Kind.DRAWING
                            && answer.kind() != Kind.ROWS
                            && answer.kind() != Kind.GROUP)
                    .forEach(answer -> view.answer(answer.key(), answer(words, answer, entries.get(answer.key()))));
        });
        return view.build();
    }

    private static JobView.Answer answer(SlipWording words, Answer answer, Object value) {
        Shown shown = words.shown(answer, value);
        OptionalDouble number = value instanceof Quantity<?> quantity
                ? OptionalDouble.of(quantity.base())
                : value instanceof Number plain ? OptionalDouble.of(plain.doubleValue()) : OptionalDouble.empty();
        return number.isPresent()
                ? JobView.Answer.number(words.label(answer), shown.number(), shown.unit(), number.getAsDouble())
                : JobView.Answer.text(words.label(answer), shown.number());
    }

    private static JobView.State state(WorkedSlip.State state) {
        return switch (state) {
            case WORKED -> JobView.State.WORKED;
            case WAITING -> JobView.State.WAITING;
            case DORMANT -> JobView.State.DORMANT;
            case REFUSED, BROKEN -> JobView.State.REFUSED;
        };
    }
}
