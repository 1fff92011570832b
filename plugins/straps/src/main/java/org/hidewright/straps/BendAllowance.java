package org.hidewright.straps;

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
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.geometry.Bends;
import org.hidewright.straps.geometry.Face;
import org.osgi.service.component.annotations.Component;

/** One bend: the flat length it takes, and the flat length between two outside dimensions. */
@Calculates("bend")
@Component(service = Calculator.class)
public final class BendAllowance implements Calculator<BendAllowance.OneBend, BendAllowance.Allowance> {
    private static final Formula SETBACK =
            Formula.of("bend-setback", "S = (r + t) · tan(θ / 2)", Origins.BEND_FORMULAS);
    private static final Formula DEDUCTION = Formula.of("bend-deduction", "D = 2 · S - L", Origins.BEND_FORMULAS);
    private static final Formula FLAT = Formula.of("bend-flat-length", "F = a + b - D", Origins.BEND_FORMULAS);

    static final NoticeKind WEB_TOO_THICK = NoticeKind.stop("bend-web-too-thick");
    static final NoticeKind SKIVE_TOO_THICK = NoticeKind.stop("bend-skive-too-thick");
    private static final NoticeKind NO_CORNER = NoticeKind.note("bend-no-corner");
    private static final NoticeKind ONE_LEG = NoticeKind.note("bend-one-leg");
    private static final NoticeKind LEGS_TOO_SHORT = NoticeKind.stop("bend-legs-too-short");

    /** Stands where the checks of a whole strap name the section. */
    private static final Phrase THIS_FOLD = Phrase.of("this-fold");

    /** What is asked. */
    public record OneBend(
            @Asked(
                    unit = "mm",
                    min = "0.1 mm",
                    max = "200 mm",
                    usual = "1-5 mm",
                    example = "3 mm",
                    picture = "bend#thickness")
            Length thickness,

            @Asked(
                    unit = "mm",
                    min = "0 mm",
                    max = "10 m",
                    usual = "0-30 mm",
                    example = "3 mm",
                    picture = "bend#radius")
            Length insideRadius,

            @Asked(unit = "deg", min = "0.01 deg", max = "360 deg", example = "90 deg")
            Angle turn,

            @Asked(preset = "grain") Face outside,
            @Asked(preset = "{\"none\":{}}") Preparation preparation,

            @Asked(min = "0", max = "1", usual = "0.3-0.7", example = "0.5")
            Optional<Double> measuredNeutralLine,

            @Asked(unit = "mm", min = "0 mm", max = "100 m", example = "50 mm", picture = "corner#leg-a")
            Optional<Length> legA,

            @Asked(unit = "mm", min = "0 mm", max = "100 m", example = "30 mm", picture = "corner#leg-b")
            Optional<Length> legB) {}

    /** What is answered; setback, deduction and flat length only below a half turn, where there is a corner. */
    public record Allowance(
            @Answered(unit = "mm", step = "0.1 mm", by = "bend-allowance", lead = true)
            Length allowance,

            @Answered(step = "0.001", by = "neutral-line-habit")
            double neutralLine,

            @Answered(unit = "mm", step = "0.1 mm", by = "bend-setback")
            Optional<Length> setback,

            @Answered(unit = "mm", step = "0.1 mm", by = "bend-deduction")
            Optional<Length> deduction,

            @Answered(unit = "mm", step = "0.1 mm", by = "bend-flat-length")
            Optional<Length> flatLength) {}

    @Override
    public Outcome<Allowance> calculate(OneBend bend, Working working) {
        double thickness = bend.thickness().mm();
        if (bend.preparation() instanceof Preparation.Grooved grooved
                && grooved.web().mm() > thickness) {
            return Outcome.refuse(WEB_TOO_THICK.at("preparation", grooved.web(), bend.thickness()));
        }
        if (bend.preparation() instanceof Preparation.Skived skived) {
            if (skived.thicknessLeft().mm() > thickness) {
                return Outcome.refuse(SKIVE_TOO_THICK.at("preparation", skived.thicknessLeft(), bend.thickness()));
            }
            thickness = skived.thicknessLeft().mm();
        }
        FoldRule rule = FoldRule.of(bend.measuredNeutralLine(), bend.outside(), bend.preparation(), thickness);
        double turn = bend.turn().radians();
        double radius = bend.insideRadius().mm();
        Length t = Length.ofMm(thickness);
        Length allowance = Length.ofMm(Bends.allowanceMm(turn, radius, thickness, rule.k()));
        rule.explain(working, thickness);
        if (rule.measured()) {
            working.source("neutral-line", Origins.NEUTRAL_MEASURED);
        }
        working.step(Formulas.ALLOWANCE, allowance, "θ", bend.turn(), "r", bend.insideRadius(), "k", rule.k(), "t", t);
        List<Notice> notices = new ArrayList<>();
        if (rule.tight(bend.outside(), radius, thickness)) {
            notices.add(StrapChecks.FOLD_TOO_TIGHT.at("inside-radius", THIS_FOLD, bend.insideRadius(), t));
        }
        if (rule.webMm() > 0 && bend.outside() == Face.FLESH) {
            notices.add(StrapChecks.GROOVE_IN_GRAIN.at("preparation", THIS_FOLD));
        }
        if (turn >= Math.PI - 1e-9) {
            if (bend.legA().isPresent() || bend.legB().isPresent()) {
                notices.add(NO_CORNER.at("turn", bend.turn()));
            }
            return Outcome.of(
                    new Allowance(allowance, rule.k(), Optional.empty(), Optional.empty(), Optional.empty()), notices);
        }
        Length setback = Length.ofMm(Bends.setbackMm(turn, radius, thickness));
        Length deduction = Length.ofMm(Bends.deductionMm(turn, radius, thickness, rule.k()));
        working.step(SETBACK, setback, "r", bend.insideRadius(), "t", t, "θ", bend.turn());
        working.step(DEDUCTION, deduction, "S", setback, "L", allowance);
        Optional<Length> flat = Optional.empty();
        if (bend.legA().isPresent() && bend.legB().isPresent()) {
            Length a = bend.legA().get();
            Length b = bend.legB().get();
            if (Math.min(a.mm(), b.mm()) < setback.mm() - 1e-9) {
                return Outcome.refuse(LEGS_TOO_SHORT.at("leg-a", a, b, setback));
            }
            flat = Optional.of(a.plus(b).minus(deduction));
            working.step(FLAT, flat.get(), "a", a, "b", b, "D", deduction);
        } else if (bend.legA().isPresent() != bend.legB().isPresent()) {
            notices.add(ONE_LEG.at(bend.legA().isPresent() ? "leg-b" : "leg-a"));
        }
        return Outcome.of(
                new Allowance(allowance, rule.k(), Optional.of(setback), Optional.of(deduction), flat), notices);
    }

    @Override
    public List<Formula> formulas() {
        return Stream.concat(Formulas.FOLDS.stream(), Stream.of(SETBACK, DEDUCTION, FLAT))
                .toList();
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(
                ONE_LEG,
                StrapChecks.FOLD_TOO_TIGHT,
                StrapChecks.GROOVE_IN_GRAIN,
                WEB_TOO_THICK,
                SKIVE_TOO_THICK,
                NO_CORNER,
                LEGS_TOO_SHORT);
    }

    @Override
    public List<String> phrases() {
        return List.of(THIS_FOLD.key());
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.NEUTRAL_HABIT, Origins.NEUTRAL_MEASURED, Origins.TIGHT_FOLD);
    }
}
