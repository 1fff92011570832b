package org.hidewright.core.jobcard;

import java.util.List;
import java.util.stream.Collectors;
import org.hidewright.api.measure.Range;
import org.hidewright.api.measure.Unit;
import org.hidewright.core.range.Part;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.RangedInput;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;
import org.hidewright.core.workshop.CellWords;

/** The ranges that a slip hangs on, and parts of them, in words. */
final class RangedInputs {
    /** Shares of a range that nobody can tell apart at the bench. */
    private static final double NEAR = 1e-6;

    private final WorkedProject worked;
    private final WorkedSlip slip;
    private final List<RangedInput> inputs;
    private final Wording wording;

    RangedInputs(WorkedProject worked, WorkedSlip slip, List<RangedInput> inputs, Wording wording) {
        this.worked = worked;
        this.slip = slip;
        this.inputs = inputs;
        this.wording = wording;
    }

    /** The question or cell it was typed at, with its slip where that is another. */
    String label(int index) {
        RangedInput input = inputs.get(index);
        if (input.slip().isEmpty()) {
            return wording.host(
                    "where.cell", CellWords.of(input.path(), worked.shelf()).in(wording));
        }
        WorkedSlip at = worked.slips().get(input.slip());
        String question = new QuestionPlace(at, wording).words(input.path());
        return at == slip ? question : wording.host("job-card.linked", new SlipWording(at, wording).title(), question);
    }

    /** A value of it, in the unit it was typed in. */
    String value(int index, double base) {
        Unit unit = inputs.get(index).typed().unit();
        return wording.values().of(base, unit).inline();
    }

    /** Whether a value is one of its limits, but for what bisection leaves. */
    boolean atAnEnd(int index, double base) {
        Range range = inputs.get(index).typed().range();
        double near = NEAR * (range.high() - range.low());
        return base - range.low() <= near || range.high() - base <= near;
    }

    String where(List<Part> parts) {
        return parts.stream().map(this::where).collect(Collectors.joining("; "));
    }

    private String where(Part part) {
        Range range = inputs.get(part.input()).typed().range();
        String input = label(part.input());
        String from = value(part.input(), part.from());
        String to = value(part.input(), part.to());
        if (part.to() == range.high() && part.from() > range.low()) {
            return wording.host("range.where-more", input, from);
        }
        return part.from() == range.low() && part.to() < range.high()
                ? wording.host("range.where-less", input, to)
                : wording.host("range.where", input, from, to);
    }
}
