package org.hidewright.costing;

import static org.hidewright.costing.Worked.answers;
import static org.hidewright.costing.Worked.eur;
import static org.hidewright.costing.Worked.hours;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleSupplier;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Units;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Worked examples and tables of cost accounting; each row names its own source and whether it was read or is from memory.
 * Amounts of money come out in whole coins, so they are compared to half a coin where the row has more digits.
 */
class WorkedExamplesTest {
    private static final Map<String, DoubleSupplier> WORKED = Map.ofEntries(
            Map.entry("C.01", () -> target(40, 100).margin().orElseThrow()),
            Map.entry("C.02", () -> target(40, 100).markup().orElseThrow()),
            Map.entry("C.03", () -> markupOf(new PriceBy.Margin(0.45))),
            Map.entry("C.04", () -> marginOf(new PriceBy.Markup(0.60))),
            Map.entry("C.05", () -> price(37.40, new PriceBy.Margin(0.55))),
            Map.entry("C.06", () -> breakEven(20000, 25, 5)),
            Map.entry("C.08", () -> breakEven(1200, 85, 37)),
            Map.entry("C.10.2", () -> average(2)),
            Map.entry("C.10.4", () -> average(4)),
            Map.entry("C.10.8", () -> average(8)),
            Map.entry("C.10.16", () -> average(16)),
            Map.entry("C.11.2", () -> together(2)),
            Map.entry("C.11.4", () -> together(4)),
            Map.entry("C.11.8", () -> together(8)),
            Map.entry("C.11.16", () -> together(16)),
            Map.entry("C.14", WorkedExamplesTest::firstOfAHundred),
            Map.entry("C.16", () -> machine().wear().amount().doubleValue()),
            Map.entry("C.18", () -> machine().running().amount().doubleValue()),
            Map.entry("C.20", () -> taxInside(24, 0.20)),
            Map.entry("C.21", () -> taxInside(80, 0.05)),
            Map.entry("C.22", () -> taxInside(24, 0.175)),
            Map.entry("C.23", () -> 120 - taxInside(120, 0.20)),
            Map.entry("C.24", WorkedExamplesTest::taxOnTop),
            Map.entry("C.25", () -> taken(WasteOf.BOUGHT)),
            Map.entry("C.26", () -> taken(WasteOf.USED)),
            Map.entry("C.27", WorkedExamplesTest::priceWithFees));

    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(resources = "worked-examples.csv")
    void agreesWithTheWorkedExample(
            String id,
            String description,
            String inputs,
            String closedForm,
            double expected,
            String unit,
            String tolerance) {
        DoubleSupplier worked = WORKED.get(id);
        assertNotNull(worked, () -> "nothing works " + id);
        double allowed = unit.equals("currency") ? 0.005 : 1e-9 * expected;
        assertEquals(expected, worked.getAsDouble(), allowed, description);
    }

    /** Wright’s cumulative average, and the unit model beside it. */
    @ParameterizedTest(name = "{0}, {1} pieces")
    @CsvFileSource(resources = "learning-curve-factors.csv")
    void agreesWithTheTableOfLearningCurves(
            double rate, int pieces, double exponent, double power, double unitTotal, double averageTotal) {
        assertEquals(unitTotal, new Learning.EachPiece(rate).pieces(pieces), 1e-10 * unitTotal);
        assertEquals(averageTotal, new Learning.CumulativeAverage(rate).pieces(pieces), 1e-10 * averageTotal);
    }

    @ParameterizedTest(name = "{0} % margin")
    @CsvFileSource(resources = "margin-markup.csv")
    void agreesWithTheTableOfMarginsAndMarkups(double margin, double markup, double priceOverCost) {
        Money cost = eur(1_000_000);
        double million = Sales.of(cost, new PriceBy.Margin(margin / 100))
                .prices()
                .price()
                .amount()
                .doubleValue();
        assertEquals(priceOverCost, million / 1_000_000, 1e-8);
        PiecePrice.Prices byMarkup =
                Sales.of(cost, new PriceBy.Markup(markup / 100)).prices();
        assertEquals(margin / 100, byMarkup.margin().orElseThrow(), 1e-7);
        assertTrue(byMarkup.costCovered().minus(cost).amount().abs().doubleValue() <= 0.01);
    }

