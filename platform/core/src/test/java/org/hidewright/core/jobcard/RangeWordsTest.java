package org.hidewright.core.jobcard;

import static org.hidewright.core.bench.Shop.json;
import static org.hidewright.core.bench.Shop.slip;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hidewright.core.bench.Relay;
import org.hidewright.core.bench.Sampler;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;
import org.junit.jupiter.api.Test;

/** What ranges make of the answers, as the card, the terminal and the spreadsheet tell it. */
class RangeWordsTest {
    private final Shop shop = new Shop(new Relay());

    private WorkedProject worked(String first, String second) {
        return shop.work(slip("a", "relay", json(first)), slip("b", "relay", json(second)));
    }

    private static RangeWords words(WorkedProject worked, String id) {
        return RangeWords.of(worked, worked.slips().get(id), Shop.ENGLISH).orElseThrow();
    }

    private static List<List<String>> plain(List<List<String>> rows) {
        return rows.stream()
                .map(row -> row.stream()
                        .map(cell -> cell.replace('\u00A0', ' ').replace('\u202F', ' '))
                        .toList())
                .toList();
    }

    private static List<String> plainSentences(RangeWords words) {
        return plain(List.of(words.sentences())).get(0);
    }

    private static final String LINK = "'take': {'from': 'a', 'answer': 'give'}, 'more': '31 ± 0.5 mm'";

    @Test
    void eachAnswerThatMovesHasItsEndsAndWhatMovesIt() {
        WorkedProject worked = worked("'take': '2-4 mm'", LINK);
        RangeWords words = words(worked, "b");
        assertEquals(words.head().size(), words.rows().get(0).size());
        // u = √(1² + 0.5²) / √3 = 0.6455; 34 ± 2 u
        assertEquals(
                List.of(List.of(
                        "Given", "32.5 mm", "35.5 mm", "32.709 to 35.291 mm", "Relay “a”, Taken (80 %); More (20 %)")),
                plain(words.rows()));
        assertTrue(words.how().contains("all corners"), words::how);
        assertTrue(!words(worked, "a").how().contains("all corners"), "there are none of one range");
        assertEquals(
                Optional.empty(),
                RangeWords.of(worked("", ""), worked("", "").slips().get("a"), Shop.ENGLISH));
    }

    @Test
    void whatSwitchesIsRefusedOrStandsInTablesIsSaid() {
        List<String> said = plainSentences(words(worked("'all': '1-2 mm; 5 mm'", ""), "a"));
        assertEquals(
                List.of("Numbers that move in the tables: 1. The card as JSON has the range of each."),
                said.subList(said.size() - 1, said.size()));
        said = plainSentences(words(worked("'times': '2-4'", ""), "a"));
        assertEquals(
                List.of(
                        "Times changes from 2 to 3 as Times passes 2.500.",
                        "Times changes from 3 to 4 as Times passes 3.500."),
                said);
        said = plainSentences(words(worked("'take': '998-1001 m'", ""), "a"));
        assertTrue(said.get(0).startsWith("No answer where Taken is from 1000.000 m to 1001 m: "), said::toString);
    }

    @Test
    void whatIsToldOnlyInPartOfARangeIsSaidOnceInWordsOnTheCardAndInJson() {
        Shop shop = new Shop(new Sampler());
        // the sampler tells a check and a caution above 5 mm
        WorkedProject worked = shop.work(slip("s", "sampler", json("'thickness': '4-6 mm'")));
        WorkedSlip slip = worked.slips().get("s");
        assertTrue(slip.remarks().stream().noneMatch(remark -> remark.key().equals("notice.thick")));
        List<String> said = plainSentences(words(worked, "s")).stream()
                .filter(sentence -> sentence.startsWith("Check") || sentence.startsWith("Caution"))
                .toList();
        assertEquals(2, said.size(), said::toString);
        assertTrue(said.get(0).startsWith("Check for Thickness 5.000 mm or more: "), said::toString);
        assertTrue(said.get(1).startsWith("Caution for Thickness 5.000 mm or more: "), said::toString);
        assertTrue(
                VisibleTexts.of(new JobCard(worked, Shop.ENGLISH)
                                .document(LocalDate.of(2026, 5, 4), List.of(), fault -> {}))
                        .stream()
                        .anyMatch(text ->
                                text.replace('\u00A0', ' ').startsWith("Check for Thickness 5.000 mm or more: ")));
        Map<?, ?> ranges =
                (Map<?, ?>) new SlipJson(worked, slip, Shop.ENGLISH).tree().get("ranges");
        List<?> raised = (List<?>) ranges.get("raised");
        assertEquals(2, raised.size());
        Map<?, ?> check = (Map<?, ?>) raised.get(0);
        assertEquals("check", check.get("severity"));
        assertEquals("notice.thick", check.get("key"));
        assertEquals("thickness", check.get("question"));
        Map<?, ?> part = (Map<?, ?>) ((List<?>) check.get("parts")).get(0);
        assertEquals("s", part.get("slip"));
        assertEquals(5, (Double) part.get("from"), 1e-6);
        assertEquals(6.0, part.get("to"));
        assertEquals("mm", part.get("unit"));
        // at the midpoint already: told as ever, and not again
        WorkedProject thick = shop.work(slip("s", "sampler", json("'thickness': '4-7 mm'")));
        assertEquals(List.of(), thick.ranges("s").orElseThrow().study().raised());
    }

    @Test
    void theSameStandsInJsonAndRows() {
        WorkedProject worked = worked("'take': '2-4 mm'", LINK);
        Map<?, ?> ranges = (Map<?, ?>) new SlipJson(worked, worked.slips().get("b"), Shop.ENGLISH)
                .tree()
                .get("ranges");
        assertEquals(
                List.of(
                        Map.of(
                                "slip",
                                "a",
                                "question",
                                "take",
                                "typed",
                                "2-4 mm",
                                "low",
                                2.0,
                                "high",
                                4.0,
                                "unit",
                                "mm"),
                        Map.of(
                                "slip",
                                "b",
                                "question",
                                "more",
                                "typed",
                                "31 ± 0.5 mm",
                                "low",
                                30.5,
                                "high",
                                31.5,
                                "unit",
                                "mm")),
                ranges.get("inputs"));
        Map<?, ?> give = (Map<?, ?>) ((Map<?, ?>) ranges.get("answers")).get("give");
        assertEquals(34.0, give.get("nominal"));
        assertEquals(32.5, give.get("low"));
        assertEquals(35.5, give.get("high"));
        assertEquals("mm", give.get("unit"));
        assertEquals(true, give.get("first-order-holds"));
        assertEquals(0.8, (Double) ((Map<?, ?>) ((List<?>) give.get("shares")).get(0)).get("share"), 1e-12);
        assertEquals(false, ranges.get("rows-change"));
        List<List<String>> rows = JobCardRows.of(worked, Shop.ENGLISH);
        assertTrue(rows.contains(List.of("b", "relay", "low", "", "give", "", "32.5", "mm", "")), rows::toString);
        assertTrue(rows.contains(List.of("b", "relay", "high", "", "give", "", "35.5", "mm", "")), rows::toString);
    }
}
