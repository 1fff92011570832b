package org.hidewright.core.work;

import static org.hidewright.core.bench.Shop.json;
import static org.hidewright.core.bench.Shop.keys;
import static org.hidewright.core.bench.Shop.said;
import static org.hidewright.core.bench.Shop.slip;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Units;
import org.hidewright.api.measure.Volume;
import org.hidewright.core.bench.Refill;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.jobcard.JobCardRows;
import org.hidewright.core.jobcard.RangeCheck;
import org.hidewright.core.jobcard.RangeChecks;
import org.hidewright.core.jobcard.RangeWords;
import org.hidewright.core.jobcard.SlipJson;
import org.hidewright.core.jobcard.SlipWording;
import org.hidewright.core.range.Spread;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.WorkedSlip.State;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Money, volumes, durations and days from what is typed to what is shown. */
class MoneyAndTimeTest {
    private final Shop shop = new Shop(new Refill());

    @Test
    void theyAreReadCalculatedWithAndAnswered() {
        WorkedSlip worked =
                shop.one("refill", "'price': '€ 12.50', 'holds': '0.5 l', 'per-piece': '10 ml', 'dries': '1 h 30 min'");
        assertEquals(State.WORKED, worked.state());
        assertEquals(
                Money.of(0.25, Units.currency("EUR")),
                worked.answers().orElseThrow().get("per-piece").orElseThrow());
        assertEquals(
                Duration.ofSeconds(10_800),
                worked.answers().orElseThrow().get("waiting").orElseThrow());
        assertEquals(
                Volume.ofMl(490), worked.answers().orElseThrow().get("left").orElseThrow());
        assertEquals(
                LocalDate.of(2026, 3, 1),
                worked.answers().orElseThrow().get("opened").orElseThrow());
    }

