package org.hidewright.api.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InchFractionTest {
    private static InchFraction of(String text, int denominator) {
        return InchFraction.nearest(Length.ofMm(Shop.mm(text)), denominator);
    }

    /** Expected fractions follow from 25.4 mm to the inch; 1 5/64 in = 27.384375 mm, 1/64 in = 0.396875 mm. */
    @ParameterizedTest(name = "{0} in steps of 1/{1} is {2}")
    @CsvSource({
        "27.4 mm, 64, 1 5/64",
        "8 oz, 64, 1/8",
        "12 irons, 64, 1/4",
        "1 in, 64, 1",
        "0 mm, 64, 0",
        "0.1 mm, 64, 0",
        "-0.1 mm, 64, 0",
        "-27.4 mm, 64, -1 5/64",
        "-2 in, 64, -2",
        "-1/8 in, 64, -1/8",
        "25.3 mm, 64, 1",
        "0.5 in, 2, 1/2",
        "1.75 in, 3, 1 2/3",
        "10 mm, 1, 0",
        "20 mm, 1, 1",
        "10 ft, 16, 120",
        "0.1984375 mm, 64, 1/64",
        "-0.1984375 mm, 64, -1/64",
        "0.1984 mm, 64, 0"
    })
    void theRuleShowsTheNearestFraction(String length, int denominator, String expected) {
        assertEquals(expected, of(length, denominator).text());
    }

    @Test
    void partsAndErrorCanBeAskedFor() {
        InchFraction fraction = of("27.4 mm", 64);
        assertEquals(1, fraction.whole());
        assertEquals(5, fraction.numerator());
        assertEquals(64, fraction.denominator());
        assertFalse(fraction.isNegative());
        assertEquals(27.384375 - 27.4, fraction.errorMm(), 1e-12);
        assertEquals(27.384375, fraction.toLength().mm(), 1e-12);
        assertEquals("1 5/64 in", fraction.toString());
    }

    @Test
    void negativeLengthsKeepTheirSignApart() {
        InchFraction fraction = of("-27.4 mm", 64);
        assertTrue(fraction.isNegative());
        assertEquals(1, fraction.whole());
        assertEquals(5, fraction.numerator());
        assertEquals(27.4 - 27.384375, fraction.errorMm(), 1e-12);
        assertFalse(of("-0.1 mm", 64).isNegative());
        assertEquals(0.1, of("-0.1 mm", 64).errorMm(), 1e-12);
    }

    @Test
    void wholeInchesHaveADenominatorOfOne() {
        assertEquals(0, of("2 in", 64).numerator());
        assertEquals(1, of("2 in", 64).denominator());
    }

    @Test
    void everyFractionIsReducedAndNoFartherThanHalfAStep() {
        var random = new SplittableRandom(64);
        for (int i = 0; i < 2000; i++) {
            Length length = Length.ofMm(random.nextDouble(-3000, 3000));
            InchFraction fraction = InchFraction.nearest(length, 64);
            assertTrue(Math.abs(fraction.errorMm()) <= 25.4 / 128 + 1e-9, () -> length + " as " + fraction);
            assertTrue(fraction.numerator() < fraction.denominator());
            assertTrue(fraction.numerator() == 0 || fraction.numerator() % 2 == 1, fraction::toString);
            assertEquals(Shop.mm(fraction.toString()), fraction.toLength().mm(), 1e-9);
        }
    }

    @Test
    void impossibleDenominatorsAndLengthsAreFaultsOfTheCaller() {
        assertThrows(IllegalArgumentException.class, () -> InchFraction.nearest(Length.ZERO, 0));
        assertThrows(IllegalArgumentException.class, () -> InchFraction.nearest(Length.ZERO, -64));
        assertThrows(ArithmeticException.class, () -> InchFraction.nearest(Length.ofMm(1e300), 64));
        assertThrows(ArithmeticException.class, () -> InchFraction.nearest(Length.of(1L << 53, Units.INCH), 1));
    }

    @Test
    void equalMeansSameFractionAndSameError() {
        assertEquals(of("27.4 mm", 64), of("27.4 mm", 64));
        assertEquals(of("27.4 mm", 64).hashCode(), of("27.4 mm", 64).hashCode());
        assertNotEquals(of("27.4 mm", 64), of("27.39 mm", 64));
        assertNotEquals(of("1/4 in", 64), of("1/2 in", 64));
        assertNotEquals(of("1/4 in", 64), "1/4");
        assertNotEquals(of("1/4 in", 64).hashCode(), of("1/2 in", 64).hashCode());
    }
}
