package org.hidewright.documents.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.hidewright.core.paper.CsvWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Form after RFC 4180, sections 2.1 to 2.7; guarding after the OWASP page on CSV injection, both read from memory. */
class CsvWriterTest {
    private final CsvWriter writer = new SafeCsvWriter();

    private String one(String cell) {
        return writer.write(List.of(List.of(cell)));
    }

    @Test
    void eachRowEndsWithCarriageReturnAndLineFeed() {
        assertEquals("\"a\",\"b\"\r\n1,2\r\n", writer.write(List.of(List.of("a", "b"), List.of("1", "2"))));
    }

    @Test
    void noRowsGiveNoText() {
        assertEquals("", writer.write(List.of()));
    }

    @Test
    void anEmptyCellIsEmpty() {
        assertEquals(",\"x\"\r\n", writer.write(List.of(List.of("", "x"))));
    }

    @Test
    void quotesAreDoubledAndCommasAndLineEndsStayInsideQuotes() {
        assertEquals("\"2\"\" bar, \r\nblack\"\r\n", one("2\" bar, \r\nblack"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-2.5", "+2.5", "1e-3", "-1.25E+10", "931", "\u22122.5"})
    void aPlainNumberStaysANumber(String number) {
        assertEquals(number + "\r\n", one(number));
    }

    @Test
    void aNumberWithACommaStaysANumberInsideQuotes() {
        assertEquals("\"-2,5\"\r\n", one("-2,5"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "+1+1",
                "-1+1",
                "@SUM(A1)",
                "-2.5mm",
                "--1",
                "+",
                "-",
                "1e",
                "-1e",
                "-.5",
                "- 5",
                "\uff1d1",
                "\uff0b1",
                "\uff0d1",
                "\uff20A",
                "\u2212x"
            })
    void whatBeginsLikeAFormulaGetsAnApostrophe(String planted) {
        String guard = planted.equals("1e") ? "" : "'"; // no sign, no formula
        assertEquals('"' + guard + planted + "\"\r\n", one(planted));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '!',
            quoteCharacter = '~',
            value = {
                "~ =1~ ! ~' =1~",
                "~\u00a0=1~ ! ~'\u00a0=1~",
                "~\u200b=1~ ! ~'\u200b=1~",
                "~\ufeff=1~ ! ~'\ufeff=1~",
                "~'=1~ ! ~''=1~",
                "~\u201c=1~ ! ~'\u201c=1~"
            })
    void aSignBehindSpacesQuotesAndInvisibleCharactersIsFound(String planted, String written) {
        assertEquals('"' + written + "\"\r\n", one(planted));
    }

    @Test
    void aSignBehindADoubleQuoteIsFound() {
        assertEquals("\"'\"\"=1\"\r\n", one("\"=1"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\t", "\r", "\n"})
    void aTextThatBeginsWithATabOrALineEndGetsAnApostrophe(String first) {
        assertEquals("\"'" + first + "x\"\r\n", one(first + "x"));
    }

    @ParameterizedTest
    @ValueSource(strings = {";", "|", "\t", "\r", "\n", "\u2028"})
    void aTextIsGuardedAgainWhereAnotherSeparatorWouldPartIt(String separator) {
        assertEquals("\"x" + separator + "'=1\"\r\n", one("x" + separator + "=1"));
        assertEquals("\"x" + separator + " -1 \"\r\n", one("x" + separator + " -1 "));
    }

    @Test
    void aNumberFollowedByMoreIsNoLongerOnlyANumber() {
        assertEquals("\"'-2.5;cmd\"\r\n", one("-2.5;cmd"));
        assertEquals("\"x;'-2.5|'=1\"\r\n", one("x;-2.5|=1"));
    }

    @Test
    void workshopTextsStayAsTheyAre() {
        for (String text :
                List.of("2-3 oz", "31 ± 0.5 mm", "L = π · r", "8.5 × 11 in", "a@b", "½ in, -0.5 mm", "#1; 2")) {
            assertEquals('"' + text + "\"\r\n", one(text));
        }
    }
}
