package org.hidewright.core.jobcard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.hidewright.api.document.Paragraph;
import org.hidewright.api.document.Table;
import org.hidewright.core.bench.Relay;
import org.hidewright.core.bench.Sampler;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.WorkedProject;
import org.junit.jupiter.api.Test;

class JobCardTest {
    private static boolean saysHowToReadDecimals(UnitSystem units, String questions) {
        return saysHowToReadDecimals(
                new Shop(new Sampler()).work(Shop.slip("strap", "sampler", Shop.json(questions))), units);
    }

    private static boolean saysHowToReadDecimals(WorkedProject worked, UnitSystem units) {
        Wording wording = new Wording(Locale.ENGLISH, units);
        return new JobCard(worked, wording)
                .document(LocalDate.of(2026, 3, 1), List.of()).sections().get(0).blocks().stream()
                        .filter(Paragraph.class::isInstance)
                        .map(paragraph -> ((Paragraph) paragraph).text())
                        .anyMatch(text -> text.contains("4.486 in is 4 in and 0.486 × 64 = 31.1 parts"));
    }

    @Test
    void aCardInInchesWithTablesSaysOnceHowDecimalsAreRead() {
        assertTrue(saysHowToReadDecimals(UnitSystem.INCH, "'thickness': '2 mm'"));
        assertFalse(saysHowToReadDecimals(UnitSystem.METRIC, "'thickness': '2 mm'"));
    }

    /** Whole inches and their halves are on every rule. */
    @Test
    void whereNoTableHasThemNothingIsSaidOfDecimals() {
        Shop shop = new Shop(new Relay());
        String halves = "'take': '3 in', 'all': '1 in; 1.5 in', 'more': '0 in'";
        assertFalse(saysHowToReadDecimals(shop.work(Shop.slip("a", "relay", Shop.json(halves))), UnitSystem.INCH));
        String odd = halves.replace("1.5 in", "40 mm"); // 1.575 in
        assertTrue(saysHowToReadDecimals(shop.work(Shop.slip("a", "relay", Shop.json(odd))), UnitSystem.INCH));
    }

    private static List<List<String>> presets(String questions) {
        WorkedProject worked = new Shop(new Sampler(), new Relay())
                .work(
                        Shop.slip("strap", "sampler", Shop.json(questions)),
                        Shop.slip(
                                "typed",
                                "relay",
                                Shop.json("'take': '3 in', 'all': '1 in', 'more': '0 in', 'rows': [], 'times': '2'")));
        return new JobCard(worked, Shop.ENGLISH)
                .document(LocalDate.of(2026, 3, 1), List.of()).sections().get(0).blocks().stream()
                        .filter(Table.class::isInstance)
                        .map(Table.class::cast)
                        .filter(table -> table.caption().startsWith("Presets"))
                        .findFirst()
                        .orElseThrow()
                        .rows();
    }

    /** Leather is cut by them as by what was typed; a slip where all was typed has no row. */
    @Test
    void theFirstPageNamesWhatNobodyChose() {
        List<List<String>> rows = presets("'thickness': '2 mm', 'turn': '90 deg', 'edge': {'bevel': '0.8 mm'}");
        assertEquals(
                List.of("Sampler “strap”"), rows.stream().map(row -> row.get(0)).toList());
        List<String> told = List.of(rows.get(0).get(1).split("; "));
        assertTrue(told.contains("Holes 7"), told::toString);
        assertTrue(told.contains("Tannage of the edge Chrome"), "inside a group of which a part was typed: " + told);
        assertFalse(rows.get(0).get(1).contains("Turn "), "typed: " + told);
        assertFalse(rows.get(0).get(1).contains("Bevel"), "typed: " + told);
        int core = told.indexOf("Core Round bar");
        assertEquals(List.of("Diameter 6\u00A0mm", "Turns 1"), told.subList(core + 1, core + 3));
    }
}
