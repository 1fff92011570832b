package org.hidewright.costing;

import java.util.List;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Money;
import org.osgi.service.component.annotations.Component;

/** How many sides or panels a batch takes, what they cost, and what the leather in it is worth. */
@Calculates("leather-bought")
@Component(service = Calculator.class)
public final class LeatherBought implements Calculator<LeatherBought.Need, LeatherBought.Bought> {
    static final Formula OF_BOUGHT = Formula.of("waste-of-bought", "G = N / (1 - w)", Origins.WASTE);
    static final Formula OF_USED = Formula.of("waste-of-used", "G = N · (1 + w)", Origins.WASTE);
    private static final Formula WHOLE = Formula.of("leather-whole", "k = ceil(G / A)", Origins.ARITHMETIC);
    private static final Formula PAID = Formula.of("leather-paid", "B = k · P", Origins.ARITHMETIC);
    private static final Formula WORTH = Formula.of("leather-worth", "V = P · G / A", Origins.ARITHMETIC);

    static final NoticeKind ALL_WASTE = NoticeKind.stop("leather-all-waste");

    /** From this share on nothing useful is left. */
    static final double MOST_WASTE = 0.95;

    /** What is asked. */
    public record Need(
            @Asked(unit = "dm²", min = "0.01 dm²", max = "100000 dm²", usual = "1-200 dm²", example = "6.2 sq ft")
            Area inThePieces,

            @Asked(unit = "%", min = "0 %", max = "500 %", usual = "10-50 %", preset = "30 %")
            double waste,

            @Asked(preset = "bought") WasteOf wasteOf,

            @Asked(unit = "ft²", min = "0.01 ft²", max = "1000 ft²", usual = "1-60 ft²", example = "22 ft²")
            Area area,

            @Asked(min = "0", example = "165 EUR") Money price) {}

    /** What is answered. */
    public record Bought(
            @Answered(by = "leather-whole", lead = true) int toBuy,

            @Answered(by = "leather-paid", lead = true) Money paid,

            @Answered(unit = "dm²", step = "0.1 dm²", by = "waste-of-bought")
            Area taken,

            @Answered(by = "leather-worth") Money worthTaken,

            @Answered(unit = "dm²", step = "0.1 dm²", by = "leather-whole")
            Area left) {}

    @Override
    public Outcome<Bought> calculate(Need need, Working working) {
        if (need.wasteOf() == WasteOf.BOUGHT && need.waste() > MOST_WASTE) {
            return Outcome.refuse(ALL_WASTE.at("waste", need.waste(), MOST_WASTE));
        }
        Formula taking = need.wasteOf() == WasteOf.BOUGHT ? OF_BOUGHT : OF_USED;
        Area taken = need.wasteOf().bought(need.inThePieces(), need.waste());
        working.step(taking, taken, "N", need.inThePieces(), "w", need.waste());
        working.source("taken", taking.source());
        int whole = whole(taken.per(need.area()));
        working.step(WHOLE, whole, "G", taken, "A", need.area());
        Money paid = need.price().times(whole);
        working.step(PAID, paid, "k", whole, "P", need.price());
        Money worth = need.price().times(taken.per(need.area()));
        working.step(WORTH, worth, "P", need.price(), "G", taken, "A", need.area());
        return Outcome.of(
                new Bought(whole, paid, taken, worth, need.area().times(whole).minus(taken)));
    }

    /** Up to the next whole one; the last digit of a division is not worth a side. */
    static int whole(double sides) {
        return (int) Math.ceil(sides - 1e-9);
    }

    @Override
    public List<Formula> formulas() {
        return List.of(OF_BOUGHT, OF_USED, WHOLE, PAID, WORTH);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(ALL_WASTE);
    }
}
