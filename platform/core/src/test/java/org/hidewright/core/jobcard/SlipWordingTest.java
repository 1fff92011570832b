package org.hidewright.core.jobcard;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.hidewright.core.bench.Sampler;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.work.AskedLine;
import org.hidewright.core.work.WorkedSlip;
import org.junit.jupiter.api.Test;

class SlipWordingTest {
    private static String layers(String rows) {
        WorkedSlip slip = new Shop(new Sampler()).one("sampler", "'thickness': 2, 'layers': [" + rows + "]");
        AskedLine layers = slip.asked().stream()
                .filter(line -> line.question().key().equals("layers"))
                .findFirst()
                .orElseThrow();
        return new SlipWording(slip, Shop.ENGLISH)
                .text(layers.question(), layers.value().orElseThrow());
    }

    @Test
    void rowsAreCountedInWords() {
        assertEquals("none", layers(""));
        assertEquals("1 row", layers("{'thickness': 1}"));
        assertEquals("2 rows", layers("{'thickness': 1}, {'thickness': 1}"));
    }
}
