package org.hidewright.thickness;

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
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.InchFraction;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Units;
import org.osgi.service.component.annotations.Component;

/** One thickness under every name it goes by: ounce, iron, millimetre, inch, and the label it is sold under. */
@Calculates("thickness")
@Component(service = Calculator.class)
public final class Thickness implements Calculator<Thickness.Typed, Thickness.Names> {
    private static final Formula OUNCES = Formula.of("ounces", "N = t / oz", Origins.ASTM_D1814);
    private static final Formula IRONS = Formula.of("irons", "N = t / iron", Origins.ASTM_D1814);
    private static final Formula INCHES = Formula.of("inches", "d = t / in", Origins.INCH_1959);
    private static final Formula SIXTY_FOURTHS =
            Formula.of("sixty-fourths", "n = round(64 · t / in)", Origins.INCH_1959);
    private static final Formula TRADE = Formula.of("trade-millimetres", "m = N · z", Origins.TRADE_LABEL);
    private static final NoticeKind NEAR_BORDER = NoticeKind.note("thickness-near-border");

    private static final Length ONE_OUNCE = Length.of(1, Units.OUNCE);
    private static final Length ONE_IRON = Length.of(1, Units.IRON);
    private static final Length ONE_INCH = Length.of(1, Units.INCH);
    private static final Length TRADE_OUNCE = Length.ofMm(0.4);
    /** Precision-split leather is delivered to 0.1 mm either way at best (common practice). */
    private static final Length SPLIT_TOLERANCE = Length.ofMm(0.1);

    /** What is asked. */
    public record Typed(
            @Asked(unit = "mm", min = "0.01 mm", max = "50 mm", usual = "0.4-6 mm", example = "4.5 oz")
            Length thickness) {}

    /** What is answered: ounces and irons as plain numbers, the error as fraction minus thickness. */
    public record Names(
            @Answered(by = "ounces", step = "0.01") double ounces,

            @Answered(by = "irons", step = "0.01") double irons,

            @Answered(unit = "mm", keepUnit = true, by = "inch-1959", step = "0.01 mm", lead = true)
            Length millimetres,

            @Answered(unit = "in", keepUnit = true, by = "inches", step = "0.001 in")
            Length inches,

            @Answered(by = "sixty-fourths") int sixtyFourths,
            @Answered(by = "sixty-fourths") String fraction,

            @Answered(unit = "mm", keepUnit = true, by = "sixty-fourths", step = "0.01 mm")
            Length fractionError,

            @Answered(by = "sold-ranges") Phrase soldAs,
            @Answered(by = "sold-ranges") Phrase usualUses,

            @Answered(unit = "mm", keepUnit = true, by = "trade-millimetres", step = "0.01 mm")
            Length tradeMillimetres,

            @Answered(unit = "mm", keepUnit = true, by = "trade-millimetres", step = "0.01 mm")
            Length tradeExcess) {}

    @Override
    public Outcome<Names> calculate(Typed typed, Working working) {
        Length thickness = typed.thickness();
        double ounces = thickness.in(Units.OUNCE);
        double irons = thickness.in(Units.IRON);
        InchFraction fraction = InchFraction.nearest(thickness, 64);
        int sixtyFourths = (int) Math.rint(fraction.toLength().in(Units.OUNCE));
        Length trade = TRADE_OUNCE.times(ounces);
        SoldLabel label = SoldLabel.of(ounces);
        working.step(OUNCES, ounces, "t", thickness, "oz", ONE_OUNCE);
        working.step(IRONS, irons, "t", thickness, "iron", ONE_IRON);
        working.step(INCHES, thickness.in(Units.INCH), "t", thickness, "in", ONE_INCH);
        working.step(SIXTY_FOURTHS, sixtyFourths, "t", thickness, "in", ONE_INCH);
        working.step(TRADE, trade, "N", ounces, "z", TRADE_OUNCE);
        Names names = new Names(
                ounces,
                irons,
                thickness,
                thickness,
                sixtyFourths,
                fraction.text(),
                Length.ofMm(fraction.errorMm()),
                label.asSold(),
                label.usualUses(),
                trade,
                trade.minus(thickness));
        return Outcome.of(names, nearBorder(label));
    }

    private static List<Notice> nearBorder(SoldLabel label) {
        Length toBorder = Length.of(label.toNearestBorderOunces(), Units.OUNCE);
        return toBorder.compareTo(SPLIT_TOLERANCE) < 0
                ? List.of(NEAR_BORDER.at("thickness", toBorder, SPLIT_TOLERANCE))
                : List.of();
    }

    @Override
    public List<Formula> formulas() {
        return List.of(OUNCES, IRONS, INCHES, SIXTY_FOURTHS, TRADE);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(NEAR_BORDER);
    }

    @Override
    public List<String> phrases() {
        return SoldLabel.phrases();
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.INCH_1959, Origins.SOLD_RANGES);
    }
}
