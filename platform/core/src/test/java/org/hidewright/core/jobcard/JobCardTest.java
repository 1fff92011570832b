package org.hidewright.core.jobcard;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.hidewright.api.document.Paragraph;
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
}
