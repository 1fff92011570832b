package org.hidewright.layout.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.hidewright.layout.task.Turning;
import org.junit.jupiter.api.Test;

class EdgeAnglesTest {
    private static final int DRAWS = 20_000;
    private static final double QUARTER = Math.PI / 2;

    /** A right triangle with sides 30, 40 and 50: the two short ones run one way within a quarter of a turn. */
    private static final double[] X = {0, 30, 0};

    private static final double[] Y = {0, 0, 40};

    /** Which way the long side runs as drawn: from (30, 0) to (0, 40). */
    private static final double LONG_SIDE = Math.atan2(40, -30);

    private static boolean upright(double way) {
        return Math.abs(Math.IEEEremainder(way, QUARTER)) < 1e-9;
    }

    /** The squares of 30 + 40 and of 50 are 4900 and 2500, so that 66.2 % lie with their short sides along the sheet's edges. */
    @Test
    void theLongerTheEdgesThatRunOneWayTheRatherTheyLieAlongTheSheet() {
        EdgeAngles angles = new EdgeAngles(Turning.free(), X, Y);
        SplittableRandom random = new SplittableRandom(3);
        int shortSides = 0;
        for (int draw = 0; draw < DRAWS; draw++) {
            double angle = angles.edgewise(random);
            assertTrue(upright(angle) || upright(angle + LONG_SIDE), "angle " + angle);
            shortSides += upright(angle) ? 1 : 0;
        }
        assertEquals(4900.0 / 7400, (double) shortSides / DRAWS, 0.015);
    }

    @Test
    void allFourQuartersComeAlikeOften() {
        EdgeAngles angles = new EdgeAngles(Turning.free(), X, Y);
        SplittableRandom random = new SplittableRandom(4);
        TreeMap<Long, Integer> quarters = new TreeMap<>();
        for (int draw = 0; draw < DRAWS; draw++) {
            double angle = angles.edgewise(random);
            if (upright(angle)) {
                quarters.merge(Math.floorMod(Math.round(angle / QUARTER), 4L), 1, Integer::sum);
            }
        }
        assertEquals(4, quarters.size());
        quarters.values().forEach(count -> assertEquals(DRAWS * 4900.0 / 7400 / 4, count, 250));
    }

    @Test
    void anyAngleIsDrawnToo() {
        EdgeAngles angles = new EdgeAngles(Turning.free(), X, Y);
        SplittableRandom random = new SplittableRandom(5);
        int askew = 0;
        for (int draw = 0; draw < DRAWS; draw++) {
            double angle = angles.any(random);
            askew += upright(angle) || upright(angle + LONG_SIDE) ? 0 : 1;
        }
        assertEquals(0.25, (double) askew / DRAWS, 0.015);
    }

    /** Up to 10 degrees to either side of the backbone a short side can run along the sheet's edge, the long side cannot. */
    @Test
    void nothingIsDrawnThatIsNotAllowed() {
        Turning along = Turning.about(List.of(0.0, 180.0), 10);
        EdgeAngles angles = new EdgeAngles(along, X, Y);
        SplittableRandom random = new SplittableRandom(6);
        int edgewise = 0;
        for (int draw = 0; draw < DRAWS; draw++) {
            double angle = angles.edgewise(random);
            assertTrue(along.allows(angle), "angle " + angle);
            edgewise += upright(angle) ? 1 : 0;
        }
        // of the short sides' quarters two are allowed
        assertEquals(4900.0 / 7400 / 2, (double) edgewise / DRAWS, 0.015);
    }

    @Test
    void aPartWithSingleAnglesKeepsToThem() {
        Turning steps = Turning.steps(List.of(15.0, 140.0));
        EdgeAngles angles = new EdgeAngles(steps, X, Y);
        SplittableRandom random = new SplittableRandom(7);
        for (int draw = 0; draw < 200; draw++) {
            assertTrue(steps.allows(angles.edgewise(random)));
            assertTrue(steps.allows(angles.any(random)));
        }
    }
}
