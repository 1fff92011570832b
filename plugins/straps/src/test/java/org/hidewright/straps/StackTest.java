package org.hidewright.straps;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.hidewright.straps.geometry.Face;
import org.hidewright.straps.geometry.FoldedStrap;
import org.hidewright.straps.geometry.Piece;
import org.hidewright.straps.geometry.PlacedPiece;
import org.hidewright.straps.geometry.Pose;
import org.hidewright.straps.geometry.Stack;
import org.hidewright.straps.geometry.Stretch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How straight sections lie beside each other: one of 3 mm with its grain at 0 and its flesh at -3, and others. */
class StackTest {
    private static PlacedPiece run(double length, double thickness, double x, double y, double degrees) {
        return new FoldedStrap(
                        List.of(new Piece.Run("run", length, thickness)), new Pose(x, y, Math.toRadians(degrees)))
                .pieces()
                .get(0);
    }

    /** Another of 2 mm: running the same way its flesh lies 2 mm below its grain, running back 2 mm above it. */
    @ParameterizedTest(name = "grain at {0}, turned by {1}°: {2} mm apart")
    @CsvSource({
        "5, 0, 3", // its flesh at 3
        "2, 0, 0",
        "-4, 0, 1", // its grain a millimetre under the flesh
        "-1, 0, -2", // from -3 to -1: its grain would have to sink by 2
        "0.5, 0, -1.5", // from -1.5 to 0.5: it would have to rise by 1.5
        "4, 180, 4", // grain to grain
        "-10, 180, 5", // flesh at -8
        "-5, 180, 0"
    })
    void theGapIsBetweenTheFacesThatFaceEachOther(double y, double degrees, double gap) {
        PlacedPiece one = run(100, 3, 0, 0, 0);
        double x = degrees > 0 ? 60 : 10;
        assertEquals(gap, Stack.gapMm(one, run(50, 2, x, y, degrees)).orElseThrow(), 1e-9);
    }

    @Test
    void sectionsADegreeOutAreNotParallel() {
        PlacedPiece one = run(100, 3, 0, 0, 0);
        assertTrue(Stack.gapMm(one, run(50, 2, 0, 5, 0.9)).isPresent());
        assertTrue(Stack.gapMm(one, run(50, 2, 0, 5, -179.1)).isPresent());
        assertTrue(Stack.gapMm(one, run(50, 2, 0, 5, 1.1)).isEmpty());
        assertTrue(Stack.gapMm(one, run(50, 2, 0, 5, 90)).isEmpty());
        PlacedPiece tilted = run(100, 3, 0, 0, 40);
        assertTrue(Stack.gapMm(tilted, run(50, 2, 0, 5, 40)).isPresent(), "both turned alike");
        assertTrue(Stack.gapMm(tilted, run(50, 2, 0, 5, -40)).isEmpty());
    }

    /** 100 mm; a fold of no radius; 60 mm back, flesh to flesh. */
    @Test
    void aFaceIsOpenWhereNothingLiesOnIt() {
        FoldedStrap strap = new FoldedStrap(List.of(
                new Piece.Run("outer", 100, 3),
                new Piece.TurnBack("fold", 4, 12, 3, 3, 0.6, Face.GRAIN),
                new Piece.Run("inner", 60, 3)));
        Stack stack = new Stack(strap, 0);
        PlacedPiece outer = strap.piece("outer").orElseThrow();
        PlacedPiece inner = strap.piece("inner").orElseThrow();
        assertEquals(100, stack.openMm(outer, Face.GRAIN), 1e-9);
        assertEquals(40, stack.openMm(outer, Face.FLESH), 1e-9);
        assertEquals(60, stack.openMm(inner, Face.GRAIN), 1e-9);
        assertEquals(0, stack.openMm(inner, Face.FLESH), 1e-9);
        assertEquals(6, stack.thickest().thicknessMm(), 1e-9);
        assertEquals(1, stack.touching(outer, 39.9).size());
        assertEquals(2, stack.touching(outer, 40.1).size());
        Stack.Layer under = stack.touching(outer, 70).get(0);
        assertEquals(inner, under.piece());
        assertEquals(-6, under.lowMm(), 1e-9);
        assertEquals(-3, under.highMm(), 1e-9);
        assertEquals(30, under.alongMm(), 1e-9);
    }

    /**
     * 10 mm down to -10; round and back with 1 mm from -9 to -8, wholly in it; and round once more with 2 mm from -12 to
     * -10, which lies under the first and not under the second.
     */
    @Test
    void layersInEachOtherCountAsIfTheyLayOnEachOther() {
        FoldedStrap strap = new FoldedStrap(List.of(
                new Piece.Run("thick", 100, 10),
                new Piece.Bend("fold", List.of(new Stretch.Arc(Math.PI, 3.5, 1, 0.5, Face.GRAIN))),
                new Piece.Run("in-it", 60, 1),
                new Piece.Bend("again", List.of(new Stretch.Arc(Math.PI, 0.5, 1, 0.5, Face.FLESH))),
                new Piece.Run("under", 60, 2)));
        Stack stack = new Stack(strap, 0);
        for (String id : List.of("thick", "in-it", "under")) {
            PlacedPiece piece = strap.piece(id).orElseThrow();
            double middle = id.equals("thick") ? 70 : 30;
            assertEquals(
                    Set.of("under", "in-it", "thick"),
                    stack.touching(piece, middle).stream()
                            .map(layer -> layer.piece().id())
                            .collect(Collectors.toSet()),
                    id);
        }
        assertEquals(13, stack.thickest().thicknessMm(), 1e-9);
    }
}
