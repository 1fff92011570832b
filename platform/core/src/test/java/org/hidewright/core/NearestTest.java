package org.hidewright.core;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {
    private static final List<String> WORDS =
            List.of("folding", "thickness", "inside-radius", "buckle", "leg", "mm", "chrome", "painted-edges");

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "thicknes,thickness",
        "THICKNES,thickness",
        "tihckness,thickness",
        "bukcle,buckle",
        "crome,chrome",
        "lge,leg",
        "cm,mm",
        "radius,inside-radius",
        "paintd-edge,painted-edges",
        "thikhness,thickness",
    })
    void aSlipOrTwoAreUnderstood(String word, String meant) {
        assertEquals(Optional.of(meant), Nearest.to(word, WORDS));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"flying", "holding-on", "thin", "bundle-up", "wet", "x1"})
    void anotherWordIsNotTakenForOneOfThem(String word) {
        assertEquals(Optional.empty(), Nearest.to(word, WORDS));
    }
}
