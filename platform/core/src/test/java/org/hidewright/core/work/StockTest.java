package org.hidewright.core.work;

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

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hidewright.api.calculator.NoticeKind.Severity;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Units;
import org.hidewright.core.bench.Refill;
import org.hidewright.core.bench.Relay;
import org.hidewright.core.bench.Sampler;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.jobcard.SlipJson;
import org.hidewright.core.project.Project;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.WorkedSlip.State;
import org.hidewright.core.workshop.Copies;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Questions answered from the workshop: cells, columns, rows and tables; the project’s copies; what has changed since. */
class StockTest {
    private static final String WORKSHOP = """
            {'workshop': 1, 'name': 'Field bench', 'currency': 'EUR', 'tables': {
             'leather': [
              {'id': 'side', 'name': 'Side', 'tannage': 'vegetable', 'thickness': '2-3 oz', 'price': '165'},
              {'id': 'hide', 'name': 'Hide', 'tannage': 'chrome', 'thickness': 1.2, 'price': '210 USD'},
              {'id': 'odd', 'name': 'Odd', 'tannage': 'vegetable', 'thickness': 'thin'}],
             'punches': [
              {'id': 'p2', 'name': '2', 'diameter': '2 mm'},
              {'id': 'p3', 'name': '3', 'diameter': '1/8 in'},
              {'id': 'p4', 'name': '4', 'diameter': 4}],
             'liquids': [
              {'id': 'dye', 'name': 'Dye', 'kind': 'dye', 'holds': '250 ml', 'price': '12.50'}],
             'pricking-irons': [
              {'id': 'iron', 'name': 'Iron', 'pitch': '3.85 mm', 'prongs': [2, 6]}]}}
            """;

    private final Shop shop = new Shop(new Sampler(), new Refill(), new Relay());

    private WorkedProject work(String... slips) {
        return shop.benchWith(WORKSHOP).work(project(projectText(slips)));
    }

    private WorkedSlip one(String calculator, String questions) {
        return work(slip("s", calculator, json(questions))).slips().get("s");
    }

    private static Object value(WorkedSlip slip, String question) {
        return slip.questions()
                .orElseThrow(() -> new AssertionError(
                        slip.remarks().stream().map(Shop::said).toList().toString()))
                .get(question)
                .orElseThrow();
    }

    private static String stock(String table, String row, String column) {
        return "{'workshop': '" + table + "'" + (row.isEmpty() ? "" : ", 'row': '" + row + "'")
                + (column.isEmpty() ? "" : ", 'column': '" + column + "'") + "}";
    }

    @Test
    void aCellAnswersAQuestionWithItsRangeAndItsOwnUnit() {
        WorkedSlip slip = one("sampler", "'thickness': " + stock("leather", "side", "thickness"));
        assertEquals(2.5 * 25.4 / 64, ((Length) value(slip, "thickness")).mm(), 1e-12);
        assertEquals(List.of("midpoint"), keys(slip.remarks()));
        AskedLine line = slip.asked().get(0);
        assertEquals("leather[side].thickness", line.cell().orElseThrow());
        assertEquals("2-3 oz", line.text());
        assertEquals(
                Length.ofMm(1.2),
                value(one("sampler", "'thickness': " + stock("leather", "hide", "thickness")), "thickness"));
    }

    @Test
    void anEditWithAnotherWorkshopFileTakesWhatLiesThereNow() throws Exception {
        Project project = project(projectText(
                slip("a", "relay", json("'take': " + stock("leather", "hide", "thickness"))),
                slip("b", "relay", json("'take': {'from': 'a', 'answer': 'give'}")),
                slip("c", "relay", "")));
        WorkedProject before = shop.benchWith(WORKSHOP).work(project);
        String thicker = WORKSHOP.replace("'thickness': 1.2", "'thickness': 3");
        Project edited = project.answering("c", "take", "\"7 mm\"");
        WorkedProject after = shop.benchWith(thicker).work(edited, before);
        assertEquals("1.2 mm", value(before.slips().get("b"), "take").toString());
        assertEquals("3.0 mm", value(after.slips().get("b"), "take").toString());
        assertEquals("7.0 mm", value(after.slips().get("c"), "take").toString());
        assertEquals(shop.benchWith(thicker).work(edited).remarks(), after.remarks());
    }

    @Test
    void whatIsWrongInTheCopiesIsToldWhereItStandsAfterAnEdit() throws Exception {
        String text = json("{'hidewright': 1, 'slips': [{'id': 'a', 'calculator': 'relay', 'questions': {}}],\n"
                + " 'workshop': {'nmae': 1,\n 'tables': []}}");
        Project edited = project(text).answering("a", "take", "[\n\n1]");
        List<Remark> told =
                shop.bench().work(edited, shop.bench().work(project(text))).general();
        assertEquals(
                List.of(4, 5),
                told.stream()
                        .filter(remark -> remark.place() != null)
                        .map(remark -> remark.place().line())
                        .toList());
        assertEquals(shop.bench().work(project(edited.text())).general(), told);
    }

