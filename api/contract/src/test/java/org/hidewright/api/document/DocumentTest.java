package org.hidewright.api.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

class DocumentTest {
    private static Document.Builder card() {
        return Document.of("Field kit", "Neck strap").dated(LocalDate.of(2026, 3, 14), "14 March 2026");
    }

    @Test
    void aPageIsNumberedInTheWordsOfItsLanguage() {
        Document document = card().pageText("Seite {0} von {1}").build();
        assertEquals("Seite 2 von 5", document.pageText(2, 5));
        assertEquals("2 / 5", card().build().pageText(2, 5));
    }

    @Test
    void aPageTextWithoutItsNumbersIsRefused() {
        Document.Builder card = card();
        assertThrows(IllegalArgumentException.class, () -> card.pageText("Page {0}"));
    }

    @Test
    void aDocumentWithoutADayIsRefused() {
        Document.Builder undated = Document.of("Field kit", "Neck strap");
        assertThrows(NullPointerException.class, undated::build);
    }

    @Test
    void aFinishedDocumentNoLongerChanges() {
        Document.Builder builder = card();
        Document document = builder.build();
        builder.section(Section.of("late", "Late"));
        assertTrue(document.sections().isEmpty());
        List<Block> blocks = new ArrayList<>(List.of(Paragraph.of("a")));
        Section section = Section.of("s", "S", blocks);
        blocks.clear();
        assertEquals(1, section.blocks().size());
        assertFalse(section.startsPage());
        assertTrue(section.onNewPage().startsPage());
    }

    @Test
    void barsReachAsFarAsTheFurthest() {
        Bars bars = Bars.of(
                "Times",
                List.of(
                        Bars.Bar.of("Dye", List.of(Bars.Stretch.of(0, 2), Bars.Stretch.faint(2, 9)), "2 min"),
                        Bars.Bar.of("Rub", 5, "5 min")));
        assertEquals(9, bars.furthest());
        assertEquals(5, bars.bars().get(1).stretches().get(0).to());
        assertTrue(bars.bars().get(0).stretches().get(1).isFaint());
        assertFalse(bars.bars().get(1).stretches().get(0).isFaint());
    }

    @Test
    void aBarThatIsNoneIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> Bars.of("Times", List.of()));
        assertThrows(IllegalArgumentException.class, () -> Bars.Stretch.of(3, 2));
        assertThrows(IllegalArgumentException.class, () -> Bars.Bar.of("Loss", -1, "-1 EUR"));
        assertThrows(IllegalArgumentException.class, () -> Bars.Bar.of("Ever", Double.POSITIVE_INFINITY, "∞"));
        assertThrows(IllegalArgumentException.class, () -> Bars.Bar.of("None", Double.NaN, "?"));
    }

    @Test
    void aRowThatDoesNotFitItsTableIsRefused() {
        Table.Builder table = Table.builder().column("Hole").numbers("mm").row("1");
        assertThrows(IllegalArgumentException.class, table::build);
    }

    @Test
    void aContributorSeesSlipsInOrderAndFindsThemById() {
        JobView job = JobView.of(
                "Field kit",
                Locale.ENGLISH,
                List.of(
                        JobView.Slip.of("strap", "straps.cut-length", "Strap", JobView.State.WORKED)
                                .answer("length", JobView.Answer.number("Cut length", "36 1/2", "in", 927.1))
                                .answer("face", JobView.Answer.text("Outside", "grain"))
                                .build(),
                        JobView.Slip.of("edge", "edges.paint", "Edge", JobView.State.DORMANT)
                                .build()));
        JobView.Slip strap = job.slip("strap").orElseThrow();
        assertEquals(List.of("length", "face"), List.copyOf(strap.answers().keySet()));
        assertEquals(927.1, strap.answers().get("length").number().orElseThrow());
        assertTrue(strap.answers().get("face").number().isEmpty());
        assertTrue(job.slip("gone").isEmpty());
        assertEquals(List.of(strap), job.worked("straps.cut-length"));
        assertEquals(List.of(), job.worked("edges.paint"));
        assertEquals("36 1/2\u00A0in", strap.answers().get("length").inline());
        assertEquals("grain", strap.answers().get("face").inline());
        assertThrows(UnsupportedOperationException.class, () -> strap.answers().clear());
    }

    @Test
    void aContributorSeesWhatASlipWasWorkedFromAndTablesRowByRow() {
        Map<String, JobView.Answer> cells = new LinkedHashMap<>();
        cells.put("paid", JobView.Answer.number("Paid", "200.00", "EUR", 200));
        cells.put("kind", JobView.Answer.text("For", "leather"));
        JobView.Slip slip = JobView.Slip.of("cost", "cost", "Cost", JobView.State.WORKED)
                .question("pieces", JobView.Answer.number("Pieces", "3", "", 3))
                .answer("to-buy", JobView.Answer.rows("To buy", "1 row", List.of(JobView.Row.of("side", cells))))
                .build();
        cells.clear();
        assertEquals(List.of("pieces"), List.copyOf(slip.questions().keySet()));
        JobView.Answer table = slip.answers().get("to-buy");
        assertEquals("1 row", table.value());
        assertEquals("", table.unit());
        assertTrue(table.number().isEmpty());
        assertEquals("side", table.rows().get(0).id());
        assertEquals(
                List.of("paid", "kind"), List.copyOf(table.rows().get(0).cells().keySet()));
        assertTrue(slip.questions().get("pieces").rows().isEmpty());
        assertThrows(
                UnsupportedOperationException.class,
                () -> table.rows().get(0).cells().clear());
    }

    @Test
    void aSectionMayStandApart() {
        Section section = Section.of("org.example.kit.quote", "Quote").onNewPage();
        assertFalse(section.standsApart());
        Section apart = section.apart();
        assertTrue(apart.standsApart());
        assertTrue(apart.startsPage());
        assertTrue(apart.onNewPage().standsApart());
        assertFalse(Section.of("a", "A").apart().startsPage());
        assertEquals("org.example.kit.quote", apart.id());
        assertEquals("Quote", apart.title());
    }
}
