package org.hidewright.costing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hidewright.api.document.Bars;
import org.hidewright.api.document.Block;
import org.hidewright.api.document.Checks;
import org.hidewright.api.document.JobView;
import org.hidewright.api.document.JobView.Answer;
import org.hidewright.api.document.JobView.Row;
import org.hidewright.api.document.JobView.State;
import org.hidewright.api.document.NoteSpace;
import org.hidewright.api.document.Paragraph;
import org.hidewright.api.document.Section;
import org.hidewright.api.document.Severity;
import org.hidewright.api.document.Table;
import org.hidewright.api.document.TickList;
import org.junit.jupiter.api.Test;

/** What stands on the papers of costing, and what must never stand on the one a customer is handed. */
class CostingPapersTest {
    private static Answer eur(String label, double amount) {
        return Answer.number(label, String.format(Locale.ROOT, "%.2f", amount), "EUR", amount);
    }

    private static Row row(String id, Object... cells) {
        Map<String, Answer> map = new LinkedHashMap<>();
        for (int i = 0; i < cells.length; i += 2) {
            map.put(
                    (String) cells[i],
                    cells[i + 1] instanceof Answer answer ? answer : Answer.text("", (String) cells[i + 1]));
        }
        return Row.of(id, map);
    }

    private static JobView.Slip cost(String id, State state) {
        return cost(id, state, "cost", "body");
    }

    private static JobView.Slip cost(String id, State state, String calculator, String leather) {
        return costed(id, state, calculator, leather).build();
    }

    private static JobView.Slip.Builder costed(String id, State state, String calculator, String leather) {
        JobView.Slip.Builder slip = JobView.Slip.of(id, calculator, "Cost of " + id, state)
                .question("pieces", Answer.number("Pieces", "3", "", 3));
        for (String key : List.of(
                "each", "together", "materials-each", "once-only", "each-afterwards", "one-more-hour", "outlay")) {
            slip.answer(key, eur(key, key.equals("together") ? 80 : 26.67));
        }
        return slip.answer(
                        "lines",
                        Answer.rows(
                                "Cost sheet",
                                "",
                                List.of(
                                        row("leather-body", "kind", "leather", "of", leather, "amount", eur("", 20)),
                                        row("work-cutting", "kind", "work", "of", "cutting", "amount", eur("", 50)),
                                        row("overhead", "kind", "overhead", "amount", eur("", 10)))))
                .answer(
                        "by-batch",
                        Answer.rows(
                                "Each by batch",
                                "",
                                List.of(
                                        row("of-1", "pieces", "1", "each", eur("", 64)),
                                        row("of-3", "pieces", "3", "each", eur("", 26.67)))))
                .answer(
                        "to-buy",
                        Answer.rows(
                                "To buy",
                                "",
                                List.of(row(
                                        "leather-body",
                                        "kind",
                                        "leather",
                                        "of",
                                        leather,
                                        "needed",
                                        "25 ft²",
                                        "sold-in",
                                        "20 ft²",
                                        "to-buy",
                                        Answer.number("", "2", "", 2),
                                        "paid",
                                        eur("", 200)))));
    }

    /** A collar of which the buckle and the thread have no price. */
    private static JobView.Slip collar() {
        return costed("collar", State.WORKED, "item-cost", "")
                .answer(
                        "without-price",
                        Answer.rows(
                                "Without a price",
                                "",
                                List.of(
                                        row("hardware-buckle", "kind", "hardware", "of", "Buckle", "needed", "2"),
                                        row("thread", "kind", "thread", "of", "", "needed", "3.1 m, 3.4 yd"))))
                .notice(Checks.Check.of(Severity.CHECK, "Check", "Fittings without a price: 2.", "Too low.", "Add it."))
                .build();
    }

