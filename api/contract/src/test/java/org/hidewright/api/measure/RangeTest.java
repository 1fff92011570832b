package org.hidewright.api.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class RangeTest {
    @Test
    void anExactValueIsItsOwnLimits() {
        Range exact = Range.exact(3.175);
        assertEquals(3.175, exact.low());
        assertEquals(3.175, exact.nominal());
        assertEquals(3.175, exact.high());
        assertEquals(0, exact.halfWidth());
        assertTrue(exact.isExact());
        assertEquals("3.175", exact.toString());
    }

    @Test
    void betweenLimitsTheMidpointIsNominal() {
        Range range = Range.between(2, 5);
        assertEquals(2, range.low());
        assertEquals(3.5, range.nominal());
        assertEquals(5, range.high());
        assertEquals(1.5, range.halfWidth());
        assertFalse(range.isExact());
        assertEquals("2.0 to 5.0 (nominal 3.5)", range.toString());
        assertTrue(Range.between(2, 2).isExact());
    }

    @Test
    void plusMinusKeepsTheStatedNominal() {
        Range range = Range.plusMinus(0.1, 0.3);
        assertEquals(0.1, range.nominal());
        assertEquals(0.1 - 0.3, range.low());
        assertEquals(0.1 + 0.3, range.high());
    }

    @Test
    void limitsBelongToTheRange() {
        Range range = Range.between(2, 3);
        assertTrue(range.contains(2));
        assertTrue(range.contains(3));
        assertFalse(range.contains(1.999));
        assertFalse(range.contains(3.001));
    }

    @Test
    void reversedOrEndlessLimitsAreFaultsOfTheCaller() {
        assertThrows(IllegalArgumentException.class, () -> Range.between(3, 2));
        assertThrows(IllegalArgumentException.class, () -> Range.plusMinus(3, -0.1));
        assertThrows(ArithmeticException.class, () -> Range.exact(Double.NaN));
        assertThrows(ArithmeticException.class, () -> Range.between(Double.NEGATIVE_INFINITY, 0));
        assertThrows(ArithmeticException.class, () -> Range.between(0, Double.POSITIVE_INFINITY));
        assertThrows(ArithmeticException.class, () -> Range.plusMinus(0, Double.NaN));
    }

    @Test
    void theGreatestLimitsHaveAMidpoint() {
        assertEquals(
                Double.MAX_VALUE,
                Range.between(Double.MAX_VALUE, Double.MAX_VALUE).nominal());
    }

    @Test
    void equalRangesHaveEqualNumbers() {
        assertEquals(Range.between(1, 3), Range.plusMinus(2, 1));
        assertEquals(Range.between(1, 3).hashCode(), Range.plusMinus(2, 1).hashCode());
        assertEquals(Range.exact(0.0), Range.exact(-0.0));
        assertEquals(Range.exact(0.0).hashCode(), Range.exact(-0.0).hashCode());
        assertNotEquals(Range.between(1, 3), Range.between(1, 4));
        assertNotEquals(Range.between(1, 3), Range.between(0, 3));
        assertNotEquals(Range.between(1, 3), Range.exact(2));
        assertNotEquals(Range.exact(2), "2");
        assertNotEquals(Range.between(1, 3).hashCode(), Range.between(1, 4).hashCode());
        assertNotEquals(Range.between(1, 3).hashCode(), Range.between(0, 3).hashCode());
    }
}