    @ParameterizedTest(name = "{0} = {1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                "price|'12'|reading.no-unit",
                "price|'12 mm'|reading.wrong-dimension.money",
                "price|'-1 EUR'|below-limit",
                "price|'501 USD'|above-limit",
                "price|'51 USD'|unusual",
                "opened|'1 March'|not-a-date",
                "opened|'2026-02-30'|not-a-date",
                "dries|'3 d'|above-limit",
                "holds|'3 oz leather'|reading.left-over"
            })
    void whatCannotBeIsToldInWords(String question, String typed, String key) {
        String price = question.equals("price") ? "" : "'price': '12 EUR', ";
        WorkedSlip worked = shop.one("refill", price + "'" + question + "': " + typed);
        assertEquals(List.of(key), keys(worked.remarks()));
        assertTrue(!said(worked.remarks().get(0)).contains("«"));
    }

    @Test
    void theyAreShownInTheCoinsOfTheCurrencyAndTheLanguageOfTheMaker() {
        WorkedSlip worked = shop.one("refill", "'price': '12.345 EUR', 'per-piece': '250 ml'");
        SlipWording german = new SlipWording(worked, new Wording(Locale.GERMAN, UnitSystem.METRIC));
        assertEquals("12,34\u00A0EUR", shown(worked, german, "per-piece"));
        assertEquals("0,7\u00A0h", shown(worked, german, "waiting"));
        assertEquals("1. März 2026", shown(worked, german, "opened"));
        SlipWording english = new SlipWording(worked, Shop.ENGLISH);
        assertEquals("12.34\u00A0EUR", shown(worked, english, "per-piece"));
    }

    private static String shown(WorkedSlip worked, SlipWording words, String key) {
        return words.text(
                worked.installed()
                        .orElseThrow()
                        .calculator()
                        .declaration()
                        .answer(key)
                        .orElseThrow(),
                worked.answers().orElseThrow().get(key).orElseThrow());
    }

    @Test
    void theirJsonHasNumberAndCurrencyApartAndDaysAsIso8601() {
        WorkedProject worked = shop.work(slip("s", "refill", json("'price': '12.50 EUR'")));
        Map<?, ?> answers = (Map<?, ?>) new SlipJson(worked, worked.slips().get("s"), Shop.ENGLISH)
                .tree()
                .get("answers");
        assertEquals("{value=0.25, unit=EUR}", bare(answers.get("per-piece")));
        assertEquals("{value=2026-03-01}", bare(answers.get("opened")));
        assertEquals("{value=245.0, unit=ml}", bare(answers.get("left")));
    }

    private static String bare(Object entry) {
        return entry.toString().replaceAll("(\\.\\d+?)0+(?=[,}])", "$1");
    }

    @Test
    void aPriceTypedAsARangeIsCarriedThrough() {
        WorkedProject worked = shop.work(slip("s", "refill", json("'price': '10-15 EUR'")));
        Spread spread = worked.ranges("s").orElseThrow().study().spreads().get("per-piece");
        assertEquals(0.2, spread.low(), 1e-12);
        assertEquals(0.3, spread.high(), 1e-12);
        assertTrue(
                said(worked.slips().get("s").remarks().get(0)).contains("12.50\u00A0EUR"),
                said(worked.slips().get("s").remarks().get(0)));
    }

    /** 5 ml of 250 ml, a fiftieth: 10 to 15 EUR a bottle are 0.20 to 0.30 EUR, evenly spread, of which 95 % are 0.2025 to 0.2975. */
    @Test
    void whatAPriceTypedAsARangeComesToIsShownInItsCurrency() {
        WorkedProject worked = shop.work(slip("s", "refill", json("'price': '10-15 EUR'")));
        WorkedSlip slip = worked.slips().get("s");
        assertEquals(
                List.of(List.of(
                        "Per piece", "0.20\u00A0EUR", "0.30\u00A0EUR", "0.20 to 0.30\u00A0EUR", "Price (100\u202F%)")),
                RangeWords.of(worked, slip, Shop.ENGLISH).orElseThrow().rows());
        assertEquals(
                "0,20\u00A0EUR",
                RangeWords.of(worked, slip, new Wording(Locale.GERMAN, UnitSystem.INCH))
                        .orElseThrow()
                        .rows()
                        .get(0)
                        .get(1));
        Map<?, ?> ranges =
                (Map<?, ?>) new SlipJson(worked, slip, Shop.ENGLISH).tree().get("ranges");
        assertEquals("EUR", ((Map<?, ?>) ((Map<?, ?>) ranges.get("answers")).get("per-piece")).get("unit"));
        assertEquals("EUR", ((Map<?, ?>) ((List<?>) ranges.get("inputs")).get(0)).get("unit"));
        List<List<String>> rows = JobCardRows.of(worked, Shop.ENGLISH);
        assertTrue(rows.contains(List.of("s", "refill", "low", "", "per-piece", "", "0.2", "EUR", "")), rows::toString);
        assertTrue(
                rows.contains(List.of("s", "refill", "high", "", "per-piece", "", "0.3", "EUR", "")), rows::toString);
        // a yen has no smaller coin, so that 0.20 and 0.30 of it are both none
        WorkedProject yen = shop.work(slip("s", "refill", json("'price': '10-15 JPY'")));
        assertEquals(
                List.of(),
                RangeWords.of(yen, yen.slips().get("s"), Shop.ENGLISH)
                        .orElseThrow()
                        .rows());
    }

    /** The limit is 500 of any currency: the refused part begins at a price, and is told as one. */
    @Test
    void thePartOfAPriceThatIsRefusedIsToldInItsCurrency() {
        WorkedProject worked = shop.work(slip("s", "refill", json("'price': '480-510 CHF'")));
        List<RangeCheck> checks = RangeChecks.of(worked, worked.slips().get("s"), Shop.ENGLISH);
        assertEquals(1, checks.size());
        assertTrue(
                checks.get(0).what().startsWith("No answer where Price is 500.00\u00A0CHF or more: "),
                checks.get(0)::what);
    }

    @Test
    void theyAreLinkedOnlyWithTheirOwnKind() {
        WorkedProject worked = shop.work(
                slip("a", "refill", json("'price': '10 EUR'")),
                slip(
                        "b",
                        "refill",
                        json(
                                "'price': {'from': 'a', 'answer': 'per-piece'}, 'opened': {'from': 'a', 'answer': 'opened'},"
                                        + " 'dries': {'from': 'a', 'answer': 'waiting'}")),
                slip("c", "refill", json("'price': {'from': 'a', 'answer': 'waiting'}")));
        assertEquals(State.WORKED, worked.slips().get("b").state());
        assertEquals(List.of("unusual"), keys(worked.slips().get("b").remarks()));
        assertEquals(List.of("link-wrong-kind"), keys(worked.slips().get("c").remarks()));
    }
}
