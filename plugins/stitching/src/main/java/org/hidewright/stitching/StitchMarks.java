package org.hidewright.stitching;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Refusal;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.geometry.AtCorners;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Spacing;
import org.hidewright.api.measure.Length;
import org.osgi.service.component.annotations.Component;

/** Stitch holes along a line, evenly, with none on a buried edge. */
@Calculates("stitch-marks")
@Component(service = Calculator.class)
public final class StitchMarks implements Calculator<StitchMarks.Line, StitchMarks.Made> {
    static final Formula HOLES_OPEN = Formula.of("holes-open", "N = g + 1", Origins.GEOMETRY);
    static final Formula HOLES_CLOSED = Formula.of("holes-closed", "N = g", Origins.GEOMETRY);
    static final Formula GAP = Formula.of("even-gap", "p = L / g", Origins.GEOMETRY);

    private static final NoticeKind STEP_OFF_LINE = NoticeKind.stop("step-off-line");
    private static final NoticeKind STEP_TOO_NEAR = NoticeKind.check("step-too-near");
    private static final NoticeKind IRON_WALKS = NoticeKind.check("iron-walks");

    /** A quarter of a stitch is seen. */
    private static final double SEEN = 0.25;

    /** What is asked. */
    public record Line(
            @Asked(preset = "{\"straight\":{\"length\":\"180 mm\"}}")
            SewnLine line,

            @Asked(
                    unit = "mm",
                    min = "0.8 mm",
                    max = "15 mm",
                    usual = "2-6 mm",
                    preset = "3.85 mm",
                    picture = "pitch#pitch")
            Length pitch,

            @Asked(preset = "mark") AtCorners corners,

            @Asked(example = "[{\"id\":\"pocket\",\"at\":\"42 mm\"}]")
            Optional<List<BuriedEdge>> steps,

            @Asked(unit = "mm", min = "0.2 mm", max = "5 mm", usual = "0.5-2 mm", preset = "1 mm")
            Length clearOfStep) {}

    /** What is answered. */
    public record Made(
            @Answered(by = "holes-open", lead = true) int holes,

            @Answered(unit = "mm", step = "0.01 mm", by = "even-gap", lead = true)
            Length smallestGap,

            @Answered(unit = "mm", step = "0.01 mm", by = "even-gap")
            Length largestGap,

            @Answered(unit = "mm", step = "0.1 mm", by = "stitch-geometry")
            Length length,

            @Answered(unit = "mm", step = "0.1 mm", by = "stitch-geometry")
            List<Length> places,

            @Answered Drawing marks) {}

    @Override
    public Outcome<Made> calculate(Line asked, Working working) {
        try {
            return work(asked, working);
        } catch (Refusal e) {
            return e.outcome();
        }
    }

    private static Outcome<Made> work(Line asked, Working working) throws Refusal {
        Curve line = asked.line().curve("line");
        List<BuriedEdge> steps = asked.steps().orElse(List.of());
        List<Double> beside = new ArrayList<>();
        for (BuriedEdge step : steps) {
            beside.add(beside(step, line, asked.clearOfStep().mm()));
        }
        double pitch = asked.pitch().mm();
        Marks marks = Marks.of(Spacing.of(line, pitch, asked.corners(), beside));
        List<Notice> notices = new ArrayList<>();
        for (BuriedEdge step : steps) {
            nearest(marks, step.at().mm())
                    .filter(distance -> distance < asked.clearOfStep().mm() - 1e-6)
                    .ifPresent(distance -> notices.add(STEP_TOO_NEAR.at(
                            "steps[" + step.id() + "].at", step.id(), Length.ofMm(distance), asked.clearOfStep())));
        }
        walk(marks, pitch).ifPresent(notices::add);
        int gaps = marks.gaps().size();
        if (marks.smallestGap() > marks.largestGap() - 1e-6) {
            working.step(GAP, Length.ofMm(marks.smallestGap()), "L", Length.ofMm(line.length()), "g", gaps);
        }
        working.step(line.isClosed() ? HOLES_CLOSED : HOLES_OPEN, marks.count(), "g", gaps);
        return Outcome.of(
                new Made(
                        marks.count(),
                        Length.ofMm(marks.smallestGap()),
                        Length.ofMm(marks.largestGap()),
                        Length.ofMm(line.length()),
                        marks.lengths(),
                        marks.drawn().build()),
                notices);
    }

    /** The place of the hole just outside a buried edge, on its thinner side. */
    private static double beside(BuriedEdge step, Curve line, double clear) throws Refusal {
        double at = step.at().mm() + (step.thinner() == BuriedEdge.Thinner.AFTER ? clear : -clear);
        if (at < 0 || at > line.length()) {
            throw new Refusal(STEP_OFF_LINE.at(
                    "steps[" + step.id() + "].at", step.id(), Length.ofMm(at), Length.ofMm(line.length())));
        }
        return at;
    }

    private static Optional<Double> nearest(Marks marks, double place) {
        double round = marks.line().length();
        return marks.along().stream()
                .map(along -> {
                    double apart = Math.abs(along - place);
                    return marks.line().isClosed() ? Math.min(apart, round - apart) : apart;
                })
                .min(Double::compare);
    }

    /** An iron keeps its own pitch; over a run the difference adds up. */
    private static Optional<Notice> walk(Marks marks, double pitch) {
        double walked = 0;
        double most = 0;
        double gap = pitch;
        for (double one : marks.gaps()) {
            walked += one - pitch;
            if (Math.abs(walked) > Math.abs(most)) {
                most = walked;
                gap = one;
            }
        }
        return Math.abs(most) > SEEN * pitch
                ? Optional.of(IRON_WALKS.at("pitch", Length.ofMm(gap), Length.ofMm(pitch), Length.ofMm(Math.abs(most))))
                : Optional.empty();
    }

    @Override
    public List<Formula> formulas() {
        return List.of(HOLES_OPEN, HOLES_CLOSED, GAP);
    }

    @Override
    public List<NoticeKind> notices() {
        return Stream.concat(SewnLine.NOTICES.stream(), Stream.of(STEP_OFF_LINE, STEP_TOO_NEAR, IRON_WALKS))
                .toList();
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.GEOMETRY);
    }
}
