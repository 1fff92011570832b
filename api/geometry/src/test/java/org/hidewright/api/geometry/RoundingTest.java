package org.hidewright.api.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.junit.jupiter.api.Test;

class RoundingTest {
    private static final Point ORIGIN = Point.of(0, 0);

    @Test
    void aRectangleRoundedIsTheRoundedRectangle() {
        Curve rounded = Rounding.all(Outlines.rectangle(ORIGIN, 80, 50), 12).orElseThrow();
        Curve expected = Outlines.roundedRectangle(ORIGIN, 80, 50, 12);
        assertEquals(expected.length(), rounded.length(), 1e-9);
        assertEquals(expected.area(), rounded.area(), 1e-9);
        assertEquals(8, rounded.segments().size());
        assertEquals(List.of(), rounded.corners());
    }

    @Test
    void aHollowCornerIsRoundedOnItsOwnSide() {
        Curve angle = Outlines.polygon(
                ORIGIN, Point.of(60, 0), Point.of(60, 20), Point.of(20, 20), Point.of(20, 60), Point.of(0, 60));
        Curve rounded = Rounding.corner(angle, 3, 5).orElseThrow();
        // leather is added where the corner was hollow: r² - π r² / 4
        assertEquals(angle.area() + (1 - Math.PI / 4) * 25, rounded.area(), 1e-9);
        Segment.Arc arc = (Segment.Arc) rounded.segments().get(3);
        assertEquals(0, arc.centre().distanceTo(Point.of(25, 25)), 1e-9);
    }

    @Test
    void theFirstSegmentsCornerIsTheOneTheOutlineClosesAt() {
        Curve rounded =
                Rounding.corner(Outlines.rectangle(ORIGIN, 80, 50), 0, 10).orElseThrow();
        assertEquals(5, rounded.segments().size());
        assertEquals(0, rounded.start().distanceTo(Point.of(10, 0)), 1e-9);
        assertEquals(80 * 50 - (1 - Math.PI / 4) * 100, rounded.area(), 1e-9);
    }

    @Test
    void aRadiusThatDoesNotFitGivesNothing() {
        assertEquals(Optional.empty(), Rounding.all(Outlines.rectangle(ORIGIN, 80, 50), 25.001));
        assertTrue(Rounding.all(Outlines.rectangle(ORIGIN, 80, 50), 24.999).isPresent());
    }

    @Test
    void whereThereIsNoCornerNothingIsRounded() {
        Curve line = Curve.open(
                List.of(Segment.line(ORIGIN, Point.of(10, 0)), Segment.line(Point.of(10, 0), Point.of(20, 0))));
        assertEquals(Optional.empty(), Rounding.corner(line, 1, 2));
        assertEquals(Optional.empty(), Rounding.corner(line, 0, 2));
        assertEquals(Optional.of(line), Rounding.all(line, 2));
    }

    @Test
    void aDropIsRoundedAtItsTip() {
        Curve drop = Curve.closed(List.of(Segment.cubic(ORIGIN, Point.of(60, 40), Point.of(-60, 40), Point.of(0, 0))));
        Curve rounded = Rounding.corner(drop, 0, 3).orElseThrow();
        assertEquals(3, rounded.segments().size(), "two halves of the drop and the arc");
        assertEquals(List.of(), rounded.corners());
    }

    /** The arc is as far from both segments as its radius, and leaves and arrives without a bend. */
    @Test
    void anyTwoKindsAreJoinedByAnArcThatTouchesBoth() {
        int rounded = 0;
        int seeds = Seeds.count(400, 4000);
        for (long seed = 0; seed < seeds; seed++) {
            Curve outline = SeededOutlines.outline(seed);
            double radius = 0.5 + 3 * new Random(seed).nextDouble();
            for (Spot corner : outline.corners()) {
                Optional<Curve> result = Rounding.corner(outline, corner.segment(), radius);
                if (result.isPresent()) {
                    rounded++;
                    check(outline, corner.segment(), result.get(), radius, "seed " + seed);
                }
            }
        }
        assertTrue(rounded > 3 * seeds, "only " + rounded + " corners were rounded");
    }

    private static void check(Curve outline, int segment, Curve rounded, double radius, String seed) {
        int at = segment == 0 ? outline.segments().size() : segment;
        Segment.Arc arc = (Segment.Arc) rounded.segments().get(at);
        assertEquals(radius, arc.radius(), 1e-9, seed);
        Stretch before = outline.stretches().get(at - 1);
        Stretch after = outline.stretches().get(segment);
        assertEquals(radius, before.distanceTo(arc.centre()), 1e-6 + before.length() * 1e-9, seed);
        assertEquals(radius, after.distanceTo(arc.centre()), 1e-6 + after.length() * 1e-9, seed);
        assertEquals(0, rounded.turnBefore(at), 1e-7, seed);
        assertEquals(0, rounded.turnBefore((at + 1) % rounded.segments().size()), 1e-7, seed);
    }

    /** A strap end fully round: the radius is half the width, and nothing is left of the short side. */
    @Test
    void aRadiusOfHalfTheWidthMakesAFullyRoundEnd() {
        Curve rounded = Rounding.all(Outlines.rectangle(ORIGIN, 80, 50), 25).orElseThrow();
        assertEquals(2 * 30 + 2 * Math.PI * 25, rounded.length(), 1e-6);
        assertEquals(80 * 50 - (4 - Math.PI) * 625, rounded.area(), 1e-6);
        assertEquals(List.of(), rounded.corners());
    }

    /** A line that runs into a bow: a small circle touches both near the corner, and again at the bow's other end. */
    @Test
    void ofTwoArcsThatFitTheOneAtTheCornerIsTaken() {
        Curve bow = Curve.open(List.of(
                Segment.line(Point.of(-60, 0), Point.of(30, 0)), Arcs.over(Point.of(30, 0), Point.of(-50, 0), -30)));
        Curve rounded = Rounding.corner(bow, 1, 4).orElseThrow();
        Segment.Arc arc = (Segment.Arc) rounded.segments().get(1);
        assertTrue(arc.centre().x() > 0, arc.centre().toString());
        assertEquals(4, bow.distanceTo(arc.centre()), 1e-9);
        assertEquals(0, rounded.turnBefore(1), 1e-9);
        assertEquals(0, rounded.turnBefore(2), 1e-9);
    }

    @Test
    void cornersHardlyBentAreRoundedTooAndSmoothJointsAreNot() {
        Curve bend = Curve.open(
                List.of(Segment.line(ORIGIN, Point.of(50, 0)), Segment.line(Point.of(50, 0), Point.of(100, 0.5))));
        Segment.Arc arc = (Segment.Arc)
                Rounding.corner(bend, 1, 300).orElseThrow().segments().get(1);
        assertEquals(Math.atan2(0.5, 50), arc.sweep(), 1e-9);
        assertEquals(300, arc.radius(), 1e-9);
    }
}
