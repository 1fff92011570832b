package org.hidewright.api.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class DrawingTest {
    private static void box(double minX, double minY, double maxX, double maxY, Box box) {
        assertEquals(minX, box.minX(), 1e-9);
        assertEquals(minY, box.minY(), 1e-9);
        assertEquals(maxX, box.maxX(), 1e-9);
        assertEquals(maxY, box.maxY(), 1e-9);
    }

    @Test
    void aQuarterArcEndsAQuarterOn() {
        Path arc = Path.from(Point.of(10, 0))
                .arcAround(Point.of(0, 0), Math.PI / 2)
                .open(Role.CUT);
        assertEquals(0, arc.segments().get(0).end().x(), 1e-12);
        assertEquals(10, arc.segments().get(0).end().y(), 1e-12);
        box(0, 0, 10, 10, arc.bounds());
    }

    @Test
    void theBoxOfAnArcTakesInWhereItTurnsBack() {
        box(
                -10,
                0,
                10,
                10,
                Path.from(Point.of(10, 0))
                        .arcAround(Point.of(0, 0), Math.PI)
                        .open(Role.CUT)
                        .bounds());
        box(
                -10,
                -10,
                10,
                0,
                Path.from(Point.of(10, 0))
                        .arcAround(Point.of(0, 0), -Math.PI)
                        .open(Role.CUT)
                        .bounds());
        box(
                -5,
                -5,
                5,
                5,
                Path.from(Point.of(3, 4))
                        .arcAround(Point.of(0, 0), 2 * Math.PI)
                        .closed(Role.CUT)
                        .bounds());
    }

    /** Against many points on the curve: none lies outside, and the box touches the outermost within their spacing. */
    @Test
    void theBoxOfACubicCurveIsTight() {
        Random random = new Random(7);
        for (int i = 0; i < 200; i++) {
            double[] p = random.doubles(8, -50, 50).toArray();
            Path path = Path.from(Point.of(p[0], p[1]))
                    .cubicTo(Point.of(p[2], p[3]), Point.of(p[4], p[5]), Point.of(p[6], p[7]))
                    .open(Role.CUT);
            Segment.Cubic curve = (Segment.Cubic) path.segments().get(0);
            Box sampled = Box.around(curve.at(0));
            for (int k = 0; k <= 2000; k++) {
                sampled = sampled.with(Box.around(curve.at(k / 2000.0)));
            }
            Box box = path.bounds();
            assertEquals(box.width(), sampled.with(box).width(), 1e-9, "a point lies outside");
            assertEquals(box.height(), sampled.with(box).height(), 1e-9, "a point lies outside");
            assertEquals(sampled.width(), box.width(), 1e-3);
            assertEquals(sampled.height(), box.height(), 1e-3);
        }
    }

    @Test
    void aClosedPathEndsWhereItBegan() {
        Path path = Path.from(Point.of(0, 0)).lineTo(5, 0).lineTo(5, 5).closed(Role.CUT);
        assertEquals(3, path.segments().size());
        assertEquals(Point.of(0, 0), path.segments().get(2).end());
        assertTrue(path.isClosed());
        assertEquals(
                4, Path.rectangle(Role.CUT, Point.of(1, 2), 3, 4).segments().size());
        Path already = Path.from(Point.of(0, 0)).lineTo(5, 0).lineTo(0, 0).closed(Role.CUT);
        assertEquals(2, already.segments().size());
    }

    @Test
    void whatCannotBeDrawnIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> Point.of(Double.NaN, 0));
        assertThrows(IllegalArgumentException.class, () -> Circle.hole(Point.of(0, 0), 0));
        assertThrows(IllegalArgumentException.class, () -> Drawing.builder().build());
        Path.Builder pen = Path.from(Point.of(0, 0));
        assertThrows(IllegalArgumentException.class, () -> pen.open(Role.CUT));
        assertThrows(IllegalArgumentException.class, () -> pen.arcAround(Point.of(0, 0), 1));
        assertThrows(IllegalArgumentException.class, () -> pen.arcAround(Point.of(1, 0), 0));
        assertThrows(IllegalArgumentException.class, () -> pen.arcAround(Point.of(1, 0), 7));
        assertThrows(IllegalArgumentException.class, () -> DimensionLine.of(Point.of(1, 1), Point.of(1, 1), 5, "0", 2));
    }

    @Test
    void aDistanceIsDrawnToTheLeftOfItsDirection() {
        DimensionLine line = DimensionLine.of(Point.of(0, 0), Point.of(40, 0), 6, "40 mm", 2.5);
        assertEquals(6, line.lineStart().y(), 1e-12);
        assertEquals(40, line.lineEnd().x(), 1e-12);
        assertTrue(line.label().foot(10).y() > 6, "the text stands above the line");
        DimensionLine below = DimensionLine.of(Point.of(0, 0), Point.of(40, 0), -6, "40 mm", 2.5);
        assertTrue(below.label().foot(10).y() > -6, "below what is measured too, so that no line is read for another");
        assertTrue(below.label().foot(10).y() + 2.5 < 0, "and clear of what is measured");
    }

    @Test
    void theTextOfADistanceIsReadFromBelowOrFromTheRight() {
        for (int degrees = 0; degrees < 360; degrees += 5) {
            Point to = Point.of(0, 0).towards(Math.toRadians(degrees), 30);
            double turn =
                    DimensionLine.of(Point.of(0, 0), to, 5, "30", 2).label().turn();
            double upright = Math.IEEEremainder(turn, 2 * Math.PI);
            assertTrue(upright > -Math.PI / 2 && upright <= Math.PI / 2 + 1e-6, degrees + " degrees");
        }
    }

    @Test
    void aTextKeepsAwayFromItsPlaceOnTheSideOfItsAnchor() {
        Point at = Point.of(10, 20);
        assertEquals(22, Label.of("x", at, Anchor.BOTTOM, 3).foot(8).y(), 1e-9); // 2/3 of 3 above
        assertEquals(15, Label.of("x", at, Anchor.TOP, 3).foot(8).y(), 1e-9); // 2 and its own height below
        assertEquals(12, Label.of("x", at, Anchor.LEFT, 3).foot(8).x(), 1e-9);
        assertEquals(0, Label.of("x", at, Anchor.RIGHT, 3).foot(8).x(), 1e-9);
        assertEquals(6, Label.of("x", at, Anchor.CENTRE, 3).foot(8).x(), 1e-9);
    }

    @Test
    void equalShapesMakeEqualDrawings() {
        Drawing one = Drawing.builder()
                .hole(Point.of(1, 2), 3)
                .label("a", Point.of(0, 0), Anchor.TOP, 2)
                .build();
        Drawing same = Drawing.builder()
                .hole(Point.of(1, 2), 3)
                .label("a", Point.of(0, 0), Anchor.TOP, 2)
                .build();
        Drawing other = Drawing.of(List.of(Circle.hole(Point.of(1, 2), 3.1)));
        assertEquals(one, same);
        assertEquals(one.hashCode(), same.hashCode());
        assertNotEquals(one, other);
        assertFalse(one.toString().isBlank());
        assertEquals(Point.of(0.0, 0), Point.of(-0.0, 0));
    }
}
