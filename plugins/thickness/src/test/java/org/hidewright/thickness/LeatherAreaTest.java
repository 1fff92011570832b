package org.hidewright.thickness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Size;
import org.hidewright.api.measure.Units;
import org.hidewright.thickness.LeatherArea.PricedBy;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;

class LeatherAreaTest {
    private final LeatherArea leatherArea = new LeatherArea();

    private static LeatherArea.Bought bought(double squareFeet, int count) {
        return new LeatherArea.Bought(
                new LeatherArea.Measured(Area.of(squareFeet, Units.FT2)),
                count,
                Optional.empty(),
                Optional.empty(),
                PricedBy.SQUARE_FOOT);
    }

    private Outcome<LeatherArea.Areas> outcome(LeatherArea.Bought bought) {
        return leatherArea.calculate(bought, Working.NONE);
    }

    private LeatherArea.Areas areas(LeatherArea.Bought bought) {
        return Told.answers(leatherArea, outcome(bought));
    }

    @Test
    void severalPiecesAreTakenTogether() {
        Steps steps = new Steps(leatherArea);
        LeatherArea.Areas areas = Told.answers(leatherArea, leatherArea.calculate(bought(22, 3), steps));
        assertEquals(66, areas.squareFeet().in(Units.FT2), 1e-9);
        assertEquals(66 * 9.290304, areas.squareDecimetres().in(Units.DM2), 1e-9);
        assertEquals(66 * 0.09290304, areas.squareMetres().in(Units.M2), 1e-9);
        assertEquals(66 * 144, areas.squareInches().in(Units.IN2), 1e-9);
        assertEquals(22, areas.eachPiece().in(Units.FT2), 1e-9);
        assertEquals(Optional.empty(), areas.priceTogether());
        assertEquals(Optional.empty(), areas.pricePerSquareInch());
        assertEquals(66 * 92903.04, steps.result("area-together"), 1e-6);
        assertEquals(0, steps.times("panel-area") + steps.times("price-per-area") + steps.times("price-together"));
    }

    @Test
    void aPanelIsWidthTimesHeight() {
        LeatherArea.Bought panel = new LeatherArea.Bought(
                new LeatherArea.Panel(Size.of(Length.of(12, Units.INCH), Length.of(24, Units.INCH))),
                2,
                Optional.empty(),
                Optional.of(30.0),
                PricedBy.SQUARE_METRE);
        Steps steps = new Steps(leatherArea);
        LeatherArea.Areas areas = Told.answers(leatherArea, leatherArea.calculate(panel, steps));
        assertEquals(2, areas.eachPiece().in(Units.FT2), 1e-12);
        assertEquals(4, areas.squareFeet().in(Units.FT2), 1e-12);
        assertEquals(4 * 0.09290304 * 30, areas.priceTogether().orElseThrow(), 1e-9);
        assertEquals(2 * 92903.04, steps.result("panel-area"), 1e-6);
        assertEquals(4 * 0.09290304 * 30, steps.result("price-together"), 1e-9);
        assertEquals(4, steps.times("price-per-area"));
    }

    @ParameterizedTest
    @EnumSource(PricedBy.class)
    void aPriceQuotedForAnyUnitMeansTheSameMoney(PricedBy quoted) {
        Random random = new Random(95);
        for (int i = 0; i < 100; i++) {
            double perSquareFoot = random.nextDouble() * 40;
            double price = perSquareFoot
                    * switch (quoted) {
                        case SQUARE_FOOT -> 1;
                        case SQUARE_INCH -> 1 / 144.0;
                        case SQUARE_DECIMETRE -> 1 / 9.290304;
                        case SQUARE_METRE -> 1 / 0.09290304;
                    };
            LeatherArea.Areas areas = areas(new LeatherArea.Bought(
                    new LeatherArea.Measured(Area.of(22, Units.FT2)), 1, Optional.empty(), Optional.of(price), quoted));
            assertEquals(perSquareFoot, areas.pricePerSquareFoot().orElseThrow(), 1e-9);
            assertEquals(
                    perSquareFoot / 9.290304, areas.pricePerSquareDecimetre().orElseThrow(), 1e-9);
            assertEquals(perSquareFoot / 0.09290304, areas.pricePerSquareMetre().orElseThrow(), 1e-7);
            assertEquals(perSquareFoot / 144, areas.pricePerSquareInch().orElseThrow(), 1e-9);
            assertEquals(perSquareFoot * 22, areas.priceTogether().orElseThrow(), 1e-7);
        }
    }

    /** Usual areas: common practice. */
    @ParameterizedTest(name = "a {0} has {1} to {2} square feet")
    @CsvFileSource(resources = "hide-sizes.csv")
    void anAreaOutsideWhatThePieceUsuallyHasIsNoted(
            HidePiece piece, double least, double most, double leastSquareMetres, double mostSquareMetres) {
        assertEquals(leastSquareMetres, piece.least().in(Units.M2), 1e-12);
        assertEquals(mostSquareMetres, piece.most().in(Units.M2), 1e-12);
        for (double usual : new double[] {least, (least + most) / 2, most}) {
            assertEquals(List.of(), Told.by(leatherArea, outcome(of(piece, usual))));
        }
        for (double unusual : new double[] {least * 0.999, most * 1.001}) {
            Outcome<LeatherArea.Areas> outcome = outcome(of(piece, unusual));
            assertEquals(List.of("area-unusual-for-piece"), Told.by(leatherArea, outcome));
            Notice notice = outcome.notices().get(0);
            assertEquals("sold", notice.place());
            assertEquals(piece, notice.args().get(1));
            assertEquals(least, (double) notice.args().get(2), 1e-12);
            assertEquals(most, (double) notice.args().get(3), 1e-12);
        }
    }

    private static LeatherArea.Bought of(HidePiece piece, double squareFeet) {
        return new LeatherArea.Bought(
                new LeatherArea.Measured(Area.of(squareFeet, Units.FT2)),
                7,
                Optional.of(piece),
                Optional.empty(),
                PricedBy.SQUARE_FOOT);
    }
}