    @ParameterizedTest(name = "{0} %")
    @CsvFileSource(resources = "tax-fractions.csv")
    void agreesWithTheTableOfTaxFractions(double rate, String fraction, double value) {
        assertEquals(value, taxInside(1_000_000, rate / 100) / 1_000_000, 1e-8);
        String[] parts = fraction.split("/");
        assertEquals(Double.parseDouble(parts[0]) / Double.parseDouble(parts[1]), value, 1e-12);
    }

    private static PiecePrice.Prices target(double cost, double price) {
        return Sales.of(eur(cost), new PriceBy.Target(eur(price))).prices();
    }

    /** Of an amount so large that its coins do not show in the ratio. */
    private static double markupOf(PriceBy by) {
        return Sales.of(eur(1e10), by).prices().markup().orElseThrow();
    }

    private static double marginOf(PriceBy by) {
        return Sales.of(eur(1e10), by).prices().margin().orElseThrow();
    }

    private static double price(double cost, PriceBy by) {
        return Sales.of(eur(cost), by).prices().price().amount().doubleValue();
    }

    private static double breakEven(double fixed, double price, double each) {
        return answers(new BreakEven(), new BreakEven.Plan(eur(fixed), eur(price), eur(each), Optional.empty()))
                .pieces();
    }

    private static BatchTime.Times batch(int pieces) {
        return answers(new BatchTime(), new BatchTime.Batch(hours(100), pieces, new Learning.CumulativeAverage(0.8)));
    }

    private static double average(int pieces) {
        return batch(pieces).average().in(Units.HOUR);
    }

    private static double together(int pieces) {
        return batch(pieces).together().in(Units.HOUR);
    }

    /** The first piece’s time if the hundredth takes 120 h: what the last of a hundred takes, turned round. */
    private static double firstOfAHundred() {
        BatchTime.Times times =
                answers(new BatchTime(), new BatchTime.Batch(hours(1), 100, new Learning.EachPiece(0.75)));
        return 120 / times.lastPiece().in(Units.HOUR);
    }

    private static MachineHour.Hour machine() {
        return answers(
                new MachineHour(),
                new MachineHour.Machine(
                        eur(50000),
                        Optional.of(eur(8000)),
                        Optional.of(eur(3000)),
                        hours(100000),
                        Optional.of(List.of(
                                new MachineHour.Running("a", eur(1.80)),
                                new MachineHour.Running("b", eur(0.90)),
                                new MachineHour.Running("c", eur(0.30)),
                                new MachineHour.Running("d", eur(0.95))))));
    }

    private static double taxInside(double price, double rate) {
        return Sales.of(eur(1), new PriceBy.Target(eur(price)))
                .tax(rate, TaxShown.INSIDE)
                .prices()
                .tax()
                .amount()
                .doubleValue();
    }

    private static double taxOnTop() {
        return Sales.of(eur(1), new PriceBy.Target(eur(120)))
                .tax(0.08875, TaxShown.ON_TOP)
                .prices()
                .paid()
                .amount()
                .doubleValue();
    }

    private static double taken(WasteOf of) {
        return answers(
                        new LeatherBought(),
                        new LeatherBought.Need(Area.of(6.2, Units.FT2), 0.25, of, Area.of(22, Units.FT2), eur(165)))
                .taken()
                .in(Units.FT2);
    }

    private static double priceWithFees() {
        return Sales.of(eur(80), new PriceBy.Markup(0))
                .fees(0.095, eur(0.25))
                .prices()
                .price()
                .amount()
                .doubleValue();
    }
}
