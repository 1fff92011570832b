package org.hidewright.core.project;

import static org.hidewright.core.bench.Shop.project;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.core.json.JsonTrouble;
import org.junit.jupiter.api.Test;

/** Changes of single answers and of the list of slips touch their own characters alone. */
class EditedProjectTest {
    private static final String TEXT = """
            {
              "hidewright": 1,
              "name": "Kit",
              "slips": [
                {"id": "a", "calculator": "relay", "questions": {"held": {"width": "8 mm", "height": 3},
                  "closing": {"snap": {"cap": "12 mm"}}, "plain": "snap",
                  "rows": [{"id": "one", "x": 1}, {"x": 2}, {"id": "three", "run": {"x": 3}}]}},
                {"id": "b", "calculator": "relay", "title": "Second"},
                7,
                {"id": "c", "calculator": "relay"}
              ],
              "theirs": true
            }
            """;

    private final Project kit = project(TEXT);

    private static AnswerPath at(String question) {
        return AnswerPath.of(question);
    }

    private String answering(AnswerPath path, String json) throws JsonTrouble {
        return kit.with(kit.slip("a").orElseThrow().answering(path, json)).text();
    }

    private static String with(String was, String now) {
        assertEquals(2, (TEXT + " ").split(java.util.regex.Pattern.quote(was), -1).length, was);
        return TEXT.replace(was, now);
    }

    @Test
    void aPathReadsAsRemarksNameIt() {
        assertEquals(
                "rows[one].run.x", at("rows").row("one").key("run").key("x").toString());
        assertEquals("rows", at("rows").row("one").question());
        assertThrows(IllegalArgumentException.class, () -> new AnswerPath(List.of()));
        assertThrows(IllegalArgumentException.class, () -> new AnswerPath(List.of(new AnswerPath.Step.Row("one"))));
    }

    @Test
    void answersInsideAreReplacedWhereTheyStand() throws Exception {
        assertEquals(with("\"8 mm\"", "\"9 mm\""), answering(at("held").key("width"), "\"9 mm\""));
        assertEquals(
                with("\"12 mm\"", "\"13 mm\""),
                answering(at("closing").key("snap").key("cap"), "\"13 mm\""));
        assertEquals(
                with("\"x\": 1", "\"x\": 5"), answering(at("rows").row("one").key("x"), "5"));
        assertEquals(
                with("\"x\": 2", "\"x\": 5"), answering(at("rows").row("row-2").key("x"), "5"));
        assertEquals(
                with("\"x\": 3", "\"x\": 5"),
                answering(at("rows").row("three").key("run").key("x"), "5"));
    }

    @Test
    void whatIsMissingOnTheWayIsPutThere() throws Exception {
        assertEquals(
                with("\"height\": 3", "\"height\": 3, \"depth\": 2"),
                answering(at("held").key("depth"), "2"));
        assertEquals(
                with("{\"x\": 3}}]}", "{\"x\": 3}}], \"new\": {\"deep\":{\"er\":1}}}"),
                answering(at("new").key("deep").key("er"), "1"));
        assertEquals(
                with("\"plain\": \"snap\"", "\"plain\": {\"snap\":{\"cap\":1}}"),
                answering(at("plain").key("snap").key("cap"), "1"));
        assertThrows(
                IllegalArgumentException.class,
                () -> answering(at("rows").row("four").key("x"), "1"));
        assertThrows(
                IllegalArgumentException.class,
                () -> answering(at("new").row("four").key("x"), "1"));
        assertEquals(
                TEXT.replace("\"title\": \"Second\"", "\"title\": \"Second\", \"questions\": {\"x\": 1}"),
                kit.with(kit.slip("b").orElseThrow().answering(at("x"), "1")).text());
    }

