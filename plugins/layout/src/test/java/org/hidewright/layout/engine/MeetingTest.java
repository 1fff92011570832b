package org.hidewright.layout.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.hidewright.layout.task.Turning;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** What the engine holds for overlapping, beside polygons of the JTS Topology Suite 1.20.0. */
class MeetingTest {
    private static final GeometryFactory JTS = new GeometryFactory();

    /** A star of many corners, so that the tree over its edges has several levels. */
    private static Form star(SplittableRandom random, int corners, double size) {
        double[] x = new double[corners];
        double[] y = new double[corners];
        for (int corner = 0; corner < corners; corner++) {
            double radius = size * (0.3 + 0.7 * random.nextDouble());
            x[corner] = radius * Math.cos(2 * Math.PI * corner / corners);
            y[corner] = radius * Math.sin(2 * Math.PI * corner / corners);
        }
        return new Form(x, y, Turning.free());
    }

    private static Turned square(double side) {
        Turned turned =
                new Turned(new Form(new double[] {0, side, side, 0}, new double[] {0, 0, side, side}, Turning.free()));
        turned.turn(0);
        return turned;
    }

    private static Polygon polygon(Turned turned, double dx, double dy) {
        Coordinate[] corners = new Coordinate[turned.edges + 1];
        for (int corner = 0; corner < corners.length; corner++) {
            corners[corner] = new Coordinate(turned.x[corner] + dx, turned.y[corner] + dy);
        }
        return JTS.createPolygon(corners);
    }

    @Test
    void overlapsAreThoseOfJts() {
        SplittableRandom random = new SplittableRandom(11);
        int overlapping = 0;
        int apart = 0;
        int held = 0;
        for (int form = 0; form < 40; form++) {
            Turned one = new Turned(star(random, 5 + random.nextInt(60), 10));
            Turned other = new Turned(star(random, 5 + random.nextInt(60), 1 + random.nextInt(10)));
            for (int round = 0; round < 60; round++) {
                one.turn(2 * Math.PI * random.nextDouble());
                other.turn(2 * Math.PI * random.nextDouble());
                double dx = 30 * (random.nextDouble() - 0.5);
                double dy = 30 * (random.nextDouble() - 0.5);
                Polygon here = polygon(one, 0, 0);
                Polygon there = polygon(other, dx, dy);
                boolean overlaps = here.intersects(there);
                assertEquals(overlaps, Meeting.overlaps(one, other, dx, dy), () -> here + " " + there);
                assertEquals(overlaps, Meeting.overlaps(other, one, -dx, -dy), () -> there + " " + here);
                overlapping += overlaps ? 1 : 0;
                apart += !overlaps && one.maxX > other.minX + dx && one.maxY > other.minY + dy ? 1 : 0;
                held += here.contains(there) ? 1 : 0;
            }
        }
        assertTrue(overlapping > 500 && apart > 300 && held > 10, overlapping + ", " + apart + ", " + held);
    }

    @Test
    void whatTouchesOverlaps() {
        Turned turned = square(4);
        assertTrue(Meeting.overlaps(turned, turned, 4, 0));
        assertTrue(Meeting.overlaps(turned, turned, 4, 4));
        assertTrue(Meeting.overlaps(turned, turned, 0, 0));
        assertTrue(Meeting.overlaps(turned, turned, 4 + 1e-10, 0));
        assertTrue(!Meeting.overlaps(turned, turned, 4 + 1e-6, 0));
        assertTrue(!Meeting.overlaps(turned, turned, 0, -4 - 1e-6));
    }

    /** A square of 10 and one of 2 beside the middle of each of its sides, so that only corners of the small one are near an edge. */
    @ParameterizedTest
    @CsvSource({"1, 0", "-1, 0", "0, 1", "0, -1"})
    void oneBesideTheOtherTouchesWithinAHairOnEachSide(int right, int up) {
        Turned large = square(10);
        Turned small = square(2);
        double touching = 6 + 1e-9;
        double apart = 6 + 1e-6;
        // a little off the middle, so that no corner is level with that of the other
        double off = 0.3;
        for (double far : new double[] {touching, apart}) {
            double dx = right * far + up * off;
            double dy = up * far + right * off;
            assertEquals(far == touching, Meeting.edgesCross(large, small, dx, dy), "far " + far);
            assertEquals(far == touching, Meeting.edgesCross(small, large, -dx, -dy), "far " + far);
        }
    }

