package org.hidewright.api.benchwork;

import static org.hidewright.api.benchwork.Panel.line;
import static org.hidewright.api.benchwork.Panel.panel;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.item.Seam;
import org.junit.jupiter.api.Test;

/** Tabs round a ring or a buckle, held to closed forms of plane geometry. */
class RingTabTest {
    private static final double EXACT = 1e-6;

    @Test
    void aTabForABuckleHasASlotInItsFold() throws NoRoom {
        RingTab tab = RingTab.ofBuckle("tab", "Tab", 20, 30, 4, 2.5, 22, 5);
        Box slot = tab.strip().part().cutOuts().get(0).bounds();
        double fold = 30 + Math.PI * (2 + 1.25) / 2;
        assertEquals(fold, (slot.minX() + slot.maxX()) / 2, EXACT);
        assertEquals(10, (slot.minY() + slot.maxY()) / 2, EXACT);
        assertEquals(22, slot.width(), EXACT);
        assertEquals(5, slot.height(), EXACT);
        assertEquals(
                "prong",
                assertThrows(NoRoom.class, () -> RingTab.ofBuckle("tab", "Tab", 10.9, 30, 4, 2.5, 22, 5))
                        .what());
        assertThrows(NoRoom.class, () -> RingTab.ofBuckle("tab", "Tab", 20, 30, 4, 2.5, 5, 5));
    }

    @Test
    void aTabHoldsItsRingWithBothLegs() throws NoRoom {
        RingTab tab = RingTab.of("tab", "Tab", 19, 25, 4, 2.5);
        double turn = Math.PI * (2 + 1.25);
        assertEquals(50 + turn, tab.strip().outline().bounds().width(), EXACT);
        Piece panel = panel(100, 60, 0);
        Seam seam = tab.sewn(panel, Point.of(80, 30), Math.PI, 3, 4);
        assertEquals("[tab.top, tab.under, panel.tab-box]", seam.lines().toString());
        assertEquals(
                25 + turn / 2,
                tab.strip()
                        .part()
                        .folds()
                        .get(0)
                        .line()
                        .segments()
                        .get(0)
                        .start()
                        .x(),
                EXACT);
        assertEquals(2, tab.strip().part().folds().get(0).insideRadius(), EXACT);
        List<Point> top = line(tab.strip(), "top").holes();
        List<Point> under = line(tab.strip(), "under").holes();
        List<Point> through = line(panel, "tab-box").holes();
        double middle = 25 + turn / 2;
        for (int i = 0; i < top.size(); i++) {
            assertEquals(top.get(i).x() - middle, middle - under.get(i).x(), EXACT, "folded, they meet");
            assertEquals(top.get(i).y(), under.get(i).y(), EXACT);
            // on the panel as far from the wire as on the leg
            assertEquals(top.get(i).x() - 25 - turn, 80 - through.get(i).x(), EXACT);
        }
        assertEquals(5, top.stream().mapToDouble(Point::x).min().orElseThrow() - 25 - turn, EXACT);
        assertEquals(3, top.stream().mapToDouble(Point::y).min().orElseThrow(), EXACT);
        assertEquals(16, top.stream().mapToDouble(Point::y).max().orElseThrow(), EXACT);
        assertEquals(50 + turn - 3, top.stream().mapToDouble(Point::x).max().orElseThrow(), EXACT);
        double across = through.stream().mapToDouble(Point::y).max().orElseThrow()
                + through.stream().mapToDouble(Point::y).min().orElseThrow();
        assertEquals(60, across, EXACT, "in the middle of where the ring lies");
        RingTab narrow = RingTab.of("tab", "Tab", 6, 25, 4, 2.5);
        assertThrows(NoRoom.class, () -> narrow.sewn(panel, Point.of(80, 30), Math.PI, 3, 4));
        assertThrows(IllegalArgumentException.class, () -> RingTab.of("tab", "Tab", 19, 5, 4, 2.5));
        RingTab small = RingTab.of("tab", "Tab", 19, 7, 4, 2.5);
        assertThrows(NoRoom.class, () -> small.sewn(panel, Point.of(80, 30), Math.PI, 3, 4));
    }
}
