package org.hidewright.api.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.junit.jupiter.api.Test;

class ParallelTest {
    private static final Point ORIGIN = Point.of(0, 0);

    @Test
    void anArcStaysAnArcWhenItIsTrimmed() {
        Curve leaf =
                Curve.closed(List.of(Arcs.over(ORIGIN, Point.of(60, 0), -15), Arcs.over(Point.of(60, 0), ORIGIN, -15)));
        List<Curve> inside = Parallel.of(leaf, 4, Corner.ROUND);
        assertEquals(1, inside.size());
        assertEquals(2, inside.get(0).segments().size());
        for (int i = 0; i < 2; i++) {
            Segment.Arc of = (Segment.Arc) leaf.segments().get(i);
            Segment.Arc beside = inside.get(0).segments().stream()
                    .map(Segment.Arc.class::cast)
                    .filter(arc -> arc.centre().distanceTo(of.centre()) < 1e-9)
                    .findFirst()
                    .orElseThrow();
            assertEquals(of.radius() - 4, beside.radius(), 1e-9);
        }
    }

    @Test
    void anOpenLineHasALineOnEitherSide() {
        Curve line = Curve.open(
                List.of(Segment.line(ORIGIN, Point.of(50, 0)), Segment.line(Point.of(50, 0), Point.of(50, 40))));
        Curve left = Parallel.of(line, 4, Corner.ROUND).get(0);
        assertEquals(46 + 36, left.length(), 1e-9);
        assertEquals(0, left.start().distanceTo(Point.of(0, 4)), 1e-9);
        assertEquals(0, left.end().distanceTo(Point.of(46, 40)), 1e-9);
        Curve right = Parallel.of(line, -4, Corner.ROUND).get(0);
        assertEquals(90 + 2 * Math.PI, right.length(), 1e-9);
        Curve pointed = Parallel.of(line, -4, Corner.POINTED).get(0);
        assertEquals(54 + 44, pointed.length(), 1e-9);
    }

    @Test
    void aHairpinIsNoNarrowerInsideThanItsTwoMargins() {
        Curve hairpin = Curve.open(List.of(
                Segment.line(ORIGIN, Point.of(50, 0)),
                Segment.arc(Point.of(50, 0), Point.of(50, 3), Math.PI),
                Segment.line(Point.of(50, 6), Point.of(0, 6))));
        double longest = Parallel.of(hairpin, 4, Corner.ROUND).stream()
                .mapToDouble(Curve::length)
                .max()
                .orElse(0);
        assertTrue(longest < 5, "beside the ends at most, not between the legs: " + longest);
    }

    @Test
    void aPointThatWouldBeTooLongIsRounded() {
        Curve needle = Outlines.polygon(ORIGIN, Point.of(100, -5), Point.of(100, 5));
        Curve beside = Parallel.of(needle, -2, Corner.POINTED).get(0);
        long arcs =
                beside.segments().stream().filter(Segment.Arc.class::isInstance).count();
        assertEquals(1, arcs, "at the needle's tip only");
    }

    @Test
    void whatIsTurnedTighterThanTheDistanceFallsAway() {
        Curve slot = Outlines.roundedRectangle(ORIGIN, 40, 30, 4);
        Curve inside = Parallel.of(slot, 6, Corner.ROUND).get(0);
        assertEquals(2 * (28 + 18), inside.length(), 1e-9);
        assertEquals(4, inside.segments().size());
    }

    @Test
    void noDistanceIsTheCurveItself() {
        Curve plate = Outlines.rectangle(ORIGIN, 40, 30);
        assertEquals(List.of(plate), Parallel.of(plate, 0, Corner.ROUND));
    }

    @Test
    void theLineBesideACubicIsWithinAMillionth() {
        Curve bow = Curve.open(List.of(Segment.cubic(ORIGIN, Point.of(20, 50), Point.of(80, 50), Point.of(100, 0))));
        Curve beside = Parallel.of(bow, -7, Corner.ROUND).get(0);
        for (double along = 0; along <= beside.length(); along += 0.05) {
            assertEquals(7, bow.distanceTo(beside.at(along).point()), 2e-6);
        }
        assertTrue(beside.segments().size() < 30, beside.segments().size() + " segments");
    }