    /** The hair is a billionth of the diameter: about 1.4 millionths for a side of 1000, 1.4e-11 for one of a hundredth. */
    @Test
    void theHairGrowsWithTheParts() {
        Turned hide = square(1000);
        assertTrue(Meeting.edgesCross(hide, hide, 1000 + 5e-7, 300));
        assertFalse(Meeting.edgesCross(hide, hide, 1000 + 1e-5, 300));
        Turned rivet = square(0.01);
        assertTrue(Meeting.edgesCross(rivet, rivet, 0.01 + 5e-12, 0.003));
        assertFalse(Meeting.edgesCross(rivet, rivet, 0.01 + 1e-9, 0.003));
    }

    /** Borders of stars, whether the one lies within the other or not. */
    @Test
    void edgesCrossWhereBordersOfJtsDo() {
        SplittableRandom random = new SplittableRandom(17);
        int held = 0;
        int crossing = 0;
        for (int form = 0; form < 20; form++) {
            Turned one = new Turned(star(random, 5 + random.nextInt(60), 10));
            Turned other = new Turned(star(random, 5 + random.nextInt(60), 1 + random.nextInt(6)));
            for (int round = 0; round < 40; round++) {
                one.turn(2 * Math.PI * random.nextDouble());
                other.turn(2 * Math.PI * random.nextDouble());
                double dx = 12 * (random.nextDouble() - 0.5);
                double dy = 12 * (random.nextDouble() - 0.5);
                Polygon here = polygon(one, 0, 0);
                Polygon there = polygon(other, dx, dy);
                boolean cross = here.getExteriorRing().intersects(there.getExteriorRing());
                assertEquals(cross, Meeting.edgesCross(one, other, dx, dy), () -> here + " " + there);
                assertEquals(cross, Meeting.edgesCross(other, one, -dx, -dy), () -> there + " " + here);
                crossing += cross ? 1 : 0;
                held += here.contains(there) ? 1 : 0;
            }
        }
        assertTrue(crossing > 100 && held > 30, crossing + ", " + held);
    }

    /** What may not be cut from, with circles of its own: {@code poles} holds x, y and radius of each. */
    private static Turned damage(double[] x, double[] y, double extent, double... poles) {
        int count = poles.length / 3;
        double[][] parted = new double[3][count];
        for (int index = 0; index < poles.length; index++) {
            parted[index % 3][index / 3] = poles[index];
        }
        return new Form(x, y, new Poles(parted[0], parted[1], parted[2]), extent, 1).listed[0];
    }

    private static Turned damage(double left, double low, double side) {
        return damage(
                new double[] {left, left + side, left + side, left},
                new double[] {low, low, low + side, low + side},
                1,
                left + side / 50,
                low + side / 50,
                side / 100);
    }

    /** Damage of 100 by 100 whose one circle fills but its low left corner; a place of 4 by 4 lies elsewhere within. */
    @ParameterizedTest
    @CsvSource({"150, 150", "150, -250", "-250, 150", "-250, -250"})
    void whatLiesWithinTheOtherOverlapsThoughNoEdgesCross(double left, double low) {
        Turned around = damage(left, low, 100);
        Turned within = damage(-2, -2, 4);
        for (double right = 10; right < 100; right += 20) {
            for (double up = 10; up < 100; up += 20) {
                double dx = left + right;
                double dy = low + up;
                assertFalse(Meeting.edgesCross(around, within, dx, dy));
                assertTrue(Meeting.overlaps(around, within, dx, dy), dx + ", " + dy);
                assertTrue(Meeting.overlaps(within, around, -dx, -dy), dx + ", " + dy);
            }
        }
        // beside it, above and below
        assertFalse(Meeting.overlaps(around, within, left + 50, low + 110));
        assertFalse(Meeting.overlaps(around, within, left + 50, low - 10));
        assertFalse(Meeting.overlaps(within, around, -left + 10, -low - 50));
        assertFalse(Meeting.overlaps(within, around, -left - 110, -low - 50));
    }

    /** An L of 100 by 100 whose arms are 20 wide: what lies between the arms is free, what lies in an arm is not. */
    @Test
    void whatLiesBetweenTheArmsOfTheOtherIsFree() {
        double[] x = {0, 100, 100, 20, 20, 0};
        double[] y = {0, 0, 20, 20, 100, 100};
        Turned around = damage(x, y, 1, 1, 1, 0.5);
        Turned within = damage(-2, -2, 4);
        assertFalse(Meeting.overlaps(around, within, 60, 60));
        assertFalse(Meeting.overlaps(within, around, -60, -60));
        assertTrue(Meeting.overlaps(around, within, 60, 10));
        assertTrue(Meeting.overlaps(within, around, -60, -10));
        assertTrue(Meeting.overlaps(around, within, 10, 60));
        assertTrue(Meeting.overlaps(within, around, -10, -60));
    }

