package org.hidewright.api.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.junit.jupiter.api.Test;

class FaultsTest {
    private static final Point ORIGIN = Point.of(0, 0);

    private static void assertFault(Fault.Kind kind, double x, double y, List<Fault> faults) {
        assertEquals(1, faults.size(), faults::toString);
        assertEquals(kind, faults.get(0).kind());
        assertEquals(0, faults.get(0).place().distanceTo(Point.of(x, y)), 1e-6, faults::toString);
    }

    @Test
    void soundOutlinesHaveNone() {
        assertEquals(List.of(), Faults.of(Outlines.circle(ORIGIN, 30)));
        assertEquals(List.of(), Faults.of(Outlines.roundedRectangle(ORIGIN, 40, 20, 10)));
        assertEquals(List.of(), Faults.of(Outlines.ellipse(ORIGIN, 40, 20)));
        for (long seed = 0; seed < Seeds.count(200, 200); seed++) {
            assertEquals(List.of(), Faults.of(SeededOutlines.outline(seed)), "seed " + seed);
        }
    }

    @Test
    void aBowTieCrossesItselfInItsMiddle() {
        Curve tie = Outlines.polygon(ORIGIN, Point.of(40, 30), Point.of(40, 0), Point.of(0, 30));
        assertFault(Fault.Kind.CROSSES_ITSELF, 20, 15, Faults.of(tie));
    }

    @Test
    void aCubicThatLoopsCrossesItself() {
        Curve loop = Curve.open(List.of(Segment.cubic(ORIGIN, Point.of(90, 60), Point.of(-50, 60), Point.of(40, 0))));
        List<Fault> faults = Faults.of(loop);
        assertEquals(1, faults.size(), faults::toString);
        assertEquals(20, faults.get(0).place().x(), 1e-6, "the loop is even about x = 20");
    }

    @Test
    void anOutlineThatTouchesItselfComesApartThere() {
        Curve touching = Outlines.polygon(ORIGIN, Point.of(40, 0), Point.of(40, 20), Point.of(20, 0), Point.of(0, 20));
        assertFault(Fault.Kind.CROSSES_ITSELF, 20, 0, Faults.of(touching));
    }

    @Test
    void aLineThatGoesBackOnItselfIsTold() {
        Curve spike = Outlines.polygon(ORIGIN, Point.of(40, 0), Point.of(60, 0), Point.of(40, 0), Point.of(40, 20));
        assertTrue(Faults.of(spike).stream()
                .anyMatch(fault ->
                        fault.kind() == Fault.Kind.TURNS_BACK && fault.place().equals(Point.of(60, 0))));
    }

    @Test
    void aSegmentTooShortToCutIsTold() {
        Curve short1 = Outlines.polygon(ORIGIN, Point.of(40, 0), Point.of(40, 0.005), Point.of(20, 30));
        assertFault(Fault.Kind.TOO_SHORT, 40, 0.0025, Faults.of(short1));
    }

    @Test
    void holesMustBeInsideAndApart() {
        Curve plate = Outlines.rectangle(ORIGIN, 60, 40);
        Curve inside = Outlines.circle(Point.of(20, 20), 10);
        assertEquals(List.of(), Faults.of(Region.of(plate, List.of(inside))));
        assertFault(
                Fault.Kind.HOLE_OUTSIDE,
                85,
                20,
                Faults.of(Region.of(
                        plate, List.of(Outlines.circle(Point.of(80, 20), 10).reversed()))));
        List<Fault> over = Faults.of(Region.of(plate, List.of(Outlines.circle(Point.of(60, 20), 10))));
        assertEquals(
                List.of(Fault.Kind.HOLE_CROSSES_EDGE, Fault.Kind.HOLE_CROSSES_EDGE),
                over.stream().map(Fault::kind).toList());
        List<Fault> both = Faults.of(Region.of(plate, List.of(inside, Outlines.circle(Point.of(26, 20), 10))));
        assertEquals(
                List.of(Fault.Kind.HOLES_CROSS, Fault.Kind.HOLES_CROSS),
                both.stream().map(Fault::kind).toList());
        assertEquals(
                List.of(Fault.Kind.HOLES_CROSS),
                Faults.of(Region.of(plate, List.of(inside, Outlines.circle(Point.of(20, 20), 4)))).stream()
                        .map(Fault::kind)
                        .toList());
    }

