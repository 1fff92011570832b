package org.hidewright.core.jobcard;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.calculator.NoticeKind.Severity;
import org.hidewright.core.range.Raised;
import org.hidewright.core.range.RangeStudy;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.SlipRanges;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;

/** Finds what must be known of parts of the ranges that a slip hangs on. */
public final class RangeChecks {
    private final RangeStudy<Remark> study;
    private final RangedInputs inputs;
    private final WorkedSlip slip;
    private final Wording wording;

    private RangeChecks(WorkedProject worked, WorkedSlip slip, SlipRanges ranges, Wording wording) {
        this.study = ranges.study();
        this.inputs = new RangedInputs(worked, slip, ranges.inputs(), wording);
        this.slip = slip;
        this.wording = wording;
    }

    /** All of one slip, those that come from the slips before it too; most have none. */
    public static List<RangeCheck> of(WorkedProject worked, WorkedSlip slip, Wording wording) {
        return worked.ranges(slip.slip().id())
                .map(ranges -> new RangeChecks(worked, slip, ranges, wording).all())
                .orElse(List.of());
    }

    /** Those that arise on the slip itself, so that a list of all slips names each once. */
    public static List<RangeCheck> own(WorkedProject worked, WorkedSlip slip, Wording wording) {
        return of(worked, slip, wording).stream()
                .filter(check -> check.about().slip().isEmpty()
                        || check.about().slip().equals(slip.slip().id()))
                .toList();
    }

    private List<RangeCheck> all() {
        List<RangeCheck> checks = new ArrayList<>();
        if (!study.answered().isEmpty()) {
            checks.add(answeredInPart());
        }
        study.refused()
                .forEach(part -> checks.add(new RangeCheck(
                        Severity.CHECK,
                        part.why(),
                        wording.host("range.refused", inputs.where(List.of(part.part())), wording.what(part.why())),
                        wording.why(part.why()),
                        wording.next(part.why()))));
        study.raised().forEach(raised -> checks.add(raised(raised)));
        return List.copyOf(checks);
    }

    private RangeCheck answeredInPart() {
        Remark refusal =
                slip.remarks().stream().filter(Remark::stops).findFirst().orElseThrow();
        return new RangeCheck(
                Severity.CHECK,
                refusal,
                wording.host("range.answered", inputs.where(study.answered())),
                wording.host("range.answered.why"),
                wording.host("range.answered.next"));
    }

    private RangeCheck raised(Raised<Remark> raised) {
        String what = wording.what(raised.what());
        return new RangeCheck(
                raised.what().severity(),
                raised.what(),
                raised.parts().isEmpty()
                        ? wording.host("range.check-together", what)
                        : wording.host("range.check", inputs.where(raised.parts()), what),
                wording.why(raised.what()),
                wording.next(raised.what()));
    }
}