    private static JobView.Slip.Builder price(double tax, double deposit) {
        return JobView.Slip.of("price", "price", "Asked for it", State.WORKED)
                .question("pieces", Answer.number("Pieces", "3", "", 3))
                .answer("paid", eur("Customer pays", 120))
                .answer("profit", eur("Profit", 44))
                .answer("margin", Answer.number("Margin", "44", "%", 0.44))
                .answer("tax", eur("Tax in it", tax))
                .answer("order", eur("Order", 360))
                .answer("deposit", eur("Deposit", deposit))
                .answer("rest", eur("Rest to pay", 360 - deposit));
    }

    private static Map<String, Section> papers(JobView.Slip... slips) {
        return new CostingPapers()
                .sections(JobView.of("Lens pouch", Locale.ENGLISH, List.of(slips))).stream()
                        .collect(Collectors.toMap(Section::id, section -> section));
    }

    private static String text(Section section) {
        assertTrue(section.standsApart());
        return section.blocks().stream().flatMap(CostingPapersTest::text).collect(Collectors.joining("\n"));
    }

    private static Stream<String> text(Block block) {
        if (block instanceof Paragraph paragraph) {
            return Stream.of(paragraph.text());
        } else if (block instanceof Table table) {
            return Stream.concat(
                    Stream.of(
                            table.caption(),
                            table.columns().stream().map(Table.Column::title).collect(Collectors.joining(" | "))),
                    table.rows().stream().map(row -> String.join(" | ", row)));
        } else if (block instanceof Bars bars) {
            return Stream.concat(
                    Stream.of(bars.caption()),
                    bars.bars().stream()
                            .map(bar ->
                                    bar.label() + " " + bar.stretches().get(0).to() + " " + bar.text()));
        } else if (block instanceof TickList list) {
            return list.steps().stream().map(step -> step.text() + ", " + step.detail());
        } else if (block instanceof Checks checks) {
            return checks.checks().stream().map(check -> check.severityText() + ": " + check.what());
        }
        return Stream.of(((NoteSpace) block).label());
    }

    @Test
    void theCostSheetHasEveryLineWithItsShare() {
        Section sheet =
                papers(cost("pouch", State.WORKED), price(20, 100).build()).get("org.hidewright.costing.cost-sheet");
        assertEquals("Cost sheet", sheet.title());
        String text = text(sheet);
        assertTrue(text.startsWith("For the maker alone"), text);
        assertTrue(text.contains("""
                Cost of pouch
                For | Row | Amount | Share
                leather | body | 20.00\u00A0EUR | 25.0%
                work | cutting | 50.00\u00A0EUR | 62.5%
                overhead |  | 10.00\u00A0EUR | 12.5%
                Batch together |  | 80.00\u00A0EUR | 100.0%
                """), text);
        assertTrue(text.contains("""
                Where the money goes
                leather, body 20.0 25.0%
                work, cutting 50.0 62.5%
                overhead 10.0 12.5%
                Each piece, by the size of the batch
                batch of 1 64.0 64.00\u00A0EUR
                batch of 3 26.67 26.67\u00A0EUR
                """), text);
        assertTrue(text.contains("outlay | 26.67\u00A0EUR"), text);
        assertTrue(text.contains("Asked for it"), text);
        assertTrue(text.contains("Margin | 44\u00A0%"), text);
    }

    @Test
    void theShoppingListIsInWhatThingsAreSoldIn() {
        Section list = papers(cost("pouch", State.WORKED)).get("org.hidewright.costing.shopping-list");
        assertEquals("Shopping list", list.title());
        String text = text(list);
        assertTrue(text.contains("Cost of pouch, pieces: 3. Outlay 26.67\u00A0EUR."), text);
        assertTrue(text.contains("2 × body (leather), sold in: 20 ft²; needed: 25 ft²; paid: 200.00\u00A0EUR"), text);
        assertFalse(text.contains("Two slips"), text);
        String two = text(papers(cost("pouch", State.WORKED), cost("strap", State.WORKED))
                .get("org.hidewright.costing.shopping-list"));
        assertTrue(two.contains("Two slips of this project may take from one side"), two);
    }

