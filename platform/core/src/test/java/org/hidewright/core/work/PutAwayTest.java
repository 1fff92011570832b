package org.hidewright.core.work;

import static org.hidewright.core.bench.Shop.json;
import static org.hidewright.core.bench.Shop.project;
import static org.hidewright.core.bench.Shop.projectText;
import static org.hidewright.core.bench.Shop.slip;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.core.bench.Ground;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.workshop.Copies;
import org.hidewright.core.workshop.Row;
import org.hidewright.core.workshop.WorkshopReader;
import org.hidewright.core.workshop.WorkshopText;
import org.junit.jupiter.api.Test;

/** Rows of answers come into the tables of the workshop. An invented workshop. */
class PutAwayTest {
    private static final String WORKSHOP = """
            {'workshop': 1, 'tables': {'punches': [
              {'id': 'p2', 'name': 'Two', 'diameter': '2 mm', 'mine': 'kept'},
              {'id': 'p3', 'name': 'Three', 'diameter': '3 mm'}]}}
            """.replace('\'', '"');

    private static final String TAKEN =
            "{'id': 'first', 'diameter':" + " {'workshop': 'punches', 'row': 'p3', 'column': 'diameter'}}";

    private final Shop shop = new Shop(new Ground());

    private static WorkshopText read(String text) {
        return WorkshopText.of(WorkshopReader.read(text)).orElseThrow();
    }

    private WorkedProject work(String slips) {
        return shop.benchWith(WORKSHOP).work(project(projectText(slips)));
    }

    private PutAway putAway(WorkedProject worked, WorkshopText workshop) {
        return PutAway.of(worked, shop.catalogue().tables(), workshop);
    }

    private static String diameter(PutAway away, String row) {
        return away.workshop().workshop().rows("punches").stream()
                .filter(one -> one.id().equals(row))
                .map(one -> one.cell("diameter").orElse(""))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> told(PutAway away) {
        return away.rows().stream()
                .map(put -> put.table() + " " + put.row() + " " + put.became())
                .toList();
    }

    @Test
    void aRowThatWasTakenIsChangedAndAllElseStays() {
        PutAway away = putAway(work(slip("g", "ground", json("'punches': [" + TAKEN + "]"))), read(WORKSHOP));
        assertEquals(List.of("punches p3 CHANGED"), told(away));
        assertEquals(WORKSHOP.replace("\"3 mm\"", "\"2.9 mm\""), away.workshop().text());
    }

    @Test
    void aRowThatWasTypedIsAddedUnderAnIdAndANameOfItsOwn() {
        String typed = "{'id': 'p2', 'diameter': '5 mm'}";
        PutAway away = putAway(work(slip("g", "ground", json("'punches': [" + typed + "]"))), read(WORKSHOP));
        assertEquals(List.of("punches p2-rest ADDED"), told(away));
        assertEquals("2 mm", diameter(away, "p2"));
        assertEquals("4.9 mm", diameter(away, "p2-rest"));
        Row added = away.workshop().workshop().rows("punches").get(2);
        assertEquals("g, p2", added.cell("name").orElseThrow());
    }

    /** The project keeps what it took, so that what it comes to is the same when the workshop has less. */
    @Test
    void putAwayAgainNothingChanges() {
        String both = json("'punches': [" + TAKEN + ", {'id': 'second', 'diameter': '5 mm'}]");
        WorkedProject worked = work(slip("g", "ground", both));
        PutAway once = putAway(worked, read(WORKSHOP));
        assertEquals(List.of("punches p3 CHANGED", "punches second-rest ADDED"), told(once));
        String kept = new Copies(worked.shelf(), worked.stock()).json(false);
        WorkedProject later = shop.benchWith(once.workshop().text())
                .work(project(
                        projectText(slip("g", "ground", both)).replaceFirst("\\{", "{\"workshop\": " + kept + ",")));
        PutAway twice = putAway(later, once.workshop());
        assertEquals(List.of("punches p3 THERE_ALREADY", "punches second-rest THERE_ALREADY"), told(twice));
        assertEquals(once.workshop().text(), twice.workshop().text());
    }

    /** As the rests of four panels that were cut alike. */
    @Test
    void rowsThatAreAlikeAreEachARowOfTheirOwn() {
        String alike = json("'punches': [{'id': 'a', 'diameter': '5 mm'}, {'id': 'b', 'diameter': '5 mm'}]");
        PutAway once = putAway(work(slip("g", "ground", alike)), read(WORKSHOP));
        assertEquals(List.of("punches a-rest ADDED", "punches b-rest ADDED"), told(once));
        PutAway twice = putAway(work(slip("g", "ground", alike)), once.workshop());
        assertEquals(List.of("punches a-rest THERE_ALREADY", "punches b-rest THERE_ALREADY"), told(twice));
    }

    @Test
    void whatOnlyTriesSomethingOutAndWhatIsNotWorkedLeavesNothing() {
        String trial =
                slip("g", "ground", json("'punches': [" + TAKEN + "]")).replaceFirst("\\{", "{\"what-if\": \"h\",");
        WorkedProject worked = work(trial + "," + slip("h", "ground", json("'punches': [{'id': 'a'}]")));
        assertTrue(worked.slips().get("g").answers().isPresent());
        PutAway away = putAway(worked, read(WORKSHOP));
        assertEquals(List.of(), told(away));
        assertEquals(WORKSHOP, away.workshop().text());
    }

    /** Two projects took the same row: the second would forget what the first has cut from it. */
    @Test
    void aRowThatIsNotAsItWasTakenIsLeftAlone() {
        WorkedProject worked = work(slip("g", "ground", json("'punches': [" + TAKEN + "]")));
        String since = WORKSHOP.replace("\"3 mm\"", "\"2.5 mm\"");
        PutAway away = putAway(worked, read(since));
        assertEquals(List.of("punches p3 OTHERWISE_NOW"), told(away));
        assertEquals(since, away.workshop().text());
    }
}
