package org.hidewright.window.slip;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.hidewright.window.slip.Columns.Spot;
import org.junit.jupiter.api.Test;

class ColumnsTest {
    @Test
    void asManyColumnsAsFit() {
        assertEquals(1, Columns.count(100, 290, 10));
        assertEquals(1, Columns.count(609, 290, 10));
        assertEquals(2, Columns.count(610, 290, 10));
        assertEquals(290, Columns.width(610, 2, 10));
        assertEquals(335, Columns.width(700, 2, 10));
        assertEquals(1, Columns.width(5, 1, 10));
    }

    @Test
    void eachStandsWhereItsColumnEndsHighest() {
        assertEquals(
                List.of(new Spot(10, 10), new Spot(110, 10), new Spot(110, 40), new Spot(10, 70)),
                Columns.spots(List.of(50, 20, 60, 30), 2, 90, 10));
        assertEquals(List.of(new Spot(10, 10), new Spot(10, 40)), Columns.spots(List.of(20, 20), 1, 90, 10));
        assertEquals(List.of(), Columns.spots(List.of(), 3, 90, 10));
    }
}
