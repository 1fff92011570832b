package org.hidewright.core.work;

import static org.hidewright.core.bench.Shop.json;
import static org.hidewright.core.bench.Shop.keys;
import static org.hidewright.core.bench.Shop.project;
import static org.hidewright.core.bench.Shop.projectText;
import static org.hidewright.core.bench.Shop.said;
import static org.hidewright.core.bench.Shop.slip;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.core.bench.Refill;
import org.hidewright.core.bench.Relay;
import org.hidewright.core.bench.Sampler;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.brought.BroughtCheck;
import org.hidewright.core.brought.BroughtTables;
import org.hidewright.core.brought.TablesReader;
import org.hidewright.core.project.Project;
import org.hidewright.core.workshop.Copies;
import org.hidewright.core.workshop.Stock;
import org.hidewright.core.workshop.Tables;
import org.hidewright.core.workshop.standard.StandardTables;
import org.junit.jupiter.api.Test;

/** Questions answered from rows that a bundle brings: after the maker’s own, kept by the project, and what is told of them. */
class BroughtRowsTest {
    private static final Tables NONE = Tables.of(StandardTables.brought());
    private static final String LINK = "'take': {'workshop': 'leather', 'row': 'shoulder', 'column': 'thickness'}";

    private final Shop shop = new Shop(new Sampler(), new Refill(), new Relay());
    private Tables installed = brought("org.example.tannery", "3 mm", NONE);

    private static Tables brought(String bundle, String thickness, Tables tables) {
        BroughtTables text = TablesReader.read(
                        json("{'workshop': 1, 'source': 'Made up', 'currency': 'CHF', 'tables': {'leather': [{'id':"
                                + " 'shoulder', 'name': 'Shoulder', 'tannage': 'vegetable', 'thickness': '" + thickness
                                + "', 'price': '90'}]}}"),
                        bundle)
                .tables()
                .orElseThrow();
        return tables.with(BroughtCheck.of(text, tables).rows());
    }

    private Bench bench() {
        return new Bench(shop.catalogue(), Stock.of(() -> installed));
    }

    private Bench benchWith(String rows) {
        return new Bench(
                shop.catalogue(),
                Stock.of(() -> installed)
                        .with(Shop.workshop(
                                "{'workshop': 1, 'currency': 'EUR', 'tables': {'leather': [" + rows + "]}}")));
    }

    private static Project one(String questions) {
        return project(projectText(slip("s", "relay", json(questions))));
    }

    private static String taken(WorkedProject worked) {
        return worked.slips()
                .get("s")
                .questions()
                .map(values -> values.get("take").orElseThrow().toString())
                .orElseGet(() -> keys(worked.slips().get("s").remarks()).toString());
    }

    private static Project kept(Bench bench, Project project, boolean renew) throws Exception {
        WorkedProject worked = bench.work(project);
        return project.keeping(new Copies(worked.shelf(), worked.stock()).json(renew));
    }

    @Test
    void aRowOfABundleAnswersAndSaysWhereItIsFrom() {
        WorkedProject worked = bench().work(one(LINK));
        assertEquals("3.0 mm", taken(worked));
        assertEquals(List.of("workshop-from-bundle", "workshop-not-kept"), keys(worked.general()));
        String said = said(worked.general().get(0));
        assertTrue(said.contains("Leather in stock, Shoulder is a row of the bundle org.example.tannery."), said);
        assertTrue(said.contains("Made up"), said);
    }

    @Test
    void theMakersOwnRowOfThatNameGoesBefore() {
        WorkedProject worked = benchWith("{'id': 'shoulder', 'name': 'Mine', 'tannage': 'oil', 'thickness': '2.6 mm'}")
                .work(one(LINK));
        assertEquals("2.6 mm", taken(worked));
        assertEquals(List.of("workshop-not-kept"), keys(worked.general()));
        assertEquals("3.0 mm", taken(benchWith("").work(one(LINK))), "beside other rows of the maker");
    }

    @Test
    void aTableTakenWholeIsTheMakersAlone() {
        String all = "'all': {'workshop': 'leather', 'column': 'thickness'}";
        WorkedProject own = benchWith("{'id': 'a', 'name': 'A', 'tannage': 'oil', 'thickness': '2 mm'}")
                .work(one(all));
        assertEquals(
                "[2.0 mm]",
                own.slips()
                        .get("s")
                        .questions()
                        .orElseThrow()
                        .get("all")
                        .orElseThrow()
                        .toString());
        WorkedProject none = bench().work(one(all));
        assertEquals(List.of("no-workshop"), keys(none.slips().get("s").remarks()));
        assertTrue(said(none.slips().get("s").remarks().get(0)).contains("rows of bundles are taken one by one"));
    }

