package org.hidewright.api.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.drawing.Segment;
import org.junit.jupiter.api.Test;

class CurveTest {
    private static final Point ORIGIN = Point.of(0, 0);
    private static final Curve PLATE = Outlines.rectangle(ORIGIN, 40, 30);
    private static final Curve BENT = Curve.open(List.of(
            Segment.line(ORIGIN, Point.of(20, 0)), Segment.arc(Point.of(20, 0), Point.of(20, 10), Math.PI / 2)));

    private static void assertPlace(double x, double y, Point place) {
        assertEquals(0, place.distanceTo(Point.of(x, y)), 1e-9, place::toString);
    }

    @Test
    void aSpotTellsPlaceLengthDirectionAndBend() {
        Spot spot = BENT.at(20 + 5 * Math.PI / 2);
        assertPlace(20 + 10 * Math.sin(Math.PI / 4), 10 - 10 * Math.cos(Math.PI / 4), spot.point());
        assertEquals(20 + 5 * Math.PI / 2, spot.along(), 1e-9);
        assertEquals(Math.PI / 4, spot.direction(), 1e-9);
        assertEquals(0.1, spot.curvature(), 1e-9);
        assertEquals(1, spot.segment());
        assertPlace(20, 10, spot.beside(10));
        assertEquals(0, BENT.at(3).curvature());
        assertEquals(-0.1, BENT.reversed().at(3).curvature(), 1e-9);
    }

    @Test
    void aSpotOnACornerBelongsToTheSegmentThatStartsThere() {
        assertEquals(1, PLATE.at(40).segment());
        assertEquals(Math.PI / 2, PLATE.at(40).direction(), 1e-9);
        assertEquals(0, PLATE.at(39.999).direction(), 1e-9);
    }

    @Test
    void anOutlineIsCountedRound() {
        assertPlace(10, 0, PLATE.at(150).point());
        assertPlace(0, 10, PLATE.at(-10).point());
    }

    @Test
    void anOpenCurveEnds() {
        assertPlace(30, 10, BENT.at(BENT.length()).point());
        IllegalArgumentException over = assertThrows(IllegalArgumentException.class, () -> BENT.at(36));
        assertTrue(over.getMessage().contains("there is no spot at 36"), over.getMessage());
        assertThrows(IllegalArgumentException.class, () -> BENT.at(-1));
        assertThrows(IllegalArgumentException.class, () -> BENT.between(10, 36));
        assertThrows(IllegalStateException.class, BENT::area);
    }

    @Test
    void theNearestSpotMayBeAnEnd() {
        assertPlace(5, 0, BENT.nearest(Point.of(5, 7)).point());
        assertPlace(0, 0, BENT.nearest(Point.of(-5, 7)).point());
        assertPlace(30, 10, BENT.nearest(Point.of(25, 30)).point());
        assertEquals(7, BENT.distanceTo(Point.of(5, -7)), 1e-9);
    }

    /** Every cubic has places from which three of its spots look nearest; the dense row says which is. */
    @Test
    void theNearestSpotOfACubicIsTheNearestOfADenseRow() {
        Curve bend = Curve.open(List.of(Segment.cubic(ORIGIN, Point.of(80, 60), Point.of(-50, 55), Point.of(40, 5))));
        for (int x = -20; x <= 60; x += 4) {
            for (int y = -20; y <= 60; y += 4) {
                Point place = Point.of(x + 0.3, y);
                double least = Double.POSITIVE_INFINITY;
                for (int i = 0; i <= 20_000; i++) {
                    Segment.Cubic cubic = (Segment.Cubic) bend.segments().get(0);
                    least = Math.min(least, cubic.at(i / 20_000.0).distanceTo(place));
                }
                double distance = bend.distanceTo(place);
                assertTrue(
                        distance <= least + 1e-9 && distance > least - 0.001, place + ": " + distance + ", " + least);
            }
        }
    }

    @Test
    void aPartHasTheLengthAskedAndKeepsItsKinds() {
        Curve part = BENT.between(15, 25);
        assertEquals(10, part.length(), 1e-9);
        assertPlace(15, 0, part.start());
        assertEquals(List.of(Segment.Line.class, Segment.Arc.class), kinds(part));
        Curve overTheStart = PLATE.between(130, 10);
        assertEquals(20, overTheStart.length(), 1e-9);
        assertPlace(0, 10, overTheStart.start());
        assertPlace(10, 0, overTheStart.end());
        assertFalse(overTheStart.isClosed());
    }

