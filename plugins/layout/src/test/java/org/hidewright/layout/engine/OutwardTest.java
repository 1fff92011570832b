package org.hidewright.layout.engine;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Rings with fewer corners, beside polygons of the JTS Topology Suite 1.20.0. */
class OutwardTest {
    private static final GeometryFactory JTS = new GeometryFactory();

    private static Polygon polygon(double[] x, double[] y) {
        Coordinate[] corners = new Coordinate[x.length + 1];
        for (int corner = 0; corner <= x.length; corner++) {
            corners[corner] = new Coordinate(x[corner % x.length], y[corner % x.length]);
        }
        return JTS.createPolygon(corners);
    }

    @Test
    void whatHasFewerCornersHoldsTheRingAndIsHardlyLarger() {
        SplittableRandom random = new SplittableRandom(8);
        int fewer = 0;
        for (int round = 0; round < 150; round++) {
            int corners = 8 + random.nextInt(120);
            double[] x = new double[corners];
            double[] y = new double[corners];
            double rough = random.nextDouble() * 0.3;
            for (int corner = 0; corner < corners; corner++) {
                double radius = 10 * (1 - rough * random.nextDouble());
                x[corner] = radius * Math.cos(2 * Math.PI * corner / corners);
                y[corner] = radius * Math.sin(2 * Math.PI * corner / corners) / 2;
            }
            double share = 0.002 + 0.05 * random.nextDouble();
            double[][] simpler = Outward.of(x, y, share);
            Polygon ring = polygon(x, y);
            Polygon around = polygon(simpler[0], simpler[1]);
            assertTrue(around.isValid(), () -> ring + " " + around);
            assertEquals(0, ring.difference(around).getArea(), 1e-9);
            assertTrue(around.getArea() <= ring.getArea() * (1 + share) + 1e-9);
            assertTrue(simpler[0].length <= corners);
            fewer += simpler[0].length < corners * 3 / 4 ? 1 : 0;
        }
        assertTrue(fewer > 50, "only " + fewer + " became simpler");
    }

    @Test
    void aNotchIsFilledWhereItIsSmallEnough() {
        double[] x = {0, 10, 10, 5.1, 5, 4.9, 0};
        double[] y = {0, 0, 10, 10, 9.9, 10, 10};
        double[][] simpler = Outward.of(x, y, 0.001);
        assertEquals(100, Rings.area(simpler[0], simpler[1]), 1e-9);
        assertArrayEquals(x, Outward.of(x, y, 1e-6)[0]);
    }

    /** A bevelled corner: the short edge goes, those beside it meet. */
    @Test
    void aBevelledCornerBecomesSharp() {
        double[] x = {0, 9.9, 10, 10, 0};
        double[] y = {0, 0, 0.1, 10, 10};
        double[][] simpler = Outward.of(x, y, 0.001);
        assertEquals(4, simpler[0].length);
        assertEquals(100, Rings.area(simpler[0], simpler[1]), 1e-9);
    }
}
