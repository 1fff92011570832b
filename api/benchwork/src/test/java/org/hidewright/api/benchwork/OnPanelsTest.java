package org.hidewright.api.benchwork;

import static org.hidewright.api.benchwork.Panel.line;
import static org.hidewright.api.benchwork.Panel.panel;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Motion;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Seam;
import org.junit.jupiter.api.Test;

/** What comes on a panel or into it: pockets, zips, patches; held to closed forms of plane geometry. */
class OnPanelsTest {
    private static final double EXACT = 1e-6;

    @Test
    void aPocketIsSewnThroughThePanelItLiesOn() throws NoRoom {
        Piece panel = panel(100, 90, 0);
        Piece slip = Piece.of("slip", "Slip", Outlines.rectangle(Point.of(0, 0), 100, 50), 1);
        Pocket.on(panel, slip, Motion.shift(0, 0)).marked(150, 250);
        // round the bottom, from the left mouth corner down, along and up: two corners
        Piece turned = Piece.of(
                "slip",
                "Slip",
                Outlines.polygon(Point.of(0, 50), Point.of(0, 0), Point.of(100, 0), Point.of(100, 50)),
                1);
        Piece under = panel(100, 90, 0);
        Seam seam = Pocket.on(under, turned, Motion.shift(0, 20)).sewn("sides", 0, 200, 4, 4);
        assertEquals("slip-sides", seam.id());
        List<Point> top = line(turned, "sides").holes();
        List<Point> below = line(under, "slip-sides").holes();
        assertEquals(top.size(), below.size());
        assertEquals(Point.of(4, 47.5), top.get(0));
        for (int i = 0; i < top.size(); i++) {
            assertEquals(top.get(i).plus(0, 20), below.get(i));
        }
        assertEquals(1, panel.part().marks().size());
        assertThrows(NoRoom.class, () -> Pocket.on(panel, slip, Motion.shift(1, 0)));
        Item item =
                Item.builder().part(turned.part()).part(under.part()).seam(seam).build();
        assertEquals(1, item.seams().size());
    }

    @Test
    void aZipHasAWindowAndStitchesRoundIt() throws NoRoom {
        ZipWindow zip = ZipWindow.of(120, 5, 5);
        assertEquals(120, zip.length());
        assertEquals(8, zip.width());
        assertEquals(18, zip.leastTape());
        assertEquals(5, zip.leastTapeEnd());
        Piece panel = panel(180, 100, 0);
        StitchRow row = zip.in(panel, "zip", Point.of(90, 70), 0, 3.5);
        Curve window = Curve.of(panel.part().cutOuts().get(0));
        assertEquals(120, window.bounds().width(), EXACT);
        assertEquals(8, window.bounds().height(), EXACT);
        row.holes().forEach(hole -> assertEquals(3, window.distanceTo(hole), 1e-4));
        assertEquals(30, window.bounds().minX(), EXACT, "its middle is where it was wanted");
        assertEquals(66, window.bounds().minY(), EXACT);
        assertEquals(2 * (120 - 8) + Math.PI * 14, row.line().length(), 1e-4);
        assertTrue(row.line().isClosed());
        Piece upright = panel(100, 180, 0);
        zip.in(upright, "zip", Point.of(50, 90), Math.PI / 2, 3.5);
        assertEquals(120, Curve.of(upright.part().cutOuts().get(0)).bounds().height(), EXACT);
        assertThrows(NoRoom.class, () -> zip.in(panel(100, 100, 0), "zip", Point.of(50, 70), 0, 3.5));
        assertThrows(IllegalArgumentException.class, () -> ZipWindow.of(0, 5, 5));
    }

    @Test
    void aPatchHasLeatherRoundItsHole() throws NoRoom {
        Piece patch = Reinforcement.patch("patch", "Patch", 4, 10, 1);
        assertEquals(20, patch.outline().bounds().width(), EXACT);
        assertEquals("patch.middle", Reinforcement.hole(patch, 4).toString());
        assertEquals(
                21,
                Reinforcement.patch("patch", "Patch", 3, 15, 1)
                        .outline()
                        .bounds()
                        .width(),
                EXACT);
    }
}
