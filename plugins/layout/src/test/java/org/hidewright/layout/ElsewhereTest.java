package org.hidewright.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.layout.task.Outline;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Beside the overlay of the JTS Topology Suite 1.20.0. */
class ElsewhereTest {
    private static final GeometryFactory JTS = new GeometryFactory();
    private static final Curve SHEET = rectangle(0, 0, 1000, 600);

    private static Curve rectangle(double left, double low, double right, double high) {
        return Outlines.rectangle(Point.of(left, low), right - left, high - low);
    }

    private static Geometry polygon(Curve curve) {
        Outline outline = Flattened.of(curve);
        Coordinate[] ring = new Coordinate[outline.corners() + 1];
        for (int corner = 0; corner < ring.length; corner++) {
            int at = corner % outline.corners();
            ring[corner] = new Coordinate(outline.x(at), outline.y(at));
        }
        return JTS.createPolygon(ring);
    }

    private static Geometry overlay(Geometry one, Geometry other, int operation) {
        // where pieces merely touch it has lines too
        return JTS.createMultiPolygon(GeometryFactory.toPolygonArray(
                PolygonExtracter.getPolygons(OverlayNGRobust.overlay(one, other, operation))));
    }

    private static void check(List<Curve> regions) {
        Geometry sheet = polygon(SHEET);
        Geometry expected = sheet;
        for (Curve region : regions) {
            expected = overlay(expected, polygon(region), OverlayNG.DIFFERENCE);
        }
        Geometry found = JTS.createPolygon();
        double area = 0;
        for (Curve piece : Elsewhere.than(regions, SHEET)) {
            Geometry ring = overlay(polygon(piece), sheet, OverlayNG.INTERSECTION);
            assertTrue(polygon(piece).isSimple(), () -> piece.segments().size() + " edges of a piece cross");
            area += ring.getArea();
            found = overlay(found, ring, OverlayNG.UNION);
        }
        // slivers below a square millimetre may be missing
        assertEquals(0, overlay(expected, found, OverlayNG.SYMDIFFERENCE).getArea(), 5);
        assertEquals(found.getArea(), area, 1e-3, "pieces overlap");
    }

    @Test
    void withoutRegionsItIsAll() {
        check(List.of());
    }

    @Test
    void whatLiesAroundRegionsIsPartedWithoutHoles() {
        check(List.of(rectangle(100, 100, 300, 300)));
        check(List.of(rectangle(100, 100, 300, 300), rectangle(300, 100, 500, 300)));
        check(List.of(rectangle(100, 100, 300, 300), rectangle(100, 350, 300, 500)));
        check(List.of(rectangle(0, 0, 1000, 600)));
        check(List.of(rectangle(-50, 200, 1050, 400)));
    }

    /** Four beams that close a frame: what lies in its middle is outside them too. */
    @Test
    void theMiddleOfAFrameIsOutsideIt() {
        List<Curve> frame = List.of(
                rectangle(200, 100, 800, 200),
                rectangle(200, 400, 800, 500),
                rectangle(200, 200, 300, 400),
                rectangle(700, 200, 800, 400));
        check(frame);
        assertTrue(Elsewhere.than(frame, SHEET).stream()
                .anyMatch(piece -> polygon(piece).contains(JTS.createPoint(new Coordinate(450, 300)))));
    }

    @Test
    void regionsDrawnByHand() {
        SplittableRandom random = new SplittableRandom(11);
        for (int round = 0; round < 200; round++) {
            List<Curve> regions = new ArrayList<>();
            int count = 1 + random.nextInt(4);
            for (int region = 0; region < count; region++) {
                int corners = 3 + random.nextInt(20);
                Point[] places = new Point[corners];
                double middleX = 1000 * random.nextDouble();
                double middleY = 600 * random.nextDouble();
                for (int corner = 0; corner < corners; corner++) {
                    double radius = 30 + 300 * random.nextDouble();
                    double angle = 2 * Math.PI * (corner + 0.8 * random.nextDouble()) / corners;
                    places[corner] = Point.of(
                            Math.round(middleX + radius * Math.cos(angle)),
                            Math.round(middleY + radius * Math.sin(angle)));
                }
                regions.add(Outlines.polygon(places));
            }
            regions.removeIf(region -> !polygon(region).isValid());
            check(regions);
        }
    }
}
