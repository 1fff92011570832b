package org.hidewright.api.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.junit.jupiter.api.Test;

class RegionTest {
    private static final Point ORIGIN = Point.of(0, 0);
    private static final Region PLATE = Region.of(Outlines.rectangle(ORIGIN, 60, 40));

    private static Region slot(double x, double y, double length, double width) {
        return Region.of(Outlines.roundedRectangle(Point.of(x, y), length, width, width / 2));
    }

    private static Region one(List<Region> regions) {
        assertEquals(1, regions.size());
        return regions.get(0);
    }

    @Test
    void aSlotCutInsideIsAHole() {
        Region cut = one(PLATE.minus(slot(10, 10, 20, 4)));
        assertEquals(PLATE.outline(), cut.outline());
        assertEquals(1, cut.holes().size());
        assertEquals(60 * 40 - (16 * 4 + Math.PI * 4), cut.area(), 1e-9);
        assertTrue(cut.contains(Point.of(5, 5)));
        assertFalse(cut.contains(Point.of(20, 12)));
        assertFalse(cut.contains(Point.of(70, 5)));
        assertFalse(cut.contains(Point.of(0, 5)), "on the edge");
    }

    @Test
    void aSlotOverTheEdgeBecomesPartOfIt() {
        Region cut = one(PLATE.minus(slot(50, 10, 20, 4)));
        assertEquals(List.of(), cut.holes());
        assertEquals(60 * 40 - (8 * 4 + Math.PI * 2), cut.area(), 1e-9);
        double turned = cut.outline().segments().stream()
                .filter(Segment.Arc.class::isInstance)
                .mapToDouble(arc -> ((Segment.Arc) arc).sweep())
                .sum();
        assertEquals(-Math.PI, turned, 1e-9, "the round end is still arcs of half a turn");
    }

    @Test
    void aSlotThroughAllPartsThePiece() {
        List<Region> parts = PLATE.minus(slot(-10, 10, 80, 4));
        assertEquals(2, parts.size());
        assertEquals(60 * 40 - 60 * 4, parts.get(0).area() + parts.get(1).area(), 1e-9);
    }

    @Test
    void piecesThatShareAnEdgeBecomeOne() {
        Region beside = Region.of(Outlines.rectangle(Point.of(60, 10), 20, 20));
        Region both = one(PLATE.plus(beside));
        assertEquals(60 * 40 + 400, both.area(), 1e-9);
        assertEquals(List.of(), PLATE.common(beside));
        assertEquals(PLATE.area(), one(PLATE.minus(beside)).area(), 1e-9);
    }

    @Test
    void aPieceAndItselfAreOne() {
        Region slotted = one(PLATE.minus(slot(10, 10, 20, 4)));
        assertEquals(slotted.area(), one(slotted.plus(slotted)).area(), 1e-9);
        assertEquals(slotted.area(), one(slotted.common(slotted)).area(), 1e-9);
        assertEquals(List.of(), slotted.minus(slotted));
    }

    @Test
    void piecesApartStayTwo() {
        assertEquals(
                2, PLATE.plus(Region.of(Outlines.circle(Point.of(100, 0), 20))).size());
        assertEquals(List.of(), PLATE.common(Region.of(Outlines.circle(Point.of(100, 0), 20))));
    }

    @Test
    void aPieceLaidOverAHoleClosesIt() {
        Region holed = one(PLATE.minus(Region.of(Outlines.circle(Point.of(30, 20), 10))));
        Region patched = one(holed.plus(Region.of(Outlines.rectangle(Point.of(20, 10), 20, 20))));
        assertEquals(List.of(), patched.holes());
        assertEquals(2400, patched.area(), 1e-9);
    }

    @Test
    void aMarginIsTakenFromTheEdgesOfHolesToo() {
        Region holed = one(PLATE.minus(Region.of(Outlines.circle(Point.of(30, 20), 10))));
        Region inner = one(holed.shrunk(3, Corner.ROUND));
        assertEquals(54 * 34 - Math.PI * 64, inner.area(), 1e-9);
        assertEquals(1, inner.holes().size());
        Region outer = one(holed.grown(2, Corner.POINTED));
        assertEquals(64 * 44 - Math.PI * 9, outer.area(), 1e-9);
        assertEquals(List.of(), one(holed.grown(6, Corner.ROUND)).holes(), "the hole has closed");
    }