    /** Its one leather has no row of its own. */
    @Test
    void anItemThatWasCostedHasTheSamePapers() {
        Map<String, Section> papers = papers(cost("cover", State.WORKED, "item-cost", ""));
        String sheet = text(papers.get("org.hidewright.costing.cost-sheet"));
        assertTrue(sheet.contains("leather |  | 20.00\u00A0EUR | 25.0%"), sheet);
        String list = text(papers.get("org.hidewright.costing.shopping-list"));
        assertTrue(list.contains("2 × leather, sold in: 20 ft²"), list);
    }

    /** Else a maker comes home without the buckle. */
    @Test
    void whatHasNoPriceIsOnTheShoppingList() {
        String list = text(papers(collar()).get("org.hidewright.costing.shopping-list"));
        assertTrue(
                list.contains("2 × Buckle (hardware), no price known\nthread: 3.1 m, 3.4 yd, no price known\n"
                        + "What has no price here must be bought too"),
                list);
        assertFalse(
                text(papers(cost("pouch", State.WORKED)).get("org.hidewright.costing.shopping-list"))
                        .contains("no price"),
                "nothing is said where all has one");
    }

    /** A number that is too low stands beside what says so; a customer is not told. */
    @Test
    void theCostSheetHasTheChecksOfItsSlips() {
        JobView.Slip losing = price(0, 0)
                .notice(Checks.Check.of(Severity.CHECK, "Check", "Each one sold loses money.", "", ""))
                .build();
        Map<String, Section> papers = papers(collar(), losing);
        String sheet = text(papers.get("org.hidewright.costing.cost-sheet"));
        assertTrue(sheet.contains("outlay | 26.67\u00A0EUR\nCheck: Fittings without a price: 2.\nAsked for it"), sheet);
        assertTrue(sheet.endsWith("Check: Each one sold loses money."), sheet);
        String quote = text(papers.get("org.hidewright.costing.quote"));
        assertFalse(quote.contains("Check"), quote);
    }

    @Test
    void theQuoteHasWhatACustomerNeedsAndNothingOfTheCost() {
        JobView.Slip asked = price(20, 100)
                .question("customer", Answer.text("Customer", "R. Heron"))
                .question("described", Answer.text("What is made", "Three lens pouches, tan"))
                .question("ready", Answer.text("Ready", "Three weeks after the deposit"))
                .question("valid-until", Answer.text("Valid until", "31 December 2026"))
                .build();
        Section quote = papers(cost("pouch", State.WORKED), asked).get("org.hidewright.costing.quote");
        assertEquals("Quote", quote.title());
        String text = text(quote);
        assertTrue(text.startsWith("For R. Heron"), text);
        assertTrue(text.contains("""
                What is made | Pieces | Each | Together
                Three lens pouches, tan | 3 | 120.00\u00A0EUR | 360.00\u00A0EUR
                """), text);
        assertTrue(text.contains("Tax | 20.00\u00A0EUR in the price of each"), text);
        assertTrue(text.contains("Deposit | 100.00\u00A0EUR\nRest to pay | 260.00\u00A0EUR\n"), text);
        assertTrue(text.contains("Ready | Three weeks after the deposit\nValid until | 31 December 2026"), text);
        for (String secret : List.of("Profit", "Margin", "44", "26.67", "Cost", "Asked for it")) {
            assertFalse(text.contains(secret), secret + " in " + text);
        }
    }

    @Test
    void aQuoteLeavesOutWhatThereIsNone() {
        String text = text(papers(price(0, 0).build()).get("org.hidewright.costing.quote"));
        assertTrue(text.contains("Lens pouch | 3 | "), text);
        assertTrue(text.contains("Ready | to be agreed"), text);
        for (String none : List.of("For ", "Tax", "Deposit", "Rest", "Valid")) {
            assertFalse(text.contains(none), none + " in " + text);
        }
    }

    @Test
    void thereIsNoPaperOfSlipsThatWereNotWorked() {
        assertEquals(Map.of(), papers());
        assertEquals(
                Map.of(),
                papers(JobView.Slip.of("pouch", "cost", "Cost", State.REFUSED).build()));
        assertEquals(
                Map.of(),
                papers(JobView.Slip.of("pouch", "price", "Price", State.WAITING).build()));
    }
}
