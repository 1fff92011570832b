package org.hidewright.straps;

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
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.geometry.NeutralLine;
import org.osgi.service.component.annotations.Component;

/** The neutral line of this very leather, from a strip that was cut, folded and measured. */
@Calculates("neutral-line")
@Component(service = Calculator.class)
public final class MeasuredNeutralLine implements Calculator<MeasuredNeutralLine.Strip, MeasuredNeutralLine.Measured> {
    private static final Formula IN_THE_BEND =
            Formula.of("strip-in-the-bend", "B = L - a - b", Origins.NEUTRAL_MEASURED);
    private static final Formula NEUTRAL_LINE =
            Formula.of("neutral-line-measured-strip", "k = (B / θ - r) / t", Origins.NEUTRAL_MEASURED);
    private static final Formula SPREAD = Formula.of("neutral-line-spread", "u = 3 · e / (θ · t)", Origins.GEOMETRY);

    private static final NoticeKind LEGS_LONGER = NoticeKind.stop("strip-legs-longer-than-strip");
    private static final NoticeKind IMPOSSIBLE = NoticeKind.check("neutral-line-outside-leather");
    private static final NoticeKind UNUSUAL = NoticeKind.note("neutral-line-unusual");
    private static final NoticeKind READING_TOO_COARSE = NoticeKind.note("neutral-line-reading-too-coarse");

    private static final double USUAL_LEAST = 0.3;
    private static final double USUAL_MOST = 0.7;
    /** Half of the usual range: a spread above it tells nothing that the habit would not. */
    private static final double COARSE = 0.2;

    /** What is asked. */
    public record Strip(
            @Asked(unit = "mm", min = "1 mm", max = "10 m", example = "100 mm")
            Length stripLength,

            @Asked(unit = "mm", min = "0 mm", max = "10 m", example = "42 mm")
            Length straightBefore,

            @Asked(unit = "mm", min = "0 mm", max = "10 m", example = "43 mm")
            Length straightAfter,

            @Asked(unit = "deg", min = "10 deg", max = "360 deg", example = "180 deg")
            Angle turn,

            @Asked(unit = "mm", min = "0 mm", max = "500 mm", usual = "0-30 mm", example = "3 mm")
            Length insideRadius,

            @Asked(unit = "mm", min = "0.2 mm", max = "50 mm", usual = "1-5 mm", example = "3 mm")
            Length thickness,

            @Asked(unit = "mm", min = "0 mm", max = "5 mm", usual = "0.1-0.5 mm", preset = "0.2 mm")
            Length readingError) {}

    /** What is answered; the spread is how far off the neutral line may be if all three readings are off one way. */
    public record Measured(
            @Answered(step = "0.01", by = "neutral-line-measured-strip", lead = true)
            double neutralLine,

            @Answered(step = "0.01", by = "neutral-line-spread")
            double spread,

            @Answered(step = "0.01", by = "neutral-line-spread")
            double lowest,

            @Answered(step = "0.01", by = "neutral-line-spread")
            double highest,

            @Answered(unit = "mm", step = "0.1 mm", by = "strip-in-the-bend")
            Length inTheBend) {}

    @Override
    public Outcome<Measured> calculate(Strip strip, Working working) {
        Length bend = strip.stripLength().minus(strip.straightBefore()).minus(strip.straightAfter());
        if (bend.mm() <= 0) {
            return Outcome.refuse(LEGS_LONGER.at(
                    "strip-length", strip.stripLength(), strip.straightBefore().plus(strip.straightAfter())));
        }
        double thickness = strip.thickness().mm();
        double k = NeutralLine.measured(
                bend.mm(), strip.turn().radians(), strip.insideRadius().mm(), thickness);
        double spread = 3 * strip.readingError().mm() / (strip.turn().radians() * thickness);
        working.step(
                IN_THE_BEND, bend, "L", strip.stripLength(), "a", strip.straightBefore(), "b", strip.straightAfter());
        working.step(NEUTRAL_LINE, k, "B", bend, "θ", strip.turn(), "r", strip.insideRadius(), "t", strip.thickness());
        working.step(SPREAD, spread, "e", strip.readingError(), "θ", strip.turn(), "t", strip.thickness());
        return Outcome.of(new Measured(k, spread, k - spread, k + spread, bend), notices(k, spread));
    }

    private static List<Notice> notices(double k, double spread) {
        List<Notice> notices = new ArrayList<>();
        if (k < 0 || k > 1) {
            notices.add(IMPOSSIBLE.with(k));
        } else if (k < USUAL_LEAST || k > USUAL_MOST) {
            notices.add(UNUSUAL.with(k, USUAL_LEAST, USUAL_MOST));
        }
        if (spread > COARSE) {
            notices.add(READING_TOO_COARSE.at("reading-error", spread));
        }
        return notices;
    }

    @Override
    public List<Formula> formulas() {
        return List.of(IN_THE_BEND, NEUTRAL_LINE, SPREAD);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(LEGS_LONGER, IMPOSSIBLE, UNUSUAL, READING_TOO_COARSE);
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.NEUTRAL_HABIT);
    }
}
