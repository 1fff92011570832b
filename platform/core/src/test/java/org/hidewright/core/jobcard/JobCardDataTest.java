package org.hidewright.core.jobcard;

import static org.hidewright.core.bench.Shop.json;
import static org.hidewright.core.bench.Shop.slip;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.hidewright.core.bench.Relay;
import org.hidewright.core.bench.Sampler;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.WorkedProject;
import org.junit.jupiter.api.Test;

/** The job card as JSON and as rows: the same numbers in every language and unit system. */
class JobCardDataTest {
    private static final Wording GERMAN_INCHES = new Wording(Locale.GERMAN, UnitSystem.INCH);

    private static WorkedProject worked() {
        return new Shop(new Sampler(), new Relay())
                .work(
                        slip(
                                "strap",
                                "sampler",
                                json("'thickness': '2-3 mm', 'layers': [{'id': 'a', 'thickness': 1,"
                                        + " 'note': 'mine'}], 'turn': '90 deg'")),
                        slip("next", "relay", json("'take': {'from': 'strap', 'answer': 'cut'}")),
                        slip("bad", "relay", json("'take': '3 sheep'")));
    }

    private static JsonNode tree(Wording wording) throws Exception {
        return new ObjectMapper()
                .readTree(JobCardJson.write(
                        worked(), wording, LocalDate.of(2026, 3, 1), List.of("job-card.pdf"), List.of()));
    }

    @Test
    void numbersAreFullAndInTheUnitNamedBesideThem() throws Exception {
        for (Wording wording : List.of(Shop.ENGLISH, GERMAN_INCHES)) {
            JsonNode answers = tree(wording).at("/slips/0/answers");
            assertEquals(
                    "{\"value\":5.0,\"unit\":\"mm\"",
                    answers.get("cut").toString().substring(0, 24));
            assertEquals(90, answers.at("/turn/value").asDouble(), 1e-12);
            assertEquals("[105.0,148.0]", answers.at("/cover/value").toString());
            assertEquals("mm", answers.at("/cover/unit").asText());
            assertEquals(35, answers.at("/shrink/value").asDouble(), 1e-12);
            assertEquals("%", answers.at("/shrink/unit").asText());
            assertEquals("7", answers.at("/holes/value").toString());
            assertEquals("vegetable", answers.at("/tannage/value").asText());
            assertEquals("false", answers.at("/lined/value").toString());
            assertEquals("[3.0,4.0]", answers.at("/marks/value").toString());
            assertEquals("a", answers.at("/rows/value/0/id").asText());
            assertEquals(1, answers.at("/rows/value/0/at/value").asDouble());
            assertEquals(1, answers.at("/sums/value/many/value").asInt());
            assertEquals("common-practice", answers.at("/cut/source/kind").asText());
        }
    }

    @Test
    void questionsSayHowTheyStand() throws Exception {
        JsonNode card = tree(Shop.ENGLISH);
        JsonNode thickness = card.at("/slips/0/questions/thickness");
        assertEquals("typed", thickness.get("from").asText());
        assertEquals("2-3 mm", thickness.get("typed").asText());
        assertEquals(2.5, thickness.get("value").asDouble());
        assertEquals(2, thickness.get("low").asDouble());
        assertEquals(3, thickness.get("high").asDouble());
        assertEquals("preset", card.at("/slips/0/questions/panel/from").asText());
        assertEquals("strap.cut", card.at("/slips/1/questions/take/link").asText());
        assertEquals("refused", card.at("/slips/2/state").asText());
        assertTrue(card.at("/slips/2/answers").isMissingNode());
        JsonNode notice = card.at("/slips/2/notices/0");
        assertEquals("stop", notice.get("severity").asText());
        assertEquals(4, notice.get("line").asInt());
        assertEquals("take", notice.get("question").asText());
    }

    @Test
    void theRowsHoldTheSameNumbersWithADecimalPoint() {
        for (Wording wording : List.of(Shop.ENGLISH, GERMAN_INCHES)) {
            List<List<String>> rows = JobCardRows.of(worked(), wording);
            assertEquals(
                    List.of("slip", "calculator", "part", "row", "key", "label", "value", "unit", "source"),
                    rows.get(0));
            assertTrue(rows.stream().allMatch(row -> row.size() == 9));
            assertTrue(rows.contains(
                    List.of("strap", "sampler", "answer", "", "cut", "Cut length", "5.0", "mm", "Habit of the bench")));
            assertEquals("1.0", value(rows, "answer", "a", "rows.at"));
            assertEquals("1.0", value(rows, "question", "a", "layers.thickness"));
            assertEquals("3.0; 4.0", value(rows, "answer", "", "marks"));
            assertEquals("1", value(rows, "answer", "", "sums.many"));
            assertEquals("6.0", value(rows, "question", "", "core.round-bar.diameter"));
            assertEquals("2.5", value(rows, "question", "", "thickness"));
            assertEquals("worked", value(rows, "state", "", "state"));
            assertTrue(rows.stream()
                    .anyMatch(row -> row.get(0).equals("bad")
                            && row.get(2).equals("stop")
                            && row.get(4).equals("take")));
        }
    }

    @Test
    void aNumberInARowHasNineDigitsAtMost() {
        WorkedProject odd = new Shop(new Sampler())
                .work(slip(
                        "strap",
                        "sampler",
                        json("'thickness': '1/7 in', 'marks': '1/3 in; 3 mm', 'turn': '0.1 deg', 'shrink': '19 %'")));
        List<List<String>> rows = JobCardRows.of(odd, Shop.ENGLISH);
        assertEquals("3.62857143", value(rows, "question", "", "thickness"));
        assertEquals("8.46666667; 3.0", value(rows, "question", "", "marks"));
        assertEquals("0.1", value(rows, "question", "", "turn"));
        assertEquals("19.0", value(rows, "answer", "", "shrink"));
    }

    private static String value(List<List<String>> rows, String part, String row, String key) {
        return rows.stream()
                .filter(cells -> cells.get(0).equals("strap")
                        && cells.get(2).equals(part)
                        && cells.get(3).equals(row)
                        && cells.get(4).equals(key))
                .map(cells -> cells.get(6))
                .findFirst()
                .orElseThrow(() -> new AssertionError(part + " " + row + " " + key + " in " + rows));
    }
}
