package org.hidewright.api.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ReadingTest {
    private final Reading<String> understood = Understood.of("8 oz");
    private final Unreadable<String> unreadable =
            Unreadable.of("reading.unknown-unit", List.of("mn", "mm"), 4, Optional.of("31 mm"));

    @Test
    void whatIsUnderstoodHasAValueAndNoTrouble() {
        assertEquals(Optional.of("8 oz"), understood.understood());
        assertEquals(Optional.empty(), understood.unreadable());
        assertEquals("8 oz", Understood.of("8 oz").value());
        assertEquals(Understood.of(4), understood.map(String::length));
        assertEquals("understood: 8 oz", understood.toString());
    }

    @Test
    void whatIsUnreadableHasTroubleAndNoValue() {
        assertEquals(Optional.empty(), unreadable.understood());
        assertEquals(Optional.of(unreadable), unreadable.unreadable());
        assertEquals(unreadable, unreadable.map(String::length));
        assertEquals("reading.unknown-unit[mn, mm] at column 4, perhaps \"31 mm\"", unreadable.toString());
    }

    @Test
    void equalReadingsAreEqual() {
        assertEquals(understood, Understood.of("8 oz"));
        assertEquals(understood.hashCode(), Understood.of("8 oz").hashCode());
        assertNotEquals(understood, Understood.of("9 oz"));
        assertNotEquals(understood.hashCode(), Understood.of("9 oz").hashCode());
        assertNotEquals(understood, unreadable);
        assertEquals(unreadable.hashCode(), unreadable.map(String::length).hashCode());
        assertNotEquals(unreadable, understood);
        assertNotEquals(unreadable, Unreadable.of("other", unreadable.args(), 4, unreadable.suggestion()));
        assertNotEquals(unreadable, Unreadable.of(unreadable.key(), List.of(), 4, unreadable.suggestion()));
        assertNotEquals(unreadable, Unreadable.of(unreadable.key(), unreadable.args(), 5, unreadable.suggestion()));
        assertNotEquals(unreadable, Unreadable.of(unreadable.key(), unreadable.args(), 4, Optional.empty()));
        assertNotEquals(
                unreadable.hashCode(),
                Unreadable.of("other", List.of(), 4, Optional.empty()).hashCode());
    }

    @Test
    void faultsOfTheCallerThrow() {
        assertThrows(IllegalArgumentException.class, () -> Unreadable.of("key", List.of(), 0, Optional.empty()));
        assertThrows(NullPointerException.class, () -> Unreadable.of(null, List.of(), 1, Optional.empty()));
        assertThrows(NullPointerException.class, () -> Understood.of(null));
        assertThrows(IllegalArgumentException.class, () -> new Unclear(Trouble.NO_UNIT, 0, null, "one"));
    }
}