    @Test
    void theProjectKeepsItsCopyWithItsSourceAndIsWorkedWhenTheBundleIsGone() throws Exception {
        Project kept = kept(bench(), one(LINK), false);
        assertEquals(List.of("workshop-from-bundle"), keys(bench().work(kept).general()));
        assertTrue(
                kept.text().contains("\"from\": {\"bundle\": \"org.example.tannery\", \"source\": \"Made up\"}"),
                kept.text());
        installed = NONE;
        WorkedProject gone = bench().work(kept);
        assertEquals("3.0 mm", taken(gone));
        assertEquals(List.of("workshop-from-bundle", "workshop-bundle-gone"), keys(gone.general()));
        assertTrue(said(gone.general().get(0)).contains("Made up"), "its source is kept too");
        assertEquals("[workshop-no-row]", taken(benchWith("").work(one(LINK))), "without a copy there is nothing");
        assertEquals("[no-workshop]", taken(bench().work(one(LINK))));
        assertEquals(kept.text(), kept(bench(), kept, true).text(), "renewing takes nothing away");
    }

    @Test
    void aCopyOutlivesTheColumnsAndTheTableOfItsBundle() throws Exception {
        BroughtTables text = TablesReader.read(
                        json("{'workshop': 1, 'source': 'Made up', 'columns': {'cords': {'title': 'Cords', 'purpose':"
                                + " 'By thickness', 'columns': [{'key': 'gauge', 'kind': 'length', 'unit': 'mm',"
                                + " 'label': 'Gauge', 'help': 'Gauged.'}, {'key': 'bevel', 'kind': 'length', 'unit':"
                                + " 'mm', 'label': 'Bevel', 'help': 'Of the edge.'}]}}, 'tables': {'cords': [{'id':"
                                + " 'c3', 'gauge': '1/8 in', 'bevel': '2 mm'}]}}"),
                        "org.example.cords")
                .tables()
                .orElseThrow();
        List<Tables.Brought> all = new ArrayList<>(StandardTables.brought());
        all.addAll(text.columns());
        Tables cords = Tables.of(all);
        installed = cords.with(BroughtCheck.of(text, cords).rows());
        Project project = project(projectText(
                slip("s", "relay", json("'take': {'workshop': 'cords', 'row': 'c3', 'column': 'gauge'}")),
                slip("g", "sampler", json("'thickness': 2, 'edge': {'workshop': 'cords', 'row': 'c3'}"))));
        Project kept = kept(bench(), project, false);
        installed = NONE;
        WorkedProject gone = bench().work(kept);
        assertEquals("3.175 mm", taken(gone));
        assertTrue(gone.slips()
                .get("g")
                .questions()
                .orElseThrow()
                .get("edge")
                .orElseThrow()
                .toString()
                .contains("bevel=2.0 mm"));
        assertEquals("[no-workshop]", taken(bench().work(project)), "without a copy nothing is known of it");
    }

    @Test
    void whatANewerBundleSaysOtherwiseIsToldAndTakenOverWhenAsked() throws Exception {
        Project kept = kept(bench(), one(LINK), false);
        installed = brought("org.example.tannery", "3.4 mm", NONE);
        WorkedProject later = bench().work(kept);
        assertEquals("3.0 mm", taken(later));
        assertEquals(List.of("workshop-from-bundle", "workshop-differs"), keys(later.general()));
        WorkedProject renewed = bench().work(kept(bench(), kept, true));
        assertEquals("3.4 mm", taken(renewed));
        assertEquals(List.of("workshop-from-bundle"), keys(renewed.general()));
    }

    @Test
    void anAmountKeepsTheCurrencyOfItsBundle() throws Exception {
        Project project = project(projectText(
                slip("s", "refill", json("'price': {'workshop': 'leather', 'row': 'shoulder', 'column': 'price'}"))));
        Bench euros = benchWith("{'id': 'a', 'name': 'A', 'tannage': 'oil', 'thickness': '2 mm'}");
        WorkedProject worked = euros.work(kept(euros, project, false));
        assertEquals(
                "90.0 CHF",
                worked.slips()
                        .get("s")
                        .questions()
                        .orElseThrow()
                        .get("price")
                        .orElseThrow()
                        .toString());
    }

    @Test
    void ofTwoBundlesTheFirstBringsTheRowAndTheOtherIsTold() {
        installed = brought("org.example.other", "5 mm", installed);
        assertEquals("3.0 mm", taken(bench().work(one(LINK))));
        assertEquals(List.of("brought-row-taken"), keys(installed.problems()));
    }

    @Test
    void whenABundleComesOrGoesTheNextEditKnows() throws Exception {
        Bench bench = bench();
        Project project = project(projectText(slip("s", "relay", json(LINK)), slip("t", "relay", "")));
        WorkedProject before = bench.work(project);
        installed = NONE;
        WorkedProject gone = bench.work(project.answering("t", "take", "\"7 mm\""), before);
        assertEquals("[no-workshop]", taken(gone));
        installed = brought("org.example.tannery", "3 mm", NONE);
        assertEquals("3.0 mm", taken(bench.work(gone.project(), gone)));
    }

    @Test
    void whoTakesNothingFromTheWorkshopAsksForNoTables() throws Exception {
        Bench bench = new Bench(shop.catalogue(), Stock.of(() -> {
            throw new AssertionError("asked for tables");
        }));
        Project project = project(projectText(slip("s", "relay", ""), slip("t", "relay", "")));
        WorkedProject before = bench.work(project);
        WorkedProject after = bench.work(project.answering("t", "take", "\"7 mm\""), before);
        assertSame(before.slips().get("s"), after.slips().get("s"));
        assertEquals(List.of(), keys(after.general()));
    }
}
