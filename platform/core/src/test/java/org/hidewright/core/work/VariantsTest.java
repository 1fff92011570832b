package org.hidewright.core.work;

import static org.hidewright.core.bench.Shop.json;
import static org.hidewright.core.bench.Shop.keys;
import static org.hidewright.core.bench.Shop.project;
import static org.hidewright.core.bench.Shop.projectText;
import static org.hidewright.core.bench.Shop.said;
import static org.hidewright.core.bench.Shop.slip;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.core.bench.Sampler;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.project.Project;
import org.hidewright.core.work.WorkedSlip.State;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One of several variants, groups and rows: what is asked, what stays in the file, which ids rows have. */
class VariantsTest {
    private final Shop shop = new Shop(new Sampler());

    private WorkedSlip asked(String questions) {
        return shop.one("sampler", "'thickness': '2 mm', " + questions);
    }

    private static String value(WorkedSlip slip, String question) {
        return slip.questions()
                .orElseThrow(() -> new AssertionError(slip.remarks().toString()))
                .get(question)
                .orElseThrow()
                .toString();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                "{'round-bar': {'diameter': '8 mm'}}|round-bar{diameter=8.0 mm, turns=1}",
                "{'is': 'round-bar', 'round-bar': {'diameter': 8, 'turns': 2}}|round-bar{diameter=8.0 mm, turns=2}",
                "{'is': 'own-layers', 'round-bar': {'diameter': 8}, 'own-layers': {'layers': 3}}|own-layers{layers=3}",
                "{'own-layers': {'layers': '4'}}|own-layers{layers=4}",
            })
    void aVariantIsChosenByItsAnswersOrByIs(String core, String value) {
        WorkedSlip slip = asked("'core': " + core);
        assertEquals(value, value(slip, "core"));
        assertEquals(List.of(), slip.remarks());
    }

    @Test
    void answersForVariantsNotChosenStayAndAreNotComplainedOf() {
        String questions = json("'thickness': 2, 'core': {'is': 'own-layers', 'round-bar': {'diameter': 'a  sheep',"
                + " 'shape': 1}, 'flat-ring': 5, 'own-layers': {'layers': 3}}");
        Project project = project(projectText(slip("s", "sampler", questions)));
        WorkedProject worked = shop.bench().work(project);
        assertEquals(List.of(), worked.remarks());
        assertEquals(State.WORKED, worked.slips().get("s").state());
        assertTrue(worked.project().text().contains(questions));
    }

    @Test
    void aVariantNamedAloneHasItsQuestionsOpen() {
        WorkedSlip slip = asked("'core': 'flat-ring'");
        assertEquals(State.REFUSED, slip.state());
        assertEquals(List.of("unanswered"), keys(slip.remarks()));
        assertEquals("core.flat-ring.inside", slip.remarks().get(0).question());
        assertTrue(said(slip.remarks().get(0)).contains("line 1, column "));
    }

    @Test
    void aMisspeltVariantAndAMisspeltQuestionInItAreNamed() {
        WorkedSlip variant = asked("'core': {'rond-bar': {'diameter': 5}}");
        assertEquals(List.of("misspelt-key"), keys(variant.remarks()));
        assertEquals("core.rond-bar", variant.remarks().get(0).question());
        WorkedSlip question = asked("'core': {'round-bar': {'diametre': 5, 'diameter': 6}}");
        assertEquals(List.of("unknown-key-nearest"), keys(question.remarks()));
        assertEquals("core.round-bar.diametre", question.remarks().get(0).question());
        WorkedSlip group = asked("'edge': {'bevl': 5}");
        assertEquals(List.of("unknown-key-nearest"), keys(group.remarks()));
        assertEquals("edge.bevl", group.remarks().get(0).question());
    }

    @Test
    void aVariantChosenByAWordThatIsNoneIsToldOnce() {
        WorkedSlip slip = asked("'core': {'is': 'rond-bar', 'rond-bar': {'diameter': 5}}");
        assertEquals(List.of("no-such-option-nearest"), keys(slip.remarks()));
    }

    @Test
    void aVariantIsChosenInLettersOfEitherCase() {
        for (String core : List.of(
                "{'is': 'Flat-Ring', 'flat-ring': {'inside': 20}}",
                "{'is': 'FLAT-RING', 'FLAT-RING': {'inside': 20}}")) {
            assertEquals(
                    value(asked("'core': {'flat-ring': {'inside': 20}}"), "core"),
                    value(asked("'core': " + core), "core"));
        }
        assertEquals(List.of("unanswered"), keys(asked("'core': 'Flat-Ring'").remarks()));
    }

    @Test
    void limitsInsideAVariantNameTheirQuestion() {
        WorkedSlip slip = asked("'core': {'round-bar': {'diameter': '31 mm', 'turns': 6}}");
        assertEquals(List.of("above-limit", "above-limit"), keys(slip.remarks()));
        assertEquals("core.round-bar.diameter", slip.remarks().get(0).question());
        assertEquals("core.round-bar.turns", slip.remarks().get(1).question());
    }

    @Test
    void rowsHaveTheirIdsAndPresetsInside() {
        WorkedSlip slip =
                asked("'layers': [{'id': 'strap', 'thickness': 3}, {'thickness': 2, 'skived': 'yes', 'note': 'n'}]");
        assertEquals(
                "[strap: {thickness=3.0 mm, skived=false}, row-2: {thickness=2.0 mm, skived=true, note=n}]",
                value(slip, "layers"));
        assertEquals(
                List.of("strap", "strap", "row-2", "row-2", "row-2"),
                slip.asked().stream()
                        .map(AskedLine::row)
                        .filter(row -> !row.isEmpty() && !row.equals("b1"))
                        .toList());
    }

    @Test
    void anIdGivenByTheHostNeverTakesOneOfTheMaker() {
        WorkedSlip slip = asked("'layers': [{'thickness': 1}, {'id': 'row-1', 'thickness': 2}]");
        assertEquals(State.WORKED, slip.state(), slip.remarks().toString());
        assertTrue(value(slip, "layers").endsWith(", row-1: {thickness=2.0 mm, skived=false}]"));
    }

    @Test
    void rowsOfVariantsAreChosenOneByOne() {
        WorkedSlip slip =
                asked("'sections': [{'id': 'r', 'run': {'length': 50}}, {'is': 'bend'}, {'id': 'x', 'is': 'run',"
                        + " 'run': {'length': 5}, 'bend': {'turn': 90}}]");
        assertEquals(
                "[runr: {length=50.0 mm}, bendrow-2: {turn=3.141592653589793 rad}, runx: {length=5.0 mm}]",
                value(slip, "sections"));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                "'layers': [{'id': 'a', 'thickness': 1}, {'id': 'lining'}]|unanswered|layers[lining].thickness",
                "'layers': [{'id': 'a', 'thickness': 1}, {'skived': 'no'}]|unanswered|layers[row-2].thickness",
                "'layers': [{'id': 'a', 'thickness': 11}]|above-limit|layers[a].thickness",
                "'layers': [{'id': 'a', 'thickness': 1, 'tickness': 2}]|unknown-key-nearest|layers[a].tickness",
                "'layers': [{'id': 'a', 'thickness': 1}, {'id': 'a', 'thickness': 2}]|row-id-twice|layers[a]",
                "'layers': [{'id': 7, 'thickness': 1}]|wrong-shape|layers[row-1]",
                "'sections': [{'id': 'b', 'run': {}}]|unanswered|sections[b].run.length",
                "'sections': [{'id': 'b', 'rnu': {}, 'is': 'bend'}]|unknown-key-nearest|sections[b].rnu",
                "'sections': [{'id': 'b'}]|which-variant|sections[b]",
                "'sections': ['bend']|rows-expected|sections",
                "'layers': {'from': 'x'}|rows-expected|layers",
            })
    void troubleInARowNamesTheRow(String questions, String key, String path) {
        WorkedSlip slip = asked(questions);
        assertEquals(List.of(key), keys(slip.remarks()));
        assertEquals(path, slip.remarks().get(0).question());
        String said = said(slip.remarks().get(0));
        assertTrue(said.contains("line 1, column ") && said.contains("question “" + path + "”"), said);
    }

    @Test
    void noRowsIsAnAnswer() {
        assertEquals("[]", value(asked("'layers': []"), "layers"));
    }

    @Test
    void anOpenQuestionIsNotShownAndATypedOneIs() {
        assertTrue(asked("'lined': 'no'").asked().stream()
                .noneMatch(line -> line.question().key().equals("glue")));
        AskedLine glue = asked("'glue': '0.1 mm'").asked().stream()
                .filter(line -> line.question().key().equals("glue"))
                .findFirst()
                .orElseThrow();
        assertTrue(glue.typed());
        assertEquals("0.1 mm", glue.text());
    }
}
