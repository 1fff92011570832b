package org.hidewright.layout.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.hidewright.layout.check.LayoutCheck;
import org.hidewright.layout.open.FilledPanels;
import org.hidewright.layout.task.Laid;
import org.hidewright.layout.task.Outline;
import org.hidewright.layout.task.Piece;
import org.hidewright.layout.task.Sheet;
import org.hidewright.layout.task.Turning;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FullSizeTest {
    private static final Turning QUARTERS = Turning.steps(List.of(0.0, 90.0, 180.0, 270.0));

    private static FullSize fullSize(List<Piece> pieces, List<Sheet> sheets) {
        List<Ground> grounds =
                sheets.stream().map(sheet -> Barred.of(sheet, 1, 1)).toList();
        return new FullSize(pieces, sheets, grounds, Forms.of(pieces));
    }

    /**
     * Published layouts that fill panels edge to edge (open/terashima/SOURCE.md), each piece moved by up to a third of the grid's step
     * to any side: all get their places back, and the check passes them.
     */
    @ParameterizedTest
    @MethodSource("org.hidewright.layout.open.FilledPanels#all")
    void whatLayEdgeToEdgeDoesSoAgain(FilledPanels published) {
        SplittableRandom random = new SplittableRandom(8);
        List<Piece> pieces = published.pieces().stream()
                .map(piece -> new Piece(piece.name(), piece.outline(), QUARTERS, Piece.ALL))
                .toList();
        FullSize full = fullSize(pieces, published.sheets());
        List<Laid> all = new ArrayList<>();
        for (int sheet = 0; sheet < published.sheets().size(); sheet++) {
            int here = sheet;
            List<Integer> parts = published.layout().stream()
                    .filter(laid -> laid.sheet() == here)
                    .map(Laid::piece)
                    .toList();
            Places places = new Places(parts.size());
            for (int at = 0; at < parts.size(); at++) {
                Form form = full.forms()[parts.get(at)];
                places.x[at] = form.referenceX + (random.nextDouble() - 0.5) * 4 / 3;
                places.y[at] = form.referenceY + (random.nextDouble() - 0.5) * 4 / 3;
            }
            Stack stack = full.stack(sheet, parts, places, random).orElseThrow();
            assertEquals(1e6, stack.area(), 1e-6);
            for (int at = 0; at < parts.size(); at++) {
                all.add(full.laid(parts.get(at), sheet, stack.places(), at));
            }
        }
        assertEquals(List.of(), LayoutCheck.faults(pieces, published.sheets(), all, 0));
        for (Laid laid : all) {
            assertEquals(new Laid(laid.piece(), laid.sheet(), 0, 0, 0), laid);
        }
    }

    private static List<Piece> squares(int count, Turning turning) {
        return IntStream.range(0, count)
                .mapToObj(number -> new Piece("square " + number, Outline.rectangle(0, 0, 40, 40), turning, Piece.ALL))
                .toList();
    }

    private static Places inARow(double... x) {
        Places places = new Places(x.length);
        for (int at = 0; at < x.length; at++) {
            places.x[at] = x[at];
            places.y[at] = 20;
        }
        return places;
    }

    /** The nearest places of the second and the third would overlap by a step, 20: the third finds the next one. */
    @Test
    void whatWouldOverlapMovesToThePlaceBeside() {
        Sheet panel = Sheet.plain("panel", Outline.rectangle(0, 0, 160, 40));
        FullSize full = fullSize(squares(3, QUARTERS), List.of(panel));
        Stack stack = full.stack(0, List.of(0, 1, 2), inARow(20, 60, 89), new SplittableRandom(2))
                .orElseThrow();
        double[] x = stack.places().x.clone();
        java.util.Arrays.sort(x);
        assertTrue(x[1] - x[0] >= 40 && x[2] - x[1] >= 40, "at " + x[0] + ", " + x[1] + ", " + x[2]);
    }

    /** Four squares of 40 on 140: smaller than they are they might lie there, at their full size they do not. */
    @Test
    void whatHasNoRoomAtFullSizeIsRefused() {
        Sheet panel = Sheet.plain("panel", Outline.rectangle(0, 0, 140, 40));
        FullSize full = fullSize(squares(4, QUARTERS), List.of(panel));
        Optional<Stack> none = full.stack(0, List.of(0, 1, 2, 3), inARow(20, 53, 86, 119), new SplittableRandom(2));
        assertEquals(Optional.empty(), none);
    }

    @Test
    void withoutAGridPartsStayWhereTheyAreAndAsLargeAsTheyAre() {
        Sheet panel = Sheet.plain("panel", Outline.rectangle(0, 0, 160, 40));
        FullSize full = fullSize(squares(2, Turning.free()), List.of(panel));
        Places places = inARow(20.01, 61.7);
        Stack stack =
                full.stack(0, List.of(0, 1), places, new SplittableRandom(2)).orElseThrow();
        assertSame(places, stack.places());
        assertFalse(full.touching());
        assertFalse(full.forms()[0].touches());
    }
}