    @Test
    void anAmountTakesTheCurrencyOfTheWorkshopUnlessItHasItsOwn() {
        assertEquals(
                Money.of(165, Units.currency("EUR")),
                value(one("refill", "'price': " + stock("leather", "side", "price")), "price"));
        assertEquals(
                Money.of(210, Units.currency("USD")),
                value(one("refill", "'price': " + stock("leather", "hide", "price")), "price"));
    }

    @Test
    void aColumnAnswersAListAndSoDoesACellThatHoldsOne() {
        WorkedSlip slip = one(
                "sampler",
                "'thickness': '2 mm', 'marks': " + stock("punches", "", "diameter") + ", 'counts': "
                        + stock("pricking-irons", "iron", "prongs"));
        assertEquals("[2.0 mm, 3.175 mm, 4.0 mm]", value(slip, "marks").toString());
        assertEquals(List.of(2, 6), value(slip, "counts"));
        assertEquals(
                "[2.0 mm]",
                value(one("sampler", "'thickness': '2 mm', 'marks': " + stock("punches", "p2", "diameter")), "marks")
                        .toString());
    }

    @Test
    void aChoiceIsTakenWhereTheQuestionHasItsKey() {
        assertEquals(
                "vegetable",
                value(one("sampler", "'thickness': 2, 'tannage': " + stock("leather", "side", "tannage")), "tannage"));
    }

    @Test
    void aRowAnswersAGroupByTheKeysOfItsColumnsAndPresetsFillTheRest() {
        WorkedSlip slip = one("sampler", "'thickness': 2, 'edge': " + stock("leather", "side", ""));
        assertEquals("{bevel=1.0 mm, tannage=vegetable}", value(slip, "edge").toString());
        assertEquals(
                "leather[side]",
                slip.asked().stream()
                        .filter(line -> line.question().key().equals("edge"))
                        .findFirst()
                        .orElseThrow()
                        .cell()
                        .orElseThrow());
    }

    @Test
    void aTableAnswersRowsUnderTheSameIds() {
        WorkedSlip slip = one("sampler", "'thickness': 2, 'layers': " + stock("leather", "hide", ""));
        assertEquals(
                "[hide: {thickness=1.2 mm, skived=false}]",
                value(slip, "layers").toString());
        assertEquals(
                List.of("workshop-bad-cell", "midpoint"),
                keys(one("sampler", "'thickness': 2, 'layers': " + stock("leather", "", ""))
                        .remarks()));
    }