    /**
     * Circles of 3 and 2 overlap by 5 less the distance of their centres. That is counted by the lesser radius; the root of it, by the
     * sizes 2 and 5 of both, is the depth (arXiv 2509.13329, where nothing is smoothed).
     */
    @Test
    void theDepthOfTwoCirclesIsThatWorkedByHand() {
        double[] x = {0, 10, 10, 0};
        double[] y = {0, 0, 10, 10};
        Turned one = damage(x, y, 2, 4, 5, 3);
        Turned other = damage(x, y, 5, 3, 2, 2);
        // centres at (4, 5) and (3 + 3, 2 + 6): 2 and 3 apart
        double expected = Math.sqrt((5 - Math.sqrt(13)) * 2) * 10;
        assertEquals(expected, Meeting.depth(one, other, 3, 6, Double.POSITIVE_INFINITY), 1e-12);
        assertEquals(expected, Meeting.depth(other, one, -3, -6, Double.POSITIVE_INFINITY), 1e-12);
        // centres at (4, 5) and (3 - 1, 2 + 7): 2 and 4 apart
        double deeper = Math.sqrt((5 - Math.sqrt(20)) * 2) * 10;
        assertEquals(deeper, Meeting.depth(one, other, -1, 7, Double.POSITIVE_INFINITY), 1e-12);
        // centres 3 and 4, that is 5, apart only touch
        assertEquals(0, Meeting.depth(one, other, 4, 7, Double.POSITIVE_INFINITY));
    }

    /** Three circles of 1, each at the middle of one of three others: 1 deep each, so √3 by the sizes. */
    @ParameterizedTest
    @CsvSource({"0.1, 0.5", "4, 5", "1, 1"})
    void theDepthIsWholeAsLongAsItStaysBelowWhatIsEnough(double size, double sizeOfOther) {
        double[] x = {0, 90, 90, 0};
        double[] y = {0, 0, 10, 10};
        Turned one = damage(x, y, size, 10, 5, 1, 40, 5, 1, 70, 5, 1);
        Turned other = damage(x, y, sizeOfOther, 11, 5, 1, 41, 5, 1, 71, 5, 1);
        double whole = Math.sqrt(3) * size * sizeOfOther;
        assertEquals(whole, Meeting.depth(one, other, 0, 0, 1.001 * whole), 1e-12);
        for (double share = 0.1; share < 1; share += 0.1) {
            double told = Meeting.depth(one, other, 0, 0, share * whole);
            assertTrue(told >= share * whole && told <= whole + 1e-12, share + ": " + told);
        }
        // one circle is enough for less than √1 by the sizes, so that the others are not looked at
        assertEquals(size * sizeOfOther, Meeting.depth(one, other, 0, 0, 0.5 * size * sizeOfOther), 1e-12);
    }

    /** Of two equal discs the depth grows all the way until they lie upon one another. */
    @Test
    void depthOfDiscsGrowsToTheEnd() {
        double[] x = new double[40];
        double[] y = new double[40];
        for (int corner = 0; corner < 40; corner++) {
            x[corner] = 5 * Math.cos(2 * Math.PI * corner / 40);
            y[corner] = 5 * Math.sin(2 * Math.PI * corner / 40);
        }
        Turned disc = new Turned(new Form(x, y, Turning.free()));
        disc.turn(0);
        double before = 0;
        for (double away = 9.9; away >= 0; away -= 0.3) {
            double deep = Meeting.depth(disc, disc, away, 0, Double.POSITIVE_INFINITY);
            assertTrue(deep > before, away + ": " + deep + " after " + before);
            before = deep;
        }
    }

    @Test
    void depthGrowsTheDeeperAndStopsBeyondWhatIsEnough() {
        SplittableRandom random = new SplittableRandom(2);
        Turned one = new Turned(star(random, 30, 10));
        Turned other = new Turned(star(random, 30, 10));
        one.turn(0);
        other.turn(1);
        double before = 0;
        for (double away = 20; away >= 0; away -= 0.5) {
            double deep = Meeting.depth(one, other, away, 0, Double.POSITIVE_INFINITY);
            // where one lies almost upon the other the sum of poles wavers by some thousandths
            double least = away < 1 ? 0.995 * before : away < 12 ? Math.nextUp(before) : before;
            assertTrue(deep >= least, away + ": " + deep + " after " + before);
            assertEquals(deep, Meeting.depth(other, one, -away, 0, Double.POSITIVE_INFINITY), 1e-9 * deep);
            double half = deep / 2;
            assertTrue(Meeting.depth(one, other, away, 0, half) >= half);
            before = deep;
        }
    }
}
