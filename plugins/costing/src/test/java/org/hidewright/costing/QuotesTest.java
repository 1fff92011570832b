package org.hidewright.costing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Unit;
import org.hidewright.api.measure.Units;
import org.hidewright.api.measure.Volume;
import org.junit.jupiter.api.Test;

/** Seeded quotes over every currency of ISO 4217 that Java knows: whatever is asked, the lines add up. */
class QuotesTest {
    private static final int QUOTES = Boolean.getBoolean("hidewright.long") ? 100_000 : 5_000;

    private final Random random = new Random(20261126);

    @Test
    void linesAddUpAndPriceAndCostLeadToEachOther() {
        List<Unit> currencies = Currency.getAvailableCurrencies().stream()
                .filter(currency -> currency.getDefaultFractionDigits() >= 0)
                .map(Currency::getCurrencyCode)
                .sorted()
                .map(Units::currency)
                .toList();
        Set<Integer> digitsMet = new TreeSet<>();
        for (int quote = 0; quote < QUOTES; quote++) {
            Unit currency = currencies.get(quote % currencies.size());
            int digits = Currency.getInstance(currency.symbol()).getDefaultFractionDigits();
            digitsMet.add(digits);
            String which = "quote " + quote + " in " + currency;
            PieceCost.Piece piece = piece(currency);
            PieceCost.Sheet sheet = Worked.answers(new PieceCost(), piece);
            Money sum =
                    sheet.lines().stream().map(PieceCost.CostLine::amount).reduce(Money.of(0, currency), Money::plus);
            assertEquals(sheet.together(), sum, which);
            sheet.lines().forEach(line -> assertWhole(line.amount(), digits, which));
            assertTrue(
                    off(sheet.each().times(piece.pieces()), sheet.together())
                                    .compareTo(coin(digits).multiply(BigDecimal.valueOf(piece.pieces() * 0.5)))
                            <= 0,
                    which);
            check(sheet.each(), currency, digits, which);
        }
        assertTrue(digitsMet.containsAll(Set.of(0, 2, 3)), digitsMet.toString());
        if (currencies.stream().anyMatch(currency -> currency.symbol().equals("CLF"))) {
            assertTrue(digitsMet.contains(4), "the unidad de fomento has four digits");
        }
    }

    private void check(Money cost, Unit currency, int digits, String which) {
        double margin = share(0.9);
        PriceBy by = random.nextBoolean() ? new PriceBy.Margin(margin) : new PriceBy.Markup(margin / (1 - margin));
        Sales sales = Sales.of(cost, by)
                .fees(share(0.3), money(5, currency))
                .tax(share(0.3), random.nextBoolean() ? TaxShown.INSIDE : TaxShown.ON_TOP)
                .discount(share(0.6))
                .order(1 + random.nextInt(40), share(1));
        Outcome<PiecePrice.Prices> outcome = Worked.outcome(new PiecePrice(), sales.sale());
        PiecePrice.Prices prices = outcome.answers().orElseThrow();
        assertEquals(
                prices.paid(), cost.plus(prices.profit()).plus(prices.fees()).plus(prices.tax()), which);
        assertEquals(prices.order(), prices.deposit().plus(prices.rest()), which);
        List.of(prices.price(), prices.paid(), prices.tax(), prices.fees(), prices.deposit(), prices.wholesale())
                .forEach(amount -> assertWhole(amount, digits, which));
        // price, tax and fees are each rounded by half a coin at most, which the margin makes smaller still
        BigDecimal threeCoins = coin(digits).multiply(BigDecimal.valueOf(3));
        assertTrue(
                off(prices.costCovered(), cost).compareTo(threeCoins) <= 0,
                which + ": " + prices.costCovered() + ", " + cost);
        Sales back = Sales.of(cost, new PriceBy.Target(prices.price()))
                .fees(sales.fees(), sales.feeEach().orElseThrow())
                .tax(sales.tax(), sales.shown());
        assertEquals(prices.profit(), back.prices().profit(), which);
        assertEquals(prices.margin(), back.prices().margin(), which);
    }

    private static void assertWhole(Money amount, int digits, String which) {
        assertTrue(amount.amount().stripTrailingZeros().scale() <= digits, () -> which + ": " + amount);
    }

    private static BigDecimal coin(int digits) {
        return BigDecimal.ONE.movePointLeft(digits);
    }

    private static BigDecimal off(Money one, Money other) {
        return one.minus(other).amount().abs();
    }

    private double share(double most) {
        return Math.round(random.nextDouble() * most * 1000) / 1000.0;
    }

    private Money money(double most, Unit currency) {
        int digits = Currency.getInstance(currency.symbol()).getDefaultFractionDigits();
        return Money.of(BigDecimal.valueOf(1 + random.nextInt((int) (most * 100)), Math.min(digits, 2)), currency);
    }

    private PieceCost.Piece piece(Unit currency) {
        List<PieceCost.LeatherUsed> leather = new ArrayList<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            leather.add(new PieceCost.LeatherUsed(
                    "l" + i,
                    Area.of(0.1 + random.nextDouble() * 40, Units.DM2),
                    share(0.6),
                    random.nextBoolean() ? WasteOf.BOUGHT : WasteOf.USED,
                    Area.of(1 + random.nextInt(40), Units.FT2),
                    money(300, currency)));
        }
        return new PieceCost.Piece(
                1 + random.nextInt(60),
                Optional.of(leather),
                Optional.of(List.of(new PieceCost.FittingUsed("f", random.nextInt(9), money(4, currency)))),
                Optional.of(List.of(new PieceCost.ThreadUsed(
                        "t",
                        Length.of(random.nextDouble() * 20, Units.M),
                        Length.of(25, Units.M),
                        money(9, currency)))),
                Optional.of(List.of(new PieceCost.LiquidUsed(
                        "d",
                        Volume.of(random.nextDouble() * 50, Units.ML),
                        Volume.of(250, Units.ML),
                        money(20, currency)))),
                Optional.of(List.of(new PieceCost.MachineUsed("m", minutes(60), money(10, currency)))),
                List.of(
                        new PieceCost.WorkDone("cutting", minutes(300)),
                        new PieceCost.WorkDone("stitching", minutes(300))),
                money(60, currency),
                random.nextBoolean() ? new Learning.Steady() : new Learning.CumulativeAverage(0.7 + share(0.3)),
                Optional.of(List.of(new PieceCost.OnceOnly("o", minutes(300), Optional.of(money(40, currency))))),
                share(0.5),
                share(0.2),
                Optional.of(money(3, currency)));
    }

    private Duration minutes(int most) {
        return Duration.of(random.nextInt(most), Units.MINUTE);
    }
}
