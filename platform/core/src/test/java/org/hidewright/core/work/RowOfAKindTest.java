package org.hidewright.core.work;

import static org.hidewright.core.bench.Shop.json;
import static org.hidewright.core.bench.Shop.keys;
import static org.hidewright.core.bench.Shop.project;
import static org.hidewright.core.bench.Shop.projectText;
import static org.hidewright.core.bench.Shop.slip;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.core.bench.Sampler;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.work.WorkedSlip.State;
import org.hidewright.core.workshop.Copies;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A row of the workshop for what is asked of one of several kinds. An invented workshop. */
class RowOfAKindTest {
    private static final String WORKSHOP = """
            {'workshop': 1, 'tables': {'punches': [
              {'id': 'p2', 'name': '2', 'diameter': '2 mm'},
              {'id': 'p3', 'name': '3', 'diameter': '1/8 in'}]}}
            """;

    private final Shop shop = new Shop(new Sampler());

    private WorkedProject work(String roundBar) {
        String questions = json("'thickness': 2, 'core': {'round-bar': " + roundBar + "}");
        return shop.benchWith(WORKSHOP).work(project(projectText(slip("s", "sampler", questions))));
    }

    private WorkedSlip one(String roundBar) {
        return work(roundBar).slips().get("s");
    }

    private static String core(WorkedSlip slip) {
        return slip.questions()
                .orElseThrow(() -> new AssertionError(slip.remarks().toString()))
                .get("core")
                .orElseThrow()
                .toString();
    }

    @Test
    void itAnswersWhatItHas() {
        WorkedProject worked = work("{'workshop': 'punches', 'row': 'p3'}");
        assertEquals(
                "round-bar{diameter=3.175 mm, turns=1}", core(worked.slips().get("s")));
        String copies = new Copies(worked.shelf(), worked.stock()).json(false);
        assertTrue(copies.contains("1/8 in") && !copies.contains("2 mm"), copies);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                "'turns': 3|round-bar{diameter=2.0 mm, turns=3}",
                "'diameter': 5|round-bar{diameter=5.0 mm, turns=1}",
                "'diameter': null|round-bar{diameter=2.0 mm, turns=1}",
            })
    void whatIsTypedBesideTheLinkGoesBeforeItsCells(String typed, String core) {
        assertEquals(core, core(one("{'workshop': 'punches', 'row': 'p2', " + typed + "}")));
    }

    @Test
    void whatIsMisspeltBesideTheLinkIsTold() {
        assertEquals(
                List.of("unknown-key-nearest"),
                keys(one("{'workshop': 'punches', 'row': 'p2', 'diametre': 5}").remarks()));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                "'punches', 'row': 'p9'|workshop-no-row-nearest",
                "'boats', 'row': 'p2'|workshop-no-table",
                "'punches'|workshop-link-needs",
                "'punches', 'row': 'p2', 'column': 'diameter'|workshop-link-needs"
            })
    void aRowThatIsNotThereIsToldOnce(String link, String key) {
        WorkedSlip slip = one("{'workshop': " + link + "}");
        assertEquals(State.REFUSED, slip.state());
        assertEquals(List.of(key), keys(slip.remarks()));
        assertEquals("core.round-bar", slip.remarks().get(0).question());
    }
}
