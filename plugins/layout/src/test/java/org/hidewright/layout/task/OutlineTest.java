package org.hidewright.layout.task;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Outlines, worked out by hand. */
class OutlineTest {
    /** An L: 6 wide and 5 high, less the 4 by 3 above its foot; its low left corner lies at (3, -7). */
    private static final double[] X = {3, 9, 9, 5, 5, 3};

    private static final double[] Y = {-7, -7, -5, -5, -2, -2};

    private static double[] backwards(double[] numbers) {
        double[] back = new double[numbers.length];
        for (int index = 0; index < back.length; index++) {
            back[index] = numbers[back.length - 1 - index];
        }
        return back;
    }

    /** 6 · 5 - 4 · 3 = 18. */
    @Test
    void theAreaIsThatWithinWhicheverWayTheKnifeGoes() {
        Outline onward = new Outline(X, Y);
        Outline back = new Outline(backwards(X), backwards(Y));
        assertEquals(18, onward.area());
        assertEquals(18, back.area());
        assertFalse(onward.clockwise());
        assertTrue(back.clockwise());
    }

    @Test
    void cornersThatAreDrawnTwiceAreOne() {
        Outline doubled = new Outline(
                new double[] {3, 3, 9, 9, 5, 5, 5, 3, 3, 3}, new double[] {-7, -7, -7, -5, -5, -5, -2, -2, -7, -7});
        assertEquals(6, doubled.corners());
        assertArrayEquals(X, doubled.xs());
        assertArrayEquals(Y, doubled.ys());
        assertEquals(9, doubled.x(2));
        assertEquals(-5, doubled.y(2));
    }

    /** A quarter turn takes (x, y) to (-y, x). */
    @Test
    void isTurnedAboutItsOriginAndThenMoved() {
        Outline moved = new Outline(X, Y).moved(Math.PI / 2, 100, 20);
        assertArrayEquals(new double[] {107, 107, 105, 105, 102, 102}, moved.xs());
        assertArrayEquals(new double[] {23, 29, 29, 25, 25, 23}, moved.ys());
    }

    /** An eighth of a turn takes (4, 3) to (4 - 3, 4 + 3) / √2. */
    @Test
    void isTurnedByAnyAngle() {
        Outline moved = new Outline(new double[] {0, 4, 0}, new double[] {0, 3, 3}).moved(Math.PI / 4, 1, 2);
        assertEquals(1 + 1 / Math.sqrt(2), moved.x(1), 1e-12);
        assertEquals(2 + 7 / Math.sqrt(2), moved.y(1), 1e-12);
    }

    @Test
    void whatIsNoOutlineIsToldWithItsReason() {
        assertRefused("2 and 3", new double[] {0, 1}, new double[] {0, 1, 1});
        assertRefused("Corner 3 ", new double[] {0, 1, Double.NaN}, new double[] {0, 0, 1});
        assertRefused("Corner 2 ", new double[] {0, 1, 1}, new double[] {0, Double.POSITIVE_INFINITY, 1});
        assertRefused("here 2.", new double[] {0, 1, 0}, new double[] {0, 1, 0});
        assertRefused("here 1.", new double[] {5, 5, 5}, new double[] {2, 2, 2});
        assertRefused("here 0.", new double[0], new double[0]);
    }

    private static void assertRefused(String told, double[] x, double[] y) {
        String message = assertThrows(IllegalArgumentException.class, () -> new Outline(x, y))
                .getMessage();
        assertTrue(message.contains(told), message);
    }

    /** A panel of 100 by 50 with a hole of 10 by 20 and one of 3 by 4: 5000 - 200 - 12. */
    @Test
    void holesAreNoLeather() {
        Outline edge = Outline.rectangle(0, 0, 100, 50);
        List<Outline> holes = List.of(Outline.rectangle(10, 10, 20, 30), Outline.rectangle(60, 5, 63, 9));
        assertEquals(4788, new Sheet("panel", edge, holes, List.of(), 1).area());
        assertEquals(5000, Sheet.plain("panel", edge).area());
    }

    @Test
    void eachKindOfZoneBarsOnlyWhatAvoidsIt() {
        Outline scar = Outline.rectangle(0, 0, 1, 1);
        for (int kind = 0; kind <= Zone.MOST; kind++) {
            Zone zone = new Zone(scar, kind);
            assertTrue(zone.bars(Piece.ALL));
            assertTrue(zone.bars(1L << kind));
            assertFalse(zone.bars(~(1L << kind)));
        }
        assertThrows(IllegalArgumentException.class, () -> new Zone(scar, -1));
        assertThrows(IllegalArgumentException.class, () -> new Zone(scar, Zone.MOST + 1));
    }
}
