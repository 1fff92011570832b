package org.hidewright.fasteners;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.measure.Length;
import org.osgi.service.component.annotations.Component;

/** The two slits for a magnetic closure, whose prongs go through the leather and are bent over a washer behind it. */
@Calculates("magnet-closure")
@Component(service = Calculator.class)
public final class MagnetClosure implements Calculator<MagnetClosure.Pronged, MagnetClosure.Slits> {
    private static final Formula SLIT = Formula.of("magnet-slit", "s = p + e", Origins.MAGNET_HABIT);
    private static final Formula BENT = Formula.of("magnet-bent", "r = l - t - w", Origins.GEOMETRY);
    private static final Formula EDGE = Formula.of("magnet-edge", "e = D / 2 + m", Origins.MAGNET_HABIT);

    private static final NoticeKind TOO_SHORT = NoticeKind.check("magnet-prongs-too-short");
    private static final NoticeKind WIDER_APART = NoticeKind.stop("magnet-prongs-wider-than-it");
    private static final NoticeKind WHICH_HALF = NoticeKind.note("magnet-which-half");

    private static final Length EASE = Length.ofMm(0.5);
    /** What is bent over has to hold: at least 3 mm (common practice). */
    private static final Length LEAST_BENT = Length.ofMm(3);
    /** Leather round the closure, so that its edge does not show. */
    private static final Length MARGIN = Length.ofMm(3);

    private static final double LETTER_MM = 3;

    /** What is asked. */
    public record Pronged(
            @Asked(unit = "mm", min = "3 mm", max = "60 mm", usual = "10-20 mm", example = "18 mm")
            Length headDiameter,

            @Asked(unit = "mm", min = "0.5 mm", max = "30 mm", usual = "2-6 mm", example = "4 mm")
            Length prongWidth,

            @Asked(unit = "mm", min = "1 mm", max = "60 mm", usual = "6-12 mm", example = "9 mm")
            Length prongsApart,

            @Asked(unit = "mm", min = "1 mm", max = "40 mm", usual = "6-12 mm", example = "8 mm")
            Length prongLength,

            @Asked(unit = "mm", min = "0 mm", max = "5 mm", usual = "0.5-1.5 mm", preset = "0.8 mm")
            Length washer,

            @Asked(unit = "mm", min = "0.3 mm", max = "20 mm", usual = "1-5 mm", example = "2 mm")
            Length thickness,

            @Asked Use use) {}

    /** What is answered. */
    public record Slits(
            @Answered(unit = "mm", step = "0.5 mm", round = Rounding.UP, by = "magnet-slit", lead = true)
            Length slit,

            @Answered(unit = "mm", step = "0.5 mm", by = "magnet-habit", lead = true)
            Length apart,

            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.DOWN, by = "magnet-bent")
            Length bentOver,

            @Answered(unit = "mm", step = "0.5 mm", round = Rounding.UP, by = "magnet-edge")
            Length fromEdge,

            @Answered Drawing slits) {}

    @Override
    public Outcome<Slits> calculate(Pronged asked, Working working) {
        if (asked.prongsApart().mm() >= asked.headDiameter().mm()) {
            return Outcome.refuse(WIDER_APART.at("prongs-apart", asked.prongsApart(), asked.headDiameter()));
        }
        Length slit = asked.prongWidth().plus(EASE);
        working.step(SLIT, slit, "p", asked.prongWidth(), "e", EASE);
        Length bent = asked.prongLength().minus(asked.thickness()).minus(asked.washer());
        working.step(BENT, bent, "l", asked.prongLength(), "t", asked.thickness(), "w", asked.washer());
        Length edge = asked.headDiameter().times(0.5).plus(MARGIN);
        working.step(EDGE, edge, "D", asked.headDiameter(), "m", MARGIN);
        List<Notice> notices = new ArrayList<>();
        if (bent.mm() < LEAST_BENT.mm() - 1e-9) {
            notices.add(TOO_SHORT.at("prong-length", bent, LEAST_BENT));
        }
        notices.add(WHICH_HALF.with());
        notices.add(Cautions.MAGNETS.with());
        Cautions.tell(asked.use(), notices);
        return Outcome.of(new Slits(slit, asked.prongsApart(), bent, edge, drawn(asked, slit)), notices);
    }

    private static Drawing drawn(Pronged asked, Length slit) {
        double half = asked.prongsApart().mm() / 2;
        double high = slit.mm() / 2;
        double round = asked.headDiameter().mm() / 2;
        Point left = Point.of(-half, 0);
        Point right = Point.of(half, 0);
        return Drawing.builder()
                .line(Role.INNER_CUT, Point.of(-half, -high), Point.of(-half, high))
                .line(Role.INNER_CUT, Point.of(half, -high), Point.of(half, high))
                .rectangle(Role.NOTE, Point.of(-round, -round), 2 * round, 2 * round)
                .dimension(left, right, -round - LETTER_MM, asked.prongsApart(), LETTER_MM)
                .dimension(Point.of(half, -high), Point.of(half, high), -round - LETTER_MM, slit, LETTER_MM)
                .build();
    }

    @Override
    public List<Formula> formulas() {
        return List.of(SLIT, BENT, EDGE);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(
                TOO_SHORT,
                WIDER_APART,
                WHICH_HALF,
                Cautions.MAGNETS,
                Cautions.NICKEL,
                Cautions.SMALL_PARTS,
                Cautions.NO_LOAD);
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.MAGNET_HABIT);
    }
}