    @Test
    void whatIsClearedGoesWithItsComma() throws Exception {
        Slip slip = kit.slip("a").orElseThrow();
        assertEquals(
                with("\"width\": \"8 mm\", ", ""),
                kit.with(slip.clearing(at("held").key("width"))).text());
        assertEquals(
                with(", \"height\": 3", ""),
                kit.with(slip.clearing(at("held").key("height"))).text());
        assertEquals(
                with(", {\"x\": 2}", ""),
                kit.with(slip.clearing(at("rows").row("row-2"))).text());
        assertEquals(
                with("{\"id\": \"one\", \"x\": 1}, ", ""),
                kit.with(slip.clearing(at("rows").row("one"))).text());
        assertEquals(
                with("{\"cap\": \"12 mm\"}", "{}"),
                kit.with(slip.clearing(at("closing").key("snap").key("cap"))).text());
        assertEquals(
                TEXT,
                kit.with(slip.clearing(at("closing").key("stud").key("cap"))).text());
        assertEquals(TEXT, kit.with(slip.clearing(at("nothing"))).text());
    }

    @Test
    void anotherVariantKeepsWhatWasTypedForTheFirst() throws Exception {
        Slip slip = kit.slip("a").orElseThrow();
        String stud = kit.with(slip.choosing(at("closing"), "stud")).text();
        assertEquals(with("{\"cap\": \"12 mm\"}}", "{\"cap\": \"12 mm\"}, \"is\": \"stud\"}"), stud);
        Slip chosen = project(stud).slip("a").orElseThrow();
        assertEquals(
                with("{\"cap\": \"12 mm\"}}", "{\"cap\": \"12 mm\"}, \"is\": \"snap\"}"),
                kit.with(chosen.choosing(at("closing"), "snap")).text());
        assertEquals(
                with("\"plain\": \"snap\"", "\"plain\": {\"stud\": {}}"),
                kit.with(slip.choosing(at("plain"), "stud")).text());
        assertEquals(
                with("{\"x\": 3}}", "{\"x\": 3}, \"is\": \"bend\"}"),
                kit.with(slip.choosing(at("rows").row("three"), "bend")).text());
    }

    @Test
    void rowsAreAddedBetweenTheOthers() throws Exception {
        Slip slip = kit.slip("a").orElseThrow();
        assertEquals(
                with("\"rows\": [", "\"rows\": [{\"id\": \"n\"}, "),
                kit.with(slip.withRow(at("rows"), 0, "{\"id\": \"n\"}")).text());
        assertEquals(
                with("{\"x\": 2}", "{\"id\": \"n\"}, {\"x\": 2}"),
                kit.with(slip.withRow(at("rows"), 1, "{\"id\": \"n\"}")).text());
        assertEquals(
                with("{\"x\": 3}}]", "{\"x\": 3}}, {\"id\": \"n\"}]"),
                kit.with(slip.withRow(at("rows"), 3, "{\"id\": \"n\"}")).text());
        assertThrows(IllegalArgumentException.class, () -> slip.withRow(at("held"), 0, "{}"));
        Slip empty = slip.answering(at("rows"), "[]").withRow(at("rows"), 0, "{\"id\": \"n\"}");
        assertEquals("[{\"id\": \"n\"}]", empty.textOf(empty.answer(at("rows")).orElseThrow()));
    }

    @Test
    void aSlipTriesSomethingOutForAnotherAndIsTakenOver() throws Exception {
        Slip trying = kit.slip("b").orElseThrow().asWhatIf("a");
        assertEquals("a", trying.whatIf().orElseThrow());
        assertEquals("b", trying.asWhatIf("b").whatIf().orElseThrow());
        assertEquals(TEXT, kit.with(kit.slip("b").orElseThrow()).text());
        Slip over = kit.slip("a").orElseThrow().answeredAs(trying.answering(at("take"), "\"3 mm\""));
        assertEquals("{\"take\": \"3 mm\"}", over.textOf(over.questions()));
        Slip bare = kit.slip("a").orElseThrow().answeredAs(trying);
        assertEquals("{}", bare.textOf(bare.questions()));
        assertEquals("a", over.id());
        assertTrue(over.whatIf().isEmpty());
    }

