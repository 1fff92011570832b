package org.hidewright.layout.engine;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/** Measures of rings beside those of the JTS Topology Suite 1.20.0. */
class RingsTest {
    private static final GeometryFactory JTS = new GeometryFactory();

    @Test
    void measuresAreThoseOfJts() {
        SplittableRandom random = new SplittableRandom(4);
        for (int round = 0; round < 200; round++) {
            int corners = 3 + random.nextInt(20);
            double[] x = new double[corners];
            double[] y = new double[corners];
            Coordinate[] ring = new Coordinate[corners + 1];
            for (int corner = 0; corner < corners; corner++) {
                double radius = 1 + 9 * random.nextDouble();
                x[corner] = 100 + radius * Math.cos(2 * Math.PI * corner / corners);
                y[corner] = -50 + radius * Math.sin(2 * Math.PI * corner / corners);
                ring[corner] = new Coordinate(x[corner], y[corner]);
            }
            ring[corners] = ring[0];
            Polygon polygon = JTS.createPolygon(ring);
            assertEquals(polygon.getArea(), Rings.area(x, y), 1e-10);
            Point centre = polygon.getCentroid();
            assertArrayEquals(new double[] {centre.getX(), centre.getY()}, Rings.centroid(x, y), 1e-10);
            double[][] hull = Rings.hull(x, y);
            assertEquals(polygon.convexHull().getArea(), Rings.area(hull[0], hull[1]), 1e-10);
            double greatest = 0;
            for (Coordinate one : ring) {
                for (Coordinate other : ring) {
                    greatest = Math.max(greatest, one.distance(other));
                }
            }
            assertEquals(greatest, Rings.diameter(hull[0], hull[1]), 1e-10);
            double width = polygon.getEnvelopeInternal().getWidth();
            double height = polygon.getEnvelopeInternal().getHeight();
            assertEquals(Math.min(width, height), Rings.leastExtent(x, y), 1e-12);
            for (int look = 0; look < 20; look++) {
                Coordinate spot = new Coordinate(90 + 20 * random.nextDouble(), -60 + 20 * random.nextDouble());
                Point point = JTS.createPoint(spot);
                assertEquals(polygon.contains(point), Rings.holds(x, y, corners, spot.x, spot.y));
                double distance = polygon.getExteriorRing().distance(point);
                assertEquals(distance * distance, Rings.squareToEdges(x, y, spot.x, spot.y), 1e-9);
            }
        }
    }

    /** On a coarse grid, where many corners lie above one another, on one line or on one another. */
    @Test
    void theHullHasTheCornersOfJtsAndNoOthers() {
        SplittableRandom random = new SplittableRandom(14);
        int hulls = 0;
        for (int round = 0; round < 500; round++) {
            double[] x = new double[3 + random.nextInt(12)];
            double[] y = new double[x.length];
            Coordinate[] spots = new Coordinate[x.length];
            for (int corner = 0; corner < x.length; corner++) {
                x[corner] = random.nextInt(5);
                y[corner] = random.nextInt(5);
                spots[corner] = new Coordinate(x[corner], y[corner]);
            }
            if (JTS.createMultiPointFromCoords(spots).convexHull() instanceof Polygon expected) {
                double[][] hull = Rings.hull(x, y);
                Set<Coordinate> corners = new HashSet<>();
                for (int corner = 0; corner < hull[0].length; corner++) {
                    corners.add(new Coordinate(hull[0][corner], hull[1][corner]));
                }
                assertEquals(Set.of(Arrays.copyOf(expected.getCoordinates(), expected.getNumPoints() - 1)), corners);
                assertEquals(corners.size(), hull[0].length);
                assertEquals(expected.getArea(), Rings.area(hull[0], hull[1]));
                hulls++;
            }
        }
        assertTrue(hulls > 400, "" + hulls);
    }

    /** A square stood on a corner: its middle and what lies beside it are level with corners. */
    @Test
    void whatIsLevelWithACornerIsToldAsJtsTellsIt() {
        double[] x = {0, 2, 0, -2};
        double[] y = {-2, 0, 2, 0};
        for (double px = -3.5; px < 4; px++) {
            assertEquals(Math.abs(px) < 2, Rings.holds(x, y, 4, px, 0), "" + px);
        }
        for (double py = -3.5; py < 4; py++) {
            assertEquals(Math.abs(py) < 2, Rings.holds(x, y, 4, 0, py), "" + py);
        }
    }

    /** In a triangle of 3, 4 and 5 it is the longest side, from (4, 0) to (0, 3), wherever the triangle lies; drawn the other way, half a turn less. */
    @Test
    void theLongestEdgeTellsTheWay() {
        double way = Math.PI - Math.atan(3.0 / 4);
        assertEquals(way, Rings.longestEdge(new double[] {0, 4, 0}, new double[] {0, 0, 3}), 1e-12);
        assertEquals(way, Rings.longestEdge(new double[] {14, 10, 10}, new double[] {-20, -17, -20}), 1e-12);
        double back = Rings.longestEdge(new double[] {-26, -30, -30}, new double[] {5, 5, 8});
        assertEquals(way - Math.PI, back, 1e-12);
    }

    @Test
    void polesLieWithinAndApart() {
        Poles poles = Poles.within(new double[] {0, 10, 10, 5, 0}, new double[] {0, 0, 10, 4, 10});
        assertTrue(poles.radius().length >= 8);
        for (int one = 0; one < poles.radius().length; one++) {
            double radius = poles.radius()[one];
            double toEdge = Rings.squareToEdges(
                    new double[] {0, 10, 10, 5, 0}, new double[] {0, 0, 10, 4, 10}, poles.x()[one], poles.y()[one]);
            assertTrue(radius * radius <= toEdge + 1e-9);
            for (int other = 0; other < one; other++) {
                double apart = Math.hypot(poles.x()[one] - poles.x()[other], poles.y()[one] - poles.y()[other]);
                assertTrue(apart >= radius + poles.radius()[other] - 1e-9);
            }
        }
    }

    /** The largest circle in a square of 10 has the radius 5, in a right triangle of legs 3 and 4 the radius 1. */
    @Test
    void theFirstPoleIsTheLargestCircle() {
        Poles square = Poles.within(new double[] {0, 10, 10, 0}, new double[] {0, 0, 10, 10}, 1);
        assertEquals(5, square.radius()[0], 0.05);
        Poles triangle = Poles.within(new double[] {0, 4, 0}, new double[] {0, 0, 3}, 1);
        assertEquals(1, triangle.radius()[0], 0.02);
    }

    /** A bracket of arms one wide, by hand: each edge comes in by a tenth, at the inner corner too. */
    @Test
    void everyEdgeOfAnInsetRingLiesFurtherIn() {
        double[][] inset = Rings.inset(new double[] {0, 5, 5, 1, 1, 0}, new double[] {0, 0, 1, 1, 5, 5}, 0.1);
        assertArrayEquals(new double[] {0.1, 4.9, 4.9, 0.9, 0.9, 0.1}, inset[0], 1e-12);
        assertArrayEquals(new double[] {0.1, 0.1, 0.9, 0.9, 4.9, 4.9}, inset[1], 1e-12);
    }

    /** The right triangle of 3 and 4: its inner one has a radius less by the inset, and the area of the square of their ratio. */
    @Test
    void anInsetTriangleIsSmallerByItsRadius() {
        double[][] inset = Rings.inset(new double[] {0, 3, 0}, new double[] {0, 0, 4}, 0.25);
        assertEquals(6 * 0.75 * 0.75, Rings.area(inset[0], inset[1]), 1e-12);
    }
}
