package org.hidewright.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.testkit.tables.Jars;
import org.junit.jupiter.api.Test;

/** The faults that the contract of a table must find. */
class TableTextsTest {
    @Test
    void whatHasNoTextIsFound() {
        assertEquals(
                List.of(
                        "The text glass.brown is missing. Write it in messages.properties.",
                        "The text jars.diameter.help is missing. Write it in messages.properties.",
                        "The text jars.purpose is missing. Write it in messages.properties."),
                new TableTexts(new Jars()).missing());
    }

    @Test
    void aTextOfNoColumnIsFound() {
        assertEquals(
                List.of("jars.lid is shown nowhere. Take it out of messages.properties, or see whether its key is"
                        + " right."),
                new TableTexts(new Jars()).idle());
    }

    @Test
    void aTableThatCannotBeIsFound() {
        assertEquals(List.of(), new TableTexts(new Jars()).undeclared());
        String told = new TableTexts(new Jars.Tins()).undeclared().get(0);
        assertTrue(told.contains("every row has an id"), told);
        assertEquals(
                List.of(Jars.Boxes.class.getName() + " has no columns. Give its record components with @Asked."),
                new TableTexts(new Jars.Boxes()).undeclared());
    }
}