    private static List<Class<?>> kinds(Curve curve) {
        return curve.segments().stream()
                .<Class<?>>map(segment -> segment instanceof Segment.Line
                        ? Segment.Line.class
                        : segment instanceof Segment.Arc ? Segment.Arc.class : Segment.Cubic.class)
                .toList();
    }

    @Test
    void cornersAreWhereTheDirectionChangesAtOnce() {
        assertEquals(4, PLATE.corners().size());
        assertEquals(List.of(), BENT.corners());
        assertEquals(List.of(), Outlines.roundedRectangle(ORIGIN, 40, 30, 5).corners());
        assertEquals(2, PLATE.between(10, 100).corners().size(), "the ends are no corners");
    }

    @Test
    void insideIsInsideWhicheverWayTheOutlineRuns() {
        for (Curve plate : List.of(PLATE, PLATE.reversed())) {
            assertTrue(plate.surrounds(Point.of(1, 1)));
            assertFalse(plate.surrounds(Point.of(-1, -1)));
            assertFalse(plate.surrounds(Point.of(0, 0)), "the edge is not inside");
        }
        assertEquals(1200, PLATE.area(), 1e-9);
        assertEquals(-1200, PLATE.reversed().area(), 1e-9);
        Curve hollow = Outlines.polygon(ORIGIN, Point.of(20, 10), Point.of(40, 0), Point.of(20, 30));
        assertFalse(hollow.surrounds(Point.of(20, 9)), "under a hollow corner");
        assertTrue(hollow.surrounds(Point.of(20, 11)));
    }

    @Test
    void areasAreExactForEveryKind() {
        Curve lens = Curve.closed(List.of(
                Segment.arc(Point.of(10, 0), ORIGIN, Math.PI),
                Segment.cubic(Point.of(-10, 0), Point.of(-5, -12), Point.of(5, -12), Point.of(10, 0))));
        // half a circle, and under a cubic of even handles: 3/20 of the determinants, here (2 · 120 + 3 · 60 + ...) by
        // hand
        double underCubic = 0;
        int steps = 200_000;
        Segment.Cubic cubic = (Segment.Cubic) lens.segments().get(1);
        for (int i = 0; i < steps; i++) {
            Point a = cubic.at((double) i / steps);
            Point b = cubic.at((i + 1.0) / steps);
            underCubic -= (a.y() + b.y()) / 2 * (b.x() - a.x());
        }
        assertEquals(Math.PI * 50 + underCubic, lens.area(), 1e-6);
    }

    @Test
    void segmentsMustFollowEachOther() {
        assertThrows(
                IllegalArgumentException.class,
                () -> Curve.open(List.of(
                        Segment.line(ORIGIN, Point.of(10, 0)), Segment.line(Point.of(10, 1), Point.of(20, 0)))));
        assertThrows(
                IllegalArgumentException.class, () -> Curve.closed(List.of(Segment.line(ORIGIN, Point.of(10, 0)))));
        assertThrows(IllegalArgumentException.class, () -> Curve.open(List.of(Segment.line(ORIGIN, ORIGIN))));
    }

    @Test
    void segmentsWithoutLengthAreLeftOut() {
        Curve curve = Curve.open(List.of(Segment.line(ORIGIN, ORIGIN), Segment.line(ORIGIN, Point.of(5, 0))));
        assertEquals(1, curve.segments().size());
    }

    @Test
    void aLineOfADrawingAndBack() {
        Path path = Path.from(ORIGIN)
                .lineTo(10, 0)
                .arcAround(Point.of(10, 5), Math.PI)
                .closed(Role.CUT);
        Curve curve = Curve.of(path);
        assertEquals(path, curve.path(Role.CUT));
        assertEquals(Curve.of(path), curve);
        assertNotEquals(curve, curve.reversed());
    }

