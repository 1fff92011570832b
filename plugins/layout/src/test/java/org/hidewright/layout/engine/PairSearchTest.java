package org.hidewright.layout.engine;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.hidewright.layout.task.Turning;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Pairs whose best is known by plain geometry; hulls and overlaps beside the JTS Topology Suite 1.20.0. */
class PairSearchTest {
    private static final GeometryFactory JTS = new GeometryFactory();
    private static final Turning QUARTERS = Turning.steps(List.of(0.0, 90.0, 180.0, 270.0));

    private static Form form(Turning turning, double... corners) {
        double[] x = new double[corners.length / 2];
        double[] y = new double[corners.length / 2];
        for (int corner = 0; corner < x.length; corner++) {
            x[corner] = corners[2 * corner];
            y[corner] = corners[2 * corner + 1];
        }
        return new Form(x, y, turning);
    }

    private static Form bracket(Turning turning) {
        return form(turning, 0, 0, 10, 0, 10, 1, 1, 1, 1, 10, 0, 10);
    }

    private static PairSearch.Way[] ways(Form first, Form second) {
        return new PairSearch(first, second, new SplittableRandom(5)).run();
    }

    private static Polygon polygon(Form form, double angle, double dx, double dy) {
        Turned turned = new Turned(form);
        turned.turn(angle);
        Coordinate[] corners = new Coordinate[turned.edges + 1];
        for (int corner = 0; corner < corners.length; corner++) {
            corners[corner] = new Coordinate(turned.x[corner] + dx, turned.y[corner] + dy);
        }
        return JTS.createPolygon(corners);
    }

    @Test
    void squaresLieSideBySideAndNoCloser() {
        PairSearch.Way[] ways = ways(form(QUARTERS, 0, 0, 4, 0, 4, 4, 0, 4), form(QUARTERS, 0, 0, 4, 0, 4, 4, 0, 4));
        assertEquals(1, ways[0].gain(), 0.01);
        assertTrue(Arrays.stream(ways).allMatch(way -> way.gain() <= 1 + 1e-9));
        assertEquals(4, Math.hypot(ways[0].dx(), ways[0].dy()), 0.05);
    }

    /** Two halves of a square, cut along its diagonal: the hull about both is the square. */
    @Test
    void trianglesBecomeASquareByHalfATurn() {
        Form half = form(QUARTERS, 0, 0, 6, 0, 0, 6);
        PairSearch.Way best = ways(half, half)[0];
        assertEquals(1, best.gain(), 0.01);
        assertEquals(-1, Math.cos(best.turn()), 1e-9);
        // thirds of the square's diagonal lie between its corners and the centres of area
        assertEquals(Math.hypot(2, 2), Math.hypot(best.dx(), best.dy()), 0.1);
    }

    /** The hull of a bracket has 59.5; of two laid into one another 11 by 11 less the triangle they leave open and two small corners. */
    @Test
    void bracketsLieWithinOneAnother() {
        PairSearch.Way best = ways(bracket(QUARTERS), bracket(QUARTERS))[0];
        double hullOfBoth = 121 - 9.0 * 9 / 2 - 2 * 0.5;
        assertTrue(best.gain() > 0.97 * 2 * 59.5 / hullOfBoth, best.toString());
        assertEquals(1, Math.cos(best.turn()), 1e-9);
    }

    @Test
    void noWayOverlapsAndGainsAreThoseOfHulls() {
        for (Turning turning : List.of(QUARTERS, Turning.free(), Turning.about(List.of(0.0, 180.0), 10))) {
            Form first = bracket(turning);
            Form second = form(turning, 0, 0, 5, 0, 6, 3, 3, 1, 0, 4);
            PairSearch.Way[] ways = ways(first, second);
            assertTrue(ways.length >= 3);
            double before = Double.POSITIVE_INFINITY;
            for (PairSearch.Way way : ways) {
                Polygon one = polygon(first, 0, 0, 0);
                Polygon other = polygon(second, way.turn(), way.dx(), way.dy());
                assertEquals(0, one.intersection(other).getArea(), 1e-9, way.toString());
                assertEquals(
                        (first.hullArea + second.hullArea)
                                / one.union(other).convexHull().getArea(),
                        way.gain(),
                        1e-9);
                assertTrue(way.gain() <= before);
                before = way.gain();
            }
        }
    }

    @Test
    void reversedIsTheSamePairSeenFromTheOther() {
        Form first = bracket(Turning.free());
        Form second = form(Turning.free(), 0, 0, 5, 0, 6, 3, 3, 1, 0, 4);
        for (PairSearch.Way way : ways(first, second)) {
            PairSearch.Way back = way.reversed();
            double hull = polygon(second, 0, 0, 0)
                    .union(polygon(first, back.turn(), back.dx(), back.dy()))
                    .convexHull()
                    .getArea();
            assertEquals((first.hullArea + second.hullArea) / hull, way.gain(), 1e-9);
            PairSearch.Way again = back.reversed();
            assertArrayEquals(
                    new double[] {way.turn(), way.dx(), way.dy()},
                    new double[] {again.turn(), again.dx(), again.dy()},
                    1e-12);
        }
    }
}
