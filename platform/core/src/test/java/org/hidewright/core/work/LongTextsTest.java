package org.hidewright.core.work;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Collections;
import java.util.List;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Working;
import org.hidewright.core.bench.Shop;
import org.junit.jupiter.api.Test;

/** How long texts of answers may be: a page has an end, a row that is put away into the workshop has none that anybody meets. */
class LongTextsTest {
    /** Gives texts as long as is asked, to be put away or to be shown. */
    @Calculates("long-texts")
    static final class LongTexts implements Calculator<LongTexts.Asks, LongTexts.Gives> {
        public record Asks(
                @Asked(min = "0", max = "9000000", preset = "1")
                int away,

                @Asked(min = "1", max = "5000", preset = "1")
                int parts,

                @Asked(min = "0", max = "9000000", preset = "1")
                int shown) {}

        public record Hide(
                @RowId String id,
                @Answered String outline,
                @Answered List<String> flaws) {}

        public record Gives(
                @Answered(stock = "hides") List<Hide> rest,
                @Answered String shown) {}

        @Override
        public Outcome<Gives> calculate(Asks asks, Working working) {
            String away = "x".repeat(asks.away());
            return Outcome.of(new Gives(
                    List.of(new Hide("side", away, Collections.nCopies(asks.parts(), away))),
                    "x".repeat(asks.shown())));
        }
    }

    private static WorkedSlip.State state(String questions) {
        return new Shop(new LongTexts()).one("long-texts", questions).state();
    }

    @Test
    void theOutlineOfAHideWithManyCornersIsPutAway() {
        assertEquals(WorkedSlip.State.WORKED, state("'away': '" + (Sayable.LONGEST_TEXT + 1) + "'"));
        assertEquals(WorkedSlip.State.WORKED, state("'away': '400000', 'parts': '11'"), "a hole for each piece");
        assertEquals(WorkedSlip.State.BROKEN, state("'away': '" + (Completeness.MOST_PUT_AWAY + 1) + "'"));
        assertEquals(WorkedSlip.State.BROKEN, state("'away': '400000', 'parts': '13'"), "more than a file should hold");
    }

    @Test
    void whatIsShownIsNoLongerThanAPage() {
        assertEquals(WorkedSlip.State.WORKED, state("'shown': '" + Sayable.LONGEST_TEXT + "'"));
        assertEquals(WorkedSlip.State.BROKEN, state("'shown': '" + (Sayable.LONGEST_TEXT + 1) + "'"));
    }
}
