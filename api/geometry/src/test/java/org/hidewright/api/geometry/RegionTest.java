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
}
