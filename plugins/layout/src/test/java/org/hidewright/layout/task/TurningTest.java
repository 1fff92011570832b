package org.hidewright.layout.task;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
    void quartersAreExact() {
        for (int quarter = -8; quarter <= 8; quarter++) {
            double angle = Math.toRadians(90 * quarter);
            assertEquals(List.of(0.0, 1.0, 0.0, -1.0).get(Math.floorMod(quarter, 4)), Turning.sin(angle));
            assertEquals(List.of(1.0, 0.0, -1.0, 0.0).get(Math.floorMod(quarter, 4)), Turning.cos(angle));
        }
        assertEquals(Math.sin(0.3), Turning.sin(0.3));
        assertEquals(Math.cos(0.3), Turning.cos(0.3), 1e-15);
    }
}
