package org.hidewright.thickness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Units;
import org.hidewright.thickness.GaugeReadings.HidePlace;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GaugeReadingsTest {
    private final GaugeReadings readings = new GaugeReadings();

    private static GaugeReadings.Gauged plain(double... mm) {
        return new GaugeReadings.Gauged(
                Optional.of(Arrays.stream(mm).mapToObj(Length::ofMm).toList()), Optional.empty());
    }

    private static GaugeReadings.PlacedReading at(String id, HidePlace place, double mm) {
        return new GaugeReadings.PlacedReading(id, place, Length.ofMm(mm));
    }

    private static GaugeReadings.Gauged placed(GaugeReadings.PlacedReading... placed) {
        return new GaugeReadings.Gauged(Optional.empty(), Optional.of(List.of(placed)));
    }

    private GaugeReadings.Summary summary(GaugeReadings.Gauged gauged) {
        return Told.answers(readings, readings.calculate(gauged, Working.NONE));
    }

    private List<String> told(GaugeReadings.Gauged gauged) {
        return Told.by(readings, readings.calculate(gauged, Working.NONE));
    }

    /** NIST Statistical Reference Datasets: certified mean and standard deviation, printed to 15 digits. */
    @ParameterizedTest(name = "NIST {0}")
    @ValueSource(strings = {"lottery", "michelso", "mavro"})
    void agreesWithTheCertifiedValues(String set) throws IOException {
        List<Double> numbers = new ArrayList<>();
        try (InputStream in = GaugeReadingsTest.class.getResourceAsStream("nist-" + set + ".csv")) {
            new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .flatMap(line -> Arrays.stream(line.split(",")))
                    .map(Double::valueOf)
                    .forEach(numbers::add);
        }
        double mean = numbers.remove(0);
        double deviation = numbers.remove(0);
        GaugeReadings.Summary summary =
                summary(plain(numbers.stream().mapToDouble(Double::doubleValue).toArray()));
        assertEquals(mean, summary.mean().mm(), 1e-13 * mean);
        // numbers such as 2.0018 are not exact in binary; 1e-11 is what their digits allow
        assertEquals(deviation, summary.standardDeviation().orElseThrow().mm(), 1e-11 * deviation);
        assertEquals(numbers.size(), summary.count());
    }

    /**
     * NIST StRD NumAcc4, the hardest of the set: a single 10000000.2 and 500 pairs of 10000000.1 and 10000000.3; mean
     * 10000000.2 and standard deviation 0.1 exactly. In binary the numbers themselves are off by up to 1e-9, so the
     * deviation can be had to 1e-8 at best.
     */
    @Test
    void readingsThatDifferInTheirLastDigitKeepTheirSpread() {
        double[] numbers = new double[1001];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = i == 0 ? 10000000.2 : i % 2 == 1 ? 10000000.1 : 10000000.3;
        }
        Spread spread = Spread.ofNumbers(numbers);
        assertEquals(10000000.2, spread.mean(), 1e-8);
        assertEquals(0.1, spread.standardDeviation(), 1e-8);
    }

    @Test
    void meanSpreadAndRangeOfAHandfulOfReadings() {
        Steps steps = new Steps(readings);
        GaugeReadings.Summary summary =
                Told.answers(readings, readings.calculate(plain(2.0, 2.2, 2.1, 2.3, 1.9), steps));
        assertEquals(2.1, summary.mean().mm(), 1e-12);
        assertEquals(2.1 * 64 / 25.4, summary.meanOunces(), 1e-12);
        assertEquals(5, summary.count());
        assertEquals(1.9, summary.least().mm());
        assertEquals(2.3, summary.greatest().mm());
        assertEquals(0.4, summary.range().mm(), 1e-12);
        double s = Math.sqrt(0.1 / 4); // squares 0.01 + 0.01 + 0 + 0.04 + 0.04
        assertEquals(s, summary.standardDeviation().orElseThrow().mm(), 1e-12);
        assertEquals(s / 2.1, summary.coefficientOfVariation().orElseThrow(), 1e-12);
        assertEquals(
                s / Math.sqrt(5), summary.standardUncertainty().orElseThrow().mm(), 1e-12);
        assertEquals(2.1, steps.result("readings-mean"), 1e-12);
        assertEquals(s, steps.result("readings-deviation"), 1e-12);
        assertEquals(0.1, steps.given("readings-deviation", "Q"), 1e-12);
        assertEquals(10.5, steps.given("readings-mean", "S"), 1e-12);
        assertEquals(s / 2.1, steps.result("readings-variation"), 1e-12);
        assertEquals(s / Math.sqrt(5), steps.result("readings-uncertainty"), 1e-12);
        assertEquals(0.4, steps.result("readings-range"), 1e-12);
    }

    @ParameterizedTest(name = "{0} to {1} oz lie in {2}-{3} oz")
    @CsvSource({"4.5, 4.6, 4, 5", "4, 5, 4, 5", "3.9, 5.1, 3, 6", "4, 4, 4, 5", "0.5, 0.6, 0, 1", "12.2, 14.9, 12, 15"})
    void wholeOuncesHoldEveryReading(double least, double greatest, int low, int high) {
        double ounce = 25.4 / 64;
        assertEquals(
                Phrase.of("readings-range-ounces", low, high),
                summary(plain(least * ounce, greatest * ounce)).rangeInOunces());
    }

    @Test
    void oneReadingHasNoSpread() {
        Steps steps = new Steps(readings);
        GaugeReadings.Summary one = Told.answers(readings, readings.calculate(plain(2), steps));
        assertEquals(2, one.mean().mm());
        assertEquals(0, one.range().mm());
        assertEquals(Optional.empty(), one.standardDeviation());
        assertEquals(Optional.empty(), one.coefficientOfVariation());
        assertEquals(Optional.empty(), one.standardUncertainty());
        assertEquals(0, steps.times("readings-deviation"));
        assertEquals(List.of("readings-only-one", "readings-places-unknown", "readings-gauges-differ"), told(plain(2)));
    }

    @Test
    void withoutAReadingNothingIsWorkedOut() {
        GaugeReadings.Gauged none = new GaugeReadings.Gauged(Optional.empty(), Optional.empty());
        for (GaugeReadings.Gauged gauged : List.of(none, plain(), placed())) {
            assertEquals("readings-none at readings", Told.refusal(readings, readings.calculate(gauged, Working.NONE)));
        }
        for (double wrong : new double[] {0, -0.1}) {
            assertEquals(
                    "reading-not-above-nothing at readings",
                    Told.refusal(readings, readings.calculate(plain(2, wrong), Working.NONE)));
        }
    }

    @Test
    void placedReadingsAreAddedUpByTheirPlace() {
        GaugeReadings.Gauged gauged = new GaugeReadings.Gauged(
                Optional.of(List.of(Length.ofMm(2.0))),
                Optional.of(List.of(
                        at("a", HidePlace.BELLY, 1.9), at("b", HidePlace.BEND, 2.2), at("c", HidePlace.BEND, 2.0))));
        GaugeReadings.Summary summary = summary(gauged);
        assertEquals(4, summary.count());
        assertEquals(2.025, summary.mean().mm(), 1e-12);
        assertEquals(2, summary.places().size());
        GaugeReadings.PlaceSummary bend = summary.places().get(0);
        GaugeReadings.PlaceSummary belly = summary.places().get(1);
        assertEquals(HidePlace.BEND, bend.place());
        assertEquals("bend", bend.id());
        assertEquals(2, bend.count());
        assertEquals(2.1, bend.mean().mm(), 1e-12);
        assertEquals(2.0, bend.least().mm());
        assertEquals(2.2, bend.greatest().mm());
        assertEquals(HidePlace.BELLY, belly.place());
        assertEquals(1.9, belly.mean().mm(), 1e-12);
        Outcome<GaugeReadings.Summary> outcome = readings.calculate(gauged, Working.NONE);
        assertEquals(
                List.of("readings-places-differ", "readings-places-unknown", "readings-gauges-differ"),
                Told.by(readings, outcome));
        Notice differ = outcome.notices().get(0);
        assertEquals(List.of(HidePlace.BEND, bend.mean(), HidePlace.BELLY, belly.mean()), differ.args());
    }

    @Test
    void placesThatAgreeAreNotToldApart() {
        GaugeReadings.Gauged alike = placed(at("a", HidePlace.NECK, 2), at("b", HidePlace.SHOULDER, 2));
        GaugeReadings.Gauged onePlace = placed(at("a", HidePlace.NECK, 2), at("b", HidePlace.NECK, 2.1));
        assertEquals(List.of("readings-gauges-differ"), told(alike));
        assertEquals(List.of("readings-gauges-differ"), told(onePlace));
    }

    @Test
    void readingsFartherApartThanOneLabelAreChecked() {
        double ounce = Length.of(1, Units.OUNCE).mm();
        assertTrue(told(plain(2, 2 + ounce * 1.001)).contains("readings-uneven"));
        assertFalse(told(plain(2, 2 + ounce)).contains("readings-uneven"));
        assertFalse(told(plain(2, 2 + ounce * 0.999)).contains("readings-uneven"));
    }

    @Test
    void movingEveryReadingMovesTheMeanAndLeavesTheSpread() {
        Random random = new Random(2589);
        for (int i = 0; i < 500; i++) {
            double[] mm = random.doubles(2 + random.nextInt(30), 1, 4).toArray();
            double shift = random.nextDouble() * 20;
            double scale = 0.2 + random.nextDouble() * 3;
            GaugeReadings.Summary before = summary(plain(mm));
            GaugeReadings.Summary moved =
                    summary(plain(Arrays.stream(mm).map(x -> x + shift).toArray()));
            GaugeReadings.Summary scaled =
                    summary(plain(Arrays.stream(mm).map(x -> x * scale).toArray()));
            double s = before.standardDeviation().orElseThrow().mm();
            assertEquals(before.mean().mm() + shift, moved.mean().mm(), 1e-9);
            assertEquals(s, moved.standardDeviation().orElseThrow().mm(), 1e-9);
            assertEquals(s * scale, scaled.standardDeviation().orElseThrow().mm(), 1e-9);
            assertEquals(
                    before.coefficientOfVariation().orElseThrow(),
                    scaled.coefficientOfVariation().orElseThrow(),
                    1e-9);
        }
    }
}