    /**
     * A plate's pointed corner and the edge of another that runs across it, both grown: no line is left within the point.
     * The plates become one of 14 by 14 and the strip of 2 mm round the other, whose corner at (12, 12) they share.
     */
    @Test
    void noOtherLineRunsWithinAPoint() {
        Curve plate = Outlines.rectangle(ORIGIN, 10, 10);
        double away = 23.6 / 2 + Math.sqrt(2); // its edge runs along x + y = 23.6, 2 mm off
        Curve across = Outlines.polygon(
                Point.of(away + 15, away - 15),
                Point.of(away + 25, away - 5),
                Point.of(away - 5, away + 25),
                Point.of(away - 15, away + 15));
        List<Curve> both = Parallel.of(List.of(plate, across), -2, Corner.POINTED);
        double alone = Parallel.of(across, -2, Corner.POINTED).get(0).area();
        double sum = both.stream().mapToDouble(Curve::area).sum();
        // 14² and the other, less the corner of legs 0.4 that lies in both
        assertEquals(196 + alone - 0.4 * 0.4 / 2, sum, 1e-3);
    }

    /** A drop has one segment that meets itself; so have the lines beside it. */
    @Test
    void aDropHasADropBesideIt() {
        Curve drop = Curve.closed(List.of(Segment.cubic(ORIGIN, Point.of(60, 40), Point.of(-60, 40), ORIGIN)));
        for (double distance : new double[] {-2, -5}) {
            Curve beside = Parallel.of(drop, distance, Corner.ROUND).get(0);
            // Steiner's formula for what is convex, from memory: A + L d + π d²
            assertEquals(
                    Math.abs(drop.area()) + drop.length() * -distance + Math.PI * distance * distance,
                    Math.abs(beside.area()),
                    1e-3);
            assertTrue(beside.isClosed());
        }
    }

    /** Few segments are as good as many; fits that no longer come together at once show as more of them. */
    @Test
    void fewCubicsFollowACubic() {
        assertTrue(pieces(Segment.cubic(ORIGIN, Point.of(20, 50), Point.of(80, 50), Point.of(100, 0)), -7) <= 8);
        assertTrue(pieces(Segment.cubic(ORIGIN, Point.of(40, 50), Point.of(80, 50), Point.of(70, 0)), 5) <= 22);
        assertTrue(pieces(Segment.cubic(ORIGIN, Point.of(60, 0), Point.of(90, 20), Point.of(95, 70)), 4) <= 7);
        assertTrue(pieces(Segment.cubic(ORIGIN, ORIGIN, Point.of(50, 0), Point.of(80, 60)), -3) <= 12);
    }

    private static int pieces(Segment.Cubic cubic, double distance) {
        Curve line = Curve.open(List.of(cubic));
        Curve beside = Parallel.of(line, distance, Corner.ROUND).get(0);
        for (double along = 0; along <= beside.length(); along += beside.length() / 777) {
            assertEquals(Math.abs(distance), line.distanceTo(beside.at(along).point()), 2e-6);
        }
        return beside.segments().size();
    }

    /** Where a cubic bends tighter than the distance, what is left of the line beside has a corner, and no loop. */
    @Test
    void aTightBendLeavesACornerInside() {
        Curve bow = Curve.open(List.of(Segment.cubic(ORIGIN, Point.of(0, 60), Point.of(30, 60), Point.of(30, 0))));
        double tightest = 1 / Math.abs(bow.at(bow.length() / 2).curvature());
        Curve inside = Parallel.of(bow, -(tightest + 3), Corner.ROUND).get(0);
        assertEquals(1, inside.corners().size());
        assertEquals(15, inside.corners().get(0).point().x(), 1e-4, "in the middle");
        Curve looser = Parallel.of(bow, -(tightest - 0.5), Corner.ROUND).get(0);
        assertEquals(List.of(), looser.corners());
    }
}
