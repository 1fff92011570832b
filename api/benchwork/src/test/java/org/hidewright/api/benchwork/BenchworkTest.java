package org.hidewright.api.benchwork;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Faults;
import org.hidewright.api.geometry.Motion;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.item.Face;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.Part;
import org.hidewright.api.item.Seam;
import org.hidewright.api.item.StitchLine;
import org.junit.jupiter.api.Test;

/** Parts of bench work, held to closed forms of plane geometry. */
class BenchworkTest {
    private static final double EXACT = 1e-6;

    private static Piece panel(double width, double height, double radius) throws NoRoom {
        return Piece.of("panel", "Panel", Outlines.roundedRectangle(Point.of(0, 0), width, height, radius), 2);
    }

    private static StitchLine line(Piece piece, String id) {
        return piece.part().stitchLines().stream()
                .filter(line -> line.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void flatPanelsGoRoundABody() {
        // girth of a bar 30 x 10 lying between two panels that touch its faces and its edges: never more than its sides
        assertEquals(40, Allowances.flatPanels(30, 10, 0));
        // a round thing of diameter d has a girth of π d; two panels of 2 d each go round it with room
        assertTrue(2 * Allowances.flatPanels(14.5, 14.5, 0) > Math.PI * 14.5);
        assertEquals(42.5, Allowances.flatPanels(30, 10, 2.5));
    }

    @Test
    void mouldedLeatherGoesOverAndDown() {
        assertEquals(60 + 2 * 20 + 2 * 3, Allowances.moulded(60, 20, 3));
    }

    @Test
    void aBendTakesTheArcOfItsMiddle() {
        assertEquals(Math.PI * (2.5 / 2 + 2.4 / 2), Allowances.bend(1.25, 2.4, Math.PI), EXACT);
    }

    @Test
    void theInnerOfTwoLayersIsShorterByTheDifferenceOfTheirArcs() {
        double outer = Allowances.bend(3 + 0.8, 1.6, Math.PI);
        double inner = Allowances.bend(3, 0.8, Math.PI);
        assertEquals(outer - inner, Allowances.innerShorter(1.6, 0.8, Math.PI), EXACT);
    }

    @Test
    void aBindingCoversBothFaces() throws NoRoom {
        // two covers, the stack, and two quarter turns along the middle of 1 mm leather round sharp corners
        assertEquals(2 * 6 + 4 + 2 * Math.PI / 2 * 0.5, Allowances.binding(6, 4, 1), EXACT);
        Piece strip = Binding.strip("binding", "Binding", 200, 10, 6, 4, 1);
        Box box = strip.outline().bounds();
        assertEquals(210, box.width(), EXACT);
        assertEquals(Allowances.binding(6, 4, 1), box.height(), EXACT);
        double over = foldAt(strip, "over");
        double under = foldAt(strip, "under");
        assertEquals(6 + Math.PI / 4 * 0.5, under, EXACT, "the cover, and half of the bend");
        assertEquals(box.height() - under, over, EXACT);
        assertEquals(
                4 + Math.PI / 2 * 0.5,
                over - under,
                EXACT,
                "between the middles of both bends: the stack and half of each");
        List<StitchRow> rows = Binding.rows(strip, 3, 5, 4);
        assertEquals(rows.get(0).holes().size(), rows.get(1).holes().size());
        for (int i = 0; i < rows.get(0).holes().size(); i++) {
            assertEquals(
                    rows.get(0).holes().get(i).x(), rows.get(1).holes().get(i).x(), EXACT, "they meet");
        }
        assertEquals(3, box.maxY() - rows.get(0).holes().get(0).y(), EXACT);
        assertEquals(3, rows.get(1).holes().get(0).y(), EXACT);
        assertEquals(5, rows.get(1).holes().get(0).x(), EXACT);
        assertEquals(205, rows.get(1).line().end().x(), EXACT);
    }

    private static double foldAt(Piece piece, String id) {
        return piece.part().folds().stream()
                .filter(fold -> fold.id().equals(id))
                .findFirst()
                .orElseThrow()
                .line()
                .segments()
                .get(0)
                .start()
                .y();
    }

    @Test
    void aPieceKeepsWhatIsSaidOfIt() throws NoRoom {
        Part part = panel(100, 60, 0)
                .leather("shoulder")
                .oversize(1.5)
                .pieces(1, 2)
                .backbone(0.5)
                .shows(Face.GRAIN, Face.FLESH)
                .edge("mouth", "mouth", 0, 1000)
                .mark(Lines.straight(10, 10, 90, 10))
                .part();
        assertEquals("shoulder", part.leather());
        assertEquals(1.5, part.oversize());
        assertEquals(3, part.pieces());
        assertEquals(2, part.mirrored());
        assertEquals(0.5, part.direction().orElseThrow());
        assertEquals(2, part.shows().size());
        assertEquals(2.0, part.thickness().orElseThrow());
        assertEquals(320, part.edges().get(0).to(), EXACT, "an edge ends where the outline does");
        assertEquals(Role.MARK, part.marks().get(0).role());
        Piece panel = panel(100, 60, 0);
        assertEquals(Point.of(50, 30), panel.middle());
        assertEquals("panel", panel.id());
        assertEquals(2, panel.thickness());
        assertEquals("panel", panel.toString());
    }

    @Test
    void anOutlineRunsCounterClockwiseHoweverItIsDrawn() throws NoRoom {
        Curve drawn = Outlines.rectangle(Point.of(0, 0), 40, 20).reversed();
        assertEquals(800, Piece.of("a", "A", drawn, 1).outline().area(), EXACT);
    }

    @Test
    void anOutlineThatCrossesItselfIsNoPiece() {
        Curve bow = Outlines.polygon(Point.of(0, 0), Point.of(10, 10), Point.of(10, 0), Point.of(0, 10));
        NoRoom none = assertThrows(NoRoom.class, () -> Piece.of("bow", "Bow", bow, 1));
        assertEquals("bow", none.part());
        assertEquals("bow", none.what());
        assertThrows(NoRoom.class, () -> Piece.of("open", "Open", Lines.straight(0, 0, 1, 1), 1));
    }

    @Test
    void rowsStandInsideTheEdge() throws NoRoom {
        Piece panel = panel(100, 60, 10);
        StitchRow row = panel.stitches("rim", panel.inside(4), 4);
        assertEquals("panel.rim", row.on().toString());
        row.holes().forEach(hole -> assertEquals(4, panel.outline().distanceTo(hole), 1e-4));
        // once round at 4 mm: 2 (80 + 40) + 2 π 6 = 277.7 mm, 69 gaps of 4.02 mm
        assertEquals(69, row.holes().size());
        assertEquals(row.holes(), line(panel, "rim").holes());
        assertEquals("panel.rim, 69 holes", row.toString());
        StitchRow side = panel.stitches("side", panel.inside(20, 60, 5), 5);
        side.holes().forEach(hole -> assertEquals(5, hole.y(), EXACT));
        assertEquals(40, side.line().length(), EXACT);
        assertThrows(NoRoom.class, () -> panel.inside(31));
        NoRoom off = assertThrows(NoRoom.class, () -> panel.stitches("off", Lines.straight(50, 30, 50, 61), 4));
        assertEquals("off", off.what());
    }

    @Test
    void aMateHasAsManyHoles() throws NoRoom {
        Piece panel = panel(100, 60, 0);
        Piece gusset = Piece.of("gusset", "Gusset", Outlines.rectangle(Point.of(0, 0), 90, 30), 1);
        StitchRow row = panel.stitches("bottom", Lines.straight(5, 4, 85, 4), 4);
        StitchRow mate = gusset.stitchesLike("bottom", Lines.straight(4, 4, 83, 4), row, 4);
        assertEquals(21, row.holes().size());
        assertEquals(21, mate.holes().size());
        assertEquals(79 / 20.0, mate.holes().get(1).x() - mate.holes().get(0).x(), EXACT);
        Curve cornered = Lines.through(Point.of(4, 4), Point.of(40, 4), Point.of(40, 20));
        assertThrows(NoRoom.class, () -> gusset.stitchesLike("round", cornered, row, 4));
    }

    @Test
    void holesAndWindowsLieOnThePiece() throws NoRoom {
        Piece panel = panel(100, 60, 0);
        assertEquals(new OnPart("panel", "stud"), panel.hole("stud", Point.of(5, 30), 6));
        assertEquals(6, panel.part().holes().get(0).diameter());
        assertThrows(NoRoom.class, () -> panel.hole("over", Point.of(2, 30), 6));
        assertThrows(NoRoom.class, () -> panel.hole("off", Point.of(-9, 30), 6));
        panel.window("view", Outlines.rectangle(Point.of(20, 20), 30, 20));
        assertEquals(Role.INNER_CUT, panel.part().cutOuts().get(0).role());
        assertThrows(NoRoom.class, () -> panel.window("over", Outlines.rectangle(Point.of(90, 20), 30, 20)));
    }

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
    void aLiningIsSmallerOrShorter() throws NoRoom {
        Piece outer = panel(200, 90, 8);
        Curve inside = Lining.inside(outer, 2);
        assertEquals(196, inside.bounds().width(), EXACT);
        assertEquals(86, inside.bounds().height(), EXACT);
        Curve shorter = Lining.shorter(outer, outer.outline(), Point.of(100, 0), Point.of(100, 90), 4);
        assertEquals(196, shorter.bounds().width(), 1e-4);
        // left of a fold that runs up is what is left of it, and what is right of it is moved up to it
        assertEquals(0, shorter.bounds().minX(), 1e-4);
        assertEquals(196, shorter.bounds().maxX(), 1e-4);
        Curve away = Lining.shorter(outer, outer.outline(), Point.of(100, 90), Point.of(100, 0), 4);
        assertEquals(4, away.bounds().minX(), 1e-4);
        assertEquals(200, away.bounds().maxX(), 1e-4);
        Curve aside = Lining.shorter(outer, outer.outline(), Point.of(30, 0), Point.of(30, 90), 4);
        assertEquals(outer.outline().area() - 4 * 90, aside.area(), 1e-2);
        assertEquals(outer.outline().area() - 4 * 90, shorter.area(), 1e-2);
        assertEquals(List.of(), Faults.of(shorter));
        Curve upward = Lining.shorter(outer, outer.outline(), Point.of(200, 40), Point.of(0, 40), 4);
        assertEquals(86, upward.bounds().height(), 1e-4);
        assertThrows(
                NoRoom.class, () -> Lining.shorter(outer, outer.outline(), Point.of(300, 0), Point.of(300, 90), 4));
        assertThrows(NoRoom.class, () -> Lining.inside(outer, 46));
    }

    @Test
    void aTurnedEdgeIsCutOffAtItsCorners() throws NoRoom {
        Curve finished = Outlines.rectangle(Point.of(0, 0), 100, 80);
        TurnedEdge edge = TurnedEdge.round("panel", finished, 10, 1);
        assertEquals(10, edge.turn());
        assertEquals(List.of(), Faults.of(edge.outline()));
        // from each corner of the square turn a triangle goes: its height is the diagonal less 1.5 mm
        double height = 10 * Math.sqrt(2) - 1.5;
        assertEquals(120 * 100 - 4 * height * height, edge.outline().area(), 1e-2);
        assertEquals(1.5, edge.outline().distanceTo(Point.of(0, 0)), 1e-4, "the corner stays covered");
        assertEquals(List.of(), edge.pleats());
    }

    @Test
    void aRoundCornerIsPleated() throws NoRoom {
        Curve finished = Outlines.roundedRectangle(Point.of(0, 0), 100, 80, 12);
        TurnedEdge edge = TurnedEdge.round("panel", finished, 9, 1);
        assertEquals(118, edge.outline().bounds().width(), EXACT);
        // a quarter turn: the outer edge is longer by 2 · 9 · π/2 = 28.3 mm than where it comes to lie, at 3 mm a pleat
        Point first = edge.pleats().get(0).end();
        Point second = edge.pleats().get(1).end();
        Point round = Point.of(88, 12);
        assertEquals(21, round.distanceTo(first), 1e-4);
        // spread evenly over the quarter turn: the first half a tenth of it in, the next a tenth further
        assertEquals(Math.PI / 40, Math.abs(angleFromDown(round, first)), 1e-4);
        assertEquals(3 * Math.PI / 40, Math.abs(angleFromDown(round, second)), 1e-4);
        assertEquals(10, TurnedEdge.pleatsAt(Math.PI / 2, 9));
        assertEquals(3, TurnedEdge.pleatsAt(0.1, 5));
        assertEquals(40, edge.pleats().size());
        for (Curve pleat : edge.pleats()) {
            assertEquals(3, finished.distanceTo(pleat.start()), 1e-4);
            assertEquals(9, finished.distanceTo(pleat.end()), 1e-4);
        }
    }

    private static double angleFromDown(Point centre, Point place) {
        return Math.atan2(place.x() - centre.x(), centre.y() - place.y());
    }

    @Test
    void aWeltFollowsTheEdge() throws NoRoom {
        Piece blade = panel(60, 200, 20);
        Piece straight = Welt.along("welt", "Welt", blade.outline(), 60, 160, 9, 3);
        assertTrue(straight.outline().area() > 0);
        Curve side = Outlines.rectangle(Point.of(0, 0), 60, 200);
        assertEquals(
                9 * 100,
                Welt.along("welt", "Welt", side, 60 + 50, 60 + 150, 9, 3)
                        .outline()
                        .area(),
                EXACT);
        // round a whole quarter circle of radius 20: the band from 11 to 20 mm, π/4 (20² - 11²)
        double from = arc(blade.outline());
        Piece bent = Welt.along("welt", "Welt", blade.outline(), from, from + Math.PI / 2 * 20, 9, 3);
        assertEquals(Math.PI / 4 * (400 - 121), bent.outline().area(), 1e-2);
        assertThrows(NoRoom.class, () -> Welt.along("welt", "Welt", side, 0, 500, 31, 3));
    }

    private static double arc(Curve outline) {
        for (int i = 0; i < outline.segments().size(); i++) {
            if (outline.segments().get(i) instanceof Segment.Arc) {
                return outline.startOf(i);
            }
        }
        throw new AssertionError("no arc");
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
