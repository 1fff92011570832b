package org.hidewright.documents.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** With a typeface of letters that are all as long as they are high, and lines measured in letters. */
class WrappingTest {
    private static final Style LETTER = new Style(Face.REGULAR, 72 / 25.4, Tone.INK, 1);

    static final Typeface EVEN = new Typeface() {
        @Override
        public double width(Face face, String text) {
            return text.codePointCount(0, text.length());
        }

        @Override
        public String printable(String text) {
            return text;
        }
    };

    private static List<String> lines(String text, int letters) {
        return new Wrapping(EVEN).lines(text, LETTER, letters);
    }

    @Test
    void linesEndAtSpaces() {
        assertEquals(List.of("skive both", "ends"), lines("skive both ends", 10));
        assertEquals(List.of("skive", "both", "ends"), lines("  skive   both ends ", 8));
    }

    @Test
    void aHyphenBetweenLettersEndsALineAndOneBetweenDigitsDoesNot() {
        assertEquals(List.of("turn-", "back"), lines("turn-back", 6));
        assertEquals(List.of("of", "2-3"), lines("of 2-3", 5));
        assertEquals(List.of("is", "-2.5"), lines("is -2.5", 4));
    }

    @Test
    void aFractionStaysWhole() {
        assertEquals(List.of("34", "1/2"), lines("34 1/2", 4));
    }

    @Test
    void aSoftHyphenShowsOnlyWhereTheLineEnds() {
        assertEquals(List.of("Riemen-", "loch"), lines("Riemen\u00adloch", 8));
        assertEquals(List.of("Riemenloch"), lines("Riemen\u00adloch", 10));
    }

    @Test
    void aSpaceThatMustNotBreakDoesNot() {
        assertEquals(List.of("ca.", "931\u00a0mm"), lines("ca. 931\u00a0mm", 8));
    }

    @Test
    void aWordLongerThanTheLineIsBrokenWithoutLoss() {
        assertEquals(List.of("abcd", "efgh", "ij x"), lines("abcdefghij x", 4));
    }

    @Test
    void aLetterWiderThanTheLineStillStands() {
        assertEquals(List.of("\ud83d\udc5c", "b"), lines("\ud83d\udc5cb", 0));
    }

    @Test
    void aLineFeedBeginsANewLineAndAnEmptyTextIsOneLine() {
        assertEquals(List.of("a", "", "b"), lines("a\n\nb", 4));
        assertEquals(List.of(""), lines("", 4));
    }

    @Test
    void aSpaceAfterADashIsKept() {
        assertEquals(List.of("a - b"), lines("a - b", 5));
        assertEquals(List.of("x- y"), lines("x- y", 5));
    }
}