    @Test
    void aNarrowPlacePartsWhatIsInsideTheMargin() {
        Region waisted = one(PLATE.minus(slot(20, 2, 20, 16)))
                .minus(slot(20, 22, 20, 16))
                .get(0);
        List<Region> inner = waisted.shrunk(4, Corner.ROUND);
        assertEquals(2, inner.size());
        assertEquals(inner.get(0).area(), inner.get(1).area(), 1e-6, "left and right are alike");
    }

    @Test
    void aMarginOfNothingChangesNothing() {
        assertEquals(PLATE, one(PLATE.shrunk(0, Corner.ROUND)));
    }

    @Test
    void aMarginOfHalfTheWidthLeavesNothing() {
        assertEquals(List.of(), PLATE.shrunk(20, Corner.ROUND));
        assertEquals(List.of(), Region.of(Outlines.circle(ORIGIN, 10)).shrunk(5, Corner.ROUND));
        assertEquals(1, PLATE.shrunk(19.99, Corner.ROUND).size());
    }

    @Test
    void movedAndTurnedOverItIsTheSamePiece() {
        Region slotted = one(PLATE.minus(slot(10, 10, 20, 4)));
        Region over = slotted.moved(Motion.mirror(ORIGIN, Point.of(1, 2)).then(Motion.shift(5, -3)));
        assertEquals(slotted.area(), over.area(), 1e-9);
        assertEquals(slotted.edgeLength(), over.edgeLength(), 1e-9);
        assertTrue(over.outline().area() > 0, "an outline runs counter-clockwise");
    }

    @Test
    void theRoomiestPlaceIsFarFromEdgesAndHoles() {
        assertEquals(20, PLATE.edgeDistance(PLATE.roomiest()), 0.06);
        Region holed = Region.of(PLATE.outline(), List.of(Outlines.circle(Point.of(20, 20), 30)));
        assertTrue(holed.roomiest().x() > 40, "right of the hole");
        Region ring = Region.of(Outlines.circle(ORIGIN, 60), List.of(Outlines.circle(ORIGIN, 30)));
        assertEquals(7.5, ring.edgeDistance(ring.roomiest()), 0.06);
        assertTrue(ring.contains(ring.roomiest()));
    }

    @Test
    void edgesOutlineAndHolesAreTold() {
        Region slotted = one(PLATE.minus(slot(10, 10, 20, 4)));
        assertEquals(2, slotted.edges().size());
        assertEquals(slotted.outline(), slotted.edges().get(0));
        assertTrue(slotted.holes().get(0).area() < 0, "holes run clockwise");
        assertEquals(200 + 32 + 4 * Math.PI, slotted.edgeLength(), 1e-9);
        assertEquals(PLATE.outline().bounds(), slotted.bounds());
        assertEquals(2, slotted.edgeDistance(Point.of(20, 8)), 1e-9);
        Region again = Region.of(slotted.outline(), slotted.holes());
        assertEquals(slotted, again);
        assertEquals(slotted.hashCode(), again.hashCode());
        assertFalse(slotted.equals(PLATE));
        assertTrue(slotted.toString().endsWith("1 holes]"), slotted.toString());
    }

    /** A frame with an island in its window: the island is a piece of its own, the window a hole of the frame. */
    @Test
    void aHoleBelongsToTheSmallestPieceRoundIt() {
        Curve frame = Outlines.rectangle(ORIGIN, 100, 100);
        Curve window = Outlines.rectangle(Point.of(10, 10), 80, 80).reversed();
        Curve island = Outlines.rectangle(Point.of(30, 30), 40, 40);
        Curve eye = Outlines.circle(Point.of(50, 50), 10).reversed();
        List<Region> sorted = Region.sorted(List.of(eye, island, window, frame));
        assertEquals(2, sorted.size());
        Region inner = sorted.get(0).area() < sorted.get(1).area() ? sorted.get(0) : sorted.get(1);
        assertEquals(1600 - Math.PI * 25, inner.area(), 1e-9);
        assertEquals(
                10_000 - 6400 + 1600 - Math.PI * 25,
                sorted.get(0).area() + sorted.get(1).area(),
                1e-9);
    }

