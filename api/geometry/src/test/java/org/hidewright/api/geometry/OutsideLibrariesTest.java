package org.hidewright.api.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hidewright.api.drawing.Point;
import org.hipparchus.special.elliptic.legendre.LegendreEllipticIntegral;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** Against libraries that know nothing of ours: elliptic integrals of Hipparchus; polygons, buffers and overlays of JTS. */
class OutsideLibrariesTest {
    private static final int SEEDS = Seeds.count(100, 2000);
    private static final GeometryFactory JTS = new GeometryFactory();

    @Test
    void ellipsesAndTheirParallelsAreAsLongAsTheEllipticIntegralSays() {
        Random random = new Random(7);
        for (int i = 0; i < SEEDS; i++) {
            double a = 10 + 90 * random.nextDouble();
            double b = a * (0.3 + 0.7 * random.nextDouble());
            double around = 4 * a * LegendreEllipticIntegral.bigE(1 - b * b / (a * a));
            Curve ellipse = Outlines.ellipse(Point.of(3, -8), 2 * a, 2 * b);
            assertEquals(around, ellipse.length(), 1e-6);
            double tightest = b * b / a;
            double inward = 0.8 * tightest * random.nextDouble();
            double outward = 20 * random.nextDouble();
            assertEquals(
                    around - 2 * Math.PI * inward, length(Parallel.of(ellipse, inward, Corner.ROUND)), 2e-6, "inward");
            assertEquals(
                    around + 2 * Math.PI * outward,
                    length(Parallel.of(ellipse, -outward, Corner.ROUND)),
                    2e-6,
                    "outward");
        }
    }

    private static double length(List<Curve> curves) {
        assertEquals(1, curves.size());
        return curves.get(0).length();
    }

    /** JTS follows arcs by chords, here 256 to a quarter turn; the outline itself is told to it by chords of 0.05 mm. */
    @Test
    void areasBesideOutlinesAgreeWithJts() {
        for (long seed = 0; seed < SEEDS; seed++) {
            Curve outline = SeededOutlines.outline(seed);
            Random random = new Random(seed);
            double distance = (random.nextBoolean() ? 1 : -1) * (0.5 + 8 * random.nextDouble());
            BufferParameters round = new BufferParameters(256);
            round.setSimplifyFactor(0);
            Geometry buffered = new BufferOp(polygon(outline), round).getResultGeometry(-distance);
            double area = Parallel.of(outline, distance, Corner.ROUND).stream()
                    .mapToDouble(Curve::area)
                    .sum();
            assertEquals(buffered.getArea(), area, 0.002 * outline.length(), "seed " + seed + ", " + distance + " mm");
        }
    }

    @Test
    void overlaysAgreeWithJts() {
        for (long seed = 0; seed < SEEDS; seed++) {
            Random random = new Random(seed);
            Region one = Region.of(SeededOutlines.outline(seed));
            Region other = Region.of(SeededOutlines.outline(seed + 100_000)
                    .moved(Motion.shift(60 * random.nextDouble() - 30, 60 * random.nextDouble() - 30)));
            Geometry a = polygon(one.outline());
            Geometry b = polygon(other.outline());
            double slack = 1e-4 * (one.edgeLength() + other.edgeLength());
            assertEquals(a.difference(b).getArea(), area(one.minus(other)), slack, "minus, seed " + seed);
            assertEquals(a.union(b).getArea(), area(one.plus(other)), slack, "plus, seed " + seed);
            assertEquals(a.intersection(b).getArea(), area(one.common(other)), slack, "common, seed " + seed);
        }
    }

    private static double area(List<Region> regions) {
        return regions.stream().mapToDouble(Region::area).sum();
    }

    /** The outline by chords so short that they stay within a ten-thousandth of a millimetre. */
    private static Geometry polygon(Curve outline) {
        List<Coordinate> places = new ArrayList<>();
        int count = (int) Math.ceil(outline.length() / 0.05);
        for (int segment = 0; segment < outline.segments().size(); segment++) {
            double from = outline.startOf(segment);
            double length = outline.startOf(segment + 1) - from;
            int chords = Math.max(1, (int) Math.ceil(count * length / outline.length()));
            for (int i = 0; i < chords; i++) {
                Point place = outline.at(from + length * i / chords).point();
                places.add(new Coordinate(place.x(), place.y()));
            }
        }
        places.add(places.get(0).copy());
        return JTS.createPolygon(places.toArray(Coordinate[]::new));
    }
}
