package org.hidewright.documents.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.DimensionLine;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Shape;
import org.junit.jupiter.api.Test;

class MeasurePlaceTest {
    private static final double LETTER = 2.2;

    private static DimensionLine level(double from, double to, double offset) {
        return DimensionLine.of(Point.of(from, 0), Point.of(to, 0), offset, (to - from) + " mm", LETTER);
    }

    private static Label place(DimensionLine dimension, Shape... others) {
        return new MeasurePlace(List.of(others).isEmpty() ? List.of(dimension) : List.of(others), WrappingTest.EVEN)
                .of(dimension);
    }

    @Test
    void aNumberThatHasRoomStandsAboveItsLine() {
        Label label = place(level(0, 40, -5));
        assertEquals(Point.of(20, -5), label.at());
        assertEquals(Anchor.BOTTOM, label.anchor());
    }

    @Test
    void aNumberLongerThanItsLineStandsBeforeIt() {
        // 9 mm are enough for arrows inside, so the line is not drawn on
        Label label = place(level(0, 9, -5));
        assertTrue(Point.of(-1, -5).distanceTo(label.at()) < 1e-9, label::toString);
        assertEquals(Anchor.RIGHT, label.anchor());
        // 6 mm are not: 4 mm of line with an arrow, and 1 mm clear
        assertTrue(Point.of(-5, -5).distanceTo(place(level(0, 6, -5)).at()) < 1e-9);
    }

    @Test
    void itStandsBehindWhereAnotherLineIsBefore() {
        DimensionLine own = level(20, 29, -5);
        Label label = place(own, own, level(0, 15, -5));
        assertTrue(Point.of(30, -5).distanceTo(label.at()) < 1e-9, label::toString);
        assertEquals(Anchor.LEFT, label.anchor());
        Label crowded = place(own, own, level(0, 15, -5), level(35, 60, -5));
        assertEquals(Anchor.RIGHT, crowded.anchor(), "with no room on either side, before");
    }

    @Test
    void anUprightNumberRunsUpOrDownItsOwnLine() {
        DimensionLine upright = DimensionLine.of(Point.of(0, 0), Point.of(0, 9), 5, "9.0 mm", LETTER);
        Label label = place(upright);
        assertEquals(-5, label.at().x(), 1e-9);
        assertEquals(-1, label.at().y(), 1e-9);
        assertEquals(Anchor.RIGHT, label.anchor());
        assertTrue(label.turn() > 1.5 && label.turn() < 1.6);
    }
}
