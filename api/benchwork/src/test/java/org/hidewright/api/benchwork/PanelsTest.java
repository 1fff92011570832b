package org.hidewright.api.benchwork;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Faults;
import org.junit.jupiter.api.Test;

/** Outlines of panels against lengths and areas in closed form. */
class PanelsTest {
    private static final double EXACT = 1e-9;
    private static final double QUARTER = 1 - Math.PI / 4;

    private static void box(Curve outline, double width, double height) {
        Box box = outline.bounds();
        assertEquals(0, box.minX(), EXACT);
        assertEquals(0, box.minY(), EXACT);
        assertEquals(width, box.maxX(), EXACT);
        assertEquals(height, box.maxY(), EXACT);
        assertEquals(List.of(), Faults.of(outline));
    }

    @Test
    void anUprightPanelIsRoundedBelow() {
        Curve panel = Panels.upright(80, 120, 10);
        box(panel, 80, 120);
        assertEquals(80 * 120 - 2 * QUARTER * 100, panel.area(), 1e-6);
        assertEquals(Point.of(0, 120), panel.start());
        assertEquals(6, panel.segments().size());
    }

    @Test
    void sharpCornersAndWholeRoundsAreMeantToo() {
        Curve sharp = Panels.upright(80, 120, 0);
        box(sharp, 80, 120);
        assertEquals(9600, sharp.area(), 1e-6);
        assertEquals(4, sharp.segments().size());
        Curve round = Panels.upright(80, 120, 40);
        box(round, 80, 120);
        assertEquals(80 * 80 + Math.PI * 1600 / 2, round.area(), 1e-6);
        assertEquals(5, round.segments().size(), "no straight bottom is left");
        Curve low = Panels.upright(80, 40, 40);
        assertEquals(Math.PI * 1600 / 2, low.area(), 1e-6);
        assertEquals(3, low.segments().size(), "two quarters and the mouth");
    }

    @Test
    void theSeamIsTheFirstStretch() {
        for (double radius : new double[] {0, 10, 40}) {
            double seam = Panels.seam(80, 120, radius);
            assertEquals(2 * (120 - radius) + 80 - 2 * radius + Math.PI * radius, seam, EXACT);
            Point end = Panels.upright(80, 120, radius).at(seam).point();
            assertEquals(80, end.x(), EXACT);
            assertEquals(120, end.y(), EXACT);
        }
    }

    @Test
    void aFlapGoesOnAboveIt() {
        Curve panel = Panels.flapped(80, 120, 10, 50, 20);
        box(panel, 80, 170);
        assertEquals(80 * 170 - 2 * QUARTER * 100 - 2 * QUARTER * 400, panel.area(), 1e-6);
        Point end = panel.at(Panels.seam(80, 120, 10)).point();
        assertEquals(120, end.y(), EXACT, "the seam ends where the flap begins");
        Curve square = Panels.flapped(80, 120, 0, 50, 0);
        assertEquals(80 * 170, square.area(), 1e-6);
        Curve round = Panels.flapped(80, 120, 0, 50, 40);
        assertEquals(80 * 130 + Math.PI * 1600 / 2, round.area(), 1e-6);
        assertEquals(List.of(), Faults.of(round));
    }

    @Test
    void withoutAFlapItIsUpright() {
        assertEquals(Panels.upright(80, 120, 10), Panels.flapped(80, 120, 10, 0, 0));
    }
}
