package org.hidewright.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.hidewright.api.workshop.WorkshopTable;
import org.junit.jupiter.api.Test;

/**
 * What the host expects of a bundle that brings a table of the workshop and no calculators: columns that can be declared, and a
 * text for each of them. Extend it in a test class of your own; what is wrong is told in sentences.
 */
public abstract class TableContract {
    private final WorkshopTable<?> table;

    /** @param table whose {@code messages.properties}, beside its class, has its texts and no others */
    protected TableContract(WorkshopTable<?> table) {
        this.table = table;
    }

    @Test
    void itsColumnsCanBeDeclared() {
        assertEquals(List.of(), new TableTexts(table).undeclared());
    }

    @Test
    void everyColumnHasItsTexts() {
        assertEquals(List.of(), new TableTexts(table).missing());
    }

    @Test
    void everyTextIsShownSomewhere() {
        assertEquals(List.of(), new TableTexts(table).idle());
    }
}