    @Test
    void motionsKeepLengthsAndPutPlacesWhereToldTo() {
        Motion quarter = Motion.turn(Point.of(10, 0), Math.PI / 2);
        assertPlace(10, 10, quarter.apply(Point.of(20, 0)));
        Motion over = Motion.mirror(ORIGIN, Point.of(1, 1));
        assertPlace(0, 20, over.apply(Point.of(20, 0)));
        assertTrue(over.turnsOver());
        Point place = Point.of(3, -10);
        Point stepByStep = quarter.apply(over.apply(quarter.apply(place)));
        assertPlace(
                stepByStep.x(), stepByStep.y(), quarter.then(over).then(quarter).apply(place));
        assertEquals(place, over.then(over).apply(place));
        assertPlace(6, -6, Motion.none().then(Motion.shift(3, 4)).apply(place));
        assertEquals(BENT.length(), BENT.moved(over.then(quarter)).length(), 1e-9);
        assertPlace(
                quarter.apply(over.apply(Point.of(30, 10))).x(),
                quarter.apply(over.apply(Point.of(30, 10))).y(),
                BENT.moved(over.then(quarter)).end());
        assertThrows(IllegalArgumentException.class, () -> Motion.mirror(ORIGIN, ORIGIN));
    }

    @Test
    void aSharpCuspHasALength() {
        // handles that cross: the curve stops and turns back in a point
        Curve cusp = Curve.open(List.of(Segment.cubic(ORIGIN, Point.of(30, 30), Point.of(0, 30), Point.of(30, 0))));
        double chords = 0;
        Segment.Cubic cubic = (Segment.Cubic) cusp.segments().get(0);
        int steps = 400_000;
        for (int i = 0; i < steps; i++) {
            chords += cubic.at((double) i / steps).distanceTo(cubic.at((i + 1.0) / steps));
        }
        assertEquals(chords, cusp.length(), 1e-6);
        assertEquals(cusp.length() / 2, cusp.at(cusp.length() / 2).along(), 1e-9);
        assertPlace(15, 22.5, cusp.at(cusp.length() / 2).point());
    }

    @Test
    void spotsAndFaultsOfTheSamePlaceAreEqual() {
        assertEquals(BENT.at(7), BENT.at(7));
        assertEquals(BENT.at(7).hashCode(), BENT.at(7).hashCode());
        assertNotEquals(BENT.at(7), BENT.at(8));
        assertTrue(BENT.at(7).toString().contains("segment 0"), BENT.at(7).toString());
        Fault fault = new Fault(Fault.Kind.TOO_SHORT, ORIGIN);
        assertEquals(new Fault(Fault.Kind.TOO_SHORT, ORIGIN), fault);
        assertEquals(new Fault(Fault.Kind.TOO_SHORT, ORIGIN).hashCode(), fault.hashCode());
        assertNotEquals(new Fault(Fault.Kind.TURNS_BACK, ORIGIN), fault);
        assertNotEquals(new Fault(Fault.Kind.TOO_SHORT, Point.of(1, 0)), fault);
        assertEquals("TOO_SHORT at " + ORIGIN, fault.toString());
    }

    @Test
    void equalCurvesHaveEqualHashesAndReadAlike() {
        Curve again = Outlines.rectangle(ORIGIN, 40, 30);
        assertEquals(PLATE.hashCode(), again.hashCode());
        assertEquals(PLATE.toString(), again.toString());
        assertNotEquals(PLATE, Curve.open(PLATE.segments()), "open and closed are not the same");
    }

    @Test
    void whatIsAlikeIsEqualAndWhatIsNotHasAnotherHash() {
        Curve one = Outlines.rectangle(Point.of(0, 0), 30, 20);
        Curve other = Outlines.rectangle(Point.of(0, 0), 30, 21);
        assertEquals(one.hashCode(), Outlines.rectangle(Point.of(0, 0), 30, 20).hashCode());
        assertNotEquals(one.hashCode(), other.hashCode());
        assertNotEquals(Region.of(one).hashCode(), Region.of(other).hashCode());
        assertNotEquals(one.at(1).hashCode(), one.at(2).hashCode());
        assertTrue(one.toString().contains("30.0"), one.toString());
        Fault here = new Fault(Fault.Kind.TOO_SHORT, Point.of(1, 2));
        assertNotEquals(here.hashCode(), new Fault(Fault.Kind.TOO_SHORT, Point.of(1, 3)).hashCode());
    }

