package org.hidewright.costing;

import java.time.LocalDate;
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
import org.hidewright.api.measure.Money;
import org.osgi.service.component.annotations.Component;

/** What to charge for a piece, what becomes of that price, and what a shop and an order of several come to. */
@Calculates("price")
@Component(service = Calculator.class)
public final class PiecePrice implements Calculator<PiecePrice.Sale, PiecePrice.Prices> {
    private static final Formula PROFIT = Formula.of("price-profit", "z = k - c", Origins.ARITHMETIC);
    private static final Formula MARGIN = Formula.of("price-margin", "m = (k - c) / k", Origins.MARGIN_MARKUP);
    private static final Formula MARKUP = Formula.of("price-markup", "u = (k - c) / c", Origins.MARGIN_MARKUP);
    private static final Formula WHOLESALE = Formula.of("price-wholesale", "q = p · (1 - d)", Origins.ARITHMETIC);
    private static final Formula ORDER = Formula.of("price-order", "S = n · g", Origins.ARITHMETIC);
    private static final Formula DEPOSIT = Formula.of("price-deposit", "D = S · a", Origins.ARITHMETIC);
    private static final Formula COST_COVERED =
            Formula.of("price-cost-covered", "c = k · (1 - m)", Origins.MARGIN_MARKUP);

    private static final NoticeKind NOTHING_LEFT = NoticeKind.stop("price-nothing-left");
    private static final NoticeKind UNDER_COST = NoticeKind.check("price-under-cost");
    private static final NoticeKind WHOLESALE_UNDER_COST = NoticeKind.check("price-wholesale-under-cost");
    private static final NoticeKind LEAST_CHARGE = NoticeKind.note("price-least-charge");
    private static final NoticeKind MULTIPLE_UNDER_COST = NoticeKind.check("price-multiple-under-cost");
    private static final NoticeKind UNDER_TWICE = NoticeKind.note("price-under-twice-cost");
    private static final NoticeKind NO_COST = NoticeKind.check("price-no-cost");

    /** What is asked. */
    public record Sale(
            @Asked(min = "0", example = "37.40 EUR", from = "item-cost.each")
            Money cost,

            @Asked(example = "{\"margin\":{\"margin\":\"55 %\"}}")
            PriceBy by,

            @Asked(unit = "%", min = "0 %", max = "90 %", usual = "0-20 %", preset = "0 %")
            double fees,

            @Asked(min = "0", example = "0.25 EUR") Optional<Money> feeEach,

            @Asked(unit = "%", min = "0 %", max = "100 %", usual = "0-27 %", preset = "0 %")
            double tax,

            @Asked(preset = "inside") TaxShown taxShown,

            @Asked(unit = "%", min = "0 %", max = "95 %", usual = "30-60 %", preset = "50 %")
            double wholesaleDiscount,

            @Asked(min = "0", example = "15 EUR") Optional<Money> leastCharge,

            @Asked(min = "1", max = "100000", usual = "1-200", preset = "1")
            int pieces,

            @Asked(unit = "%", min = "0 %", max = "100 %", usual = "30-50 %", preset = "50 %")
            double deposit,

            @Asked(min = "0", example = "9 EUR") Optional<Money> materials,

            @Asked(example = "M. Example") Optional<String> customer,

            @Asked(example = "One pouch, tan, edges burnished")
            Optional<String> described,

            @Asked(example = "Three weeks after the deposit")
            Optional<String> ready,

            @Asked(example = "2026-12-31") Optional<LocalDate> validUntil) {}

    /** What is answered. */
    public record Prices(
            @Answered(by = "price-before-tax", lead = true) Money price,

            @Answered(by = "price-before-tax") Money paid,

            @Answered(by = "tax-inside") Money tax,
            @Answered(by = "selling-fees") Money fees,
            @Answered(by = "selling-fees") Money kept,

            @Answered(by = "price-profit", lead = true) Money profit,

            @Answered(unit = "%", by = "price-margin", step = "0.1 %")
            Optional<Double> margin,

            @Answered(unit = "%", by = "price-markup", step = "0.1 %")
            Optional<Double> markup,

            @Answered(by = "price-cost-covered") Money costCovered,

            @Answered(by = "price-wholesale") Money wholesale,
            @Answered(by = "price-wholesale") Money wholesaleProfit,
            @Answered(by = "price-order") Money order,
            @Answered(by = "price-deposit") Money deposit,
            @Answered(by = "price-deposit") Money rest) {}

    @Override
    public Outcome<Prices> calculate(Sale sale, Working working) {
        Optional<Notice> clash = Currencies.clash(amounts(sale));
        if (clash.isPresent()) {
            return Outcome.refuse(clash.get());
        }
        Money nothing = sale.cost().times(0);
        Charged.Terms terms =
                new Charged.Terms(sale.fees(), sale.feeEach().orElse(nothing), sale.tax(), sale.taxShown());
        if (!terms.leaveSomething()) {
            return Outcome.refuse(NOTHING_LEFT.at("fees", sale.fees(), sale.tax()));
        }
        List<Notice> notices = new ArrayList<>();
        Charged retail = Charged.of(atLeast(asked(sale, terms, working), sale, notices), terms);
        retail.takeDown(terms, working);
        working.source("tax", Origins.TAX);
        Money profit = retail.kept().minus(sale.cost());
        working.step(PROFIT, profit, "k", retail.kept(), "c", sale.cost());
        Optional<Double> margin = share(profit, retail.kept());
        margin.ifPresent(value -> working.step(MARGIN, value, "k", retail.kept(), "c", sale.cost()));
        Optional<Double> markup = share(profit, sale.cost());
        markup.ifPresent(value -> working.step(MARKUP, value, "k", retail.kept(), "c", sale.cost()));

        // A shop pays the maker directly and adds the tax of its own sale: no fees, no tax here
        Money wholesale = retail.net().times(1 - sale.wholesaleDiscount()).rounded();
        working.step(WHOLESALE, wholesale, "p", retail.net(), "d", sale.wholesaleDiscount());
        Money order = retail.paid().times(sale.pieces());
        working.step(ORDER, order, "n", sale.pieces(), "g", retail.paid());
        Money deposit = order.times(sale.deposit()).rounded();
        working.step(DEPOSIT, deposit, "S", order, "a", sale.deposit());
        Money covered = covered(sale, retail, working);
        Money wholesaleProfit = wholesale.minus(sale.cost());
        check(sale, retail, profit, wholesaleProfit, wholesale, notices);
        return Outcome.of(
                new Prices(
                        retail.told(),
                        retail.paid(),
                        retail.tax(),
                        retail.fees(),
                        retail.kept(),
                        profit,
                        margin,
                        markup,
                        covered,
                        wholesale,
                        wholesaleProfit,
                        order,
                        deposit,
                        order.minus(deposit)),
                notices);
    }

