package org.hidewright.costing;

import static org.hidewright.costing.Worked.eur;
import static org.hidewright.costing.Worked.refusal;
import static org.hidewright.costing.Worked.told;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Units;
import org.junit.jupiter.api.Test;

/** Prices worked by hand. */
class PiecePriceTest {
    private static final PriceBy HALF = new PriceBy.Margin(0.5);

    private static List<String> notices(Sales sales) {
        return told(Worked.outcome(new PiecePrice(), sales.sale()));
    }

    /** Kept 80 of cost 40; price before tax (80 + 1) / (1 - 0.1 · 1.2) = 92.045…, told with a fifth of tax 110.45. */
    @Test
    void taxAndFeesComeOffThePriceThatIsTold() {
        PiecePrice.Prices prices = Sales.of(eur(40), HALF)
                .fees(0.1, eur(1))
                .tax(0.2, TaxShown.INSIDE)
                .prices();
        assertEquals(eur(110.45), prices.price());
        assertEquals(eur(110.45), prices.paid());
        assertEquals(eur(18.41), prices.tax()); // a sixth, 18.408
        assertEquals(eur(12.04), prices.fees()); // 11.045 + 1 is 12.045, to the even coin
        assertEquals(eur(80), prices.kept());
        assertEquals(eur(40), prices.profit());
        assertEquals(0.5, prices.margin().orElseThrow(), 1e-12);
        assertEquals(1, prices.markup().orElseThrow(), 1e-12);
        assertEquals(eur(40), prices.costCovered());
        assertEquals(eur(46.02), prices.wholesale()); // half of 92.04
        assertEquals(eur(6.02), prices.wholesaleProfit());
    }

    @Test
    void onTopTheCustomerPaysMoreThanIsTold() {
        PiecePrice.Prices prices = Sales.of(eur(40), HALF)
                .fees(0.1, eur(1))
                .tax(0.2, TaxShown.ON_TOP)
                .prices();
        assertEquals(eur(92.05), prices.price());
        assertEquals(eur(18.41), prices.tax());
        assertEquals(eur(110.46), prices.paid());
        assertEquals(eur(12.05), prices.fees());
        assertEquals(eur(80), prices.kept());
    }

    @Test
    void anOrderIsPaidInTwoPartsThatAddUp() {
        PiecePrice.Prices prices =
                Sales.of(eur(11.11), new PriceBy.Markup(1)).order(3, 0.3).prices();
        assertEquals(eur(22.22), prices.price());
        assertEquals(eur(66.66), prices.order());
        assertEquals(eur(20), prices.deposit()); // 19.998
        assertEquals(eur(46.66), prices.rest());
    }

    @Test
    void aTargetSaysWhatItLeaves() {
        PiecePrice.Prices prices =
                Sales.of(eur(30), new PriceBy.Target(eur(50))).discount(0.4).prices();
        assertEquals(eur(20), prices.profit());
        assertEquals(0.4, prices.margin().orElseThrow(), 1e-12);
        assertEquals(2.0 / 3, prices.markup().orElseThrow(), 1e-12);
        assertEquals(eur(50), prices.costCovered());
        assertEquals(eur(30), prices.wholesale());
        assertEquals(eur(0), prices.wholesaleProfit());
        assertEquals(
                List.of("price-under-twice-cost at by [50.00 EUR, 60.00 EUR]"),
                notices(Sales.of(eur(30), new PriceBy.Target(eur(50))).discount(0.4)));
    }

    @Test
    void theLeastChargeGoesBeforeAPriceUnderIt() {
        Sales small = Sales.of(eur(5), HALF).atLeast(eur(15));
        assertEquals(eur(15), small.prices().price());
        assertEquals(List.of("price-least-charge at least-charge [10.00 EUR, 15.00 EUR]"), notices(small));
        assertEquals(List.of(), notices(Sales.of(eur(5), HALF).atLeast(eur(10))));
    }

    @Test
    void aPriceUnderTheCostIsToldAndSoIsAShops() {
        assertEquals(
                List.of(
                        "price-under-cost at by [29.99 EUR, 30.00 EUR]",
                        "price-wholesale-under-cost at wholesale-discount [15.00 EUR, 30.00 EUR]"),
                notices(Sales.of(eur(30), new PriceBy.Target(eur(29.99)))));
        assertEquals(
                List.of("price-under-twice-cost at by [30.00 EUR, 60.00 EUR]"),
                notices(Sales.of(eur(30), new PriceBy.Target(eur(30))).discount(0)));
        assertEquals(List.of(), notices(Sales.of(eur(30), new PriceBy.Target(eur(60)))));
    }

    @Test
    void theMultipleOfTheMaterialIsHeldAgainstTheCost() {
        assertEquals(
                List.of("price-multiple-under-cost at materials [29.97 EUR, 30.00 EUR, 3]"),
                notices(Sales.of(eur(30), HALF).materials(eur(9.99))));
        assertEquals(List.of(), notices(Sales.of(eur(30), HALF).materials(eur(10))));
    }

    @Test
    void withoutACostThereIsNoMarkup() {
        Sales free = Sales.of(eur(0), new PriceBy.Target(eur(20)));
        assertEquals(Optional.empty(), free.prices().markup());
        assertEquals(List.of("price-no-cost at cost []"), notices(free));
        Sales given = Sales.of(eur(3), new PriceBy.Target(eur(0)));
        assertEquals(Optional.empty(), given.prices().margin());
        assertEquals(-1, given.prices().markup().orElseThrow(), 1e-12);
    }

    @Test
    void feesAndTaxThatEatThePriceAreRefused() {
        assertEquals(
                "price-nothing-left at fees [0.8, 0.25]",
                refusal(
                        new PiecePrice(),
                        Sales.of(eur(3), HALF)
                                .fees(0.8, eur(0))
                                .tax(0.25, TaxShown.INSIDE)
                                .sale()));
        Sales.of(eur(3), HALF).fees(0.79, eur(0)).tax(0.25, TaxShown.INSIDE).prices();
    }

    @Test
    void twoCurrenciesAreRefusedWhereverTheyStand() {
        Money dollars = Money.of(1, Units.currency("USD"));
        Sales plain = Sales.of(eur(3), HALF);
        for (Sales mixed : List.of(
                plain.fees(0, dollars),
                plain.atLeast(dollars),
                plain.materials(dollars),
                Sales.of(eur(3), new PriceBy.Target(dollars)))) {
            assertEquals("costing-two-currencies at [3.00 EUR, 1.00 USD]", refusal(new PiecePrice(), mixed.sale()));
        }
    }

    /** Yen have no coins smaller than one, dinars of Kuwait a thousandth. */
    @Test
    void pricesAreWholeCoinsOfTheirCurrency() {
        assertEquals(
                Money.of(1667, Units.currency("JPY")),
                Sales.of(Money.of(1000, Units.currency("JPY")), new PriceBy.Margin(0.4))
                        .prices()
                        .price());
        assertEquals(
                Money.of(1.667, Units.currency("KWD")),
                Sales.of(Money.of(1, Units.currency("KWD")), new PriceBy.Margin(0.4))
                        .prices()
                        .price());
    }
}
