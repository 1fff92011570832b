package org.hidewright.layout.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.hidewright.layout.task.Turning;
import org.junit.jupiter.api.Test;

class CornerToCornerTest {
    private static final Turning QUARTERS = Turning.steps(List.of(0.0, 90.0, 180.0, 270.0));
    private static final double SMALLER = 0.01;

    private static Form form(double[] x, double[] y) {
        return new Form(x, y, QUARTERS).smaller(SMALLER);
    }

    private static final Form TRIANGLE = form(new double[] {0, 30, 0}, new double[] {0, 0, 40});
    private static final Form SQUARE = form(new double[] {0, 30, 30, 0}, new double[] {0, 0, 30, 30});

    private static Crowd crowd(Form... forms) {
        Crowd crowd = new Crowd(new Rectangle(0, 0, 200, 100), forms);
        for (int part = 0; part < forms.length; part++) {
            crowd.lay(part, 0, 100 + 50 * part, 50);
        }
        crowd.measureAll();
        return crowd;
    }

    @Test
    void onlyPartsThatTouchHaveCorners() {
        Form apart = new Form(new double[] {0, 30, 0}, new double[] {0, 0, 40}, QUARTERS);
        Crowd crowd = crowd(apart, TRIANGLE);
        CornerToCorner corners = new CornerToCorner(crowd, Scratch.of(crowd.form));
        assertFalse(corners.has(0));
        assertTrue(corners.has(1));
    }

    /** At full size one of its corners is a corner of the square or the panel, and one of its edges runs along one there. */
    @Test
    void aCornerOfThePartComesToACorner() {
        Crowd crowd = crowd(TRIANGLE, SQUARE);
        CornerToCorner corners = new CornerToCorner(crowd, Scratch.of(crowd.form));
        SplittableRandom random = new SplittableRandom(5);
        double[][] targets = {{0, 0}, {200, 0}, {200, 100}, {0, 100}, {135, 35}, {165, 35}, {165, 65}, {135, 65}};
        int[] met = new int[targets.length];
        for (int draw = 0; draw < 2000; draw++) {
            assertTrue(corners.draw(0, random));
            Turned as = Scratch.at(crowd.form[0].whole, null, corners.as().angle);
            int hits = 0;
            for (int corner = 0; corner < as.edges; corner++) {
                double x = corners.x() + as.x[corner];
                double y = corners.y() + as.y[corner];
                for (int target = 0; target < targets.length; target++) {
                    if (Math.hypot(x - targets[target][0], y - targets[target][1]) < 1e-9) {
                        met[target]++;
                        hits++;
                    }
                }
            }
            assertTrue(hits > 0);
        }
        for (int target = 0; target < targets.length; target++) {
            assertTrue(met[target] > 100, met[target] + " at corner " + target);
        }
    }

    /** Two triangles alone: the slanted edges of both run along one another, or the square sides do; never a slanted along a square one. */
    @Test
    void edgesRunAlongOneAnother() {
        Form slanted = form(new double[] {0, 40, 17}, new double[] {0, 9, 31});
        Crowd crowd = crowd(slanted, slanted);
        CornerToCorner corners = new CornerToCorner(crowd, Scratch.of(crowd.form));
        SplittableRandom random = new SplittableRandom(6);
        int drawn = 0;
        for (int draw = 0; draw < 2000; draw++) {
            if (corners.draw(0, random)) {
                drawn++;
                // no side is square to the panel, and of two that are alike only half turns are parallel
                double turned = Math.IEEEremainder(corners.as().angle, Math.PI);
                assertEquals(0, turned, 1e-9);
            }
        }
        assertTrue(drawn > 500, "drawn " + drawn);
    }
}
