package org.hidewright.api.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class QuantityTest {
    @Test
    void lengthsAddSubtractAndMultiply() {
        Length strap = Length.of(1, Units.INCH);
        assertEquals(27.4, strap.plus(Length.ofMm(2)).mm(), 1e-12);
        assertEquals(-2.6, strap.minus(Length.ofMm(28)).mm(), 1e-12);
        assertEquals(63.5, strap.times(2.5).mm(), 1e-12);
        assertEquals(12.7, strap.per(Length.ofMm(2)), 1e-12);
    }

    @Test
    void everyKindIsCountedInItsBaseUnit() {
        assertEquals(Math.PI, Angle.of(180, Units.DEGREE).radians(), 0);
        assertEquals(92_903.04, Area.of(1, Units.FT2).mm2(), 0);
        assertEquals(453.59237, Mass.of(1, Units.POUND).grams(), 0);
        assertEquals(0.95, Density.of(950, Units.KG_PER_M3).gramsPerCm3(), 0);
        // 231 in³ in a US gallon, 128 fluid ounces in it: NIST Handbook 44, appendix C (from memory)
        assertEquals(231 * 16.387064 / 128, Volume.of(1, Units.FLUID_OUNCE).ml(), 1e-12);
        assertEquals(5400, Duration.of(1.5, Units.HOUR).seconds(), 0);
        assertEquals(4, Length.of(101.6, Units.MM).in(Units.INCH), 0);
        assertEquals(2, Angle.ofRadians(4 * Math.PI).in(Units.TURN), 0);
        assertEquals(4.5, Length.ofMm(4.5).base(), 0);
        assertEquals(Dimension.MASS, Mass.ZERO.dimension());
    }

    @Test
    void arithmeticStaysWithinItsKind() {
        assertEquals(Angle.ofRadians(3), Angle.ofRadians(1).plus(Angle.ofRadians(2)));
        assertEquals(Area.ofMm2(3), Area.ofMm2(1).plus(Area.ofMm2(2)));
        assertEquals(Mass.ofGrams(3), Mass.ofGrams(1).plus(Mass.ofGrams(2)));
        assertEquals(Volume.ofMl(3), Volume.ofMl(1).plus(Volume.ofMl(2)));
        assertEquals(Duration.ofSeconds(3), Duration.ofSeconds(1).plus(Duration.ofSeconds(2)));
        assertEquals(Density.ofGramsPerCm3(3), Density.ofGramsPerCm3(1).plus(Density.ofGramsPerCm3(2)));
    }

    @Test
    void nothingIsZeroOfEveryKind() {
        assertEquals(Length.ofMm(0), Length.ZERO);
        assertEquals(Angle.ofRadians(0), Angle.ZERO);
        assertEquals(Area.ofMm2(0), Area.ZERO);
        assertEquals(Mass.ofGrams(0), Mass.ZERO);
        assertEquals(Density.ofGramsPerCm3(0), Density.ZERO);
        assertEquals(Volume.ofMl(0), Volume.ZERO);
        assertEquals(Duration.ofSeconds(0), Duration.ZERO);
    }

    @Test
    void aNegativeZeroIsNothing() {
        assertEquals(Length.ZERO, Length.ofMm(-0.0));
        assertEquals(Length.ZERO.hashCode(), Length.ofMm(-0.0).hashCode());
        assertEquals(0, Length.ZERO.compareTo(Length.ofMm(-0.0)));
        assertEquals("0.0 mm", Length.ofMm(-0.0).toString());
    }

    @Test
    void lengthsSortFromShortToLong() {
        var sorted = new TreeSet<>(List.of(Length.ofMm(3), Length.ofMm(-1), Length.of(1, Units.INCH)));
        assertEquals(List.of(Length.ofMm(-1), Length.ofMm(3), Length.ofMm(25.4)), List.copyOf(sorted));
        assertTrue(Length.ofMm(1).compareTo(Length.ofMm(2)) < 0);
    }

    @Test
    void equalMeansSameKindAndSameNumber() {
        assertEquals(Length.ofMm(25.4), Length.of(1, Units.INCH));
        assertEquals(Length.ofMm(25.4).hashCode(), Length.of(1, Units.INCH).hashCode());
        assertNotEquals(Length.ofMm(2), Length.ofMm(3));
        assertNotEquals(Length.ofMm(2), Mass.ofGrams(2));
        assertNotEquals(Length.ofMm(2), null);
        assertNotEquals(Length.ofMm(2).hashCode(), Mass.ofGrams(2).hashCode());
        assertNotEquals(Length.ofMm(2).hashCode(), Length.ofMm(3).hashCode());
    }

    @Test
    void aUnitOfAnotherKindIsAFaultOfTheCaller() {
        assertThrows(IllegalArgumentException.class, () -> Length.of(1, Units.GRAM));
        assertThrows(IllegalArgumentException.class, () -> Angle.of(1, Units.MM));
        assertThrows(IllegalArgumentException.class, () -> Area.of(1, Units.MM));
        assertThrows(IllegalArgumentException.class, () -> Mass.of(1, Units.OUNCE));
        assertThrows(IllegalArgumentException.class, () -> Density.of(1, Units.ONE));
        var fault = assertThrows(
                IllegalArgumentException.class, () -> Length.ofMm(1).in(Units.FT2));
        assertEquals("ft² does not measure LENGTH", fault.getMessage());
    }

    @Test
    void numbersWithoutEndAreRefused() {
        assertThrows(ArithmeticException.class, () -> Length.ofMm(Double.NaN));
        assertThrows(ArithmeticException.class, () -> Length.ofMm(Double.POSITIVE_INFINITY));
        assertThrows(ArithmeticException.class, () -> Length.ofMm(1).times(Double.NaN));
        Length endless = Length.ofMm(Double.MAX_VALUE);
        assertThrows(ArithmeticException.class, () -> endless.plus(endless));
        assertThrows(ArithmeticException.class, () -> Length.ofMm(1).per(Length.ZERO));
        assertThrows(ArithmeticException.class, () -> Length.ZERO.per(Length.ZERO));
    }

    @Test
    void theFullNumberIsPrintedForDiagnostics() {
        assertEquals("3.175 mm", Length.of(8, Units.OUNCE).toString());
        assertEquals("1.0 rad", Angle.ofRadians(1).toString());
        assertEquals("2.0 mm²", Area.ofMm2(2).toString());
        assertEquals("2.0 g", Mass.ofGrams(2).toString());
        assertEquals("2.0 g/cm³", Density.ofGramsPerCm3(2).toString());
    }

    @Test
    void aSizeHasTwoSidesAndAnArea() {
        Size letter = Size.of(Length.of(8.5, Units.INCH), Length.of(11, Units.INCH));
        assertEquals(215.9, letter.width().mm(), 1e-12);
        assertEquals(279.4, letter.height().mm(), 1e-12);
        assertEquals(Area.of(93.5, Units.IN2).mm2(), letter.area().mm2(), 1e-9);
        assertEquals("215.9 mm x 279.4 mm", letter.toString());
        assertEquals(letter, Size.of(letter.width(), letter.height()));
        assertEquals(letter.hashCode(), Size.of(letter.width(), letter.height()).hashCode());
        assertNotEquals(letter, Size.of(letter.height(), letter.width()));
        assertNotEquals(letter, Size.of(letter.width(), letter.width()));
        assertNotEquals(letter, Size.of(letter.height(), letter.height()));
        assertNotEquals(
                letter.hashCode(), Size.of(letter.height(), letter.width()).hashCode());
        assertNotEquals(letter, "8.5 x 11 in");
        assertThrows(NullPointerException.class, () -> Size.of(null, Length.ZERO));
        assertThrows(NullPointerException.class, () -> Size.of(Length.ZERO, null));
    }
}
