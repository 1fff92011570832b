package org.hidewright.layout.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.hidewright.layout.task.Outline;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Rings on a coarse grid, where they touch in every way, beside polygons of the JTS Topology Suite 1.20.0. */
class RingTest {
    private static final GeometryFactory JTS = new GeometryFactory();

    private record Drawn(Ring ring, Polygon polygon) {}

    private static Drawn drawn(double[] x, double[] y) {
        Coordinate[] corners = new Coordinate[x.length + 1];
        for (int corner = 0; corner <= x.length; corner++) {
            corners[corner] = new Coordinate(x[corner % x.length], y[corner % x.length]);
        }
        return new Drawn(new Ring(new Outline(x, y)), JTS.createPolygon(corners));
    }

    private static Drawn any(SplittableRandom random, int grid) {
        while (true) {
            int corners = 3 + random.nextInt(5);
            double[] x = new double[corners];
            double[] y = new double[corners];
            for (int corner = 0; corner < corners; corner++) {
                x[corner] = random.nextInt(grid);
                y[corner] = random.nextInt(grid);
            }
            Drawn drawn = distinct(x, y) ? drawn(x, y) : null;
            if (drawn != null && drawn.polygon().isValid() && drawn.polygon().getArea() > 0) {
                return drawn;
            }
        }
    }

    private static boolean distinct(double[] x, double[] y) {
        for (int one = 0; one < x.length; one++) {
            for (int other = 0; other < one; other++) {
                if (x[one] == x[other] && y[one] == y[other]) {
                    return false;
                }
            }
        }
        return true;
    }

    @Test
    void tellsWhatJtsTellsOfInsidesAndBorders() {
        SplittableRandom random = new SplittableRandom(5);
        int sharing = 0;
        int touching = 0;
        int within = 0;
        for (int round = 0; round < 4000; round++) {
            int grid = 4 + random.nextInt(6);
            Drawn one = any(random, grid);
            Drawn other = any(random, grid);
            boolean shares = one.polygon().relate(other.polygon(), "T********");
            assertEquals(
                    shares, one.ring().sharesInsideWith(other.ring()), () -> one.polygon() + " " + other.polygon());
            assertEquals(
                    shares, other.ring().sharesInsideWith(one.ring()), () -> other.polygon() + " " + one.polygon());
            boolean covered = other.polygon().covers(one.polygon());
            assertEquals(covered, one.ring().liesWithin(other.ring()), () -> one.polygon() + " in " + other.polygon());
            double distance = one.polygon().distance(other.polygon());
            if (!shares) {
                assertEquals(distance, one.ring().distanceTo(other.ring()), 1e-12);
            }
            sharing += shares ? 1 : 0;
            touching += !shares && distance == 0 ? 1 : 0;
            within += covered ? 1 : 0;
        }
        assertTrue(sharing > 2000 && touching > 300 && within > 30, sharing + ", " + touching + ", " + within);
    }

    @Test
    void aRingSharesItsInsideWithItselfWhicheverWayItRuns() {
        Ring one = new Ring(new Outline(new double[] {0, 4, 4, 0}, new double[] {0, 0, 3, 3}));
        Ring back = new Ring(new Outline(new double[] {0, 0, 4, 4, 0}, new double[] {0, 3, 3, 0, 0}));
        assertTrue(one.sharesInsideWith(back));
        assertTrue(one.liesWithin(back));
    }

    @Test
    void oneLastDigitIsTold() {
        Ring one = new Ring(new Outline(new double[] {0, 4, 4, 0}, new double[] {0, 0, 3, 3}));
        Ring beside = new Ring(new Outline(new double[] {4, 8, 8, 4}, new double[] {0, 0, 3, 3}));
        double less = Math.nextDown(4.0);
        Ring over = new Ring(new Outline(new double[] {less, 8, 8, less}, new double[] {0, 0, 3, 3}));
        assertFalse(one.sharesInsideWith(beside));
        assertTrue(one.sharesInsideWith(over));
        assertEquals(0, one.distanceTo(beside));
    }
}
