package org.hidewright.layout.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;

/** Sides of a line, where rounding would tell them wrongly. */
class ExactlyTest {
    @Test
    void theLeftIsPositive() {
        assertEquals(1, Exactly.side(0, 0, 10, 0, 3, 2));
        assertEquals(-1, Exactly.side(0, 0, 10, 0, 3, -2));
        assertEquals(0, Exactly.side(0, 0, 10, 0, 3, 0));
        assertEquals(-1, Exactly.side(10, 0, 0, 0, 3, 2));
    }

    /**
     * The line through (12, 12) and (24, 24) is y = x, so a point is on its left just where y is the greater. Beside (0.5, 0.5), in
     * steps of the last digit, sums in floating point tell many sides wrongly (an example of Kettner and others, 2008, from memory).
     */
    @Test
    void oneLastDigitBesideALineIsTold() {
        double digit = Math.ulp(0.5);
        for (int right = -40; right <= 40; right++) {
            for (int up = -40; up <= 40; up++) {
                double x = 0.5 + right * digit;
                double y = 0.5 + up * digit;
                assertEquals(Integer.signum(up - right), Exactly.side(12, 12, 24, 24, x, y));
                assertEquals(Integer.signum(right - up), Exactly.side(24, 24, 12, 12, x, y));
            }
        }
    }

    /** Beside the orientation index of the JTS Topology Suite 1.20.0, which goes on in double-double numbers. */
    @Test
    void sidesAreThoseOfJts() {
        SplittableRandom random = new SplittableRandom(21);
        for (int round = 0; round < 2000; round++) {
            Coordinate from = new Coordinate(1000 * random.nextDouble(), 1000 * random.nextDouble());
            Coordinate to = new Coordinate(1000 * random.nextDouble(), 1000 * random.nextDouble());
            // every other point as near to the line as numbers allow
            double along = random.nextDouble();
            Coordinate spot = round % 2 == 0
                    ? new Coordinate(1000 * random.nextDouble(), 1000 * random.nextDouble())
                    : new Coordinate(from.x + along * (to.x - from.x), from.y + along * (to.y - from.y));
            int expected = Orientation.index(from, to, spot);
            assertEquals(expected, Exactly.side(from.x, from.y, to.x, to.y, spot.x, spot.y), () -> "" + spot);
        }
    }
}
