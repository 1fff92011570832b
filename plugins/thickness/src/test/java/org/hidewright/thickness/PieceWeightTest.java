package org.hidewright.thickness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Density;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Mass;
import org.hidewright.api.measure.Units;
import org.junit.jupiter.api.Test;

class PieceWeightTest {
    private final PieceWeight weight = new PieceWeight();
    private final ApparentDensity density = new ApparentDensity();

    private static PieceShape strip(double lengthMm, double widthMm) {
        return new PieceShape.Strip(Length.ofMm(lengthMm), Length.ofMm(widthMm));
    }

    private static PieceShape flat(double dm2) {
        return new PieceShape.Flat(Area.of(dm2, Units.DM2));
    }

    private static ApparentDensity.TestPiece piece(double grams, PieceShape shape, double... readingsMm) {
        List<Length> readings = Arrays.stream(readingsMm).mapToObj(Length::ofMm).toList();
        return new ApparentDensity.TestPiece(Mass.ofGrams(grams), shape, readings);
    }

    /** ISO 2420: mass is area times thickness times apparent density. */
    @Test
    void aStrapWeighsAsItsLengthTimesItsWidth() {
        Steps steps = new Steps(weight);
        PieceWeight.Pieces straps =
                new PieceWeight.Pieces(strip(1100, 38), Length.ofMm(3.5), Density.ofGramsPerCm3(1.0), 4);
        PieceWeight.Weight all = Told.answers(weight, weight.calculate(straps, steps));
        assertEquals(146.3, all.eachPiece().grams(), 1e-9); // 110 cm x 3.8 cm x 0.35 cm x 1 g/cm3
        assertEquals(585.2, all.mass().grams(), 1e-9);
        assertEquals(585.2 / 453.59237, all.pounds().in(Units.POUND), 1e-9);
        assertEquals(4.18, all.areaEach().in(Units.DM2), 1e-9);
        assertEquals(3500, all.gramsPerSquareMetre(), 1e-9); // 3.5 mm of 1 g/cm3
        assertEquals(41800, steps.result("strip-area"), 1e-9);
        assertEquals(146.3, steps.result("sheet-mass"), 1e-9);
        assertEquals(585.2, steps.result("mass-together"), 1e-9);
        assertEquals(3500, steps.result("mass-per-area"), 1e-9);
    }

    @Test
    void aPieceOfKnownAreaHasNoStripInItsWorking() {
        Steps steps = new Steps(weight);
        weight.calculate(new PieceWeight.Pieces(flat(1), Length.ofMm(1), Density.ofGramsPerCm3(1), 1), steps);
        assertEquals(10, steps.result("sheet-mass"), 1e-12); // 100 cm2 x 0.1 cm
        assertEquals(0, steps.times("strip-area"));
    }

    @Test
    void densityAndWeightLeadThereAndBack() {
        Random random = new Random(2420);
        for (int i = 0; i < 500; i++) {
            PieceShape shape = strip(10 + random.nextDouble() * 2000, 5 + random.nextDouble() * 300);
            double mm = 0.4 + random.nextDouble() * 5;
            double rho = 0.3 + random.nextDouble();
            PieceWeight.Pieces pieces = new PieceWeight.Pieces(shape, Length.ofMm(mm), Density.ofGramsPerCm3(rho), 1);
            double grams = Told.answers(weight, weight.calculate(pieces, Working.NONE))
                    .mass()
                    .grams();
            ApparentDensity.Found found =
                    Told.answers(density, density.calculate(piece(grams, shape, mm, mm, mm, mm), Working.NONE));
            assertEquals(rho, found.density().gramsPerCm3(), 1e-9 * rho);
        }
    }

    /** ISO 2420:2017, 7.2: the thickness is the mean of four readings. */
    @Test
    void densityTakesTheMeanOfTheReadings() {
        Steps steps = new Steps(density);
        Outcome<ApparentDensity.Found> outcome = density.calculate(piece(30, flat(1), 2.9, 3.1, 3.0, 3.0), steps);
        assertEquals(List.of(), Told.by(density, outcome));
        assertEquals(1.0, outcome.answers().orElseThrow().density().gramsPerCm3(), 1e-12); // 30 g / 30 cm3
        assertEquals(3.0, outcome.answers().orElseThrow().meanThickness().mm(), 1e-12);
        assertEquals(3.0, steps.result("readings-mean"), 1e-12);
        assertEquals(1.0, steps.result("apparent-density"), 1e-12);
    }

    @Test
    void fewerReadingsThanTheStandardAsksAreNoted() {
        assertEquals(
                List.of("density-few-readings"),
                Told.by(density, density.calculate(piece(30, flat(1), 3, 3, 3), Working.NONE)));
    }

    @Test
    void withoutAThicknessDensityIsRefused() {
        assertEquals(
                "density-no-readings at thickness",
                Told.refusal(density, density.calculate(piece(30, flat(1)), Working.NONE)));
        for (double wrong : new double[] {0, -1}) {
            assertEquals(
                    "density-reading-not-above-nothing at thickness",
                    Told.refusal(density, density.calculate(piece(30, flat(1), 3, wrong), Working.NONE)));
        }
    }
}
