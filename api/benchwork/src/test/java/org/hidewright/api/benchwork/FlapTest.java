package org.hidewright.api.benchwork;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Outlines;
import org.junit.jupiter.api.Test;

class FlapTest {
    private static final double EXACT = 1e-9;
    private final Closure snap = Closure.snap(4.5, 3.5, 12);

    @Test
    void itReachesAsFarBeyondTheClosureAsThatNeeds() {
        Flap flap = Flap.closedBy(snap, 120, 2, 15);
        assertEquals(36, flap.down(), EXACT, "three tenths of the way down");
        assertEquals(snap.leastToEnd() + 4, flap.end(), EXACT);
        assertEquals(15 + 36 + 9 + 4, flap.length(), EXACT);
    }

    @Test
    void aLowFrontKeepsLeatherAboveTheClosure() {
        Flap flap = Flap.closedBy(snap, 30, 2, 15);
        assertEquals(9 + 4, flap.down(), EXACT, "what the closure needs, and twice the leather");
    }

    @Test
    void itsCornersFitItsWidthAndWhatHangs() {
        assertEquals(18, new Flap(15, 30, 20).radius(80));
        assertEquals(10, new Flap(15, 30, 20).radius(30), "a third of the width");
        assertEquals(12, new Flap(15, 14, 10).radius(80), "half of what hangs");
        assertEquals(0, Flap.NONE.radius(80));
        assertEquals(0, Flap.NONE.length());
    }

    @Test
    void theBackIsLongerByIt() {
        Flap flap = new Flap(15, 30, 20);
        assertEquals(Panels.flapped(80, 120, 10, 65, 18), flap.back(80, 120, 10));
        assertEquals(Panels.upright(80, 120, 10), Flap.NONE.back(80, 120, 10));
    }

    /** Unrolled, the way from the closure on the flap to its place on the front is down, over the fold, and down again. */
    @Test
    void bothHalvesOfTheClosureMeet() throws NoRoom {
        Flap flap = Flap.closedBy(snap, 120, 2, 15);
        Curve outline = flap.back(80, 120, 10);
        Piece back = Piece.of("back", "Back", outline, 2);
        Piece front = Piece.of("front", "Front", Outlines.rectangle(Point.of(0, 0), 80, 120), 2);
        Fastened fastened = flap.close(snap, back, front, 80, 120);
        assertEquals(1, fastened.fittings().size());
        Point above = back.part().holes().get(0).centre();
        Point below = front.part().holes().get(0).centre();
        assertEquals(40, above.x(), EXACT);
        assertEquals(40, below.x(), EXACT);
        assertEquals(above.y() - 120 - 15, 120 - below.y(), EXACT);
        assertTrue(outline.bounds().maxY() - above.y() >= snap.leastToEnd(), "to the end of the flap");
    }
}
