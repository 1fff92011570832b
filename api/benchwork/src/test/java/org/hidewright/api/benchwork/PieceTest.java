package org.hidewright.api.benchwork;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Outlines;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What has no room on a piece. */
class PieceTest {
    private Piece strip;

    @BeforeEach
    void draw() throws NoRoom {
        strip = Piece.of("strip", "Strip", Outlines.rectangle(Point.of(0, 0), 60, 10), 2);
    }

    @Test
    void aRoundWindowIsOverTheEdgeThoughItsStartIsNot() throws NoRoom {
        // a circle starts beside its centre, 6 mm to one side, where there is leather; above and below there is none
        Curve over = Outlines.circle(Point.of(30, 5), 12);
        NoRoom none = assertThrows(NoRoom.class, () -> strip.window("window", over));
        assertEquals("strip", none.part());
        assertEquals("window", none.what());
        strip.window("window", Outlines.circle(Point.of(30, 5), 8));
        assertEquals(1, strip.part().cutOuts().size());
    }

    @Test
    void aWholePartHasAllItsStitches() throws NoRoom {
        strip.stitches("row", Lines.straight(5, 5, 55, 5), 5);
        strip.hole("beside", Point.of(30, 7), 3);
        strip.window("between", Outlines.rectangle(Point.of(32, 3), 2, 4));
        assertEquals(strip.part(), strip.wholePart());
        strip.window("slot", Outlines.rectangle(Point.of(19, 3), 2, 4));
        assertEquals("row", assertThrows(NoRoom.class, strip::wholePart).what());
    }

    @Test
    void norDoesAHoleTakeOneAway() throws NoRoom {
        strip.stitches("row", Lines.straight(5, 5, 55, 5), 5);
        strip.hole("hole", Point.of(30, 6.4), 3);
        assertEquals("row", assertThrows(NoRoom.class, strip::wholePart).what());
    }

    @Test
    void whatIsCutBelowTheSeamIsTold() throws NoRoom {
        strip.hole("hole", Point.of(10, 5), 3);
        strip.window("slot", Outlines.rectangle(Point.of(29, 4), 2, 4));
        strip.cutAbove(3.5, "closure");
        assertEquals(
                "closure",
                assertThrows(NoRoom.class, () -> strip.cutAbove(3.6, "closure")).what());
        Piece slotted = Piece.of("slotted", "Slotted", Outlines.rectangle(Point.of(0, 0), 60, 10), 2);
        slotted.window("slot", Outlines.rectangle(Point.of(29, 4), 2, 4));
        slotted.cutAbove(4, "closure");
        assertEquals(
                "slotted",
                assertThrows(NoRoom.class, () -> slotted.cutAbove(4.1, "closure"))
                        .part());
    }
}
