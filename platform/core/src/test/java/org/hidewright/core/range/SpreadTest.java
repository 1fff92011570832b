package org.hidewright.core.range;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hidewright.api.measure.Range;
import org.junit.jupiter.api.Test;

/** How far a spread is trusted, and what the sample says of it. */
class SpreadTest {
    private static Spread spread(double nominal, double uncertainty, double deviation, double mean) {
        return new Spread(
                nominal, FirstOrder.of(new double[] {uncertainty}), nominal - 1, nominal + 1, deviation, mean);
    }

    private static boolean moves(double low, double high) {
        return new Spread(low, FirstOrder.of(new double[] {0}), low, high, 0, low).moves();
    }

    @Test
    void theFirstOrderHoldsToAFifthOfTheLarger() {
        assertTrue(spread(0, 1, 1, 0).firstOrderHolds());
        assertTrue(spread(0, 1, 0.8125, 0).firstOrderHolds());
        assertFalse(spread(0, 1, 0.75, 0).firstOrderHolds());
        assertTrue(spread(0, 0.8125, 1, 0).firstOrderHolds());
        assertFalse(spread(0, 0.75, 1, 0).firstOrderHolds());
        assertTrue(spread(0, 1, 1, 0.2).firstOrderHolds(), "a fifth itself is near enough");
        assertTrue(spread(0, 1, 1, -0.2).firstOrderHolds());
        assertFalse(spread(0, 1, 1, 0.21).firstOrderHolds());
        assertFalse(spread(0, 1, 1, -0.21).firstOrderHolds());
    }

    /** A double has some 16 digits (IEEE 754): of a million the ten-millionth part of one is lost in a sum of hundreds. */
    @Test
    void whatIsLostInArithmeticIsNoBend() {
        assertTrue(spread(1e6, 0, 0, 1e6 + 5e-7).firstOrderHolds());
        assertFalse(spread(1e6, 0, 0, 1e6 + 5e-6).firstOrderHolds());
        assertFalse(spread(1e-6, 0, 0, 1.001e-6).firstOrderHolds(), "a thousandth of the answer is not lost");
    }

    @Test
    void whatIsLostInArithmeticIsNoMove() {
        assertFalse(moves(1e6, 1e6 + 5e-7));
        assertTrue(moves(1e6, 1e6 + 5e-6));
        assertFalse(moves(-1e6 - 5e-7, -1e6));
        assertTrue(moves(-1e6, -1e6 + 5e-6));
        assertTrue(moves(1e-9, 1.001e-9));
        assertTrue(moves(0, 1e-9));
        assertFalse(moves(0, 0), "an answer of nothing that stays nothing");
    }

    /** JCGM 100:2008, 6.3.3, and EA-4/02, S9, from memory; the share that outweighs the others is ours: nine tenths. */
    @Test
    void coverageIsOfAnEvenSpreadWhereOneInputOutweighsTheOthers() {
        FirstOrder nineTenths = FirstOrder.of(new double[] {3, 1});
        assertEquals(Math.sqrt(10), nineTenths.standardUncertainty(), 1e-15);
        assertEquals(0.9, nineTenths.shares()[0]);
        assertEquals(0.95 * Math.sqrt(3), nineTenths.coverage());
        assertEquals(2, FirstOrder.of(new double[] {2.99, 1}).coverage());
        assertEquals(2, FirstOrder.of(new double[] {1, -1}).coverage());
        assertEquals(0.95 * Math.sqrt(3), FirstOrder.of(new double[] {0, -4}).coverage());
    }

    @Test
    void firstOrdersAreComparedByWhatTheySay() {
        FirstOrder one = FirstOrder.of(new double[] {3, 4});
        assertEquals(one, FirstOrder.of(new double[] {-3, 4}), "which way an input moves the answer is not told");
        assertEquals(one.hashCode(), FirstOrder.of(new double[] {3, 4}).hashCode());
        assertEquals("5.0 from [0.36, 0.64]", one.toString());
        assertNotEquals(one, FirstOrder.of(new double[] {4, 3}), "shares the other way round");
        assertNotEquals(one, FirstOrder.of(new double[] {6, 8}), "twice as uncertain");
        assertNotEquals(one, (Object) "5.0 from [0.36, 0.64]");
        assertEquals(
                4,
                Set.of(one, FirstOrder.of(new double[] {4, 3}), FirstOrder.of(new double[] {6, 8}), nothing())
                        .size());
    }

    private static FirstOrder nothing() {
        return FirstOrder.of(new double[] {0, 0});
    }

    /** The places of the sample, which are the last that are tried and the same in every study. */
    private static List<Double> sample() {
        List<Double> tried = new ArrayList<>();
        RangeStudy.<String>of(List.of(Range.between(0, 1)), x -> {
            tried.add(x[0]);
            return new Trial.Answered<>(Map.of("y", x[0]));
        });
        return tried.subList(tried.size() - RangeStudy.SAMPLE, tried.size());
    }

    /** Answers 10 + x in the middle and at these places, and nowhere else. */
    private static Spread only(List<Double> answered) {
        return RangeStudy.<String>of(
                        List.of(Range.between(0, 1)),
                        x -> x[0] == 0.5 || answered.contains(x[0])
                                ? new Trial.Answered<>(Map.of("y", 10 + x[0]))
                                : new Trial.Refused<>("no"))
                .orElseThrow()
                .spreads()
                .get("y");
    }

    /** Mean and deviation of one, two and three by hand: the deviation is of n - 1 (JCGM 100:2008, 4.2.2, from memory). */
    @Test
    void theSampleIsOfThePlacesThatAreAnswered() {
        List<Double> sample = sample();
        double a = sample.get(7);
        double b = sample.get(70);
        double c = sample.get(399);
        Spread none = only(List.of());
        assertEquals(0, none.sampleDeviation());
        assertEquals(10.5, none.sampleMean());
        Spread one = only(List.of(a));
        assertEquals(0, one.sampleDeviation(), "of one there is no deviation");
        assertEquals(10 + a, one.sampleMean(), 1e-12);
        Spread two = only(List.of(a, b));
        assertEquals(Math.abs(a - b) / Math.sqrt(2), two.sampleDeviation(), 1e-12);
        assertEquals(10 + (a + b) / 2, two.sampleMean(), 1e-12);
        Spread three = only(List.of(a, b, c));
        double mean = (a + b + c) / 3;
        assertEquals(10 + mean, three.sampleMean(), 1e-12);
        assertEquals(
                Math.sqrt(((a - mean) * (a - mean) + (b - mean) * (b - mean) + (c - mean) * (c - mean)) / 2),
                three.sampleDeviation(),
                1e-12);
    }

    @Test
    void aStudyIsNamedByItsInputsAndWhatTheyMake() {
        String text = RangeStudy.<String>of(
                        List.of(Range.between(2, 3)), x -> new Trial.Answered<>(Map.of("y", 2 * x[0])))
                .orElseThrow()
                .toString();
        assertTrue(text.contains("y=") && text.contains("2.0 to 3.0 (nominal 2.5)") && text.contains("[2.5]"), text);
    }
}
