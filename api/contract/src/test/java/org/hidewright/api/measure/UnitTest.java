package org.hidewright.api.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class UnitTest {
    @Test
    void aUnitKnowsItsSizeSymbolAndSpellings() {
        assertEquals(25.4, Units.INCH.inBase(), 0);
        assertEquals("in", Units.INCH.symbol());
        assertEquals(Dimension.LENGTH, Units.INCH.dimension());
        assertTrue(Units.INCH.spellings().contains("inches"));
        assertEquals(38.1, Units.INCH.toBase(1.5), 0);
        assertEquals(1.5, Units.INCH.fromBase(38.1), 0);
        assertEquals("in", Units.INCH.toString());
        assertEquals("number", Units.ONE.toString());
    }

    @Test
    void theOunceOfThicknessIsNotTheOunceOfMass() {
        assertNotEquals(Units.OUNCE, Units.OUNCE_MASS);
        assertNotEquals(Units.OUNCE.hashCode(), Units.OUNCE_MASS.hashCode());
        assertEquals(Optional.of(Units.OUNCE), Units.find(Dimension.LENGTH, "oz"));
        assertEquals(Optional.of(Units.OUNCE_MASS), Units.find(Dimension.MASS, "ounces"));
        assertEquals(Optional.empty(), Units.find(Dimension.AREA, "oz"));
    }

    @Test
    void unitsAreEqualByKindAndSymbol() {
        Unit again = Unit.of(Dimension.LENGTH, "mm", 1, 1);
        assertEquals(Units.MM, again);
        assertEquals(Units.MM.hashCode(), again.hashCode());
        assertNotEquals(Units.MM, Units.CM);
        assertNotEquals(Units.MM, "mm");
    }

    @Test
    void unitsAreFoundInEitherCase() {
        assertEquals(Optional.of(Units.MM), Units.find(Dimension.LENGTH, "MM"));
        assertEquals(Optional.of(Units.FT2), Units.find(Dimension.AREA, "Sq Ft"));
        assertEquals(Optional.empty(), Units.find(Dimension.LENGTH, "cubit"));
    }

    @Test
    void aUnitNeedsASizeAboveZero() {
        assertThrows(IllegalArgumentException.class, () -> Unit.of(Dimension.LENGTH, "bad", 0, 1));
        assertThrows(IllegalArgumentException.class, () -> Unit.of(Dimension.LENGTH, "bad", -1, 1));
        assertThrows(IllegalArgumentException.class, () -> Unit.of(Dimension.LENGTH, "bad", 1, 0));
        assertThrows(IllegalArgumentException.class, () -> Unit.of(Dimension.LENGTH, "bad", Double.NaN, 1));
    }

    @ParameterizedTest
    @EnumSource
    void noSpellingMeansTwoUnitsOfOneDimension(Dimension dimension) {
        Map<String, Unit> spelled = new HashMap<>();
        for (Unit unit : Units.of(dimension)) {
            spelled.merge(unit.symbol().toLowerCase(Locale.ROOT), unit, UnitTest::clash);
            unit.spellings().forEach(word -> spelled.merge(word.toLowerCase(Locale.ROOT), unit, UnitTest::clash));
        }
        assertFalse(spelled.isEmpty());
    }

    private static Unit clash(Unit one, Unit other) {
        throw new AssertionError(one + " and " + other + " share a spelling");
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "MONEY")
    void theBaseUnitOfADimensionHasSizeOne(Dimension dimension) {
        assertEquals(1, Units.base(dimension).inBase(), 0);
        assertEquals(dimension, Units.base(dimension).dimension());
    }

    @Test
    void moneyHasAUnitInEachCurrencyAndNoneOfItsOwn() {
        assertThrows(IllegalArgumentException.class, () -> Units.base(Dimension.MONEY));
        assertEquals("CHF", Units.currency("chf").symbol());
        assertEquals(Dimension.MONEY, Units.currency("JPY").dimension());
        assertThrows(IllegalArgumentException.class, () -> Units.currency("leather"));
    }
}
