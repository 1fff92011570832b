package org.hidewright.layout.task;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class TurningTest {
    @Test
    void stepsAllowThemselvesAndWholeTurnsMore() {
        Turning steps = Turning.steps(List.of(0.0, 180.0));
        assertTrue(steps.stepwise());
        assertEquals(2, steps.windows());
        assertTrue(steps.allows(0));
        assertTrue(steps.allows(-Math.PI));
        assertTrue(steps.allows(4 * Math.PI));
        assertFalse(steps.allows(Math.PI / 2));
        assertFalse(steps.allows(1e-6));
    }

    @Test
    void windowsHoldWhatIsDrawnFromThemAndTheNearestAngleIsTheirEnd() {
        Turning along = Turning.about(List.of(0.0, 180.0), 10);
        assertFalse(along.stepwise());
        SplittableRandom random = new SplittableRandom(3);
        boolean about = false;
        boolean turned = false;
        for (int draw = 0; draw < 200; draw++) {
            double angle = along.any(random);
            assertTrue(along.allows(angle), () -> "" + Math.toDegrees(angle));
            about |= Math.abs(angle) < 1;
            turned |= Math.abs(angle) > 2;
        }
        assertTrue(about && turned);
        assertEquals(Math.toRadians(5), along.nearest(Math.toRadians(5)), 1e-15);
        assertEquals(Math.toRadians(10), along.nearest(Math.toRadians(80)), 1e-12);
        assertEquals(Math.toRadians(170), along.nearest(Math.toRadians(100)), 1e-12);
        assertEquals(Math.toRadians(-10), along.nearest(Math.toRadians(-12)), 1e-12);
        assertFalse(along.allows(Math.toRadians(11)));
    }

    @Test
    void freeIsAnyAngle() {
        Turning free = Turning.free();
        assertFalse(free.stepwise());
        assertEquals(100, free.nearest(100));
        assertTrue(free.allows(1.2345));
        assertTrue(Turning.about(List.of(90.0), 180).allows(1.2345));
        assertThrows(IllegalArgumentException.class, () -> Turning.steps(List.of()));
    }

    @Test
    void anAngleThatIsAllowedStaysAsItIs() {
        Turning steps = Turning.steps(List.of(0.0, 45.0));
        assertTrue(steps.allows(Math.toRadians(45)));
        assertTrue(steps.allows(Math.toRadians(-315)));
        assertFalse(steps.allows(Math.toRadians(-45)));
        // rounding on either side of a whole turn
        assertTrue(steps.allows(2 * Math.PI - 1e-12));
        assertTrue(steps.allows(2 * Math.PI + 1e-12));
        // after two whole turns a part need not be turned back by them
        assertEquals(4 * Math.PI, steps.nearest(4 * Math.PI));
        assertEquals(-4 * Math.PI, steps.nearest(-4 * Math.PI));
    }

    /** With the grain at 90 degrees and 10 of slack: from 80 to 100, and each tenth of that comes up about as often. */
    @Test
    void oneWindowIsDrawnFromAllOver() {
        Turning upright = Turning.about(List.of(90.0), 10);
        assertEquals(1, upright.windows());
        assertEquals(Math.toRadians(80), upright.from(0), 1e-15);
        SplittableRandom random = new SplittableRandom(6);
        int[] tenths = new int[10];
        for (int draw = 0; draw < 1000; draw++) {
            double degrees = Math.toDegrees(upright.any(random));
            assertTrue(degrees >= 80 - 1e-9 && degrees <= 100 + 1e-9, () -> "" + degrees);
            tenths[(int) Math.max(0, Math.min(9, (degrees - 80) / 2))]++;
        }
        for (int tenth : tenths) {
            assertTrue(tenth > 50, () -> Arrays.toString(tenths));
        }
    }

    /** Half a turn of slack about whatever angles leaves none out: one window of a whole turn. */
    @Test
    void halfATurnOfSlackIsFree() {
        Turning slack = Turning.about(List.of(0.0, 90.0), 180);
        assertEquals(1, slack.windows());
        assertEquals(-Math.PI, slack.from(0));
        assertEquals(2, Turning.about(List.of(0.0, 90.0), 179).windows());
    }

    @Test
    void quartersAreExact() {
        for (int quarter = -8; quarter <= 8; quarter++) {
            double angle = Math.toRadians(90 * quarter);
            assertEquals(List.of(0.0, 1.0, 0.0, -1.0).get(Math.floorMod(quarter, 4)), Turning.sin(angle));
            assertEquals(List.of(1.0, 0.0, -1.0, 0.0).get(Math.floorMod(quarter, 4)), Turning.cos(angle));
        }
        assertEquals(Math.sin(0.3), Turning.sin(0.3));
        assertEquals(Math.cos(0.3), Turning.cos(0.3), 1e-15);
    }

    @Test
    void wholeQuartersAreSquareToTheSheet() {
        assertTrue(Turning.steps(List.of(0.0, 270.0)).square());
        assertTrue(Turning.steps(List.of(-90.0)).square());
        assertFalse(Turning.steps(List.of(0.0, 45.0)).square());
        assertFalse(Turning.free().square());
        assertFalse(Turning.about(List.of(0.0), 5).square());
    }

    /** Of what is allowed: all four, the two along the backbone, the one within its angle, none. */
    @Test
    void quartersAreThoseThatAreAllowed() {
        assertEquals(4, Turning.free().quarters().orElseThrow().windows());
        Turning along = Turning.about(List.of(0.0, 180.0), 10).quarters().orElseThrow();
        assertTrue(along.square());
        assertTrue(along.allows(0) && along.allows(Math.PI));
        assertFalse(along.allows(Math.PI / 2) || along.allows(0.01));
        assertEquals(1, Turning.about(List.of(95.0), 6).quarters().orElseThrow().windows());
        assertTrue(Turning.steps(List.of(45.0, 225.0)).quarters().isEmpty());
    }

    @Test
    void theDirectionThatIsAskedForIsTheMiddleOfAWindow() {
        Turning along = Turning.about(List.of(0.0, 180.0), 10);
        assertEquals(0, along.straight(Math.toRadians(7)), 1e-12);
        assertEquals(Math.toRadians(7), along.askew(Math.toRadians(7)), 1e-12);
        assertEquals(Math.PI, along.straight(Math.toRadians(-175)), 1e-12);
        assertEquals(Math.toRadians(5), along.askew(Math.toRadians(-175)), 1e-12);
        assertTrue(along.straightened().stepwise());
        assertEquals(2, along.straightened().windows());
        assertTrue(along.straightened().allows(Math.PI));
        assertFalse(along.straightened().allows(Math.toRadians(1)));
    }

    @Test
    void whereAnyAngleIsAsGoodNoneIsAskew() {
        Turning free = Turning.free();
        assertEquals(1.25, free.straight(1.25));
        assertEquals(0, free.askew(1.25));
        assertSame(free, free.straightened());
        Turning quarters = Turning.steps(List.of(0.0, 90.0));
        assertEquals(0, quarters.askew(Math.PI / 2), 1e-12);
    }
}
