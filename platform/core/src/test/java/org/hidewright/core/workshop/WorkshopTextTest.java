package org.hidewright.core.workshop;

import static org.hidewright.core.bench.Shop.json;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A workshop's text is changed where it is changed, and nowhere else. */
class WorkshopTextTest {
    private static final String TEXT = json("""
            {
              'workshop': 1,
              'sung': {'by':   'nobody'},
              'tables': {
                'leather': [
                  {'id': 'side', 'name': 'Side',  'thickness':'2 mm', 'odd': [1,2]},
                  5,
                  {'id': 'strip', 'name': 'Strip', 'pieces': 4}
                ],
                'rates': []
              }
            }
            """);

    private static final List<String> COLUMNS = List.of("name", "thickness", "pieces", "colour");

    private static WorkshopText text(String text) {
        return WorkshopText.of(WorkshopReader.read(text)).orElseThrow();
    }

    private static Row row(WorkshopText text, String id) {
        return text.workshop().row("leather", id).orElseThrow();
    }

    @Test
    void aCellIsTypedOverAddedAndEmptied() {
        WorkshopText text = text(TEXT);
        assertEquals(
                TEXT.replace("\"thickness\":\"2 mm\"", "\"thickness\":\"2-3 oz\""),
                text.typing(row(text, "side"), "thickness", "2-3 oz", COLUMNS).text());
        assertEquals(
                TEXT.replace("\"2 mm\"", "\"2 mm\", \"colour\": \"so \\\"natural\\\"\""),
                text.typing(row(text, "side"), "colour", "so \"natural\"", COLUMNS)
                        .text());
        assertEquals(
                TEXT.replace(",  \"thickness\":\"2 mm\"", ""),
                text.typing(row(text, "side"), "thickness", " ", COLUMNS).text());
        assertSame(text, text.typing(row(text, "strip"), "pieces", "4", COLUMNS), "a number stays as it was written");
    }

    @Test
    void aRowIsAddedAfterTheLastAsItsNeighboursStand() {
        Map<String, String> cells = new LinkedHashMap<>();
        cells.put("name", "Hide");
        cells.put("thickness", "1 mm");
        assertEquals(
                TEXT.replace(
                        "\"pieces\": 4}",
                        "\"pieces\": 4},\n      {\"id\": \"hide\", \"name\": \"Hide\", \"thickness\": \"1 mm\"}"),
                text(TEXT).adding("leather", "hide", cells).text());
    }

    @Test
    void theFirstRowOfATableStandsInALineOfItsOwn() {
        assertEquals(
                TEXT.replace("\"rates\": []", "\"rates\": [\n      {\"id\": \"hour\"}\n    ]"),
                text(TEXT).adding("rates", "hour", Map.of()).text());
    }

    @Test
    void aTableThatIsNotThereYetComesWithItsFirstRow() {
        assertEquals(
                TEXT.replace("\"rates\": []", "\"rates\": [], \"threads\": [\n      {\"id\": \"linen\"}\n    ]"),
                text(TEXT).adding("threads", "linen", Map.of()).text());
        String begun = WorkshopText.begun("Field \"bench\"")
                .adding("threads", "linen", Map.of("name", "Linen"))
                .text();
        assertEquals(json("""
                {
                  'workshop': 1,
                  'name': 'Field \\"bench\\"',
                  'tables': {
                    'threads': [
                      {'id': 'linen', 'name': 'Linen'}
                    ]
                  }
                }
                """), begun);
        assertTrue(text("{\"workshop\": 1}")
                .adding("threads", "linen", Map.of())
                .workshop()
                .row("threads", "linen")
                .isPresent());
    }

    @Test
    void aRowIsCopiedMovedAndTakenOutRoundWhatIsNoRow() {
        WorkshopText text = text(TEXT);
        WorkshopText copied = text.copying(row(text, "side"), "side-2");
        assertEquals(Optional.of("2 mm"), row(copied, "side-2").cell("thickness"), "the copy has what the row has");
        assertEquals(TEXT, copied.removing(row(copied, "side-2")).text());
        WorkshopText moved = text.moving(row(text, "side"), 1);
        assertEquals("strip", moved.workshop().rows("leather").get(0).id());
        assertEquals(row(text, "side").text(), row(moved, "side").text(), "as it was written");
        assertSame(text, text.moving(row(text, "side"), -1));
        assertTrue(moved.text().contains("5,"), "what is no row stays");
    }

    @Test
    void aRowGetsAnotherIdAndNewOnesAreFree() {
        WorkshopText text = text(TEXT);
        assertEquals(
                TEXT.replace("\"id\": \"side\"", "\"id\": \"bend\""),
                text.calling(row(text, "side"), "bend").text());
        assertEquals("side-2", text.freeId("leather", "side"));
        assertEquals("bend", text.freeId("leather", "bend"));
    }

    @Test
    void nameAndCurrencyAreAddedChangedAndTakenAway() {
        WorkshopText text = text(TEXT);
        WorkshopText named = text.named("Bench").inCurrency("EUR");
        assertEquals("Bench", named.workshop().name());
        assertEquals("EUR", named.currency());
        assertEquals(TEXT, named.inCurrency("").named("").text());
    }

    @Test
    void whatIsWrongWithTheTextStaysAndIsTold() {
        WorkshopText text = text(TEXT);
        assertEquals(2, text.remarks().size(), "the odd key and what is no row");
        assertEquals(
                text.remarks(),
                text.typing(row(text, "strip"), "name", "Band", COLUMNS).remarks());
    }
}
