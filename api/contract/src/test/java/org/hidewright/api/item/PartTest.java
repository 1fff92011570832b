package org.hidewright.api.item;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.junit.jupiter.api.Test;

class PartTest {
    private static final Part FRONT = Part.of("front", "Front", Path.rectangle(Role.CUT, Point.of(0, 0), 50, 80))
            .leather("Calf")
            .build();

    @Test
    void isCalledByItsIdAsItIsWritten() {
        assertTrue(FRONT.isCalled("front"));
        assertFalse(FRONT.isCalled("Front"));
    }

    @Test
    void isCalledByItsLeatherInLargeOrSmallLetters() {
        assertTrue(FRONT.isCalled("calf"));
        assertFalse(FRONT.isCalled("cal"));
    }
}