    /** A piece cut along an edge it shares, on the same side and on the other. */
    @Test
    void edgesThatLieOnEachOtherAreCutOnce() {
        Region half = Region.of(Outlines.rectangle(ORIGIN, 30, 40));
        assertEquals(1200, one(PLATE.minus(half)).area(), 1e-9);
        assertEquals(4, one(PLATE.minus(half)).outline().corners().size());
        assertEquals(1200, one(PLATE.common(half)).area(), 1e-9);
        assertEquals(2400, one(PLATE.plus(half)).area(), 1e-9);
        Region other = Region.of(Outlines.rectangle(Point.of(30, 0), 30, 40));
        assertEquals(2400, one(half.plus(other)).area(), 1e-9);
        assertEquals(List.of(), half.common(other));
        assertEquals(List.of(half), half.minus(other));
    }

    /** Two plates that overlap by a hundred-thousandth of a millimetre share no leather. */
    @Test
    void aSliverIsNoPiece() {
        Region beside = Region.of(Outlines.rectangle(Point.of(60 - 1e-5, 0), 20, 40));
        assertEquals(List.of(), PLATE.common(beside));
        Region over = Region.of(Outlines.rectangle(Point.of(60 - 0.01, 0), 20, 40));
        assertEquals(0.4, one(PLATE.common(over)).area(), 1e-9, "a hundredth is");
    }

    /** A hole that touches the outline at its corners or in one place belongs to it as another does. */
    @Test
    void aHoleThatTouchesTheOutlineIsItsHole() {
        Curve plate = Outlines.rectangle(ORIGIN, 40, 40);
        Curve diamond = Outlines.polygon(Point.of(20, 0), Point.of(40, 20), Point.of(20, 40), Point.of(0, 20));
        Region sorted = one(Region.sorted(List.of(plate, diamond.reversed())));
        assertEquals(1, sorted.holes().size());
        assertEquals(800, sorted.area(), 1e-9);
        Curve circle = Outlines.circle(Point.of(10, 20), 20).reversed();
        assertEquals(1, one(Region.sorted(List.of(plate, circle))).holes().size());
    }

    /** Plates beside each other, each with a hole; one has a second plate in its hole. */
    @Test
    void everyHoleGoesToItsOwnPlate() {
        Curve left = Outlines.rectangle(ORIGIN, 40, 40);
        Curve right = Outlines.rectangle(Point.of(50, 0), 30, 40);
        Curve inLeft = Outlines.circle(Point.of(20, 20), 30).reversed();
        Curve inRight = Outlines.circle(Point.of(65, 20), 10).reversed();
        Curve island = Outlines.circle(Point.of(20, 20), 16);
        List<Region> sorted = Region.sorted(List.of(inLeft, right, inRight, left, island));
        assertEquals(
                List.of(right, left, island),
                sorted.stream().map(Region::outline).toList());
        assertEquals(List.of(inRight), sorted.get(0).holes());
        assertEquals(List.of(inLeft), sorted.get(1).holes());
        assertEquals(List.of(), sorted.get(2).holes());
    }

    /** The roomiest place, where it is in one quarter only. */
    @Test
    void theRoomiestPlaceMayBeInAnyQuarter() {
        for (double[] middle : new double[][] {{10, 10}, {50, 10}, {10, 50}, {50, 50}}) {
            Region ball = Region.of(Outlines.circle(Point.of(middle[0], middle[1]), 18));
            Region bars = one(Region.of(Outlines.rectangle(ORIGIN, 60, 4))
                    .plus(one(Region.of(Outlines.rectangle(ORIGIN, 4, 60))
                            .plus(Region.of(Outlines.rectangle(Point.of(0, 56), 60, 4))))));
            Region frame = one(bars.plus(one(Region.of(Outlines.rectangle(Point.of(56, 0), 4, 60))
                    .plus(Region.of(Outlines.rectangle(Point.of(56, 0), 4, 60))))));
            Point roomiest = one(frame.plus(ball)).roomiest();
            assertEquals(0, roomiest.distanceTo(Point.of(middle[0], middle[1])), 2, roomiest.toString());
        }
    }
}
