package org.hidewright.thickness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Unit;
import org.hidewright.api.measure.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ThicknessTest {
    private final Thickness thickness = new Thickness();

    private Thickness.Names of(double value, Unit unit) {
        return Told.answers(thickness, outcome(value, unit));
    }

    private Outcome<Thickness.Names> outcome(double value, Unit unit) {
        return thickness.calculate(new Thickness.Typed(Length.of(value, unit)), Working.NONE);
    }

    /** Exact columns: ASTM D1814 definition; trade columns: 0.4 mm to the ounce, common practice. */
    @ParameterizedTest(name = "{0} is {1} to {2} mm")
    @CsvFileSource(resources = "ounce-ranges.csv")
    void everyLabelHasItsTwoEnds(
            String label, double low, double high, double tradeLow, double tradeHigh, double ironLow, double ironHigh) {
        int ounces = Integer.parseInt(label.substring(0, label.indexOf('-')));
        Thickness.Names upper = of(ounces + 1, Units.OUNCE);
        assertEquals(high, upper.millimetres().mm(), 1e-12);
        assertEquals(tradeHigh, upper.tradeMillimetres().mm(), 1e-12);
        assertEquals(ironHigh, upper.irons(), 1e-12);
        if (ounces > 0) {
            Thickness.Names lower = of(low, Units.MM);
            assertEquals(ounces, lower.ounces(), 1e-12);
            assertEquals(tradeLow, lower.tradeMillimetres().mm(), 1e-12);
            assertEquals(ironLow, lower.irons(), 1e-12);
        }
        Thickness.Names middle = of((low + high) / 2, Units.MM);
        assertEquals(Phrase.of("sold-label", ounces, ounces + 1), middle.soldAs());
        assertEquals(Phrase.of("sold-uses-" + ounces), middle.usualUses());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 4, 9, 14})
    void aWholeOunceMayBeSoldUnderEitherLabel(int ounces) {
        for (double mm : new double[] {ounces * 25.4 / 64, ounces * (25.4 / 64), ounces * 0.396875}) {
            assertEquals(
                    Phrase.of("sold-label-either", ounces - 1, ounces, ounces + 1),
                    of(mm, Units.MM).soldAs());
        }
        assertEquals(
                Phrase.of("sold-uses-" + (ounces - 1)), of(ounces, Units.OUNCE).usualUses());
    }

    @ParameterizedTest
    @CsvSource({"0.3, 0, 1", "4.000001, 4, 5", "3.999999, 3, 4", "14.7, 14, 15", "15, 14, 15", "0.0000000001, 0, 1"})
    void besideABorderOneLabelIsGiven(double ounces, int low, int high) {
        assertEquals(Phrase.of("sold-label", low, high), SoldLabel.of(ounces).asSold());
    }

    @Test
    void heavierThanFifteenOuncesHasNoLabel() {
        assertEquals(Phrase.of("sold-label-above", 15), of(15.01, Units.OUNCE).soldAs());
        assertEquals(Phrase.of("sold-uses-15"), of(15.01, Units.OUNCE).usualUses());
        assertEquals(Phrase.of("sold-uses-14"), of(15, Units.OUNCE).usualUses());
    }

    @Test
    void aThicknessNearABorderSaysSo() {
        Outcome<Thickness.Names> near = outcome(1.6, Units.MM);
        assertEquals(List.of("thickness-near-border"), Told.by(thickness, near));
        Notice notice = near.notices().get(0);
        assertEquals("thickness", notice.place());
        assertEquals(1.6 - 1.5875, ((Length) notice.args().get(0)).mm(), 1e-12); // 4 oz is 1.5875 mm
        assertEquals(Length.ofMm(0.1), notice.args().get(1));
    }

    @Test
    void aThicknessInTheMiddleOfALabelSaysNothing() {
        assertEquals(List.of(), Told.by(thickness, outcome(4.5, Units.OUNCE)));
        assertEquals(List.of(), Told.by(thickness, outcome(0.5, Units.OUNCE)));
        assertEquals(List.of(), Told.by(thickness, outcome(16, Units.OUNCE)));
    }

    @ParameterizedTest(name = "{0} mm is nearest to {2} in")
    @CsvSource({
        "0.396875, 1, 1/64, 0",
        "1.984375, 5, 5/64, 0",
        "2.0, 5, 5/64, -0.015625",
        "3.175, 8, 1/8, 0",
        "0.1, 0, 0, -0.1",
        "25.4, 64, 1, 0",
        "30.2, 76, 1 3/16, -0.0375"
    })
    void theNearestSixtyFourthIsGivenWithItsError(double mm, int sixtyFourths, String fraction, double error) {
        Thickness.Names names = of(mm, Units.MM);
        assertEquals(sixtyFourths, names.sixtyFourths());
        assertEquals(fraction, names.fraction());
        assertEquals(error, names.fractionError().mm(), 1e-12);
    }

    @Test
    void everyUnitLeadsThereAndBack() {
        Random random = new Random(1814);
        for (int i = 0; i < 2000; i++) {
            double mm = 0.01 + random.nextDouble() * 49.9;
            Thickness.Names names = of(mm, Units.MM);
            assertEquals(mm, of(names.ounces(), Units.OUNCE).millimetres().mm(), 1e-9 * mm);
            assertEquals(mm, of(names.irons(), Units.IRON).millimetres().mm(), 1e-9 * mm);
            assertEquals(names.ounces() * 0.75, names.irons(), 1e-9 * mm);
            assertEquals(names.ounces() * 0.4 - mm, names.tradeExcess().mm(), 1e-9 * mm);
            assertTrue(Math.abs(names.fractionError().mm()) <= 25.4 / 128 + 1e-9);
        }
    }

    @Test
    void theWorkingShowsEveryConversion() {
        Steps steps = new Steps(thickness);
        thickness.calculate(new Thickness.Typed(Length.ofMm(3.175)), steps);
        assertEquals(8, steps.result("ounces"), 1e-12);
        assertEquals(6, steps.result("irons"), 1e-12);
        assertEquals(0.125, steps.result("inches"), 1e-12);
        assertEquals(8, steps.result("sixty-fourths"));
        assertEquals(3.2, steps.result("trade-millimetres"), 1e-12);
    }
}
