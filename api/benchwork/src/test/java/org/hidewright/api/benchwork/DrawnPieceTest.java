package org.hidewright.api.benchwork;

import static org.hidewright.api.benchwork.Panel.line;
import static org.hidewright.api.benchwork.Panel.panel;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.item.Face;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.Part;
import org.junit.jupiter.api.Test;

/** Outlines, rows and holes of a piece, held to closed forms of plane geometry. */
class DrawnPieceTest {
    private static final double EXACT = 1e-6;

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
}