    @Test
    void aMotionKnowsWhetherItTurnsOver() {
        Motion turned = Motion.turn(Point.of(7, 3), 0.7);
        Motion over = Motion.mirror(Point.of(1, 2), Point.of(4, 9));
        assertFalse(turned.turnsOver());
        assertTrue(over.turnsOver());
        assertTrue(turned.then(over).turnsOver());
        assertFalse(over.then(over).turnsOver());
        assertEquals(0, turned.apply(Point.of(7, 3)).distanceTo(Point.of(7, 3)), 1e-12, "its centre stays");
        Point twice = over.then(over).apply(Point.of(11, -5));
        assertEquals(0, twice.distanceTo(Point.of(11, -5)), 1e-9);
        Point both = turned.then(over).apply(Point.of(11, -5));
        assertEquals(0, both.distanceTo(over.apply(turned.apply(Point.of(11, -5)))), 1e-9);
    }

    @Test
    void anArcThroughThreePlacesGoesOverTheMiddleOne() {
        for (double[] via : new double[][] {{0, 10}, {0, -10}, {9, 4}, {-9.5, -3}, {-3, 9.9}, {5, -0.1}}) {
            Point start = Point.of(-10, 0);
            Point end = Point.of(10, 0.5);
            Curve arc = Curve.open(List.of(Arcs.through(start, Point.of(via[0], via[1]), end)));
            assertEquals(0, arc.distanceTo(Point.of(via[0], via[1])), 1e-9);
            assertEquals(0, arc.end().distanceTo(end), 1e-9);
        }
        assertThrows(
                IllegalArgumentException.class,
                () -> Arcs.through(Point.of(0, 0), Point.of(1, 1), Point.of(3000, 3000)));
    }

    /** A ten-millionth beyond the ends is still the end: so much is lost in adding lengths up. */
    @Test
    void aSpotAHairBeyondAnEndIsTheEnd() {
        assertPlace(0, 0, BENT.at(-Stretch.NOTHING_MM).point());
        assertPlace(30, 10, BENT.at(BENT.length() + Stretch.NOTHING_MM).point());
        assertEquals(
                BENT.length(),
                BENT.between(-Stretch.NOTHING_MM, BENT.length() + Stretch.NOTHING_MM)
                        .length(),
                1e-9);
    }

    @Test
    void onceRoundFromAnyPlaceIsTheWholeOutline() {
        Curve round = PLATE.between(50, 50);
        assertEquals(140, round.length(), 1e-9);
        assertPlace(40, 10, round.start());
        assertPlace(40, 10, round.end());
    }

    @Test
    void everySegmentHasItsSpots() {
        for (double along = 0.5; along < 140; along += 0.5) {
            Spot spot = PLATE.at(along);
            assertEquals(along, spot.along(), 1e-9);
            assertEquals(along < 40 ? 0 : along < 70 ? 1 : along < 110 ? 2 : 3, spot.segment(), "at " + along);
        }
        assertEquals(0, PLATE.at(140).segment());
    }

    @Test
    void theNearestOfSeveralSegmentsIsFoundFromAllSides() {
        assertEquals(5, PLATE.distanceTo(Point.of(20, -5)), 1e-12);
        assertEquals(5, PLATE.distanceTo(Point.of(45, 15)), 1e-12);
        assertEquals(5, PLATE.distanceTo(Point.of(43, 34)), 1e-12);
        assertEquals(1, PLATE.nearest(Point.of(45, 15)).segment());
        assertEquals(0, PLATE.nearest(Point.of(40, -5)).segment(), "the first of equals");
    }

    @Test
    void threePlacesThatAreNotThreeHaveNoArc() {
        Point place = Point.of(7, 3);
        assertThrows(IllegalArgumentException.class, () -> Arcs.through(place, place, ORIGIN));
        assertThrows(IllegalArgumentException.class, () -> Arcs.through(place, ORIGIN, place));
        assertThrows(IllegalArgumentException.class, () -> Arcs.over(ORIGIN, place, 0));
        assertEquals(
                2.5,
                Curve.open(List.of(Arcs.over(ORIGIN, Point.of(1000, 0), 2.5))).distanceTo(Point.of(500, 0)),
                1e-6);
    }
}