    @Test
    void theLastSegmentMayCrossTheFirst() {
        // an arc of three quarters, and lines that come back through it
        Curve arc = Curve.closed(List.of(
                Segment.arc(Point.of(10, 0), ORIGIN, 1.5 * Math.PI),
                Segment.line(Point.of(0, -10), Point.of(-30, -10)),
                Segment.line(Point.of(-30, -10), Point.of(-30, 5)),
                Segment.line(Point.of(-30, 5), Point.of(10, 0))));
        assertEquals(
                1,
                Faults.of(arc).stream()
                        .filter(fault -> fault.kind() == Fault.Kind.CROSSES_ITSELF)
                        .count());
    }

    @Test
    void aSegmentMayCrossTheOneBeforeIt() {
        // a line, then nearly back, then an arc over it
        double back = Math.toRadians(170);
        Point end = Point.of(20, 0);
        Point centre = end.towards(back + Math.PI / 2, 15);
        Curve hook = Curve.open(List.of(Segment.line(ORIGIN, end), Segment.arc(end, centre, Math.toRadians(60))));
        assertEquals(1, Faults.of(hook).size(), Faults.of(hook)::toString);
        Curve loop = Curve.open(List.of(
                Segment.arc(Point.of(10, 0), ORIGIN, 1.7 * Math.PI), Segment.line(arcEnd(), Point.of(-20, 12))));
        assertEquals(1, Faults.of(loop).size(), Faults.of(loop)::toString);
        assertEquals(1, Faults.of(loop.reversed()).size());
    }

    private static Point arcEnd() {
        return ORIGIN.towards(1.7 * Math.PI, 10);
    }

    @Test
    void faultsComeInTheirOrderAlongTheCurve() {
        Curve tie = Outlines.polygon(
                ORIGIN, Point.of(40, 30), Point.of(40, 0), Point.of(0, 30), Point.of(0, 20), Point.of(0.005, 20));
        List<Fault.Kind> kinds = Faults.of(tie).stream().map(Fault::kind).toList();
        assertEquals(List.of(Fault.Kind.CROSSES_ITSELF, Fault.Kind.TOO_SHORT), kinds);
    }

    @Test
    void anOpenCurveMayEndTheOtherWayThanItBegan() {
        Curve open = Curve.open(List.of(
                Segment.line(ORIGIN, Point.of(20, 0)),
                Segment.line(Point.of(20, 0), Point.of(20, 10)),
                Segment.line(Point.of(20, 10), Point.of(0, 10))));
        assertEquals(List.of(), Faults.of(open));
    }

    @Test
    void anOutlineMayStartOnASpike() {
        Curve spike = Outlines.polygon(Point.of(60, 0), Point.of(40, 0), Point.of(40, 20), ORIGIN, Point.of(40, 0));
        assertTrue(Faults.of(spike).stream()
                .anyMatch(fault ->
                        fault.kind() == Fault.Kind.TURNS_BACK && fault.place().equals(Point.of(60, 0))));
    }

    @Test
    void aHoleMayBeFaultyInItselfOrRoundAnother() {
        Curve plate = Outlines.rectangle(ORIGIN, 60, 40);
        Curve tie = Outlines.polygon(Point.of(10, 10), Point.of(30, 30), Point.of(30, 12), Point.of(10, 28));
        assertTrue(Faults.of(Region.of(plate, List.of(tie))).stream()
                .anyMatch(fault -> fault.kind() == Fault.Kind.CROSSES_ITSELF));
        Curve small = Outlines.circle(Point.of(20, 20), 4);
        Curve large = Outlines.circle(Point.of(20, 20), 12);
        assertEquals(
                Faults.of(Region.of(plate, List.of(small, large))).size(),
                Faults.of(Region.of(plate, List.of(large, small))).size());
    }
}
