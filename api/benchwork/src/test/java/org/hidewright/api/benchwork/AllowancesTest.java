package org.hidewright.api.benchwork;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.api.drawing.Box;
import org.junit.jupiter.api.Test;

/** What leather takes up round and over something, held to closed forms of plane geometry. */
class AllowancesTest {
    private static final double EXACT = 1e-6;

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
}
