package org.hidewright.documents.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.api.document.Bars;
import org.junit.jupiter.api.Test;

/** Bars that are shown elsewhere than on a page. */
class BarsPlotTest {
    /** Every letter is half as wide as it is high. */
    private static final Typeface HALVES = new Typeface() {
        @Override
        public double width(Face face, String text) {
            return text.length() / 2.0;
        }

        @Override
        public String printable(String text) {
            return text;
        }
    };

    private static final Bars COST =
            Bars.of("Cost", List.of(Bars.Bar.of("Leather", 30, "30 %"), Bars.Bar.of("Hours at the bench", 70, "70 %")));
    private static final Bars BARE = Bars.of("", List.of(Bars.Bar.of("One", 1, "1")));

    @Test
    void everyBarLiesBelowTheOneBeforeItAndTheirBlocksUnderEachOther() {
        BarsPlot plot = new BarsPlot(List.of(COST, BARE), 100, HALVES);
        List<BarsPlot.Row> rows = plot.rows();
        assertEquals(
                List.of("Leather", "Hours at the bench", "One"),
                rows.stream().map(row -> row.bar().label()).toList());
        assertEquals(
                List.of("Cost", "Cost", ""),
                rows.stream().map(BarsPlot.Row::caption).toList());
        assertTrue(rows.get(0).top() > BarsPlot.lineMm() / 2, "below what the block shows");
        for (int i = 1; i < rows.size(); i++) {
            assertTrue(rows.get(i).top() >= rows.get(i - 1).bottom());
        }
        assertEquals(rows.get(2).bottom(), plot.height(), 1e-9);
    }

    @Test
    void aBlockWithoutWordsAboveItBeginsAtItsFirstBar() {
        BarsPlot plot = new BarsPlot(List.of(BARE), 100, HALVES);
        assertEquals(0, plot.rows().get(0).top());
        assertEquals(BarsPlot.lineMm(), plot.height(), 1e-9);
    }

    @Test
    void aNameThatHasNoRoomTakesMoreLines() {
        BarsPlot wide = new BarsPlot(List.of(COST), 200, HALVES);
        BarsPlot narrow = new BarsPlot(List.of(COST), 60, HALVES);
        assertTrue(narrow.height() > wide.height());
    }
}
