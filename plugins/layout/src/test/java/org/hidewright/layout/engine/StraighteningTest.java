package org.hidewright.layout.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.hidewright.layout.check.LayoutCheck;
import org.hidewright.layout.task.Laid;
import org.hidewright.layout.task.Outline;
import org.hidewright.layout.task.Piece;
import org.hidewright.layout.task.Sheet;
import org.hidewright.layout.task.Turning;
import org.junit.jupiter.api.Test;

class StraighteningTest {
    private static final Turning ALONG = Turning.about(List.of(0.0, 180.0), 10);

    private static Piece strap(String name, double length, double width, Turning turning) {
        return new Piece(name, Outline.rectangle(0, 0, length, width), turning, Piece.ALL);
    }

    /** Parts on one sheet whose middles lie there, in degrees and millimetres. */
    private record Sheetful(List<Piece> pieces, Sheet sheet, double[][] lie) {
        FullSize full() {
            return new FullSize(pieces, List.of(sheet), List.of(Barred.of(sheet, 1, 1)), Forms.of(pieces));
        }

        Stack stack() {
            Places places = new Places(lie.length);
            for (int part = 0; part < lie.length; part++) {
                places.angle[part] = Math.toRadians(lie[part][0]);
                places.x[part] = lie[part][1];
                places.y[part] = lie[part][2];
            }
            double area =
                    pieces.stream().mapToDouble(piece -> piece.outline().area()).sum();
            return new Stack(IntStream.range(0, lie.length).boxed().toList(), places, area);
        }

        Stack straighter(Halt halt) {
            FullSize full = full();
            return new Straightening(full, new ClosePairs(full.forms()), 0, new SplittableRandom(2), halt)
                    .straighter(stack());
        }

        SheetsFound found(Stack stack) {
            FullSize full = full();
            List<Laid> laid = new ArrayList<>();
            for (int part = 0; part < lie.length; part++) {
                laid.add(full.laid(part, 0, stack.places(), part));
            }
            assertEquals(List.of(), LayoutCheck.faults(pieces, List.of(sheet), laid, 0));
            return SheetsFound.of(pieces, List.of(sheet), laid);
        }
    }

    private static final Sheetful THREE = new Sheetful(
            List.of(strap("one", 300, 30, ALONG), strap("two", 300, 30, ALONG), strap("three", 300, 30, ALONG)),
            Sheet.plain("sheet", Outline.rectangle(0, 0, 400, 200)),
            new double[][] {{4, 180, 40}, {4, 180, 71}, {184, 180, 102}});

    /** None can be turned by itself: they lie on one another all along. */
    @Test
    void partsThatLieAskewTogetherAreTurnedTogether() {
        SheetsFound before = THREE.found(THREE.stack());
        assertTrue(before.askew() > 0);
        SheetsFound after = THREE.found(THREE.straighter(tried -> 0));
        assertEquals(0, after.askew(), 1e-9);
        assertTrue(after.lastRest() >= before.lastRest() - 1e-9, after.lastRest() + " mm²");
        assertTrue(after.betterThan(before));
    }

    /** The long one is longer than the sheet is wide, and lies there only askew; the short one is turned. */
    @Test
    void whatFitsOnlyAskewStaysSo() {
        Sheetful two = new Sheetful(
                List.of(strap("long", 300, 10, ALONG), strap("short", 100, 20, ALONG)),
                Sheet.plain("sheet", Outline.rectangle(0, 0, 299, 200)),
                new double[][] {{9, 149.4, 40}, {5, 100, 130}});
        SheetsFound after = two.found(two.straighter(tried -> 0));
        assertEquals(3000 * Math.toRadians(9), after.askew(), 1e-6);
    }

    @Test
    void whatTurnsFreelyOrLiesStraightIsLeft() {
        Sheetful free = new Sheetful(
                List.of(strap("free", 300, 10, Turning.free()), strap("straight", 100, 20, ALONG)),
                THREE.sheet,
                new double[][] {{9, 160, 40}, {180, 100, 130}});
        Stack stack = free.stack();
        FullSize full = free.full();
        assertSame(
                stack,
                new Straightening(full, new ClosePairs(full.forms()), 0, new SplittableRandom(2), tried -> 0)
                        .straighter(stack));
    }

    @Test
    void whenTimeIsOverNothingIsTurned() {
        assertEquals(
                THREE.found(THREE.stack()).askew(),
                THREE.found(THREE.straighter(tried -> 1)).askew(),
                1e-12);
    }
}
