package org.hidewright.api.benchwork;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.item.Fitting;
import org.hidewright.api.item.Part;
import org.hidewright.api.item.StitchLine;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ClosureTest {
    private static final double EXACT = 1e-6;

    private Piece flap;
    private Piece front;

    @BeforeEach
    void draw() throws NoRoom {
        flap = Piece.of("flap", "Flap", Outlines.rectangle(Point.of(0, 0), 80, 50), 2);
        front = Piece.of("front", "Front", Outlines.rectangle(Point.of(0, 0), 80, 100), 2);
    }

    private Fastened fasten(Closure closure) throws NoRoom {
        return closure.fasten("closure", "Closure", flap, Point.of(40, 20), -Math.PI / 2, front, Point.of(40, 60));
    }

    @Test
    void aStudHasAHoleWithASlitTowardsTheEdge() throws NoRoom {
        Closure stud = Closure.stud(2.5, 4, 8);
        Fastened fastened = fasten(stud);
        assertEquals("[front.closure]", fastened.fittings().get(0).holes().toString());
        assertEquals(2.5, front.part().holes().get(0).diameter());
        Curve hole = Curve.of(flap.part().cutOuts().get(0));
        assertEquals(20 - 8, hole.bounds().minY(), EXACT, "from the middle of the hole to the end of the slit");
        assertEquals(20 + 2, hole.bounds().maxY(), EXACT);
        assertEquals(4, hole.bounds().width(), EXACT);
        // the circle of 4 mm, and beyond it a slit of 0.4 mm and about 6 mm
        assertEquals(Math.PI * 4 + 6 * 0.4, Math.abs(hole.area()), 0.02);
        assertEquals(16, stud.leastToEnd());
        assertEquals(List.of(), front.part().cutOuts());
    }

    @Test
    void aSnapHasAHoleOnEitherSide() throws NoRoom {
        Closure snap = Closure.snap(4.5, 3.5, 12.5);
        Fastened fastened = fasten(snap);
        assertEquals(1, fastened.fittings().size());
        assertEquals(List.of(), fastened.pieces());
        assertEquals(List.of(), fastened.seams());
        assertEquals(4.5, flap.part().holes().get(0).diameter());
        assertEquals(3.5, front.part().holes().get(0).diameter());
        assertEquals(Point.of(40, 60), front.part().holes().get(0).centre());
        assertEquals(12.5 / 2 + 3, snap.leastToEnd());
        assertEquals(9, Closure.snap(4.5, 3.5, 6).leastToEnd());
    }

    @Test
    void aMagnetHasTwoSlitsOnEitherSide() throws NoRoom {
        Closure magnet = Closure.magnet(9, 5, 18);
        assertEquals(
                List.of(Fitting.of("closure", "Closure", List.of())),
                fasten(magnet).fittings(),
                "it has to be bought");
        for (Part part : List.of(flap.part(), front.part())) {
            List<Path> slits = part.cutOuts();
            assertEquals(2, slits.size());
            assertEquals(9, middle(slits.get(0)).distanceTo(middle(slits.get(1))), EXACT);
            assertEquals(5, slits.get(0).bounds().width(), EXACT, "across the way it is opened");
            assertEquals(1.2, slits.get(0).bounds().height(), EXACT);
            assertEquals(40, middle(slits.get(0)).x(), EXACT);
            double between = (middle(slits.get(0)).y() + middle(slits.get(1)).y()) / 2;
            assertEquals(part.id().equals("flap") ? 20 : 60, between, EXACT);
            assertTrue(middle(slits.get(0)).y() > middle(slits.get(1)).y(), "the right one nearer to the edge below");
        }
        assertEquals(12, magnet.leastToEnd());
        assertEquals(
                (20 + 1.2) / 2 + 3, Closure.magnet(20, 5, 18).leastToEnd(), EXACT, "prongs wider apart than its body");
        assertEquals(22.0 / 2 + 3, Closure.magnet(9, 22, 18).leastToEnd(), EXACT);
    }

    private static Point middle(Path path) {
        Box box = path.bounds();
        return Point.of((box.minX() + box.maxX()) / 2, (box.minY() + box.maxY()) / 2);
    }

    @Test
    void aKeeperIsSewnDownBesideTheStrap() throws NoRoom {
        // a strap of 20 mm with 2 mm of ease... the loop of 1.5 mm goes over a stack of 5 mm
        Closure keeper = Closure.strapAndKeeper(20, 5, 14, 1.5, 3);
        Fastened fastened = fasten(keeper);
        Piece loop = fastened.pieces().get(0);
        double foot = 2 * 3 + 1.5;
        double bends = 4 * Math.PI / 2 * 0.75;
        assertEquals(
                2 * foot + 20 + 1 + 2 * (5 - 1.5) + bends,
                loop.outline().bounds().width(),
                EXACT);
        assertEquals(14, loop.outline().bounds().height(), EXACT);
        assertEquals(2, fastened.seams().size());
        List<StitchLine> under = front.part().stitchLines();
        assertEquals(2, under.size());
        double left = under.get(0).holes().get(0).x();
        double right = under.get(1).holes().get(0).x();
        // between the feet: the strap, its ease, and the loop standing on either side
        assertEquals(20 + 1 + 2 * 1.5 + foot, Math.abs(left - right), EXACT);
        assertEquals(40, (left + right) / 2, EXACT);
        for (int i = 0; i < 2; i++) {
            assertEquals(
                    loop.part().stitchLines().get(i).holes().size(),
                    under.get(i).holes().size());
            double middle = under.get(i).holes().stream()
                    .mapToDouble(Point::y)
                    .average()
                    .orElseThrow();
            assertEquals(60, middle, EXACT);
        }
        assertEquals(22, keeper.leastToEnd());
        List<StitchLine> feet = loop.part().stitchLines();
        assertEquals(foot / 2, feet.get(0).holes().get(0).x(), EXACT);
        assertEquals(
                loop.outline().bounds().width() - foot / 2,
                feet.get(1).holes().get(0).x(),
                EXACT);
        assertEquals(3, feet.get(0).holes().get(0).y(), EXACT);
        assertEquals(11, feet.get(0).holes().get(feet.get(0).holes().size() - 1).y(), EXACT);
        // under it each row stands as far from the middle as its foot will lie
        assertEquals("closure-right", under.get(0).id());
        double reach = under.get(0).holes().stream().mapToDouble(Point::y).max().orElseThrow();
        assertEquals(64, reach, EXACT, "along the strap, not across it");
    }

    private static RingTab tab() throws NoRoom {
        return RingTab.ofBuckle("buckle", "Tab of the buckle", 20, 35, 3, 2, 18, 5);
    }

    @Test
    void aBucklesBarLiesWhereTheMiddleHoleComesTo() throws NoRoom {
        Closure buckle = Closure.buckle(tab(), -Math.PI / 2, 4, 3, 8, 3.5);
        Fastened fastened = fasten(buckle);
        assertEquals(
                "[flap.closure-1, flap.closure-2, flap.closure-3]",
                fastened.fittings().get(0).holes().toString());
        // the end of the flap is downward: the last hole is the lowest
        assertEquals(
                List.of(Point.of(40, 28), Point.of(40, 20), Point.of(40, 12)),
                flap.part().holes().stream()
                        .map(hole -> Point.of(
                                Math.rint(hole.centre().x()),
                                Math.rint(hole.centre().y())))
                        .toList());
        assertEquals(3.5, flap.part().holes().get(0).diameter());
        assertEquals(
                List.of("buckle"), fastened.pieces().stream().map(Piece::id).toList());
        assertEquals(
                "[buckle.top, buckle.under, front.buckle-box]",
                fastened.seams().get(0).lines().toString());
        StitchLine box = front.part().stitchLines().get(0);
        double top = box.holes().stream().mapToDouble(Point::y).max().orElseThrow();
        double bottom = box.holes().stream().mapToDouble(Point::y).min().orElseThrow();
        assertEquals(60 - RingTab.NECK_MM, top, EXACT, "the box begins below the bar");
        assertEquals(60 - 35 + 3, bottom, EXACT, "and ends above the end of the tab");
        assertEquals(8 + 25, buckle.leastToEnd(), EXACT);
    }

    @Test
    void holesOfABuckleNeedLeatherBetweenThem() throws NoRoom {
        RingTab tab = tab();
        assertThrows(NoRoom.class, () -> fasten(Closure.buckle(tab, 0, 4, 3, 6.9, 3.5)));
        assertEquals(
                1,
                fasten(Closure.buckle(tab, 0, 4, 1, 0, 3.5))
                        .fittings()
                        .get(0)
                        .holes()
                        .size());
        assertEquals(25, Closure.buckle(tab, 0, 4, 1, 0, 3.5).leastToEnd());
        assertThrows(IllegalArgumentException.class, () -> Closure.buckle(tab, 0, 4, 0, 8, 3.5));
    }

    @Test
    void whereThereIsNoRoomItIsTold() {
        NoRoom none = assertThrows(
                NoRoom.class,
                () -> Closure.stud(2.5, 4, 30)
                        .fasten("stud", "Stud", flap, Point.of(40, 20), -Math.PI / 2, front, Point.of(40, 60)));
        assertEquals("flap", none.part());
        assertEquals("stud-hole", none.what());
    }
}
