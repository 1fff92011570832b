package org.hidewright.api.benchwork;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Operation;
import org.hidewright.api.measure.Length;
import org.junit.jupiter.api.Test;

class StepsTest {
    @Test
    void eachStepIsAfterTheOneBefore() throws NoRoom {
        Item.Builder builder = Item.builder()
                .part(Piece.of("strap", "Strap", Outlines.rectangle(Point.of(0, 0), 200, 20), 3)
                        .part());
        new Steps()
                .then("cut", "Cut the strap", 5, "strap")
                .thenWait("dye", "Dye it", 10, 30, "strap")
                .then("burnish", "Burnish it", 15)
                .into(builder);
        List<Operation> steps = builder.build().operations();
        assertEquals(
                List.of("cut", "dye", "burnish"),
                steps.stream().map(Operation::id).toList());
        assertEquals(List.of(), steps.get(0).after());
        assertEquals(List.of("cut"), steps.get(1).after());
        assertEquals(List.of("dye"), steps.get(2).after());
        assertEquals(List.of("strap"), steps.get(0).on());
        assertEquals("Cut the strap", steps.get(0).what());
        assertEquals(300, steps.get(0).handsOn().orElseThrow().seconds());
        assertEquals(1800, steps.get(1).leastWait().orElseThrow().seconds());
        assertEquals(Optional.empty(), steps.get(0).leastWait());
        assertEquals(Optional.empty(), steps.get(2).leastWait());
    }

    @Test
    void whatIsChosenToCloseAPieceCutsItsHoles() {
        assertEquals(Optional.empty(), new Closing.Open(Length.ofMm(12)).closure());
        assertEquals(
                Closure.stud(3, 4, 7),
                new Closing.Stud(Length.ofMm(3), Length.ofMm(4), Length.ofMm(7))
                        .closure()
                        .orElseThrow());
        assertEquals(
                Closure.snap(4.5, 4, 12.5),
                new Closing.Snap(Length.ofMm(4.5), Length.ofMm(4), Length.ofMm(12.5))
                        .closure()
                        .orElseThrow());
        assertEquals(
                Closure.magnet(9, 4, 18),
                new Closing.Magnet(Length.ofMm(9), Length.ofMm(4), Length.ofMm(18))
                        .closure()
                        .orElseThrow());
    }
}