    @Test
    void whatWasFoundComesAlongWithHowItWasFound() throws Exception {
        Slip real = kit.slip("a").orElseThrow();
        Slip trying = kit.slip("b").orElseThrow();
        String how = "{\"asked\":\"1f\",\"seed\":7,\"tries\":12}";
        Slip over = real.answeredAs(trying.finding("take", "{\"at\": \"3 mm\"}", how));
        assertEquals(
                "{\"take\": {\"at\": \"3 mm\"}}", over.textOf(over.questions()).replace("\n", ""));
        assertEquals(how, over.textOf(over.node().get(Slip.SEARCHED).orElseThrow()));
        Slip typed = over.answeredAs(trying);
        assertTrue(typed.node().get(Slip.SEARCHED).isEmpty(), typed.text());
    }

    @Test
    void titlesComeAndGo() throws Exception {
        assertEquals(
                with("\"Second\"", "\"Other \\\"half\\\"\""),
                kit.with(kit.slip("b").orElseThrow().titled("Other \"half\"")).text());
        assertEquals(
                with(", \"title\": \"Second\"", ""),
                kit.with(kit.slip("b").orElseThrow().titled("")).text());
        assertEquals(TEXT, kit.with(kit.slip("c").orElseThrow().titled("")).text());
        assertEquals("d", kit.slip("c").orElseThrow().called("d").id());
    }

    @Test
    void slipsAreAddedAndRemovedAmongWhatIsNone() throws Exception {
        String slip = "{\"id\": \"n\", \"calculator\": \"relay\"}";
        assertEquals(
                with("    {\"id\": \"b\"", "    " + slip + ",\n    {\"id\": \"b\""),
                kit.adding(1, slip).text());
        assertEquals(
                with("\"c\", \"calculator\": \"relay\"}", "\"c\", \"calculator\": \"relay\"},\n    " + slip),
                kit.adding(3, slip).text());
        assertEquals(
                with("\n    7,", "\n    7,\n    " + slip + ","),
                kit.adding(2, slip).text());
        assertEquals(
                with("    {\"id\": \"b\", \"calculator\": \"relay\", \"title\": \"Second\"},\n", ""),
                kit.removing("b").text());
        assertThrows(IllegalArgumentException.class, () -> kit.removing("nowhere"));
        String only = "{\"hidewright\": 1}";
        assertEquals(1, project(only).adding(0, slip).slips().size());
        Project none = kit.removing("a").removing("b").removing("c");
        assertEquals(0, none.slips().size());
        assertEquals(
                List.of("n"),
                none.adding(0, slip).slips().stream().map(Slip::id).toList());
        assertEquals(
                "{\n  \"hidewright\": 1,\n  \"slips\": [\n    {\n      \"id\": \"n\"\n    }\n  ]\n}",
                project("{\n  \"hidewright\": 1,\n  \"slips\": []\n}")
                        .adding(0, "{\n  \"id\": \"n\"\n}")
                        .text());
    }

    @Test
    void slipsMoveAsTheyAreWritten() throws Exception {
        Project moved = kit.moving("a", 2);
        assertEquals(
                List.of("b", "c", "a"), moved.slips().stream().map(Slip::id).toList());
        assertEquals(
                kit.slip("a").orElseThrow().text(),
                moved.slip("a").orElseThrow().text());
        assertEquals(
                List.of("c", "a", "b"),
                kit.moving("c", 0).slips().stream().map(Slip::id).toList());
        assertThrows(IllegalArgumentException.class, () -> kit.moving("nowhere", 0));
    }

    @Test
    void theHeadIsChangedInItsPlace() throws Exception {
        assertEquals(with("\"Kit\"", "\"Other\""), kit.named("Other").text());
        Project inches = kit.showing("units", "in");
        assertEquals("in", inches.shown("units").orElseThrow());
        assertEquals("mm", inches.showing("units", "mm").shown("units").orElseThrow());
        Project both = inches.showing("paper", "Letter");
        assertEquals("in", both.shown("units").orElseThrow());
        assertEquals("Letter", both.shown("paper").orElseThrow());
    }
}
