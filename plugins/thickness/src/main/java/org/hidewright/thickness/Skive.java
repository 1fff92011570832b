package org.hidewright.thickness;

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
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Units;
import org.osgi.service.component.annotations.Component;

/** Taking an edge down to a target: how deep, how wide, at what angle. */
@Calculates("skive")
@Component(service = Calculator.class)
public final class Skive implements Calculator<Skive.Edge, Skive.Taken> {
    private static final Formula DEPTH = Formula.of("skive-depth", "d = t - e", Origins.ARITHMETIC);
    private static final Formula WIDTH = Formula.of("skive-width", "w = d / tan(β)", Origins.GEOMETRY);
    private static final Formula ANGLE = Formula.of("skive-angle", "β = atan(d / w)", Origins.GEOMETRY);
    private static final Formula ALONG = Formula.of("skive-along", "b = √(d · d + w · w)", Origins.GEOMETRY);
    private static final Formula SHARE = Formula.of("skive-share", "a = d / t", Origins.ARITHMETIC);
    private static final NoticeKind NOT_THINNER = NoticeKind.stop("skive-target-not-thinner");
    private static final NoticeKind FEATHERED = NoticeKind.check("skive-feathered");
    private static final NoticeKind TOO_STEEP = NoticeKind.check("skive-too-steep");

    /** Below this an edge is as good as feathered: it tears and shows the cement (common practice). */
    private static final Length FEATHER = Length.ofMm(0.2);
    /** Above this the step at the top of the cut shows through a turned or lined face (common practice). */
    private static final Angle STEEP = Angle.of(45, Units.DEGREE);

    /** What is asked. */
    public record Edge(
            @Asked(
                    unit = "mm",
                    min = "0.01 mm",
                    max = "50 mm",
                    usual = "0.4-6 mm",
                    example = "4 oz",
                    picture = "skive#before")
            Length thickness,

            @Asked(
                    unit = "mm",
                    min = "0 mm",
                    max = "50 mm",
                    usual = "0.2-3 mm",
                    example = "0.6 mm",
                    picture = "skive#left")
            Length target,

            @Asked(preset = "{\"by-angle\":{\"angle\":\"10 deg\"}}")
            SkiveCut cut) {}

    /** What sets the cut: the angle of the knife, or the width wanted. */
    public sealed interface SkiveCut permits ByAngle, ByWidth {}

    /** The angle between the cut and the flesh face. */
    public record ByAngle(
            @Asked(unit = "deg", min = "0.5 deg", max = "89 deg", usual = "4-30 deg", preset = "10 deg")
            Angle angle) implements SkiveCut {}

    /** The width measured on the flesh face, square to the edge. */
    public record ByWidth(
            @Asked(
                    unit = "mm",
                    min = "0.1 mm",
                    max = "500 mm",
                    usual = "3-25 mm",
                    example = "8 mm",
                    picture = "skive#width")
            Length width)
            implements SkiveCut {}

    /** What is answered. */
    public record Taken(
            @Answered(unit = "mm", by = "skive-depth", step = "0.01 mm", lead = true)
            Length depth,

            @Answered(unit = "mm", by = "skive-width", step = "0.1 mm", lead = true)
            Length width,

            @Answered(unit = "deg", by = "skive-angle", step = "0.1 deg")
            Angle angle,

            @Answered(unit = "mm", by = "skive-along", step = "0.1 mm")
            Length alongTheCut,

            @Answered(unit = "%", by = "skive-share", step = "0.1 %")
            double shareRemoved,

            @Answered(by = "astm-d1814", step = "0.1") double targetOunces,
            @Answered Drawing fromTheSide) {}

    @Override
    public Outcome<Taken> calculate(Edge edge, Working working) {
        if (edge.target().compareTo(edge.thickness()) >= 0) {
            return Outcome.refuse(NOT_THINNER.at("target", edge.target(), edge.thickness()));
        }
        Length depth = edge.thickness().minus(edge.target());
        working.step(DEPTH, depth, "t", edge.thickness(), "e", edge.target());
        Length width;
        Angle angle;
        if (edge.cut() instanceof ByAngle byAngle) {
            angle = byAngle.angle();
            width = Length.ofMm(Bevel.widthMm(depth.mm(), angle.base()));
            working.step(WIDTH, width, "d", depth, "β", angle);
        } else {
            width = ((ByWidth) edge.cut()).width();
            angle = Angle.of(Bevel.angleRad(depth.mm(), width.mm()), Units.RADIAN);
            working.step(ANGLE, angle, "d", depth, "w", width);
        }
        Length along = Length.ofMm(Bevel.alongMm(depth.mm(), width.mm()));
        working.step(ALONG, along, "d", depth, "w", width);
        double share = depth.per(edge.thickness());
        working.step(SHARE, share, "d", depth, "t", edge.thickness());
        Taken taken = new Taken(
                depth,
                width,
                angle,
                along,
                share,
                edge.target().in(Units.OUNCE),
                BevelPicture.skive(edge.thickness(), edge.target(), width));
        return Outcome.of(taken, notices(edge, angle));
    }

    private static List<Notice> notices(Edge edge, Angle angle) {
        List<Notice> notices = new ArrayList<>();
        if (edge.target().compareTo(FEATHER) < 0) {
            notices.add(FEATHERED.at("target", edge.target(), FEATHER));
        }
        if (angle.compareTo(STEEP) > 0) {
            notices.add(TOO_STEEP.at("cut", angle, STEEP));
        }
        notices.add(Cautions.BLADE.with());
        notices.add(Cautions.LEATHER_DUST.with());
        return notices;
    }

    @Override
    public List<Formula> formulas() {
        return List.of(DEPTH, WIDTH, ANGLE, ALONG, SHARE);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(NOT_THINNER, FEATHERED, TOO_STEEP, Cautions.BLADE, Cautions.LEATHER_DUST);
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.ASTM_D1814);
    }
}
