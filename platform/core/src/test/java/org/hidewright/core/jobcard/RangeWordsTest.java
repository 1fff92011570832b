package org.hidewright.core.jobcard;

import static org.hidewright.core.bench.Shop.json;
import static org.hidewright.core.bench.Shop.slip;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.NoticeKind.Severity;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.document.Bars;
import org.hidewright.api.measure.Length;
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
        WorkedProject listed = worked("'all': '1-2 mm; 5 mm'", "");
        RangeTable table = words(listed, "a").tables().get(0);
        assertEquals(List.of("", "At"), table.head());
        assertEquals(List.of(List.of("line 1", "1 to 2 mm")), plain(table.rows()));
        assertEquals("Table: from the least met to the most", words(listed, "a").caption(table));
        assertEquals(List.of(), plainSentences(words(listed, "a")));
        List<String> said = plainSentences(words(worked("'times': '2-4'", ""), "a"));
        assertEquals(
                List.of(
                        "Times changes from 2 to 3 as Times passes 2.500.",
                        "Times changes from 3 to 4 as Times passes 3.500."),
                said);
        WorkedProject limited = worked("'take': '998-1001 m'", LINK);
        List<RangeCheck> checks = checks(limited, "a");
        assertEquals(1, checks.size());
        assertTrue(plain(checks.get(0).what()).startsWith("No answer where Taken is 1000.000 m or more: "));
        assertEquals(Severity.CHECK, checks.get(0).severity(), "the middle has an answer");
        assertEquals(checks.get(0).why(), checks(limited, "b").get(0).why());
        assertEquals(
                List.of(),
                RangeChecks.own(limited, limited.slips().get("b"), Shop.ENGLISH),
                "the slip it comes from tells it");
        assertEquals(
                1,
                RangeChecks.own(limited, limited.slips().get("a"), Shop.ENGLISH).size());
    }

    /** A square of a range that is wide beside its middle bends too much for a likely interval. */
    @Calculates("square")
    public static final class Square implements Calculator<Square.Asks, Square.Gives> {
        public record Asks(
                @Asked(unit = "mm", min = "0", max = "1 m", example = "2 mm")
                Length side) {}

        public record Line(
                @RowId String id, @Answered(unit = "mm") Length bent) {}

        public record Gives(
                @Answered(unit = "mm") Length straight,
                @Answered List<Line> table,
                @Answered(unit = "mm") Optional<Length> single) {}

        @Override
        public Outcome<Gives> calculate(Asks asks, Working working) {
            Length bent = Length.ofMm(asks.side().mm() * asks.side().mm());
            return Outcome.of(new Gives(
                    asks.side(),
                    List.of(new Line("one", bent)),
                    asks.side().mm() < 100 ? Optional.empty() : Optional.of(bent)));
        }
    }

    /** Only a row that says “see below” has something below. */
    @Test
    void whatBendsInATableAloneIsNotReferredTo() {
        WorkedProject bent = new Shop(new Square()).work(slip("a", "square", json("'side': '0-10 mm'")));
        assertEquals(1, words(bent, "a").rows().size());
        assertEquals(List.of(), plainSentences(words(bent, "a")));
        WorkedProject single = new Shop(new Square()).work(slip("a", "square", json("'side': '100-900 mm'")));
        assertEquals("see below", words(single, "a").rows().get(1).get(3));
        assertTrue(plainSentences(words(single, "a")).get(0).startsWith("Where “see below” stands"));
    }

    @Test
    void smallSharesAreToldTogether() {
        // half-widths 10, 1 and 1: shares 100, 1 and 1 of 102
        WorkedProject worked = shop.work(
                slip("a", "relay", json("'take': '90-110 mm', 'more': '10-12 mm'")),
                slip("b", "relay", json("'take': {'from': 'a', 'answer': 'give'}, 'more': '10-12 mm'")));
        assertEquals(
                "Relay “a”, Taken (98 %); all others (2 %)",
                plain(words(worked, "b").rows()).get(0).get(4));
    }

    /** Half-widths 1 and 0.5: shares of the variance 4 to 1. */
    @Test
    void whatMovesAnAnswerThatLeadsIsDrawnAsBars() {
        WorkedProject worked = worked("'take': '2-4 mm'", LINK);
        Bars bars = words(worked, "b").shares().get(0);
        assertEquals("What moves Given", bars.caption());
        assertEquals(
                List.of("Relay “a”, Taken 0.80 80 %", "More 0.20 20 %"),
                bars.bars().stream()
                        .map(bar -> bar.label() + " "
                                + String.format(
                                        Locale.ROOT,
                                        "%.2f ",
                                        bar.stretches().get(0).to())
                                + bar.text().replace('\u202F', ' '))
                        .toList());
        assertEquals(List.of(), words(worked, "a").shares(), "one input alone needs no drawing");
    }

    @Test
    void aTableTooLongForTheCardIsLeftToTheJson() {
        String rows = IntStream.range(0, RangeTable.MOST_ROWS + 1)
                .mapToObj(i -> "{'id': 'r" + i + "', 'length': '1-2 mm'}")
                .collect(Collectors.joining(", "));
        WorkedProject worked = worked("'rows': [" + rows + "]", "");
        assertEquals(List.of(), words(worked, "a").tables());
        assertEquals(
                List.of("More numbers that move in the tables: 41. The card as JSON has the range of each."),
                plainSentences(words(worked, "a")));
    }

    @Test
    void atAGlanceAnAnswerHasItsEndsOrWhatElseItMayBe() {
        WorkedProject worked = worked("'take': '2-4 mm', 'times': '2-4'", "");
        assertEquals(List.of("2 to 4 mm"), glances(worked, "a", "give"));
        assertEquals(List.of("or 2, 4"), glances(worked, "a", "times"));
        assertEquals(List.of(), glances(worked, "a", "maybe"));
        assertEquals(
                List.of(
                        "The job at a glance",
                        "Slip",
                        "Answer",
                        "Value",
                        "Over the ranges typed",
                        "Relay “a”",
                        "Given",
                        "3 mm",
                        "2 to 4 mm",
                        "Relay “b”",
                        "Given",
                        "1 mm"),
                card(worked)
                        .subList(
                                card(worked).indexOf("The job at a glance"),
                                card(worked).indexOf("The job at a glance") + 12));
        assertTrue(
                card(worked).contains("over the ranges: 2 to 4 mm"),
                () -> card(worked).toString());
        assertTrue(!card(worked("", "")).contains("Over the ranges typed"), "no column where nothing moves");
        WorkedProject sized = new Shop(new Sampler())
                .work(slip("s", "sampler", json("'thickness': '2 mm', 'cover': '100-102 x 50 mm'")));
        assertEquals(List.of("100 × 50 mm to 102 × 50 mm"), glances(sized, "s", "cover"));
    }

    private static List<String> glances(WorkedProject worked, String slip, String key) {
        Answer answer = worked.slips()
                .get(slip)
                .installed()
                .orElseThrow()
                .calculator()
                .declaration()
                .answer(key)
                .orElseThrow();
        return words(worked, slip).glance(answer).map(RangeWordsTest::plain).stream()
                .toList();
    }

    private static List<String> card(WorkedProject worked) {
        return VisibleTexts.of(new JobCard(worked, Shop.ENGLISH).document(LocalDate.of(2026, 5, 4), List.of())).stream()
                .map(RangeWordsTest::plain)
                .toList();
    }

    private static String plain(String text) {
        return text.replace('\u00A0', ' ').replace('\u202F', ' ');
    }

    private static List<RangeCheck> checks(WorkedProject worked, String slip) {
        return RangeChecks.of(worked, worked.slips().get(slip), Shop.ENGLISH);
    }

    @Test
    void aRangeRefusedAtItsMiddleIsToldWhereItHasAnAnswer() {
        // the relay takes no more than 1000 m
        WorkedProject worked = worked("'take': '998-1003 m'", LINK);
        List<RangeCheck> checks = checks(worked, "a");
        assertEquals(1, checks.size());
        assertEquals(
                "There is an answer only where Taken is 1000 m or less.",
                plain(checks.get(0).what()));
        assertEquals(List.of(), checks(worked, "b"), "it waits for the other, which tells it");
        RangeWords words = words(worked, "a");
        assertEquals(List.of(), words.rows());
        assertTrue(words.how().endsWith("each range alone from end to end."), words::how);
        Map<?, ?> ranges = (Map<?, ?>) new SlipJson(worked, worked.slips().get("a"), Shop.ENGLISH)
                .tree()
                .get("ranges");
        Map<?, ?> part = (Map<?, ?>) ((List<?>) ranges.get("answered")).get(0);
        assertEquals(998.0, part.get("from"));
        assertEquals(1000, (Double) part.get("to"), 1e-6);
        assertTrue(card(worked).stream().anyMatch(text -> text.startsWith("Relay “a”: There is an answer only where")));
    }

    @Test
    void whatIsToldOfTheMiddleAndNotAllOverIsSaid() {
        Shop shop = new Shop(new Sampler());
        WorkedProject worked = shop.work(slip("s", "sampler", json("'thickness': '4-7 mm'")));
        List<String> said = plainSentences(words(worked, "s")).stream()
                .filter(sentence -> sentence.startsWith("This is so only where Thickness is 5.000 mm or more: "))
                .toList();
        assertEquals(2, said.size(), said::toString);
        List<?> ended =
                (List<?>) ((Map<?, ?>) new SlipJson(worked, worked.slips().get("s"), Shop.ENGLISH)
                                .tree()
                                .get("ranges"))
                        .get("ended");
        assertEquals(2, ended.size());
        assertEquals("notice.thick", ((Map<?, ?>) ended.get(0)).get("key"));
    }

    @Test
    void whatIsToldOnlyInPartOfARangeIsSaidOnceInWordsOnTheCardAndInJson() {
        Shop shop = new Shop(new Sampler());
        // the sampler tells a check and a caution above 5 mm
        WorkedProject worked = shop.work(slip("s", "sampler", json("'thickness': '4-6 mm'")));
        WorkedSlip slip = worked.slips().get("s");
        assertTrue(slip.remarks().stream().noneMatch(remark -> remark.key().equals("notice.thick")));
        List<RangeCheck> checks = checks(worked, "s");
        assertEquals(
                List.of(Severity.CHECK, Severity.CAUTION),
                checks.stream().map(RangeCheck::severity).toList());
        for (RangeCheck check : checks) {
            assertTrue(plain(check.what()).startsWith("Where Thickness is 5.000 mm or more: "), check::what);
        }
        List<String> card = card(worked);
        for (String told : List.of(
                "Sampler “s”: Where Thickness is 5.000 mm or more: ", "Where Thickness is 5.000 mm or more: ")) {
            assertEquals(2, card.stream().filter(text -> text.startsWith(told)).count(), told);
        }
        assertTrue(card.contains("Look at these before you cut (2):"), card::toString);
        List<List<String>> csv = JobCardRows.of(worked, Shop.ENGLISH);
        assertEquals(
                List.of("check", "caution"),
                csv.stream()
                        .filter(row -> plain(row.get(6)).startsWith("Where Thickness is 5.000 mm or more: "))
                        .map(row -> row.get(2))
                        .toList());
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
