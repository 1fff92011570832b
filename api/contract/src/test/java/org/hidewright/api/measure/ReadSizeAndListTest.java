package org.hidewright.api.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sizes and lists: where the parts end, and which unit holds for which number. */
class ReadSizeAndListTest {
    @ParameterizedTest(name = "{0} is {1} by {2} mm")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "8.5 x 11 in|215.9|279.4",
                "8.5 in x 11 in|215.9|279.4",
                "8.5inx11in|215.9|279.4",
                "8.5 IN X 11 IN|215.9|279.4",
                "8.5\"x11\"|215.9|279.4",
                "8 1/2 x 11 in|215.9|279.4",
                "210×297 mm|210|297",
                "210 × 297mm|210|297",
                "210*297 mm|210|297",
                "210 mm x 29.7 cm|210|297",
                "85.60 x 53.98 mm|85.6|53.98",
                "85,60 x 53,98 mm|85.6|53.98",
                "5'6\" x 3'|1676.4|914.4",
                "½x¾ in|12.7|19.05"
            })
    void aSizeReadsAs(String text, double width, double height) {
        TypedSize size = Shop.size(text);
        assertEquals(width, size.nominal().width().mm(), 1e-12);
        assertEquals(height, size.nominal().height().mm(), 1e-12);
        assertEquals(text, size.text());
        assertTrue(size.width().unitTyped());
    }

    @Test
    void eitherSideMayHaveLimits() {
        TypedSize size = Shop.size("100 ± 0.5 x 150-151 mm");
        assertEquals(Range.plusMinus(100, 0.5), size.width().range());
        assertEquals(Range.between(150, 151), size.height().range());
        assertEquals("100 ± 0.5", size.width().text());
        assertEquals("150-151 mm", size.height().text());
        assertEquals("100 ± 0.5 mm x 150-151 mm", size.echo());
        assertEquals(size.width().range(), Shop.size(size.echo()).width().range());
    }

    @Test
    void bareSidesTakeTheAssumedUnit() {
        TypedSize size = Shop.understood(TypedText.size("105 x 148", Optional.of(Units.MM)));
        assertEquals(Size.of(Length.ofMm(105), Length.ofMm(148)), size.nominal());
        assertFalse(size.width().unitTyped());
        assertFalse(size.height().unitTyped());
    }

    @Test
    void aUnitBeforeTheLastNumberDoesNotReachIt() {
        assertEquals(
                "reading.unit-before",
                Shop.refused(TypedText.size("8.5 in x 11", Shop.NO_UNIT)).key());
        assertEquals(
                "reading.unit-before",
                Shop.refused(TypedText.size("8.5 in x 11", Optional.of(Units.MM)))
                        .key());
        TypedSize same = Shop.understood(TypedText.size("8.5 in x 11", Optional.of(Units.INCH)));
        assertEquals(279.4, same.nominal().height().mm(), 1e-12);
        assertTrue(same.width().unitTyped());
        assertFalse(same.height().unitTyped());
    }

    private static String echo(List<Typed> list) {
        return list.stream().map(Typed::echo).collect(Collectors.joining("; "));
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "3 mm; 4 mm|3 mm; 4 mm",
                "3; 4; 5 mm|3 mm; 4 mm; 5 mm",
                "3; 4 mm; 5 in|3 mm; 4 mm; 5 in",
                "3 mm; 4; 5 in|3 mm; 4 in; 5 in",
                "3 mm ;4 in|3 mm; 4 in",
                "2-3 oz; 31 ± 0.5 mm|2-3 oz; 31 ± 0.5 mm",
                "2 ± 5 %; 3 mm|2 ± 0.1 mm; 3 mm",
                "1; 1 in - 30 mm|1 in; 25.4-30 mm",
                "3 mm|3 mm"
            })
    void aListReadsAs(String text, String understood) {
        assertEquals(understood, echo(Shop.lengths(text)));
    }

    @Test
    void partsKeepTheirOwnText() {
        List<Typed> list = Shop.lengths(" 3 ; 4-5 ;  1 1/2 in ");
        assertEquals(
                List.of("3", "4-5", "1 1/2 in"), list.stream().map(Typed::text).collect(Collectors.toList()));
        assertTrue(list.get(0).unitTyped());
        assertThrows(UnsupportedOperationException.class, () -> list.add(list.get(0)));
    }

    @Test
    void aListOfPlainNumbersNeedsNoUnit() {
        var list = Shop.understood(TypedText.list("1; 2,5; 1/2", Dimension.NUMBER, Shop.NO_UNIT));
        assertEquals("1; 2.5; 0.5", echo(list));
    }

    @Test
    void bareNumbersAfterAUnitAreRefusedUnlessItIsAssumedToo() {
        var before = Shop.refused(TypedText.list("3 mm; 4; 5", Dimension.LENGTH, Optional.of(Units.INCH)));
        assertEquals("reading.unit-before", before.key());
        assertEquals(7, before.column());
        assertEquals(List.of("4", "mm"), before.args());
        assertEquals(Optional.of("3 mm; 4 mm; 5 mm"), before.suggestion());
        var same = TypedText.list("3 mm; 4; 5", Dimension.LENGTH, Optional.of(Units.MM));
        assertEquals("3 mm; 4 mm; 5 mm", echo(Shop.understood(same)));
    }

    @Test
    void aListMayBeLongButEachPartShort() {
        String part = "0".repeat(196) + " mm";
        assertEquals(2, Shop.lengths(part + ";" + part + ' ').size());
        var refusal = Shop.refused(TypedText.list("1 mm;" + part + "   ", Dimension.LENGTH, Shop.NO_UNIT));
        assertEquals("reading.too-long", refusal.key());
        assertEquals(206, refusal.column());
        assertEquals(List.of("200"), refusal.args());
        String many = "1;".repeat(4999) + "1";
        assertEquals(
                5000,
                Shop.understood(TypedText.list(many, Dimension.NUMBER, Shop.NO_UNIT))
                        .size());
        assertEquals(
                "reading.too-long",
                Shop.refused(TypedText.list(many + ";1", Dimension.NUMBER, Shop.NO_UNIT))
                        .key());
    }

    @Test
    void typedSizesAreEqualByTextAndUnderstanding() {
        assertEquals(Shop.size("8 x 11 in"), Shop.size("8 x 11 in"));
        assertEquals(Shop.size("8 x 11 in").hashCode(), Shop.size("8 x 11 in").hashCode());
        assertNotEquals(Shop.size("8 x 11 in"), Shop.size("8 x 11 mm"));
        assertNotEquals(Shop.size("8 x 11 in"), "8 x 11 in");
        Typed eight = Shop.length("8 in");
        Typed nine = Shop.length("9 in");
        assertNotEquals(TypedSize.of("a", eight, nine), TypedSize.of("b", eight, nine));
        assertNotEquals(TypedSize.of("a", eight, nine), TypedSize.of("a", nine, nine));
        assertNotEquals(TypedSize.of("a", eight, nine), TypedSize.of("a", eight, eight));
        assertEquals(
                "\"8 x 11 in\" read as 8 in x 11 in", Shop.size("8 x 11 in").toString());
        assertThrows(
                IllegalArgumentException.class, () -> TypedSize.of("8 oz", eight, Shop.typed("8 oz", Dimension.MASS)));
    }

    @Test
    void typedQuantitiesAreEqualByTextAndUnderstanding() {
        Typed typed = Shop.length("2-3 oz");
        assertEquals(typed, Shop.length("2-3 oz"));
        assertEquals(typed.hashCode(), Shop.length("2-3 oz").hashCode());
        assertNotEquals(typed, Shop.length("2–3 oz"));
        assertNotEquals(typed, "2-3 oz");
        Range range = typed.range();
        assertNotEquals(typed, Typed.of("2-3 oz", Spelling.EXACT, range, Units.OUNCE, true));
        assertNotEquals(typed, Typed.of("2-3 oz", Spelling.FROM_TO, Range.exact(1), Units.OUNCE, true));
        assertNotEquals(typed, Typed.of("2-3 oz", Spelling.FROM_TO, range, Units.MM, true));
        assertNotEquals(typed, Typed.of("2-3 oz", Spelling.FROM_TO, range, Units.OUNCE, false));
        assertEquals("\"2-3 oz\" read as 2-3 oz", typed.toString());
    }
}
