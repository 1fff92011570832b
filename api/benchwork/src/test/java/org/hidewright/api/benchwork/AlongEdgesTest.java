package org.hidewright.api.benchwork;

import static org.hidewright.api.benchwork.Panel.panel;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Faults;
import org.hidewright.api.geometry.Outlines;
import org.junit.jupiter.api.Test;

/** What follows an edge: linings, turned edges, welts; held to closed forms of plane geometry. */
class AlongEdgesTest {
    private static final double EXACT = 1e-6;

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
}
