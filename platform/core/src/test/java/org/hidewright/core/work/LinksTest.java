package org.hidewright.core.work;

import static org.hidewright.core.bench.Shop.json;
import static org.hidewright.core.bench.Shop.keys;
import static org.hidewright.core.bench.Shop.said;
import static org.hidewright.core.bench.Shop.slip;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Size;
import org.hidewright.core.bench.Relay;
import org.hidewright.core.bench.Sampler;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.work.WorkedSlip.State;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LinksTest {
    private final Shop shop = new Shop(new Relay(), new Sampler());

    /** A slip with links to {@code source} (a sampler) and {@code chain} (a relay). */
    private WorkedSlip linking(String calculator, String questions) {
        return shop.work(
                        slip(
                                "source",
                                "sampler",
                                json("'thickness': '3 mm', 'layers': [{'id': 'strap', 'thickness': '3 mm',"
                                        + " 'note': 'skived'}, {'id': 'lining', 'thickness': '1 mm'}]")),
                        slip("chain", "relay", json("'all': '5 mm; 6 mm', 'times': 4")),
                        slip("s", calculator, json(questions)))
                .slips()
                .get("s");
    }

    private static Object value(WorkedSlip slip, String key) {
        return slip.questions()
                .orElseThrow(() -> new AssertionError(slip.remarks().toString()))
                .get(key)
                .orElseThrow();
    }

    @Test
    void aLinkTakesTheAnswerOfTheOtherSlip() {
        WorkedSlip slip = linking("relay", "'take': {'from': 'source', 'answer': 'cut'}");
        assertEquals(Length.ofMm(6), value(slip, "take"));
        AskedLine line = slip.asked().get(0);
        assertEquals("source.cut", line.text());
        assertEquals(Entry.Origin.LINKED, line.origin());
        assertEquals("source", line.link().orElseThrow().slip());
    }

    @Test
    void aRowAndColumnOfATableCanBeLinked() {
        WorkedSlip slip =
                linking("relay", "'take': {'from': 'source', 'answer': 'rows', 'row': 'lining', 'column': 'at'}");
        assertEquals(Length.ofMm(1), value(slip, "take"));
        assertEquals("source.rows[lining].at", slip.asked().get(0).text());
    }

    @Test
    void aWholeColumnAnswersAListQuestion() {
        WorkedSlip slip = linking("relay", "'all': {'from': 'source', 'answer': 'rows', 'column': 'at'}");
        assertEquals(List.of(Length.ofMm(3), Length.ofMm(1)), value(slip, "all"));
        assertEquals("source.rows.at", slip.asked().get(2).text());
    }

    @Test
    void aListAnswersAListQuestionAndAGroupsPartASingleOne() {
        assertEquals(
                List.of(Length.ofMm(3), Length.ofMm(4)),
                value(linking("relay", "'all': {'from': 'source', 'answer': 'marks'}"), "all"));
        assertEquals(
                Length.ofMm(4),
                value(linking("relay", "'take': {'from': 'source', 'answer': 'sums', 'column': 'sum'}"), "take"));
    }

    @Test
    void aQuestionInsideARowAVariantAndAGroupCanBeLinked() {
        WorkedSlip slip = linking(
                "sampler",
                "'thickness': 2, 'layers': [{'id': 'x', 'thickness': {'from': 'source', 'answer': 'cut'}}],"
                        + " 'core': {'own-layers': {'layers': {'from': 'chain', 'answer': 'times'}}},"
                        + " 'edge': {'bevel': {'from': 'chain', 'answer': 'give'}}");
        assertEquals(State.WORKED, slip.state(), slip.remarks().toString());
        assertEquals(
                Length.ofMm(6),
                ((Values) ((List<?>) value(slip, "layers")).get(0))
                        .get("thickness")
                        .orElseThrow());
        assertEquals(Length.ofMm(1), ((Values) value(slip, "edge")).get("bevel").orElseThrow());
    }

    @ParameterizedTest(name = "{0} from {1}")
    @CsvSource({
        "turn,turn",
        "panel,panel",
        "weight,weight",
        "density,density",
        "cover,cover",
        "holes,holes",
        "shrink,shrink",
        "tannage,tannage",
        "lined,lined",
        "stamp,stamp",
        "marks,marks",
        "tannages,tannages"
    })
    void everyKindIsLinkedToAnAnswerOfTheSameKind(String question, String answer) {
        WorkedSlip slip = linking(
                "sampler", "'thickness': 2, '" + question + "': {'from': 'source', 'answer': '" + answer + "'}");
        assertEquals(State.WORKED, slip.state(), slip.remarks().toString());
        assertEquals(List.of(), slip.remarks());
    }

    @Test
    void aCountAnswersARatioAndAWholeRatioACount() {
        assertEquals(
                1.0,
                value(
                        linking(
                                "sampler",
                                "'thickness': 2, 'shrink': {'from': 'chain', 'answer': 'table',"
                                        + " 'row': 'line-2', 'column': 'count'}"),
                        "shrink"));
        assertEquals(4, value(linking("relay", "'times': {'from': 'chain', 'answer': 'times'}"), "times"));
    }

    @ParameterizedTest(name = "{0} from {1}")
    @CsvSource({
        "thickness,panel", "thickness,cover", "thickness,marks", "thickness,said", "turn,cut", "panel,cut", "cover,cut",
        "holes,shrink", "holes,cut", "tannage,stamp", "stamp,tannage", "lined,holes", "marks,cut", "marks,tannages",
        "thickness,sketch", "shrink,density"
    })
    void whatDoesNotMeasureTheSameIsRefused(String question, String answer) {
        WorkedSlip slip = linking(
                "sampler",
                (question.equals("thickness") ? "" : "'thickness': 2, ") + "'" + question
                        + "': {'from': 'source', 'answer': '" + answer + "'}");
        assertEquals(State.REFUSED, slip.state());
        assertEquals(List.of("link-wrong-kind"), keys(slip.remarks()));
        assertEquals(question, slip.remarks().get(0).question());
        assertEquals(1, slip.remarks().get(0).place().line());
    }

    @Test
    void theRefusalOfALinkNamesBothKindsInWords() {
        assertTrue(said(linking("relay", "'any': {'from': 'source', 'answer': 'cut'}")
                        .remarks()
                        .get(0))
                .startsWith("source.cut cannot answer this: it is of the kind length, and area is asked. | line 1"));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                "'from': 'sorce', 'answer': 'cut'|link-no-slip-nearest|“source” is.",
                "'from': 'elsewhere', 'answer': 'cut'|link-no-slip|source, chain, s.",
                "'from': 'source', 'answer': 'cuts'|link-no-answer-nearest|“cut” is one.",
                "'from': 'source', 'answer': 'weather-today'|link-no-answer|Its answers are: cut, turn,",
                "'from': 'source', 'answer': 'rows', 'row': 'linning', 'column': 'at'|link-no-row-nearest|“lining” is one.",
                "'from': 'source', 'answer': 'rows', 'row': 'somewhere', 'column': 'at'|link-no-row|Its rows are: strap, lining.",
                "'from': 'source', 'answer': 'rows', 'row': 'lining', 'column': 'att'|link-no-answer-nearest|“at” is one.",
                "'from': 'source', 'answer': 'rows', 'row': 'lining'|link-no-column|at, remark, factor",
                "'from': 'source', 'answer': 'rows'|link-no-column|at, remark, factor",
                "'from': 'source', 'answer': 'sums'|link-no-column|sum, many",
                "'from': 'source', 'answer': 'cut', 'column': 'at'|link-no-table|cut",
                "'from': 'source', 'answer': 'cut', 'row': 'strap'|link-no-table|cut",
                "'from': 'source', 'answer': 'rows', 'row': 'lining', 'column': 'remark'|link-no-value|lining",
                "'from': 'source', 'answer': 'glue'|link-no-value|glue",
            })
    void aLinkThatLeadsNowhereSaysWhatWouldBeRight(String link, String key, String said) {
        WorkedSlip slip = linking("relay", "'take': {" + link + "}");
        assertEquals(List.of(key), keys(slip.remarks()));
        assertEquals(State.REFUSED, slip.state());
        String text = said(slip.remarks().get(0));
        assertTrue(text.contains(said), text);
        assertTrue(text.contains("| line 1, column "), text);
        assertTrue(text.contains("slip “s”, question “take”"), text);
    }

    @Test
    void aWordInALinkThatMeansNothingIsNamed() {
        WorkedSlip slip = linking("relay", "'take': {'from': 'source', 'answer': 'cut', 'colum': 'at'}");
        assertEquals(List.of("unknown-key-nearest"), keys(slip.remarks()));
        assertTrue(said(slip.remarks().get(0)).startsWith("“colum” means nothing here; “column” would."));
        assertEquals("take.colum", slip.remarks().get(0).question());
        assertEquals(State.WORKED, slip.state());
    }

    @Test
    void aLinkThatLacksItsAnswerIsToldHowALinkIsWritten() {
        WorkedSlip slip = linking("relay", "'take': {'from': 'source', 'anwser': 'cut'}");
        assertEquals(State.REFUSED, slip.state());
        assertEquals("wrong-shape", keys(slip.remarks()).get(0));
        assertTrue(
                said(slip.remarks().get(0)).contains("{\"from\": \"…\", \"answer\": \"…\"}"),
                said(slip.remarks().get(0)));
    }

    @Test
    void aTableAGroupAndAVariantCannotBeLinkedAsAWhole() {
        for (String question : List.of("layers", "edge", "core", "sections")) {
            WorkedSlip slip =
                    linking("sampler", "'thickness': 2, '" + question + "': {'from': 'source', 'answer': 'rows'}");
            assertEquals(List.of("link-not-here"), keys(slip.remarks()), question);
            assertEquals(State.REFUSED, slip.state());
        }
    }

    @Test
    void aLinkedValueIsHeldToTheLimitsOfTheQuestion() {
        WorkedSlip high = shop.work(
                        slip("chain", "relay", json("'take': '13 mm'")),
                        slip("s", "sampler", json("'thickness': {'from': 'chain', 'answer': 'give'}")))
                .slips()
                .get("s");
        assertEquals(List.of("above-limit"), keys(high.remarks()));
        assertEquals(State.REFUSED, high.state());
        WorkedSlip unusual = linking("sampler", "'thickness': {'from': 'source', 'answer': 'cut'}");
        assertEquals("unusual", keys(unusual.remarks()).get(0));
        assertEquals(State.WORKED, unusual.state());
    }

    @Test
    void aLinkedCountIsHeldToTheLimitsToo() {
        WorkedSlip slip = shop.work(
                        slip("chain", "relay", json("'times': 21")),
                        slip(
                                "s",
                                "sampler",
                                json("'thickness': 2, 'holes': {'from': 'chain', 'answer': 'times'}, 'layers':"
                                        + " [{'id': 'a', 'thickness': {'from': 'chain', 'answer': 'give'}}]")))
                .slips()
                .get("s");
        assertEquals(List.of("above-limit"), keys(slip.remarks()));
        assertEquals("holes", slip.remarks().get(0).question());
        assertEquals(State.REFUSED, slip.state());
    }

    @Test
    void whatIsMoreThanTheLastBitsPastALimitIsRefused() {
        WorkedSlip slip = shop.work(
                        slip("a", "relay", json("'take': '12.00000001 mm'")),
                        slip("s", "sampler", json("'thickness': {'from': 'a', 'answer': 'give'}")))
                .slips()
                .get("s");
        assertEquals(List.of("above-limit"), keys(slip.remarks()));
    }

    @Test
    void theLastBitsOfASumDoNotPushALinkedValuePastALimit() {
        // 0.1 + 0.2 is more than 0.3 in binary; 11.7 + 0.1 + 0.2 must still count as 12 mm at most
        WorkedSlip slip = shop.work(
                        slip("a", "relay", json("'take': '11.9 mm', 'more': '0.1000000000000018 mm'")),
                        slip("s", "sampler", json("'thickness': {'from': 'a', 'answer': 'give'}")))
                .slips()
                .get("s");
        assertEquals(State.WORKED, slip.state(), slip.remarks().toString());
        assertEquals(Length.ofMm(12), value(slip, "thickness"));
    }

    @Test
    void aLinkedListAndSizeAreHeldToTheLimitsToo() {
        WorkedSlip list = shop.work(
                        slip("chain", "relay", json("'all': '1 mm; 51 mm'")),
                        slip(
                                "s",
                                "sampler",
                                json("'thickness': 2, 'marks': {'from': 'chain', 'answer': 'table', 'column': 'at'}")))
                .slips()
                .get("s");
        assertEquals(List.of("above-limit"), keys(list.remarks()));
        WorkedSlip size = linking("sampler", "'thickness': 2, 'cover': {'from': 'source', 'answer': 'cover'}");
        assertEquals(Size.class, value(size, "cover").getClass());
    }
}
