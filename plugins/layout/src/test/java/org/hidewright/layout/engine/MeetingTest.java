package org.hidewright.layout.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.hidewright.layout.task.Turning;
import org.junit.jupiter.api.Test;
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
        Form square = new Form(new double[] {0, 4, 4, 0}, new double[] {0, 0, 4, 4}, Turning.free());
        Turned turned = new Turned(square);
        turned.turn(0);
        assertTrue(Meeting.overlaps(turned, turned, 4, 0));
        assertTrue(Meeting.overlaps(turned, turned, 4, 4));
        assertTrue(Meeting.overlaps(turned, turned, 0, 0));
        assertTrue(Meeting.overlaps(turned, turned, 4 + 1e-10, 0));
        assertTrue(!Meeting.overlaps(turned, turned, 4 + 1e-6, 0));
        assertTrue(!Meeting.overlaps(turned, turned, 0, -4 - 1e-6));
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
            assertTrue(away < 12 ? deep > before : deep >= before, away + ": " + deep + " after " + before);
            assertEquals(deep, Meeting.depth(other, one, -away, 0, Double.POSITIVE_INFINITY), 1e-9 * deep);
            double half = deep / 2;
            assertTrue(Meeting.depth(one, other, away, 0, half) >= half);
            before = deep;
        }
    }
}
