package org.hidewright.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.hidewright.layout.open.RunBudget;
import org.junit.jupiter.api.Test;

class BudgetPartTest {
    /** 1,000 tries: a first part ends after 400, a second that follows it begins with nothing spent and ends with the whole. */
    @Test
    void aPartIsSpentWhenItsShareIs() {
        RunBudget whole = RunBudget.ofTries(9, 2, 1000);
        BudgetPart first = new BudgetPart(whole, 0, 0, 0.4);
        assertEquals(0, first.spent(0), 1e-12);
        assertEquals(0.5, first.spent(200), 1e-12);
        assertEquals(1, first.spent(400), 1e-12);
        BudgetPart second = new BudgetPart(whole, 400, 0.4, 1);
        assertEquals(0, second.spent(0), 1e-12);
        assertEquals(0.5, second.spent(300), 1e-12);
        assertEquals(1, second.spent(600), 1e-12);
        assertEquals(2, second.workers());
        assertEquals(9, second.seed());
    }

    /** What the first part left over is not taken from the second. */
    @Test
    void aPartThatBeginsEarlyHasNothingSpent() {
        BudgetPart second = new BudgetPart(RunBudget.ofTries(9, 1, 1000), 100, 0.5, 1);
        assertEquals(0, second.spent(0));
        assertEquals(1, second.spent(900), 1e-12);
    }
}
