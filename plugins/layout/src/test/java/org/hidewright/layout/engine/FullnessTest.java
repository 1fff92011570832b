package org.hidewright.layout.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class FullnessTest {
    private static long triesOf(Fullness fullness, double full) {
        SplittableRandom random = new SplittableRandom(9);
        return IntStream.range(0, 1000)
                .filter(draw -> fullness.isWorthATry(full, random))
                .count();
    }

    @Test
    void whatWasNeverTriedIsTried() {
        assertEquals(1000, triesOf(new Fullness(), 0.9));
        assertEquals(1000, triesOf(new Fullness(), 1.2));
    }

    @Test
    void whatNeverSucceedsIsTriedSeldomButNotNever() {
        Fullness fullness = new Fullness();
        for (int attempt = 0; attempt < 200; attempt++) {
            fullness.remember(0.93, false);
            fullness.remember(0.71, attempt % 2 == 0);
        }
        long tries = triesOf(fullness, 0.93);
        assertTrue(tries > 20 && tries < 100, "tries " + tries);
        assertEquals(1000, triesOf(fullness, 0.71));
        assertEquals(1000, triesOf(fullness, 0.95), "another fullness is judged by itself");
    }
}
