package org.hidewright.api.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;

class MoneyTest {
    private static final Unit EUR = Units.currency("EUR");

    private static Money eur(String amount) {
        return Money.of(new BigDecimal(amount), EUR);
    }

    @Test
    void tenCentsTenTimesAreOneExactly() {
        Money sum = eur("0");
        for (int i = 0; i < 10; i++) {
            sum = sum.plus(Money.of(0.1, EUR));
        }
        assertEquals(eur("1"), sum);
        assertEquals(eur("0"), sum.minus(eur("1.00")));
    }

    @Test
    void itIsTakenANumberOfTimesWithoutRounding() {
        assertEquals(eur("0.4125"), eur("1.65").times(0.25));
        assertEquals(eur("-3.30"), eur("1.65").times(-2));
        assertEquals(0.25, eur("0.50").per(eur("2")), 0);
    }

    @Test
    void itIsRoundedToTheCoinsOfItsCurrencyHalvesToTheEvenOne() {
        assertEquals("12.34 EUR", eur("12.345").rounded().toString());
        assertEquals("12.36 EUR", eur("12.355").rounded().toString());
        // ISO 4217: the yen has no decimals, the Tunisian dinar three
        assertEquals("12 JPY", Money.of(12.4, Units.currency("JPY")).rounded().toString());
        assertEquals(
                "12.346 TND", Money.of(12.3456, Units.currency("TND")).rounded().toString());
    }

    @Test
    void twoCurrenciesHaveNoSumNoRatioAndNoOrder() {
        Money dollars = Money.of(3, Units.currency("USD"));
        assertThrows(IllegalArgumentException.class, () -> eur("3").plus(dollars));
        assertThrows(IllegalArgumentException.class, () -> eur("3").minus(dollars));
        assertThrows(IllegalArgumentException.class, () -> eur("3").per(dollars));
        assertThrows(IllegalArgumentException.class, () -> eur("3").compareTo(dollars));
        assertNotEquals(eur("3"), dollars);
    }

    @Test
    void equalAmountsAreEqualHoweverTheyAreWritten() {
        assertEquals(eur("1.5"), eur("1.50"));
        assertEquals(eur("1.5").hashCode(), eur("1.50").hashCode());
        assertNotEquals(eur("1.5"), eur("1.51"));
        assertTrue(eur("1.5").compareTo(eur("1.51")) < 0);
    }

    @Test
    void onlyFiniteNumbersOfACurrencyAreMoney() {
        assertThrows(ArithmeticException.class, () -> Money.of(Double.NaN, EUR));
        assertThrows(ArithmeticException.class, () -> eur("1").times(Double.POSITIVE_INFINITY));
        assertThrows(ArithmeticException.class, () -> eur("1").per(eur("0")));
        assertThrows(IllegalArgumentException.class, () -> Money.of(1, Units.MM));
    }
}
