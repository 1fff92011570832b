package org.hidewright.core.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.hidewright.api.declaration.Question;
import org.hidewright.core.bench.Sampler;
import org.hidewright.core.bench.Shop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BareNumbersTest {
    private static Question question(String key) {
        return new Shop(new Sampler())
                .work(Shop.slip("one", "sampler", ""))
                .slips()
                .get("one")
                .installed()
                .orElseThrow()
                .calculator()
                .declaration()
                .question(key)
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({
        "0.12, 0.12 in",
        "'0,12', '0,12 in'",
        "1/8, 1/8 in",
        "1 1/8, 1 1/8 in",
        "⅛, ⅛ in",
        "1/16 - 1/8, 1/16 - 1/8 in",
        "0.1 ± 0.01, 0.1 ± 0.01 in",
        "8.5 x 11, 8.5 x 11 in",
        "'1/8; 3 mm ;1/4', '1/8 in; 3 mm ;1/4 in'",
        "3 mm, 3 mm",
        "2-3 oz, 2-3 oz",
        "'1/8\"', '1/8\"'",
        "two, two",
        "-, -"
    })
    void whatHasNoUnitTakesTheOneThatIsSeen(String typed, String meant) {
        assertEquals(meant, BareNumbers.withUnitShown(typed, question("thickness"), UnitSystem.INCH));
        assertEquals(typed, BareNumbers.withUnitShown(typed, question("thickness"), UnitSystem.METRIC));
    }

    @Test
    void whatHasNoUnitOfItsOwnStaysBare() {
        assertEquals("0.5", BareNumbers.withUnitShown("0.5", question("shrink"), UnitSystem.INCH));
    }
}
