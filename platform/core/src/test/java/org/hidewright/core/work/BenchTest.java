package org.hidewright.core.work;

import static org.hidewright.core.bench.Shop.ENGLISH;
import static org.hidewright.core.bench.Shop.json;
import static org.hidewright.core.bench.Shop.keys;
import static org.hidewright.core.bench.Shop.project;
import static org.hidewright.core.bench.Shop.projectText;
import static org.hidewright.core.bench.Shop.said;
import static org.hidewright.core.bench.Shop.slip;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hidewright.api.calculator.NoticeKind.Severity;
import org.hidewright.api.measure.Length;
import org.hidewright.core.bench.Relay;
import org.hidewright.core.bench.Sampler;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.project.Project;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.work.WorkedSlip.State;
import org.junit.jupiter.api.Test;

class BenchTest {
    private final Relay relay = new Relay();
    private final Shop shop = new Shop(relay, new Sampler());

    private static String from(String slip) {
        return json("'take': {'from': '" + slip + "', 'answer': 'give'}");
    }

    private static String relay(String id, String questions) {
        return slip(id, "relay", json(questions));
    }

    private static double given(WorkedSlip slip) {
        return ((Length) slip.answers().orElseThrow().get("give").orElseThrow()).mm();
    }

    private static Map<String, State> states(WorkedProject worked) {
        return worked.slips().entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, e -> e.getValue().state()));
    }

    @Test
    void slipsAreWorkedAfterWhatTheyAreLinkedToInAnyOrderOfTheFile() {
        WorkedProject worked = shop.work(
                relay("c", from("b") + ", 'more': '1 mm'"),
                relay("a", "'take': '5 mm'"),
                relay("b", from("a") + ", 'more': '1 mm'"));
        assertEquals(List.of(5.0, 6.0, 7.0), relay.calls);
        assertEquals(List.of("c", "a", "b"), List.copyOf(worked.slips().keySet()));
        assertEquals(7, given(worked.slips().get("c")));
    }

    @Test
    void onlyWhatChangedAndWhatHangsOnItIsWorkedAgain() throws Exception {
        Project project = project(projectText(
                relay("a", "'take': '5 mm'"),
                relay("b", from("a")),
                relay("c", from("b")),
                relay("d", "'take': '9 mm'")));
        WorkedProject first = shop.bench().work(project);
        assertEquals(4, relay.count());
        WorkedProject second = shop.bench().work(project.answering("b", "more", "\"2 mm\""), first);
        assertEquals(6, relay.count());
        assertSame(first.slips().get("a"), second.slips().get("a"));
        assertSame(first.slips().get("d"), second.slips().get("d"));
        assertNotSame(first.slips().get("b"), second.slips().get("b"));
        assertEquals(7, given(second.slips().get("c")));
    }

    @Test
    void onlyTheEditedSlipAndWhatHangsOnItIsLookedAtAgain() throws Exception {
        StringBuilder text = new StringBuilder("{'hidewright': 1, 'slips': [");
        for (int i = 0; i < 1000; i++) {
            text.append(i == 0 ? "" : ",\n")
                    .append("{'id': 's" + i + "', 'calculator': 'relay', 'questions': {'take': ")
                    .append(i % 10 == 0 ? "'5 mm'" : "{'from': 's" + (i - 1) + "', 'answer': 'give'}")
                    .append("}}");
        }
        Project project = project(json(text.append("]}").toString()));
        WorkedProject before = shop.bench().work(project);
        int calls = relay.count();
        WorkedProject after = shop.bench().work(project.answering("s500", "take", "\"6 mm\""), before);
        assertEquals(calls + 10, relay.count());
        for (int i = 0; i < 1000; i++) {
            boolean reached = i / 10 == 50;
            assertEquals(!reached, before.worked().get(i) == after.worked().get(i), "s" + i);
            if (i != 500) {
                assertSame(project.slips().get(i), after.project().slips().get(i));
            }
        }
        List<Integer> differ = new ArrayList<>();
        before.lateRanges().differences(after.lateRanges(), differ::add);
        assertEquals(List.of(500, 501, 502, 503, 504, 505, 506, 507, 508, 509), differ);
    }

    @Test
    void nothingIsWorkedAgainWhenNothingChanged() {
        Project project = project(projectText(
                relay("a", "'take': '5 mm'"),
                relay("b", from("a")),
                relay("bad", "'take': '5 sheep'"),
                relay("waits", from("bad")),
                slip("far", "nowhere", ""),
                relay("round", from("round"))));
        WorkedProject first = shop.bench().work(project);
        WorkedProject second = shop.bench().work(project, first);
        assertEquals(2, relay.count());
        for (String id : first.slips().keySet()) {
            assertSame(first.slips().get(id), second.slips().get(id), id);
        }
    }

    @Test
    void anotherWayToWriteTheSameValueStopsTheRipple() throws Exception {
        Project project = project(projectText(relay("a", "'take': '5 mm'"), relay("b", from("a"))));
        WorkedProject first = shop.bench().work(project);
        WorkedProject second = shop.bench().work(project.answering("a", "take", "\"0.5 cm\""), first);
        assertEquals(2, relay.count());
        assertSame(first.slips().get("b"), second.slips().get("b"));
        assertEquals("0.5 cm", second.slips().get("a").asked().get(0).text());
    }

    @Test
    void anotherValueThatComesToTheSameAnswerStopsTheRipple() throws Exception {
        Project project = project(projectText(relay("a", "'take': '5 mm', 'more': '1 mm'"), relay("b", from("a"))));
        WorkedProject first = shop.bench().work(project);
        Project other = project.answering("a", "take", "\"4 mm\"").answering("a", "more", "\"2 mm\"");
        WorkedProject second = shop.bench().work(other, first);
        assertEquals(List.of(6.0, 6.0, 6.0), relay.calls);
        assertSame(first.slips().get("b"), second.slips().get("b"));
    }

    @Test
    void aSlipThatMovedInTheFileKeepsItsAnswersAndTellsItsNewLine() {
        String slip = relay("a", "'take': '5 mm', 'moer': 1");
        WorkedProject first = shop.bench().work(project(projectText(slip)));
        WorkedProject second =
                shop.bench().work(project(projectText(slip).replace("\"slips\"", "\n\n\"slips\"")), first);
        assertEquals(1, relay.count());
        assertEquals(2, first.remarks().get(0).place().line());
        assertEquals(4, second.remarks().get(0).place().line());
        assertSame(first.slips().get("a"), second.slips().get("a"));
    }

    @Test
    void afterAnAnswerTroubleStillStandsWhereTheFileHasIt() throws Exception {
        Project project = project(projectText(relay("a", "'take': '5 mm'"), relay("b", "'take': '5 mm'")));
        WorkedProject worked = shop.bench().work(project.answering("b", "take", "\"5 sheep\""));
        Remark trouble = worked.remarks().get(0);
        assertEquals(3, trouble.place().line());
        assertEquals(shop.bench().work(project(worked.project().text())).remarks(), List.of(trouble));
    }

    @Test
    void aSlipTakenOutAndAnotherPutInItsPlaceIsWorkedAnew() {
        WorkedProject first = shop.work(relay("a", "'take': '5 mm'"), relay("b", from("a")));
        WorkedProject second = shop.bench().work(project(projectText(relay("b", from("a")))), first);
        assertEquals(State.REFUSED, second.slips().get("b").state());
        assertEquals(
                List.of("link-no-slip-nearest"), keys(second.slips().get("b").remarks()));
    }

    @Test
    void aSlipIsWorkedAgainWhenItsCalculatorIsAnother() {
        Project project = project(projectText(relay("a", "'take': '5 mm'")));
        WorkedProject first = shop.bench().work(project);
        Relay other = new Relay();
        WorkedProject second = new Shop(other).bench().work(project, first);
        assertEquals(1, other.count());
        assertNotSame(first.slips().get("a"), second.slips().get("a"));
        WorkedProject third = new Shop().bench().work(project, second);
        assertEquals(State.DORMANT, third.slips().get("a").state());
        assertEquals(
                State.WORKED, shop.bench().work(project, third).slips().get("a").state());
    }

    @Test
    void aSlipLinkedToItselfIsToldSo() {
        WorkedProject worked = shop.work(relay("a", from("a")));
        assertEquals(Map.of("a", State.REFUSED), states(worked));
        assertEquals(List.of("circle-of-one"), keys(worked.remarks()));
        assertTrue(said(worked.remarks().get(0)).startsWith("Slip “a” is linked to an answer of its own. | line 2"));
    }

    @Test
    void aCircleOfTwoIsToldOnce() {
        assertCircle(shop.work(relay("a", from("b")), relay("b", from("a"))), "a → b → a");
    }

    @Test
    void aCircleOfThreeIsToldOnceInTheOrderOfItsLinks() {
        assertCircle(shop.work(relay("a", from("c")), relay("b", from("a")), relay("c", from("b"))), "a → c → b → a");
    }

    @Test
    void twoCirclesAreToldOnceEach() {
        WorkedProject worked =
                shop.work(relay("a", from("b")), relay("c", from("d")), relay("b", from("a")), relay("d", from("c")));
        assertEquals(List.of("circle", "circle"), keys(worked.remarks(Severity.STOP)));
    }

    /** The first slip tells the circle; the others are refused too and point to it. */
    private static void assertCircle(WorkedProject worked, String circle) {
        List<WorkedSlip> slips = List.copyOf(worked.slips().values());
        assertTrue(said(slips.get(0).remarks().get(0))
                .startsWith("These slips wait for each other: " + circle + ". | line 1"));
        for (WorkedSlip slip : slips) {
            assertEquals(State.REFUSED, slip.state());
            assertEquals(List.of(slip == slips.get(0) ? "circle" : "in-circle"), keys(slip.remarks()));
            assertEquals("take", slip.remarks().get(0).question());
        }
        assertTrue(slips.get(0).remarks().get(0).stops());
        assertTrue(slips.stream()
                .skip(1)
                .allMatch(slip -> said(slip.remarks().get(0)).contains("told at slip “a”")
                        && !slip.remarks().get(0).stops()));
    }

    @Test
    void slipsBehindACircleWaitAndTheRestIsWorked() {
        WorkedProject worked = shop.work(
                relay("behind", from("a")),
                relay("a", from("b")),
                relay("b", from("a")),
                relay("free", "'take': '5 mm'"),
                relay("far-behind", from("behind")));
        assertEquals(
                Map.of(
                        "behind",
                        State.WAITING,
                        "far-behind",
                        State.WAITING,
                        "a",
                        State.REFUSED,
                        "b",
                        State.REFUSED,
                        "free",
                        State.WORKED),
                states(worked));
        assertEquals(List.of("waits"), keys(worked.slips().get("behind").remarks()));
        assertTrue(said(worked.slips().get("behind").remarks().get(0))
                .startsWith("Waits for slip “a”. | line 1, column "));
        assertEquals("take", worked.slips().get("behind").remarks().get(0).question());
        assertTrue(said(worked.slips().get("far-behind").remarks().get(0)).startsWith("Waits for slip “behind”."));
    }

    @Test
    void aCircleThatIsBrokenUpIsWorked() throws Exception {
        Project project = project(projectText(relay("a", from("b")), relay("b", from("a"))));
        WorkedProject circle = shop.bench().work(project);
        WorkedProject mended = shop.bench().work(project.answering("a", "take", "\"4 mm\""), circle);
        assertEquals(Map.of("a", State.WORKED, "b", State.WORKED), states(mended));
        WorkedProject again = shop.bench().work(project, mended);
        assertEquals(Map.of("a", State.REFUSED, "b", State.REFUSED), states(again));
        assertEquals(Optional.empty(), again.slips().get("a").answers());
    }

    @Test
    void whatHangsOnARefusedSlipWaitsAndKeepsNoOldNumber() throws Exception {
        Project project = project(projectText(relay("a", "'take': '5 mm'"), relay("b", from("a"))));
        WorkedProject worked = shop.bench().work(project);
        WorkedProject refused = shop.bench().work(project.answering("a", "take", "\"-1 mm\""), worked);
        assertEquals(Map.of("a", State.REFUSED, "b", State.WAITING), states(refused));
        assertEquals(Optional.empty(), refused.slips().get("b").answers());
        WorkedProject mended = shop.bench().work(project, refused);
        assertEquals(5, given(mended.slips().get("b")));
    }

    @Test
    void aSlipNewerThanItsCalculatorSaysSoInItsState() {
        WorkedProject worked =
                shop.work("{\"id\": \"a\", \"calculator\": \"relay\", \"version\": 9}", slip("b", "nowhere", ""));
        assertEquals("state.dormant-newer", worked.slips().get("a").stateKey());
        assertEquals("state.dormant", worked.slips().get("b").stateKey());
    }

    @Test
    void aSlipThatAnotherBundleWorksThanItWasMadeWithSaysSo() {
        String other =
                "{\"id\": \"a\", \"calculator\": \"relay\", \"from\": \"org.example.nets\", \"questions\": {\"take\": \"2 mm\"}}";
        WorkedSlip worked = shop.work(other).slips().get("a");
        assertEquals(State.WORKED, worked.state());
        assertEquals(List.of("worked-by-other"), keys(worked.remarks()));
        assertEquals(
                "The slip was made with “relay” of the bundle org.example.nets; that of org.example.kit works it.",
                ENGLISH.what(worked.remarks().get(0)));
        String own = other.replace("org.example.nets", "org.example.kit");
        assertEquals(List.of(), keys(shop.work(own).slips().get("a").remarks()));
    }

    @Test
    void aSlipWithoutACalculatorIsToldOnce() {
        WorkedProject worked = shop.work("{\"id\": \"a\"}");
        assertEquals(List.of("slip-without-calculator"), keys(worked.remarks()));
        assertEquals("state.dormant-unnamed", worked.slips().get("a").stateKey());
    }

    @Test
    void whatHangsOnADormantSlipWaits() {
        WorkedProject worked = shop.work(slip("far", "nowhere", ""), relay("b", from("far")));
        assertEquals(Map.of("far", State.DORMANT, "b", State.WAITING), states(worked));
        assertEquals(List.of("waits"), keys(worked.slips().get("b").remarks()));
    }

    @Test
    void aProjectWhoseCalculatorsAreAllGoneOpensAndLosesNothing() {
        String text = projectText(
                slip("a", "gone", json("'x' : [ 1.50,{'y':null}]")),
                json("{'id':'b','calculator':'gone-too','from':'org.example.gone','version':9, 'mine': 1}"));
        WorkedProject worked = new Shop().bench().work(project(text));
        assertEquals(Map.of("a", State.DORMANT, "b", State.DORMANT), states(worked));
        assertEquals(text, worked.project().text());
        assertEquals(List.of("dormant"), keys(worked.slips().get("a").remarks()));
        assertTrue(said(worked.slips().get("b").remarks().get(0)).contains("bundle org.example.gone brings it"));
        assertEquals(List.of(), worked.slips().get("a").asked());
    }

    @Test
    void aDormantSlipNamesTheNearestCalculatorOrTheNewerVersion() {
        WorkedProject worked =
                shop.work(slip("a", "realy", ""), json("{'id': 'b', 'calculator': 'sampler', 'version': 3}"));
        assertTrue(said(worked.slips().get("a").remarks().get(0))
                .startsWith("No calculator called “realy” is installed; “relay” is."));
        assertTrue(said(worked.slips().get("b").remarks().get(0))
                .startsWith("The slip is of version 3 of “sampler”; version 2 is installed."));
    }

    @Test
    void ofTwoSlipsWithOneIdTheFirstIsWorked() {
        WorkedProject worked = shop.work(relay("a", "'take': '5 mm'"), relay("a", "'take': '6 mm'"));
        assertEquals(List.of(5.0), relay.calls);
        assertEquals(List.of("slip-id-twice"), keys(worked.remarks()));
        assertEquals(1, worked.remarks(Severity.STOP).size());
    }
}
