package org.hidewright.core.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class SearchBudgetTest {
    @Test
    void timeIsSpentFromWhenTheBudgetIsMadeWhateverIsTried() {
        AtomicLong clock = new AtomicLong(5_000_000_000L);
        SearchBudget budget = SearchBudget.ofTime(Duration.ofSeconds(10), clock::get, 2, 7);
        assertEquals(0, budget.spent(1_000_000));
        clock.addAndGet(2_500_000_000L);
        assertEquals(0.25, budget.spent(0));
        clock.addAndGet(10_000_000_000L);
        assertEquals(1.25, budget.spent(0));
        assertEquals(2, budget.workers());
        assertEquals(7, budget.seed());
    }

    @Test
    void triesAreForOneWorkerSoThatTheyCanBeReplayed() {
        SearchBudget budget = SearchBudget.ofTries(200, 3);
        assertEquals(1, budget.workers());
        assertEquals(0, budget.spent(0));
        assertEquals(0.5, budget.spent(100));
        assertEquals(1, budget.spent(200));
    }

    @Test
    void theMostTriesOfAnyWorkerAreKnown() {
        SearchBudget budget = SearchBudget.ofTries(200, 3);
        assertEquals(0, budget.tried());
        budget.spent(70);
        budget.spent(20);
        assertEquals(70, budget.tried());
        budget.spent(71);
        assertEquals(71, budget.tried());
    }

    @Test
    void whatIsStoppedIsSpent() {
        SearchBudget budget = SearchBudget.ofTries(200, 3);
        assertFalse(budget.stopped());
        budget.stop();
        assertTrue(budget.stopped());
        assertEquals(1, budget.spent(0));
    }

    @Test
    void noTimeAtAllIsSpentAtOnce() {
        assertTrue(SearchBudget.ofTime(Duration.ZERO, new AtomicLong()::incrementAndGet, 1, 1)
                        .spent(0)
                >= 1);
    }
}
