package org.hidewright.layout.engine;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.layout.task.Inner;
import org.hidewright.layout.task.Outline;
import org.hidewright.layout.task.Piece;
import org.hidewright.layout.task.Turning;
import org.junit.jupiter.api.Test;

class TurnedTest {
    /** 8 wide and 4 high about (0, 0), with a place of 2 by 2 in its right half. */
    private static Turned panel(double angle) {
        Form form = new Form(
                new double[] {-4, 4, 4, -4},
                new double[] {-2, -2, 2, 2},
                Turning.free(),
                Piece.ALL,
                List.of(new Inner(Outline.rectangle(1, -1, 3, 1), Piece.ALL)));
        Turned turned = new Turned(form);
        turned.turn(angle);
        return turned;
    }

    /** A quarter turn takes (x, y) to (-y, x): what lay to the right lies above. */
    @Test
    void aQuarterTurnPutsTheRightOnTop() {
        Turned upright = panel(Math.PI / 2);
        assertArrayEquals(new double[] {2, 2, -2, -2, 2}, upright.x);
        assertArrayEquals(new double[] {-4, 4, 4, -4, -4}, upright.y);
        assertBox(upright, -2, -4, 2, 4);
        assertBox(upright.inner[0], -1, 1, 1, 3);
    }

    @Test
    void whatIsTakenOverIsAllThatFollowsFromTheAngle() {
        Turned from = panel(Math.PI / 2);
        Turned into = panel(0);
        into.take(from);
        assertTaken(from, into);
        assertTaken(from.inner[0], into.inner[0]);
        // and what was given stays what it was when the taker is turned on
        into.turn(0);
        assertBox(from, -2, -4, 2, 4);
        assertBox(into, -4, -2, 4, 2);
    }

    private static void assertTaken(Turned from, Turned into) {
        assertEquals(from.angle, into.angle);
        assertArrayEquals(from.x, into.x);
        assertArrayEquals(from.y, into.y);
        assertArrayEquals(from.poleX, into.poleX);
        assertArrayEquals(from.poleY, into.poleY);
        assertArrayEquals(from.box, into.box);
        assertBox(into, from.minX, from.minY, from.maxX, from.maxY);
    }

    private static void assertBox(Turned turned, double minX, double minY, double maxX, double maxY) {
        assertEquals(minX, turned.minX);
        assertEquals(minY, turned.minY);
        assertEquals(maxX, turned.maxX);
        assertEquals(maxY, turned.maxY);
    }

    /** A leaf holds four edges at most, and there are no more leaves, by halving, than that asks for. */
    @Test
    void edgesArePartedAmongLeaves() {
        for (int corners = 3; corners <= 32; corners++) {
            double[] x = new double[corners];
            double[] y = new double[corners];
            for (int corner = 0; corner < corners; corner++) {
                x[corner] = 10 * Math.cos(2 * Math.PI * corner / corners);
                y[corner] = 10 * Math.sin(2 * Math.PI * corner / corners);
            }
            Turned turned = new Turned(new Form(x, y, Turning.free()));
            assertEquals(corners <= 4 ? 1 : corners <= 8 ? 2 : corners <= 16 ? 4 : 8, turned.leaves);
            assertEquals(0, turned.firstEdge[0]);
            assertEquals(corners, turned.firstEdge[turned.leaves]);
            for (int leaf = 0; leaf < turned.leaves; leaf++) {
                int edges = turned.firstEdge[leaf + 1] - turned.firstEdge[leaf];
                assertTrue(edges >= 1 && edges <= 4, corners + " corners, leaf " + leaf + ": " + edges);
            }
        }
    }
}
