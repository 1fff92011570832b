package org.hidewright.core.work;

import static org.hidewright.core.bench.Shop.ENGLISH;
import static org.hidewright.core.bench.Shop.json;
import static org.hidewright.core.bench.Shop.keys;
import static org.hidewright.core.bench.Shop.project;
import static org.hidewright.core.bench.Shop.projectText;
import static org.hidewright.core.bench.Shop.slip;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.declaration.Values;
import org.hidewright.core.bench.Relay;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.bench.Spotting;
import org.hidewright.core.bench.Straggling;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.ProjectReader;
import org.hidewright.core.search.SearchBudget;
import org.hidewright.core.search.Searched;
import org.hidewright.core.work.SlipSearch.Find;
import org.hidewright.core.work.WorkedSlip.State;
import org.junit.jupiter.api.Test;

class SlipSearchTest {
    private final Relay relay = new Relay();
    private final Straggling straggling = new Straggling();
    private final Shop shop = new Shop(new Spotting(), relay, straggling);
    private final Project unsearched = project(projectText(slip("s", "spotting", json("'line': '80 mm'"))));

    private WorkedSlip worked(Project project) {
        return shop.bench().work(project).slips().get("s");
    }

    private List<Find> search(Project project, long tries) {
        List<Find> found = new ArrayList<>();
        SlipSearch.of(worked(project)).orElseThrow().run(SearchBudget.ofTries(tries, 42), found::add);
        return found;
    }

    private Project searched(Project project, long tries) throws Exception {
        List<Find> found = search(project, tries);
        return found.get(found.size() - 1).in(project);
    }

    private static Object spots(WorkedSlip slip) {
        return slip.questions().orElseThrow().get("spots").orElseThrow();
    }

    @Test
    void untilItIsSearchedForTheSlipSaysHow() {
        WorkedSlip slip = worked(unsearched);
        assertEquals(State.WORKED, slip.state());
        assertEquals(List.of("not-searched"), keys(slip.remarks()));
        assertEquals(
                "Begin the search on the slip, or: hidewright search PROJECT s",
                ENGLISH.next(slip.remarks().get(0)));
    }

    @Test
    void whatIsFoundStandsInTheProjectAndIsReadAsItWasFoundToTheLastBit() throws Exception {
        List<Values> handed = new ArrayList<>();
        WorkedSlip before = worked(unsearched);
        before.installed()
                .orElseThrow()
                .calculator()
                .search()
                .orElseThrow()
                .search(before.questions().orElseThrow(), SearchBudget.ofTries(1000, 42), handed::add);
        Project found = searched(unsearched, 1000);
        Project read = ProjectReader.read(found.text()).project().orElseThrow();
        assertEquals(
                handed.get(handed.size() - 1).get("spots").orElseThrow(),
                ((Values) spots(worked(read))).get("spots").orElseThrow());
        assertEquals(List.of(), keys(worked(read).remarks()));
    }

    @Test
    void theSameSeedAndTriesFindTheSame() throws Exception {
        assertEquals(searched(unsearched, 600).text(), searched(unsearched, 600).text());
    }

    @Test
    void itIsKeptHowItWasFound() throws Exception {
        Searched how =
                Searched.on(searched(unsearched, 31).slip("s").orElseThrow()).orElseThrow();
        assertEquals(42, how.seed());
        assertEquals(30, how.tries());
        assertEquals(16, how.asked().length());
    }

    @Test
    void whatIsFoundAfterTheSearchHasEndedIsNotHandedOn() throws Exception {
        List<Find> found = search(project(projectText(slip("s", "straggling", ""))), 1);
        straggling.late();
        assertEquals(1, found.size());
    }

    @Test
    void aSearchGoesOnFromWhatStandsThere() throws Exception {
        Project once = searched(unsearched, 31);
        assertEquals(10, worked(once).answers().orElseThrow().get("count").orElseThrow());
        Project twice = searched(once, 31);
        assertEquals(20, worked(twice).answers().orElseThrow().get("count").orElseThrow());
        assertTrue(twice.text().startsWith(once.text().substring(0, 200)), "what stands before it stays");
    }

    @Test
    void whenOtherAnswersChangeItIsSaidAndWhenTheyAreAsBeforeItIsNot() throws Exception {
        Project found = searched(unsearched, 31);
        Project longer = found.answering("s", "line", "\"90 mm\"");
        assertEquals(List.of("searched-otherwise"), keys(worked(longer).remarks()));
        Project back = longer.answering("s", "line", "\"8 cm\"");
        assertEquals(List.of(), keys(worked(back).remarks()));
    }

    @Test
    void whatIsChangedByHandIsNoOtherAnswer() throws Exception {
        Project found = searched(unsearched, 31);
        Project moved = found.with(found.slip("s")
                .orElseThrow()
                .answering(AnswerPath.of("spots").key("spots").row("spot-1").key("at"), "\"5 mm\""));
        assertEquals(List.of(), keys(worked(moved).remarks()));
    }

    @Test
    void theAnswersOfASearchCarryNoRanges() throws Exception {
        Project found = searched(
                project(projectText(
                        slip("s", "spotting", json("'line': '80 ± 1 mm'")),
                        slip("r", "relay", json("'take': {'from': 's', 'answer': 'last'}, 'more': '2-4 mm'")))),
                31);
        WorkedProject worked = shop.bench().work(found);
        assertEquals(Optional.empty(), worked.ranges("s"));
        assertEquals(1, worked.ranges("r").orElseThrow().inputs().size(), "its own range alone");
    }

    @Test
    void withoutItsOtherAnswersASlipCannotBeSearched() {
        WorkedSlip slip = worked(project(projectText(slip("s", "spotting", json("'note': 'no line'")))));
        assertTrue(SlipSearch.isFor(slip));
        assertEquals(Optional.empty(), SlipSearch.of(slip));
    }

    @Test
    void aSlipWithNothingToSearchForHasNoSearch() {
        WorkedSlip slip = shop.one("relay", "'take': '1 mm'");
        assertFalse(SlipSearch.isFor(slip));
        assertEquals(Optional.empty(), SlipSearch.of(slip));
    }

    @Test
    void whatIsFoundForASlipThatIsGoneIsDropped() throws Exception {
        List<Find> found = search(unsearched, 31);
        Project gone = unsearched.removing("s");
        assertEquals(gone.text(), found.get(0).in(gone).text());
    }
}
