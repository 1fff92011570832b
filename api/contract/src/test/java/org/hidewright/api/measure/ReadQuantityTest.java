package org.hidewright.api.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One quantity as a maker types it. Expected millimetres follow from 25.4 mm to the inch and 1/64 in to the ounce. */
class ReadQuantityTest {
    @ParameterizedTest(name = "{0} is {1} mm")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "1.5 mm|1.5",
                "1.5mm|1.5",
                "  1.5   mm  |1.5",
                "0,8 mm|0.8",
                "1.234 mm|1.234",
                "0,794 mm|0.794",
                "1,2345 mm|1.2345",
                "1,23 mm|1.23",
                "8/10 oz|" + 0.8 * 25.4 / 64,
                "0.125 mm|0.125",
                ".5 in|12.7",
                ",5 in|12.7",
                "5. mm|5",
                "+2 mm|2",
                "-2 mm|-2",
                "- 2 mm|-2",
                "1e3 mm|1000",
                "1E-2 m|10",
                "1.5e+2 mm|150",
                "3/32 in|2.38125",
                "3 / 32 in|2.38125",
                "3/2 in|38.1",
                "1 1/2 in|38.1",
                "1-1/2 in|38.1",
                "1–1/2 in|38.1",
                "-1 1/2 in|-38.1",
                "-1-1/2 in|-38.1",
                "1 100/128 in|45.24375",
                "1 100 / 128 in|45.24375",
                "½ in|12.7",
                "1½ in|38.1",
                "1 ½ in|38.1",
                "1-½ in|38.1",
                "⅞ in|22.225",
                "⅓ ft|101.6",
                "7/64\"|2.778125",
                "7/64″|2.778125",
                "7/64''|2.778125",
                "7/64”|2.778125",
                "3 in.|76.2",
                "3 INCHES|76.2",
                "8 oz|3.175",
                "8 ounces|3.175",
                "12 irons|6.35",
                "5 ft 6 in|1676.4",
                "5ft6in|1676.4",
                "5ft2in|1574.8",
                "5'6\"|1676.4",
                "5’ 6 1/2”|1689.1",
                "-5 ft 6 in|-1676.4",
                "1 ft 0 in|304.8",
                "2 yd|1828.8",
                "3 m|3000",
                "2.5 cm|25",
                "１．５ｍｍ|1.5",
                "٣ mm|3",
                "−2 mm|-2",
                "1.5\u00A0mm|1.5",
                "1.5\u202Fmm|1.5",
                "\uFEFF1.5 mm|1.5",
                "1\u20442 in|12.7"
            })
    void aLengthReadsAs(String text, double mm) {
        Typed typed = Shop.length(text);
        assertEquals(mm, typed.range().nominal(), 1e-12 * Math.abs(mm));
        assertTrue(typed.range().isExact());
        assertEquals(Spelling.EXACT, typed.spelling());
        assertEquals(text, typed.text());
        assertTrue(typed.unitTyped());
    }

    @ParameterizedTest(name = "{0} as {1} is {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "1 1/2 Zoll|LENGTH|38.1",
                "2 Fuß|LENGTH|609.6",
                "180 Grad|ANGLE|" + Math.PI,
                "1,5 Std.|DURATION|5400",
                "2 Stunden|DURATION|7200",
                "90 Minuten|DURATION|5400",
                "1 Tag|DURATION|86400",
                "19 Prozent|NUMBER|0.19",
                "22 sq ft|AREA|2043866.88",
                "22 sq. ft.|AREA|2043866.88",
                "22 ft2|AREA|2043866.88",
                "22 ft^2|AREA|2043866.88",
                "22 ft²|AREA|2043866.88",
                "22 square  feet|AREA|2043866.88",
                "1 m²|AREA|1000000",
                "35 dm2|AREA|350000",
                "2 cm²|AREA|200",
                "2 sq mm|AREA|2",
                "8 oz|MASS|226.796185",
                "1 lb 4 oz|MASS|566.9904625",
                "2 kg|MASS|2000",
                "0.95 g/cm3|DENSITY|0.95",
                "950 kg/m³|DENSITY|0.95",
                "0.95 g/cc|DENSITY|0.95",
                "250 ml|VOLUME|250",
                "0.5 l|VOLUME|500",
                "4 fl oz|VOLUME|118.29411825",
                "4 fl. oz.|VOLUME|118.29411825",
                "4 oz|VOLUME|118.29411825",
                "20 min|DURATION|1200",
                "1 h 30 min|DURATION|5400",
                "2 days|DURATION|172800",
                "45 s|DURATION|45",
                "12.50 EUR|MONEY|12.5",
                "12,50 eur|MONEY|12.5",
                "€ 12.50|MONEY|12.5",
                "$30|MONEY|30",
                "30 £|MONEY|30",
                "18 CHF|MONEY|18",
                "180°|ANGLE|3.141592653589793",
                "180º|ANGLE|3.141592653589793",
                "90 deg|ANGLE|1.5707963267948966",
                "1/4 turn|ANGLE|1.5707963267948966",
                "2 rad|ANGLE|2",
                "35 %|NUMBER|0.35",
                "35 per cent|NUMBER|0.35",
                "1/2|NUMBER|0.5",
                "12|NUMBER|12",
                "-3|NUMBER|-3"
            })
    void everyDimensionReads(String text, Dimension dimension, double base) {
        Typed typed = Shop.typed(text, dimension);
        assertEquals(base, typed.range().nominal(), 1e-12 * Math.abs(base));
        assertEquals(dimension, typed.dimension());
    }

    @ParameterizedTest(name = "{0} is {1} to {2} mm, nominal {3}")
    @CsvSource(
            delimiter = '|',
            value = {
                "2-3 oz|0.79375|1.190625|0.9921875",
                "2–3 oz|0.79375|1.190625|0.9921875",
                "2 − 3 oz|0.79375|1.190625|0.9921875",
                "2 to 3 oz|0.79375|1.190625|0.9921875",
                "2TO3 oz|0.79375|1.190625|0.9921875",
                "2 bis 3 oz|0.79375|1.190625|0.9921875",
                "2 mm bis 3 mm|2|3|2.5",
                "2 oz to 3 oz|0.79375|1.190625|0.9921875",
                "2 oz - 3|0.79375|1.190625|0.9921875",
                "2 oz. - 3 oz.|0.79375|1.190625|0.9921875",
                "1/16 in - 2 mm|1.5875|2|1.79375",
                "3-3 mm|3|3|3",
                "-2 - -1 mm|-2|-1|-1.5",
                "-2--1 mm|-2|-1|-1.5",
                "-2-1 mm|-2|1|-0.5",
                "1-1/2-2 in|38.1|50.8|44.45",
                "1-1/2 - 1-3/4 in|38.1|44.45|41.275",
                "1-½-2 in|38.1|50.8|44.45",
                "1/2-3/4 in|12.7|19.05|15.875",
                "0-1/2 in|0|12.7|6.35",
                "0-½ in|0|12.7|6.35",
                "1-3/2 in|25.4|38.1|31.75",
                "1-4/4 in|25.4|25.4|25.4",
                "1.5-1 3/4 in|38.1|44.45|41.275",
                "5 ft 6 in - 6 ft|1676.4|1828.8|1752.6"
            })
    void limitsReadAs(String text, double low, double high, double nominal) {
        Typed typed = Shop.length(text);
        assertEquals(low, typed.range().low(), 1e-12);
        assertEquals(high, typed.range().high(), 1e-12);
        assertEquals(nominal, typed.range().nominal(), 1e-12);
        assertEquals(Spelling.FROM_TO, typed.spelling());
    }

    @ParameterizedTest(name = "{0} is {1} ± {2} mm")
    @CsvSource(
            delimiter = '|',
            value = {
                "31 +- 0.5 mm|31|0.5",
                "31 ± 0.5 mm|31|0.5",
                "31±0,5mm|31|0.5",
                "31 +/- 0.5 mm|31|0.5",
                "31 mm ± 0.5|31|0.5",
                "31 mm ± 0 mm|31|0",
                "1 in ± 0.5 mm|25.4|0.5",
                "31 mm ± 2 %|31|0.62",
                "-31 mm ± 2 %|-31|0.62",
                "-1 mm ± 2 mm|-1|2"
            })
    void spreadsReadAs(String text, double nominal, double half) {
        Typed typed = Shop.length(text);
        assertEquals(nominal, typed.range().nominal(), 1e-12);
        assertEquals(nominal - half, typed.range().low(), 1e-12);
        assertEquals(nominal + half, typed.range().high(), 1e-12);
        assertEquals(Spelling.PLUS_MINUS, typed.spelling());
    }

    @Test
    void aPercentageAfterAPlainNumberIsItsUnit() {
        assertEquals(
                Range.plusMinus(0.1, 0.02),
                Shop.typed("10 ± 2 %", Dimension.NUMBER).range());
        assertEquals(
                Range.between(0.005, 0.35),
                Shop.typed("0.5-35 %", Dimension.NUMBER).range());
    }

    @Test
    void aBareNumberTakesTheAssumedUnit() {
        Typed typed = Shop.understood(TypedText.quantity("2-3", Dimension.LENGTH, Optional.of(Units.OUNCE)));
        assertEquals(Range.between(0.79375, 1.190625), typed.range());
        assertEquals(Units.OUNCE, typed.unit());
        assertFalse(typed.unitTyped());
        Typed relative = Shop.understood(TypedText.quantity("50 ± 2 %", Dimension.LENGTH, Optional.of(Units.MM)));
        assertEquals(Range.plusMinus(50, 1), relative.range());
        assertEquals(Units.MM, relative.unit());
        assertFalse(relative.unitTyped());
        Typed share = Shop.understood(TypedText.quantity("35", Dimension.NUMBER, Optional.of(Units.PERCENT)));
        assertEquals(0.35, share.range().nominal());
    }

    @Test
    void aTypedUnitGoesBeforeTheAssumedOne() {
        Typed typed = Shop.understood(TypedText.quantity("2 oz", Dimension.LENGTH, Optional.of(Units.MM)));
        assertEquals(0.79375, typed.range().nominal());
        assertTrue(typed.unitTyped());
        Typed range = Shop.understood(TypedText.quantity("2 oz - 3", Dimension.LENGTH, Optional.of(Units.MM)));
        assertEquals(Range.between(0.79375, 1.190625), range.range());
    }

    @Test
    void anOunceIsWhatTheQuestionMeasures() {
        assertEquals(Units.OUNCE, Shop.length("8 oz").unit());
        assertEquals(Units.OUNCE_MASS, Shop.typed("8 oz", Dimension.MASS).unit());
    }

    @ParameterizedTest(name = "{0} is repeated as {1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "2 to 3 oz|2-3 oz",
                "1 1/2 in|1.5 in",
                "3/32\"|0.09375 in",
                "31 +- 0,5 mm|31 ± 0.5 mm",
                "31 in +- 0.5|31 ± 0.5 in",
                "31 mm +- 2 %|31 ± 0.62 mm",
                "0 mm ± 0|0 ± 0 mm",
                "0 mm ± 1|0 ± 1 mm",
                "1000 mm ± 0.001|1000 ± 0.001 mm",
                "-2--1 mm|-2 to -1 mm",
                "1/16 in - 2 mm|1.5875-2 mm",
                "1 in ± 0.5 mm|1 ± 0.01968503937 in",
                "0-5 mm|0-5 mm",
                "1e3 mm|1000 mm",
                "1/3 ft|0.333333333333333 ft",
                "12 irons|12 iron",
                "-0 mm|0 mm",
                "5'6\"|66 in"
            })
    void theEchoSaysWhatWasUnderstood(String text, String echo) {
        Typed typed = Shop.length(text);
        assertEquals(echo, typed.echo());
        Range again = Shop.length(typed.echo()).range();
        assertEquals(typed.range().low(), again.low(), 1e-9);
        assertEquals(typed.range().high(), again.high(), 1e-9);
    }

    @Test
    void theEchoOfAPlainNumberHasNoUnit() {
        assertEquals("12", Shop.typed("12", Dimension.NUMBER).echo());
        assertEquals("35 %", Shop.typed("0.35e2%", Dimension.NUMBER).echo());
    }

    @Test
    void callersMustAskForOneDimensionWithItsOwnUnit() {
        assertThrows(
                IllegalArgumentException.class,
                () -> TypedText.quantity("1", Dimension.LENGTH, Optional.of(Units.GRAM)));
        assertThrows(IllegalArgumentException.class, () -> TypedText.size("1 x 1", Optional.of(Units.FT2)));
        assertThrows(
                IllegalArgumentException.class, () -> TypedText.list("1", Dimension.MASS, Optional.of(Units.OUNCE)));
        assertThrows(NullPointerException.class, () -> TypedText.quantity(null, Dimension.LENGTH, Shop.NO_UNIT));
    }

    @Test
    void theGreatestNumberIsReadAndNoneBeyond() {
        assertEquals(1e15, Shop.mm("1e15 mm"));
        assertEquals(-1e15, Shop.mm("-1e15 mm"));
        assertEquals(1e-30, Shop.mm("1e-30 mm"));
        assertEquals(
                "reading.too-large",
                Shop.refused(TypedText.quantity("1.0001e15 mm", Dimension.LENGTH, Shop.NO_UNIT))
                        .key());
        assertEquals(
                "reading.too-large",
                Shop.refused(TypedText.quantity("1 mm ± 1e18 %", Dimension.LENGTH, Shop.NO_UNIT))
                        .key());
    }

    @Test
    void twoHundredSignsAreReadAndNotOneMore() {
        String longest = "0".repeat(197) + " mm";
        assertEquals(0, Shop.mm(longest));
        var refusal = Shop.refused(TypedText.quantity(longest + " ", Dimension.LENGTH, Shop.NO_UNIT));
        assertEquals("reading.too-long", refusal.key());
        assertEquals(201, refusal.column());
    }
}