    /** What is told of the workshop has its words, in every language; only what is missing is told as it was written. */
    @Test
    void tablesAndCellsAreCalledByTheirNames() {
        Wording german = new Wording(Locale.GERMAN, UnitSystem.METRIC);
        assertEquals(
                "Die Tabelle „Leder im Vorrat“ hat keine Zeile „canvas“.",
                german.what(one("refill", "'price': " + stock("leather", "canvas", "price"))
                        .remarks()
                        .get(0)));
        assertEquals(
                "„Leder im Vorrat, Side, Fläche“ ist in der Werkstatt leer.",
                german.what(one("sampler", "'thickness': 2, 'panel': " + stock("leather", "side", "area"))
                        .remarks()
                        .get(0)));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                "thickness|{'workshop': 'leathr', 'row': 'side', 'column': 'thickness'}|workshop-no-table-nearest",
                "thickness|{'workshop': 'boats', 'row': 'side', 'column': 'thickness'}|workshop-no-table",
                "thickness|{'workshop': 'leather', 'row': 'sdie', 'column': 'thickness'}|workshop-no-row-nearest",
                "thickness|{'workshop': 'leather', 'row': 'canvas', 'column': 'thickness'}|workshop-no-row",
                "thickness|{'workshop': 'leather', 'row': 'side', 'column': 'thicknes'}|workshop-no-column-nearest",
                "thickness|{'workshop': 'leather', 'row': 'side', 'column': 'weather'}|workshop-no-column",
                "thickness|{'workshop': 'leather', 'row': 'side', 'column': 'area'}|workshop-empty-cell",
                "thickness|{'workshop': 'leather', 'row': 'odd', 'column': 'thickness'}|workshop-bad-cell",
                "thickness|{'workshop': 'leather', 'row': 'side', 'column': 'price'}|link-wrong-kind",
                "thickness|{'workshop': 'leather', 'row': 'side'}|workshop-link-needs",
                "thickness|{'workshop': 'leather', 'column': 'thickness'}|workshop-link-needs",
                "thickness|{'workshop': 'pricking-irons', 'row': 'iron', 'column': 'prongs'}|link-wrong-kind",
                "marks|{'workshop': 'leather', 'column': 'thickness'}|workshop-bad-cell",
                "marks|{'workshop': 'leather', 'column': 'price'}|link-wrong-kind",
                "edge|{'workshop': 'leather'}|workshop-link-needs",
                "edge|{'workshop': 'leather', 'row': 'side', 'column': 'name'}|workshop-link-needs",
                "edge|{'workshop': 'leather', 'row': 'none'}|workshop-no-row",
                "layers|{'workshop': 'leather', 'row': 'side', 'column': 'name'}|workshop-link-needs",
                "layers|{'workshop': 'leather', 'row': 'none'}|workshop-no-row",
                "sections|{'workshop': 'leather'}|workshop-not-variants",
                "core|{'workshop': 'leather', 'row': 'side'}|workshop-not-variants",
                "tannage|{'workshop': 'liquids', 'row': 'dye', 'column': 'kind'}|no-such-option",
            })
    void whatCannotBeTakenIsToldWithItsPlaceAndAWayOut(String question, String link, String key) {
        String others = question.equals("thickness") ? "" : "'thickness': 2, ";
        WorkedProject worked = work(slip("s", "sampler", json(others + "'" + question + "': " + link)));
        WorkedSlip slip = worked.slips().get("s");
        assertEquals(State.REFUSED, slip.state());
        assertEquals(key, keys(slip.remarks()).get(0));
        String said = said(worked.remarks(slip).get(0));
        assertTrue(said.contains("line 2, column "), said);
        assertTrue(said.contains("slip “s”, question “" + question), said);
        assertTrue(!said.contains("«") && !said.contains("{0}") && !said.contains("{1}"), said);
    }

    @Test
    void withoutAWorkshopALinkToItSaysHowToNameOne() {
        WorkedSlip slip = shop.one("sampler", "'thickness': " + stock("leather", "side", "thickness"));
        assertEquals(List.of("no-workshop"), keys(slip.remarks()));
        assertTrue(said(slip.remarks().get(0)).endsWith("Name the file with --workshop FILE, or type the value."));
    }

    @Test
    void anUnknownKeyInALinkIsToldWithTheNearest() {
        WorkedSlip slip = one(
                "sampler", "'thickness': {'workshop': 'leather', 'row': 'side', 'colum': 'x', 'column': 'thickness'}");
        assertEquals(List.of("unknown-key-nearest", "midpoint"), keys(slip.remarks()));
    }

    @Test
    void oneCellIsOneInputHoweverManySlipsTakeIt() {
        WorkedProject worked = work(
                slip("a", "relay", json("'take': " + stock("leather", "side", "thickness"))),
                slip(
                        "b",
                        "relay",
                        json("'take': {'from': 'a', 'answer': 'give'}, 'more': "
                                + stock("leather", "side", "thickness"))));
        SlipRanges ranges = worked.ranges("b").orElseThrow();
        assertEquals(1, ranges.inputs().size());
        assertEquals("", ranges.inputs().get(0).slip());
        assertEquals("leather[side].thickness", ranges.inputs().get(0).path());
        double ounce = 25.4 / 64;
        assertEquals(4 * ounce, ranges.study().spreads().get("give").low(), 1e-12);
        assertEquals(6 * ounce, ranges.study().spreads().get("give").high(), 1e-12);
        Map<?, ?> tree = (Map<?, ?>) new SlipJson(worked, worked.slips().get("b"), Shop.ENGLISH)
                .tree()
                .get("ranges");
        assertEquals("leather[side].thickness", ((Map<?, ?>) ((List<?>) tree.get("inputs")).get(0)).get("workshop"));
    }

    private static Project kept(Bench bench, Project project, boolean renew) throws Exception {
        WorkedProject worked = bench.work(project);
        return project.keeping(new Copies(worked.shelf(), worked.stock()).json(renew));
    }

    @Test
    void whatIsTakenAndNotKeptIsToldUntilItIs() throws Exception {
        Project project = project(projectText(
                slip("s", "refill", json("'price': " + stock("leather", "side", "price"))),
                slip("m", "sampler", json("'thickness': 2, 'marks': " + stock("punches", "", "diameter")))));
        Bench bench = shop.benchWith(WORKSHOP);
        assertEquals(
                List.of("workshop-not-kept", "workshop-not-kept", "workshop-not-kept", "workshop-not-kept"),
                keys(bench.work(project).general()));
        Project kept = kept(bench, project, false);
        assertEquals(List.of(), keys(bench.work(kept).general()));
        WorkedProject alone = shop.bench().work(kept);
        assertEquals(List.of(), keys(alone.general()));
        assertEquals(
                List.of("leather[side]", "punches[p2]", "punches[p3]", "punches[p4]"),
                alone.shelf().rows());
        assertEquals(Money.of(165, Units.currency("EUR")), value(alone.slips().get("s"), "price"));
        assertEquals(
                "[2.0 mm, 3.175 mm, 4.0 mm]",
                value(alone.slips().get("m"), "marks").toString());
        assertEquals(kept.text(), kept(bench, kept, false).text(), "keeping again changes nothing");
        assertTrue(
                kept.text()
                        .startsWith(project.text().substring(0, project.text().length() - 1)),
                "all that was there is as it was");
    }

    @Test
    void theProjectsCopyIsWorkedWithAndWhatChangedInTheWorkshopIsTold() throws Exception {
        Project project = project(projectText(
                slip("s", "refill", json("'price': " + stock("leather", "side", "price"))),
                slip("m", "sampler", json("'thickness': 2, 'marks': " + stock("punches", "", "diameter")))));
        Project kept = kept(shop.benchWith(WORKSHOP), project, false);
        Bench later = shop.benchWith(WORKSHOP.replace("'165'", "'180'")
                .replace("'id': 'p2'", "'id': 'p1'")
                .replace("'EUR'", "'CHF'"));
        WorkedProject worked = later.work(kept);
        assertEquals(Money.of(165, Units.currency("EUR")), value(worked.slips().get("s"), "price"));
        assertEquals(
                List.of("workshop-differs-aside", "workshop-row-gone", "workshop-row-new"), keys(worked.general()));
        assertTrue(said(worked.general().get(0))
                .startsWith("“Leather in stock, Side, Price” is 165 in the project and 180 in the workshop now."));
        WorkedProject renewed = later.work(kept(later, kept, true));
        assertEquals(Money.of(180, Units.currency("CHF")), value(renewed.slips().get("s"), "price"));
        assertEquals(List.of(), keys(renewed.general()));
        assertEquals(
                List.of("leather[side]", "punches[p1]", "punches[p3]", "punches[p4]"),
                renewed.shelf().rows());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                "'price': '165'|'price': '180'|NOTE",
                "'name': 'Side'|'name': 'Side, spring'|NOTE",
                "'name': 'Side'|'name': 'Side', 'found-in': 'box'|NOTE",
                "'thickness': '2-3 oz'|'thickness': '2 oz'|CHECK",
                "'id': 'side', 'name': 'Side', 'tannage': 'vegetable'|'id': 'side', 'name': 'Side', 'tannage': 'chrome'|CHECK",
            })
    void whatIsCutByIsACheckWhenItDiffersAndTheRestIsWorthKnowing(String before, String after, Severity severity)
            throws Exception {
        Project project =
                project(projectText(slip("s", "refill", json("'price': " + stock("leather", "side", "price")))));
        Project kept = kept(shop.benchWith(WORKSHOP), project, false);
        WorkedProject worked = shop.benchWith(WORKSHOP.replace(before, after)).work(kept);
        assertEquals(
                List.of(severity),
                worked.general().stream().map(Remark::severity).toList());
    }

    @Test
    void aRowOfAnotherCurrencyKeepsItWhenItIsCopied() throws Exception {
        Project project =
                project(projectText(slip("s", "refill", json("'price': " + stock("leather", "side", "price")))));
        Project kept = kept(shop.benchWith(WORKSHOP), project, false);
        Project both = project(kept.text()
                .replace(
                        "\n]",
                        ",\n" + slip("t", "refill", json("'price': " + stock("liquids", "dye", "price"))) + "\n]"));
        Bench swiss = shop.benchWith(WORKSHOP.replace("'EUR'", "'CHF'"));
        WorkedProject worked = shop.bench().work(kept(swiss, both, false));
        assertEquals(Money.of(165, Units.currency("EUR")), value(worked.slips().get("s"), "price"));
        assertEquals(Money.of(12.5, Units.currency("CHF")), value(worked.slips().get("t"), "price"));
    }

    @Test
    void onlySlipsWhoseRowsChangedAreWorkedAgain() {
        Project project = project(projectText(
                slip("s", "refill", json("'price': " + stock("leather", "side", "price"))),
                slip("t", "refill", json("'price': " + stock("liquids", "dye", "price"))),
                slip("u", "sampler", json("'thickness': '2 mm'"))));
        WorkedProject before = shop.benchWith(WORKSHOP).work(project);
        WorkedProject after = shop.benchWith(WORKSHOP.replace("'165'", "'180'")).work(project, before);
        assertSame(before.slips().get("t"), after.slips().get("t"));
        assertSame(before.slips().get("u"), after.slips().get("u"));
        assertNotSame(before.slips().get("s"), after.slips().get("s"));
        assertEquals(Money.of(180, Units.currency("EUR")), value(after.slips().get("s"), "price"));
    }
}
