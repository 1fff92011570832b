package org.hidewright.core.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LongTextTest {
    private static final String CORNERS =
            IntStream.range(0, 100).mapToObj(i -> i + "," + 10 * i).collect(Collectors.joining(" "));

    @Test
    void shortTextsAreWhole() {
        assertEquals("0,0 1200,0 1300,700", LongText.cut("0,0 1200,0 1300,700"));
        assertEquals("hole 1,2 3,4 5,6; weak 7,8 9,9 8,7", LongText.cutNumbers("hole 1,2 3,4 5,6; weak 7,8 9,9 8,7"));
    }

    @Test
    void ofCornersTheBeginningOfEachPartIsTold() {
        assertEquals(
                "hole 0,0 1,10 2,20 3,30 4,40 5,50 6,60 …; region belly 0,0 1,10 2,20 3,30 4,40 …",
                LongText.cutNumbers("hole " + CORNERS + "; region belly " + CORNERS));
        assertTrue(LongText.cut(CORNERS).length() <= 162, LongText.cut(CORNERS));
    }

    @Test
    void aNoteIsReadToItsEnd() {
        String note = "Bought at the spring fair; 3 scars near the neck, ".repeat(8);
        assertEquals(note, LongText.cutNumbers(note));
    }
}
