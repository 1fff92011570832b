package org.hidewright.core.jobcard;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.hidewright.api.document.Paragraph;
import org.hidewright.core.bench.Sampler;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.junit.jupiter.api.Test;

class JobCardTest {
    private static boolean saysHowToReadDecimals(UnitSystem units, String questions) {
        Wording wording = new Wording(Locale.ENGLISH, units);
        return new JobCard(new Shop(new Sampler()).work(Shop.slip("strap", "sampler", Shop.json(questions))), wording)
                .document(LocalDate.of(2026, 3, 1), List.of()).sections().get(0).blocks().stream()
                        .filter(Paragraph.class::isInstance)
                        .map(paragraph -> ((Paragraph) paragraph).text())
                        .anyMatch(text -> text.contains("4.486 in is 4 in and 0.486 × 64 = 31.1 parts"));
    }

    @Test
    void aCardInInchesWithTablesSaysOnceHowDecimalsAreRead() {
        assertTrue(saysHowToReadDecimals(UnitSystem.INCH, "'thickness': '2 mm'"));
        assertFalse(saysHowToReadDecimals(UnitSystem.METRIC, "'thickness': '2 mm'"));
        assertFalse(saysHowToReadDecimals(UnitSystem.INCH, "'thickness': '2 mm', 'layers': []"));
    }
}
