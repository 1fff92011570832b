package org.hidewright.stitching;

import java.util.ArrayList;
import java.util.List;
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

/** The same number of holes on two lines that are pierced apart, such as a gusset and the panel it goes round. */
@Calculates("mated-seams")
@Component(service = Calculator.class)
public final class MatedSeams implements Calculator<MatedSeams.Lines, MatedSeams.Mated> {
    static final Formula MATE_GAP = Formula.of("mate-gap", "p2 = L2 / g", Origins.GEOMETRY);
    static final Formula EASE = Formula.of("mate-ease", "e = L2 / L1 - 1", Origins.GEOMETRY);

    private static final NoticeKind CORNERS_DIFFER = NoticeKind.stop("corners-differ");
    private static final NoticeKind OPEN_AND_CLOSED = NoticeKind.stop("open-and-closed");
    private static final NoticeKind MUCH_EASE = NoticeKind.check("much-ease");
    private static final NoticeKind SLANT = NoticeKind.note("slant-mirrored");

    /** From here leather puckers or has to be stretched to meet (from memory). */
    private static final double MUCH = 0.08;

    /** What is asked. */
    public record Lines(
            @Asked(preset = "{\"straight\":{\"length\":\"180 mm\"}}")
            SewnLine line,

            @Asked(preset = "{\"straight\":{\"length\":\"184 mm\"}}")
            SewnLine mate,

            @Asked(unit = "mm", min = "0.8 mm", max = "15 mm", usual = "2-6 mm", preset = "3.85 mm")
            Length pitch,

            @Asked(preset = "pass") AtCorners corners) {}

    /** What is answered. */
    public record Mated(
            @Answered(by = "stitch-geometry", lead = true) int holes,

            @Answered(unit = "mm", step = "0.01 mm", by = "stitch-geometry", lead = true)
            Length gap,

            @Answered(unit = "mm", step = "0.01 mm", by = "mate-gap", lead = true)
            Length gapOnMate,

            @Answered(unit = "%", step = "0.1 %", by = "mate-ease")
            double ease,

            @Answered(unit = "mm", step = "0.1 mm", by = "stitch-geometry")
            List<Length> places,

            @Answered(unit = "mm", step = "0.1 mm", by = "stitch-geometry")
            List<Length> placesOnMate,

            @Answered Drawing marks,
            @Answered Drawing marksOnMate) {}

    @Override
    public Outcome<Mated> calculate(Lines asked, Working working) {
        Curve line;
        Curve mate;
        try {
            line = asked.line().curve("line");
            mate = asked.mate().curve("mate");
        } catch (Refusal e) {
            return e.outcome();
        }
        if (line.isClosed() != mate.isClosed()) {
            return Outcome.refuse(OPEN_AND_CLOSED.at("mate"));
        }
        Spacing spacing = Spacing.of(line, asked.pitch().mm(), asked.corners());
        Spacing mated;
        try {
            mated = spacing.on(mate, asked.corners());
        } catch (IllegalArgumentException e) {
            return Outcome.refuse(CORNERS_DIFFER.at(
                    "mate", line.corners().size(), mate.corners().size()));
        }
        Marks marks = Marks.of(spacing);
        Marks onMate = Marks.of(mated);
        int gaps = marks.gaps().size();
        double ease = mate.length() / line.length() - 1;
        List<Notice> notices = new ArrayList<>(List.of(SLANT.with()));
        if (Math.abs(ease) > MUCH + 1e-9) {
            notices.add(MUCH_EASE.at("mate", Math.round(Math.abs(ease) * 100)));
        }
        Length gapOnMate = Length.ofMm(mate.length() / gaps);
        working.step(MATE_GAP, gapOnMate, "L2", Length.ofMm(mate.length()), "g", gaps);
        working.step(EASE, ease, "L2", Length.ofMm(mate.length()), "L1", Length.ofMm(line.length()));
        return Outcome.of(
                new Mated(
                        marks.count(),
                        Length.ofMm(line.length() / gaps),
                        gapOnMate,
                        ease,
                        marks.lengths(),
                        onMate.lengths(),
                        marks.drawn().build(),
                        onMate.drawn().build()),
                notices);
    }

    @Override
    public List<Formula> formulas() {
        return List.of(MATE_GAP, EASE);
    }

    @Override
    public List<NoticeKind> notices() {
        return Stream.concat(SewnLine.NOTICES.stream(), Stream.of(CORNERS_DIFFER, OPEN_AND_CLOSED, MUCH_EASE, SLANT))
                .toList();
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.GEOMETRY);
    }
}
