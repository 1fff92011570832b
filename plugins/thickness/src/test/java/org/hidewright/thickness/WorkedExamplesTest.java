package org.hidewright.thickness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleSupplier;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Density;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Mass;
import org.hidewright.api.measure.Unit;
import org.hidewright.api.measure.Units;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Worked examples from standards and agreements; each row names its own source. */
class WorkedExamplesTest {
    private static final Map<String, DoubleSupplier> WORKED = Map.ofEntries(
            Map.entry("U.01", () -> names(1, Units.OUNCE).millimetres().mm()),
            Map.entry("U.02", () -> names(1, Units.IRON).millimetres().mm()),
            Map.entry("U.03", () -> names(8, Units.OUNCE).millimetres().mm()),
            Map.entry("U.04", () -> names(8, Units.OUNCE).inches().in(Units.INCH)),
            Map.entry("U.05", () -> names(8, Units.OUNCE).irons()),
            Map.entry("U.06", () -> names(12, Units.IRON).ounces()),
            Map.entry("U.07", () -> names(2, Units.OUNCE).millimetres().mm()),
            Map.entry("U.08", () -> names(3, Units.OUNCE).millimetres().mm()),
            Map.entry("U.09", () -> names(1.5, Units.MM).ounces()),
            Map.entry("U.10", () -> names(3.0, Units.MM).irons()),
            Map.entry("U.11", WorkedExamplesTest::errorOfTheTradeRounding),
            Map.entry("U.12", () -> areas(1, Units.FT2).squareDecimetres().in(Units.DM2)),
            Map.entry("U.13", () -> areas(1, Units.M2).squareFeet().in(Units.FT2)),
            Map.entry("U.14", () -> areas(22, Units.FT2).squareMetres().in(Units.M2)),
            Map.entry("U.15", () -> areas(22, Units.FT2).pricePerSquareMetre().orElseThrow()),
            Map.entry(
                    "U.16", () -> areas(22, Units.FT2).pricePerSquareDecimetre().orElseThrow()),
            Map.entry("U.17", () -> pressure(new GaugePressure.DeadWeight(Mass.ofGrams(393)), Length.ofMm(10))),
            Map.entry("U.18", () -> pressure(new GaugePressure.SpringPounds(1), Length.of(0.4, Units.INCH))),
            Map.entry("U.19", WorkedExamplesTest::densityOfAnOunceToTheSquareFoot),
            Map.entry("U.20", WorkedExamplesTest::massOfAPanel),
            Map.entry("F.14", WorkedExamplesTest::stackOfTwoEightsAndATwo));

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
        double relative = tolerance.contains("1e-12") ? 1e-12 : 1e-9;
        assertEquals(expected, worked.getAsDouble(), relative * expected, description);
    }

    private static Thickness.Names names(double value, Unit unit) {
        return new Thickness()
                .calculate(new Thickness.Typed(Length.of(value, unit)), Working.NONE)
                .answers()
                .orElseThrow();
    }

    private static double errorOfTheTradeRounding() {
        Thickness.Names names = names(7, Units.OUNCE);
        return names.tradeExcess().per(names.millimetres());
    }

    private static LeatherArea.Areas areas(double value, Unit unit) {
        LeatherArea.Bought bought = new LeatherArea.Bought(
                new LeatherArea.Measured(Area.of(value, unit)),
                1,
                Optional.empty(),
                Optional.of(9.50),
                LeatherArea.PricedBy.SQUARE_FOOT);
        return new LeatherArea().calculate(bought, Working.NONE).answers().orElseThrow();
    }

    private static double pressure(GaugePressure.GaugeLoad load, Length foot) {
        return new GaugePressure()
                .calculate(new GaugePressure.Gauge(load, foot), Working.NONE)
                .answers()
                .orElseThrow()
                .kilopascals();
    }

    private static double densityOfAnOunceToTheSquareFoot() {
        ApparentDensity.TestPiece piece = new ApparentDensity.TestPiece(
                Mass.of(1, Units.OUNCE_MASS),
                new PieceShape.Flat(Area.of(1, Units.FT2)),
                List.of(Length.of(1, Units.OUNCE)));
        return new ApparentDensity()
                .calculate(piece, Working.NONE)
                .answers()
                .orElseThrow()
                .density()
                .gramsPerCm3();
    }

    private static double massOfAPanel() {
        PieceWeight.Pieces panel = new PieceWeight.Pieces(
                new PieceShape.Flat(Area.of(10, Units.DM2)), Length.of(8, Units.OUNCE), Density.ofGramsPerCm3(0.95), 1);
        return new PieceWeight()
                .calculate(panel, Working.NONE)
                .answers()
                .orElseThrow()
                .mass()
                .grams();
    }

    private static double stackOfTwoEightsAndATwo() {
        Stack.Pile pile = new Stack.Pile(
                List.of(
                        new Stack.StackLayer("eights", Length.of(8, Units.OUNCE), 2, Optional.empty()),
                        new Stack.StackLayer("two", Length.of(2, Units.OUNCE), 1, Optional.empty())),
                Length.ZERO);
        return new Stack()
                .calculate(pile, Working.NONE)
                .answers()
                .orElseThrow()
                .total()
                .mm();
    }
}