    private static List<Money> amounts(Sale sale) {
        List<Money> amounts = new ArrayList<>(List.of(sale.cost()));
        sale.feeEach().ifPresent(amounts::add);
        sale.leastCharge().ifPresent(amounts::add);
        sale.materials().ifPresent(amounts::add);
        if (sale.by() instanceof PriceBy.Target target) {
            amounts.add(target.price());
        }
        return amounts;
    }

    /** The price as the customer is told it, before it is rounded. */
    private static Money asked(Sale sale, Charged.Terms terms, Working working) {
        if (sale.by() instanceof PriceBy.Target target) {
            return target.price();
        }
        Money kept;
        if (sale.by() instanceof PriceBy.Margin by) {
            kept = sale.cost().times(1 / (1 - by.margin()));
            working.step(PriceBy.MARGIN, kept, "c", sale.cost(), "m", by.margin());
        } else {
            double markup = ((PriceBy.Markup) sale.by()).markup();
            kept = sale.cost().times(1 + markup);
            working.step(PriceBy.MARKUP, kept, "c", sale.cost(), "u", markup);
        }
        Money told = Charged.toKeep(kept, terms);
        Money net = sale.taxShown() == TaxShown.INSIDE ? told.times(1 / (1 + sale.tax())) : told;
        working.step(Charged.BEFORE_TAX, net, "k", kept, "F", terms.feeEach(), "f", terms.fees(), "t", terms.tax());
        return told;
    }

    private static Money atLeast(Money asked, Sale sale, List<Notice> notices) {
        if (sale.leastCharge().isEmpty() || asked.compareTo(sale.leastCharge().get()) >= 0) {
            return asked;
        }
        notices.add(LEAST_CHARGE.at(
                "least-charge", asked.rounded(), sale.leastCharge().get()));
        return sale.leastCharge().get();
    }

    private static Optional<Double> share(Money part, Money of) {
        return of.amount().signum() > 0 ? Optional.of(part.per(of)) : Optional.empty();
    }

    /** Back from the price: what the piece may cost for the margin wanted; where none was asked for, what it leaves. */
    private static Money covered(Sale sale, Charged retail, Working working) {
        double margin = 0;
        if (sale.by() instanceof PriceBy.Margin by) {
            margin = by.margin();
        } else if (sale.by() instanceof PriceBy.Markup by) {
            margin = by.markup() / (1 + by.markup());
        }
        Money covered = retail.kept().times(1 - margin).rounded();
        working.step(COST_COVERED, covered, "k", retail.kept(), "m", margin);
        return covered;
    }

    private static void check(
            Sale sale, Charged retail, Money profit, Money wholesaleProfit, Money wholesale, List<Notice> notices) {
        Money cost = sale.cost();
        if (cost.amount().signum() == 0) {
            notices.add(NO_COST.at("cost"));
            return;
        }
        if (profit.amount().signum() < 0) {
            notices.add(UNDER_COST.at("by", retail.kept(), cost));
        } else if (retail.net().compareTo(cost.times(Multiples.SHOP)) < 0) {
            notices.add(UNDER_TWICE.at(
                    "by", retail.net(), cost.times(Multiples.SHOP).rounded()));
        }
        if (wholesaleProfit.amount().signum() < 0) {
            notices.add(WHOLESALE_UNDER_COST.at("wholesale-discount", wholesale, cost));
        }
        sale.materials()
                .map(materials -> materials.times(Multiples.MATERIALS).rounded())
                .filter(multiple -> multiple.compareTo(cost) < 0)
                .ifPresent(multiple ->
                        notices.add(MULTIPLE_UNDER_COST.at("materials", multiple, cost, Multiples.MATERIALS)));
    }

    /** Habits of the trade that are held against the cost, and never decide a price here (common practice). */
    private static final class Multiples {
        /** A price of twice the cost leaves a shop half of it. */
        static final int SHOP = 2;
        /** Three times the material. */
        static final int MATERIALS = 3;
    }

    @Override
    public List<Formula> formulas() {
        return List.of(
                PriceBy.MARGIN,
                PriceBy.MARKUP,
                Charged.BEFORE_TAX,
                Charged.INSIDE,
                Charged.ON_TOP,
                Charged.FEES,
                PROFIT,
                MARGIN,
                MARKUP,
                WHOLESALE,
                ORDER,
                DEPOSIT,
                COST_COVERED);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(
                Currencies.TWO,
                NOTHING_LEFT,
                UNDER_COST,
                WHOLESALE_UNDER_COST,
                LEAST_CHARGE,
                MULTIPLE_UNDER_COST,
                UNDER_TWICE,
                NO_COST);
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.TAX, Origins.MULTIPLES);
    }
}
