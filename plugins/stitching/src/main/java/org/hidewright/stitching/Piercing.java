package org.hidewright.stitching;

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
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Length;
import org.osgi.service.component.annotations.Component;

/** Whether an iron goes through a whole stack at once, and how far the holes drift at its back. */
@Calculates("piercing")
@Component(service = Calculator.class)
public final class Piercing implements Calculator<Piercing.Stack, Piercing.Pierced> {
    static final Formula OUT = Formula.of("prong-out", "o = l - T", Origins.GEOMETRY);
    static final Formula DRIFT = Formula.of("hole-drift", "d = T · tan α", Origins.GEOMETRY);
    static final Formula THICKEST = Formula.of("thickest-together", "T = d / tan α", Origins.GEOMETRY);

    private static final NoticeKind TOO_SHORT = NoticeKind.check("prongs-too-short");
    private static final NoticeKind DRIFTS = NoticeKind.check("holes-drift");
    private static final NoticeKind AWL = NoticeKind.check("take-an-awl");
    private static final NoticeKind STRUCK = NoticeKind.caution("irons-struck");

    /** From here prongs stick and wander (common practice). */
    private static final double IRON_MOST_MM = 6;

    /** What is asked. */
    public record Stack(
            @Asked(
                    unit = "mm",
                    min = "0.3 mm",
                    max = "60 mm",
                    usual = "1-12 mm",
                    example = "4.2 mm",
                    picture = "prong-length#stack")
            Length stack,

            @Asked(
                    unit = "mm",
                    min = "1 mm",
                    max = "60 mm",
                    usual = "4-15 mm",
                    example = "8 mm",
                    picture = "prong-length#length")
            Length prongLength,

            @Asked(unit = "mm", min = "0 mm", max = "10 mm", usual = "0.5-2 mm", preset = "1 mm")
            Length outOfTheBack,

            @Asked(unit = "°", min = "0.1 °", max = "20 °", usual = "1-5 °", preset = "3 °")
            Angle tilt,

            @Asked(unit = "mm", min = "0.1 mm", max = "5 mm", usual = "0.3-1 mm", preset = "0.5 mm")
            Length mostDrift) {}

    /** What is answered. */
    public record Pierced(
            @Answered(lead = true) Phrase how,

            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.DOWN, by = "prong-out")
            Length out,

            @Answered(unit = "mm", step = "0.01 mm", round = Rounding.UP, by = "hole-drift", lead = true)
            Length drift,

            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.DOWN, by = "thickest-together")
            Length thickestTogether) {}

    @Override
    public Outcome<Pierced> calculate(Stack asked, Working working) {
        double stack = asked.stack().mm();
        double tan = Math.tan(asked.tilt().radians());
        double out = asked.prongLength().mm() - stack;
        Length drift = Length.ofMm(stack * tan);
        Length thickest = Length.ofMm(asked.mostDrift().mm() / tan);
        working.step(OUT, Length.ofMm(out), "l", asked.prongLength(), "T", asked.stack());
        working.step(DRIFT, drift, "T", asked.stack(), "α", asked.tilt());
        working.step(THICKEST, thickest, "d", asked.mostDrift(), "α", asked.tilt());
        List<Notice> notices = new ArrayList<>(List.of(STRUCK.with()));
        boolean reaches = out >= asked.outOfTheBack().mm();
        boolean keeps = drift.mm() <= asked.mostDrift().mm();
        boolean thin = stack <= IRON_MOST_MM;
        if (!reaches) {
            notices.add(TOO_SHORT.at("prong-length", asked.prongLength(), asked.stack(), asked.outOfTheBack()));
        }
        if (!keeps) {
            notices.add(DRIFTS.at("stack", drift, asked.mostDrift(), thickest));
        }
        if (!thin) {
            notices.add(AWL.at("stack", asked.stack(), Length.ofMm(IRON_MOST_MM)));
        }
        Phrase how = Phrase.of(!thin ? "by-awl" : reaches && keeps ? "together" : "apart");
        return Outcome.of(new Pierced(how, Length.ofMm(out), drift, thickest), notices);
    }

    @Override
    public List<Formula> formulas() {
        return List.of(OUT, DRIFT, THICKEST);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(TOO_SHORT, DRIFTS, AWL, STRUCK);
    }

    @Override
    public List<String> phrases() {
        return List.of("together", "apart", "by-awl");
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.PIERCING_HABIT);
    }
}
