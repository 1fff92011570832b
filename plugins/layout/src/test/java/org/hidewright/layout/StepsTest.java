package org.hidewright.layout;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.hidewright.layout.check.LayoutCheck;
import org.hidewright.layout.task.Inner;
import org.hidewright.layout.task.Laid;
import org.hidewright.layout.task.Outline;
import org.hidewright.layout.task.Piece;
import org.hidewright.layout.task.Sheet;
import org.hidewright.layout.task.Turning;
import org.hidewright.layout.task.Zone;
import org.junit.jupiter.api.Test;

class StepsTest {
    @Test
    void whatIsDecimalBecomesWhole() {
        Outline outline = new Outline(new double[] {0, 107.95, 12.7 / 3}, new double[] {0.1 + 0.2, 0, 279.4});
        Piece piece = new Piece("front", outline, Turning.free(), 3, List.of(new Inner(outline, 4)));
        Piece steps = Steps.of(piece);
        assertArrayEquals(
                new double[] {0, 1_079_500, 12.7 / 3 * 1e4}, steps.outline().xs());
        assertArrayEquals(new double[] {3000, 0, 2_794_000}, steps.outline().ys());
        assertEquals(4, steps.inner().get(0).avoids());
        assertArrayEquals(steps.outline().xs(), steps.inner().get(0).outline().xs());
        Zone scar = new Zone(outline, 5);
        Sheet sheet = Steps.of(new Sheet("hide", outline, List.of(outline), List.of(scar), 7));
        assertArrayEquals(steps.outline().ys(), sheet.holes().get(0).ys());
        assertArrayEquals(steps.outline().ys(), sheet.zones().get(0).outline().ys());
        assertEquals(5, sheet.zones().get(0).kind());
        assertEquals(7, sheet.cost());
    }

    @Test
    void aPlaceComesBack() {
        Laid laid = new Laid(3, 1, 0.7, 53.975, -0.0001);
        assertEquals(new Laid(3, 1, 0.7, 539_750, -1), Steps.of(laid));
        assertEquals(laid, Steps.inMm(Steps.of(laid)));
    }

    /** Three thirds of 0.3 in doubles reach over it by a last digit (0.1 + 0.2 > 0.3); in steps they fill it, and a step more is too much. */
    @Test
    void theCheckSeesThatDecimalsTouch() {
        Piece third = new Piece("strap", Outline.rectangle(-0.05, -0.5, 0.05, 0.5), Turning.steps(List.of(0.0)), 0);
        List<Piece> pieces = List.of(third, third, third);
        List<Sheet> sheets = List.of(Sheet.plain("panel", Outline.rectangle(0, 0, 0.3, 1)));
        assertEquals(0, faults(pieces, sheets, 0.05, 0.15, 0.25));
        assertEquals(1, faults(pieces, sheets, 0.05, 0.1501, 0.2501));
    }

    private static int faults(List<Piece> pieces, List<Sheet> sheets, double... x) {
        List<Laid> laid = java.util.stream.IntStream.range(0, x.length)
                .mapToObj(piece -> Steps.of(new Laid(piece, 0, 0, x[piece], 0.5)))
                .toList();
        return LayoutCheck.faults(
                        pieces.stream().map(Steps::of).toList(),
                        sheets.stream().map(Steps::of).toList(),
                        laid,
                        0)
                .size();
    }
}
