package org.hidewright.thickness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Units;
import org.osgi.service.component.annotations.Component;

/** Two pieces bevelled alike and lapped, so that they go on as one thickness. */
@Calculates("scarf")
@Component(service = Calculator.class)
public final class Scarf implements Calculator<Scarf.Ends, Scarf.Joint> {
    private static final Formula LAP_FROM_SLOPE = Formula.of("scarf-lap", "L = n · t", Origins.GEOMETRY);
    private static final Formula LAP_FROM_ANGLE = Formula.of("scarf-lap-at-angle", "L = t / tan(β)", Origins.GEOMETRY);
    private static final Formula SLOPE = Formula.of("scarf-slope", "n = L / t", Origins.GEOMETRY);
    private static final Formula ANGLE = Formula.of("scarf-angle", "β = atan(t / L)", Origins.GEOMETRY);
    private static final Formula GLUED = Formula.of("scarf-glued-length", "b = √(L · L + t · t)", Origins.GEOMETRY);
    private static final Formula AREA = Formula.of("scarf-glued-area", "A = b · w", Origins.GEOMETRY);
    private static final Formula ACROSS = Formula.of("scarf-across", "T = t + g / cos(β)", Origins.GEOMETRY);
    private static final Formula STEP = Formula.of("scarf-step", "h = u - t", Origins.ARITHMETIC);
    private static final NoticeKind SHORT = NoticeKind.check("scarf-short");
    private static final NoticeKind UNEQUAL = NoticeKind.check("scarf-unequal");

    /** Less lap than this many thicknesses is short for a glued joint (common practice). */
    private static final double SHORTEST_USUAL = 6;
    /** A step a thumb feels (common practice). */
    private static final Length FELT_STEP = Length.ofMm(0.1);

    /** What is asked. */
    public record Ends(
            @Asked(
                    unit = "mm",
                    min = "0.01 mm",
                    max = "50 mm",
                    usual = "0.8-6 mm",
                    example = "3 mm",
                    picture = "scarf#first")
            Length first,

            @Asked(
                    unit = "mm",
                    min = "0.01 mm",
                    max = "50 mm",
                    usual = "0.8-6 mm",
                    example = "3 mm",
                    picture = "scarf#second")
            Length second,

            @Asked(preset = "{\"by-slope\":{\"slope\":\"8\"}}")
            ScarfCut cut,

            @Asked(unit = "mm", min = "0 mm", max = "5 mm", usual = "0-0.3 mm", preset = "0 mm")
            Length glueLine,

            @Asked(unit = "mm", min = "1 mm", max = "3000 mm", usual = "8-100 mm", example = "30 mm")
            Optional<Length> width) {}

    /** What sets the bevel. */
    public sealed interface ScarfCut permits BySlope, BySlopeAngle, ByLap {}

    /** So many thicknesses of lap to one thickness. */
    public record BySlope(
            @Asked(min = "0.1", max = "100", usual = "8-12", preset = "8")
            double slope) implements ScarfCut {}

    /** The angle between the bevel and the face. */
    public record BySlopeAngle(
            @Asked(unit = "deg", min = "0.5 deg", max = "84 deg", usual = "4-8 deg", example = "7 deg")
            Angle angle) implements ScarfCut {}

    /** The lap itself, measured along the piece. */
    public record ByLap(
            @Asked(
                    unit = "mm",
                    min = "0.1 mm",
                    max = "5000 mm",
                    usual = "10-100 mm",
                    example = "25 mm",
                    picture = "scarf#lap")
            Length lap)
            implements ScarfCut {}

    /** What is answered; the step is how much the thicker piece stands proud. */
    public record Joint(
            @Answered(unit = "mm", by = "scarf-lap", step = "0.1 mm", lead = true)
            Length lap,

            @Answered(by = "scarf-slope", step = "0.1") double slope,

            @Answered(unit = "deg", by = "scarf-angle", step = "0.1 deg")
            Angle angle,

            @Answered(unit = "mm", by = "scarf-glued-length", step = "0.1 mm")
            Length gluedLength,

            @Answered(unit = "cm²", by = "scarf-glued-area", step = "0.1 cm²")
            Optional<Area> gluedArea,

            @Answered(unit = "mm", by = "scarf-across", step = "0.1 mm")
            Length thicknessAcross,

            @Answered(unit = "mm", by = "scarf-step", step = "0.1 mm")
            Length step,

            @Answered Drawing fromTheSide) {}

    @Override
    public Outcome<Joint> calculate(Ends ends, Working working) {
        boolean firstThinner = ends.first().compareTo(ends.second()) <= 0;
        Length thin = firstThinner ? ends.first() : ends.second();
        Length thick = firstThinner ? ends.second() : ends.first();
        Length lap = lap(ends.cut(), thin, working);
        double slope = lap.per(thin);
        working.step(SLOPE, slope, "L", lap, "t", thin);
        Angle angle = Angle.of(Bevel.angleRad(thin.mm(), lap.mm()), Units.RADIAN);
        working.step(ANGLE, angle, "t", thin, "L", lap);
        Length glued = Length.ofMm(Bevel.alongMm(thin.mm(), lap.mm()));
        working.step(GLUED, glued, "L", lap, "t", thin);
        Optional<Area> area = ends.width().map(width -> Area.ofMm2(glued.mm() * width.mm()));
        area.ifPresent(
                whole -> working.step(AREA, whole, "b", glued, "w", ends.width().get()));
        Length across = thin.plus(ends.glueLine().times(1 / Math.cos(angle.base())));
        working.step(ACROSS, across, "t", thin, "g", ends.glueLine(), "β", angle);
        Length step = thick.minus(thin);
        working.step(STEP, step, "u", thick, "t", thin);
        Drawing picture = BevelPicture.scarf(thin, thick, lap, ends.glueLine(), angle.base());
        return Outcome.of(
                new Joint(lap, slope, angle, glued, area, across, step, picture), notices(slope, step, thin, thick));
    }

    private static Length lap(ScarfCut cut, Length thin, Working working) {
        if (cut instanceof BySlope bySlope) {
            Length lap = thin.times(bySlope.slope());
            working.step(LAP_FROM_SLOPE, lap, "n", bySlope.slope(), "t", thin);
            return lap;
        } else if (cut instanceof BySlopeAngle byAngle) {
            Length lap = Length.ofMm(Bevel.widthMm(thin.mm(), byAngle.angle().base()));
            working.step(LAP_FROM_ANGLE, lap, "t", thin, "β", byAngle.angle());
            return lap;
        }
        return ((ByLap) cut).lap();
    }

    private static List<Notice> notices(double slope, Length step, Length thin, Length thick) {
        List<Notice> notices = new ArrayList<>();
        if (slope < SHORTEST_USUAL) {
            notices.add(SHORT.at("cut", slope, SHORTEST_USUAL));
        }
        if (step.compareTo(FELT_STEP) > 0) {
            notices.add(UNEQUAL.at("second", step, thin, thick));
        }
        notices.add(Cautions.BLADE.with());
        notices.add(Cautions.NOT_FOR_LOADS.with());
        return notices;
    }

    @Override
    public List<Formula> formulas() {
        return List.of(LAP_FROM_SLOPE, LAP_FROM_ANGLE, SLOPE, ANGLE, GLUED, AREA, ACROSS, STEP);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(SHORT, UNEQUAL, Cautions.BLADE, Cautions.NOT_FOR_LOADS);
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.SCARF_SLOPE);
    }
}
