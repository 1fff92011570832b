package org.hidewright.layout.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.hidewright.layout.task.Turning;
import org.junit.jupiter.api.Test;

class BesideOthersTest {
    private static final Turning QUARTERS = Turning.steps(List.of(0.0, 90.0, 180.0, 270.0));

    private static final Form BRACKET =
            new Form(new double[] {0, 10, 10, 1, 1, 0}, new double[] {0, 0, 1, 1, 10, 10}, QUARTERS);
    private static final Form SQUARE = new Form(new double[] {0, 4, 4, 0}, new double[] {0, 0, 4, 4}, QUARTERS);
    private static final Form SINGLE = new Form(new double[] {0, 3, 0}, new double[] {0, 0, 3}, QUARTERS);

    private static Crowd crowd() {
        Form[] forms = {BRACKET, BRACKET, SQUARE, SQUARE, SINGLE};
        Crowd crowd = new Crowd(new Rectangle(0, 0, 200, 200), forms);
        for (int part = 0; part < forms.length; part++) {
            crowd.lay(part, part % 2 * Math.PI / 2, 20 + 35 * part, 100);
        }
        crowd.measureAll();
        return crowd;
    }

    @Test
    void onlyCopiesHavePairs() {
        Crowd crowd = crowd();
        BesideOthers beside = new BesideOthers(crowd, Scratch.of(crowd.form));
        assertTrue(beside.has(0));
        assertTrue(beside.has(3));
        assertFalse(beside.has(4));
        assertTrue(beside.ways(0, 1) > 0);
        assertTrue(beside.ways(0, 2) > 0);
        assertEquals(0, beside.ways(0, 4));
        assertEquals(0, beside.ways(4, 0));
    }

    /** However the other part is turned: what lies beside it touches it almost, and overlaps nothing. */
    @Test
    void placesLieCloseToTheOtherAndFree() {
        Crowd crowd = crowd();
        BesideOthers beside = new BesideOthers(crowd, Scratch.of(crowd.form));
        for (int other : new int[] {1, 2, 3}) {
            for (int way = 0; way < beside.ways(0, other); way++) {
                beside.set(0, other, way);
                assertEquals(0, crowd.cost(0, beside.as(), beside.x(), beside.y(), Double.POSITIVE_INFINITY));
                double towards = 0.1;
                double dx = crowd.x[other] - beside.x();
                double dy = crowd.y[other] - beside.y();
                double length = Math.hypot(dx, dy);
                boolean touches = false;
                for (double turn = 0; turn < 2 * Math.PI; turn += Math.PI / 8) {
                    double x = beside.x() + towards * (dx * Math.cos(turn) - dy * Math.sin(turn)) / length;
                    double y = beside.y() + towards * (dx * Math.sin(turn) + dy * Math.cos(turn)) / length;
                    touches |= crowd.cost(0, beside.as(), x, y, Double.POSITIVE_INFINITY) > 0;
                }
                assertTrue(touches, "way " + way + " beside " + other);
            }
        }
    }

    /** A bracket gains most by another bracket, so that it is drawn there rather than beside squares. */
    @Test
    void thoseThatPairCloselyAreDrawnRather() {
        Crowd crowd = crowd();
        BesideOthers beside = new BesideOthers(crowd, Scratch.of(crowd.form));
        SplittableRandom random = new SplittableRandom(3);
        int besideBracket = 0;
        int drawn = 0;
        for (int draw = 0; draw < 1000; draw++) {
            if (beside.draw(0, random)) {
                drawn++;
                besideBracket += Math.abs(beside.x() - crowd.x[1]) < 16 ? 1 : 0;
            }
        }
        assertTrue(drawn > 900, "drawn " + drawn);
        // one bracket and two squares: a third of the draws if all were taken alike
        assertTrue(besideBracket > 0.4 * drawn, besideBracket + " of " + drawn);
    }
}
