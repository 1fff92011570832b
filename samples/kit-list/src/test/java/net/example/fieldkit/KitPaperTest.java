package net.example.fieldkit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.document.JobView;
import org.hidewright.api.document.JobView.Answer;
import org.hidewright.api.document.JobView.Row;
import org.hidewright.api.document.JobView.Slip;
import org.hidewright.api.document.JobView.State;
import org.hidewright.api.document.Paragraph;
import org.hidewright.api.document.Section;
import org.hidewright.api.document.TickList;
import org.hidewright.api.measure.Mass;
import org.junit.jupiter.api.Test;

class KitPaperTest {
    private static Slip slip(State state) {
        return Slip.of("bag", "kit-list", "Day bag", state)
                .question(
                        "things",
                        Answer.rows(
                                "Things",
                                "",
                                List.of(Row.of(
                                        "hand-lens",
                                        Map.of(
                                                "mass", Answer.number("Mass", "45", "g", 45),
                                                "count", Answer.number("How many", "2", "", 2))))))
                .answer("together", Answer.number("Together", "90", "g", 90))
                .answer("count", Answer.number("Things", "2", "", 2))
                .build();
    }

    private static List<Section> paper(State state) {
        return new KitPaper().sections(JobView.of("Walk", Locale.ENGLISH, List.of(slip(state))));
    }

    @Test
    void everyThingIsToBeTickedOff() {
        Section list = paper(State.WORKED).get(0);
        assertTrue(list.standsApart());
        assertEquals("Packing list", list.title());
        assertEquals(
                "Day bag: 2 things, 90\u00a0g. Tick each off as it goes into the bag.",
                ((Paragraph) list.blocks().get(0)).text());
        TickList.Step step = ((TickList) list.blocks().get(1)).steps().get(0);
        assertEquals("2 × hand lens", step.text());
        assertEquals("45\u00a0g", step.detail());
    }

    @Test
    void nobodyPacksByAListThatIsNotWorked() {
        assertEquals(List.of(), paper(State.WAITING));
    }

    @Test
    void massesAreAddedUp() {
        // 45 + 6 · 95 g
        KitList.Weighed weighed = new KitList()
                .calculate(
                        new KitList.Kit(List.of(
                                new KitList.Thing("hand-lens", Mass.ofGrams(45), 1),
                                new KitList.Thing("specimen-jar", Mass.ofGrams(95), 6))),
                        Working.NONE)
                .answers()
                .orElseThrow();
        assertEquals(615, weighed.together().grams(), 1e-9);
        assertEquals(7, weighed.count());
    }
}
