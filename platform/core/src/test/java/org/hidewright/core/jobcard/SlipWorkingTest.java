package org.hidewright.core.jobcard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Mass;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.WorkedSlip.Step;
import org.junit.jupiter.api.Test;

class SlipWorkingTest {
    private static final Source GEOMETRY = Source.of("geometry", Source.Kind.DEFINITION);

    private static String numbers(String symbols, Object... given) {
        return FormulaText.numbers(
                        new Step(Formula.of("f", symbols, GEOMETRY), Length.ofMm(1), List.of(given)), Shop.ENGLISH)
                .replace('\u00A0', ' ');
    }

    @Test
    void numbersStandInPlaceOfSymbols() {
        assertEquals(
                "3.1416 rad · (1.5 mm + 0.5 · 2.4 mm)",
                numbers(
                        "L = θ · (r + k · t)",
                        "θ",
                        Angle.ofRadians(Math.PI),
                        "r",
                        Length.ofMm(1.5),
                        "k",
                        0.5,
                        "t",
                        Length.ofMm(2.4)));
    }

    /** The numbers that a formula has itself are read like those put into it; an index with a point is none. */
    @Test
    void aFormulaHasTheDecimalMarkOfTheLanguage() {
        Wording german = new Wording(Locale.GERMAN, UnitSystem.METRIC);
        Step step = new Step(
                Formula.of("f", "L = 1.25 · t + k", GEOMETRY),
                Length.ofMm(1),
                List.of("t", Length.ofMm(2.4), "k", 0.5));
        assertEquals("1,25 · 2,4 mm + 0,5", FormulaText.numbers(step, german).replace('\u00A0', ' '));
        assertEquals("L = 1,25 · t + k.a", german.formula("L = 1.25 · t + k.a"));
        assertEquals("L = 1.25 · t", Shop.ENGLISH.formula("L = 1.25 · t"));
        Step own = new Step(Formula.of("f", "k = 0.5", GEOMETRY), 0.5, List.of());
        assertTrue(FormulaText.says(own, "0,5", german), "it says its result itself");
    }

    @Test
    void aSymbolRaisedToAPowerIsPutInAsWell() {
        assertEquals("√((3 mm)² + 4³)", numbers("L = √(X² + h³)", "X", Length.ofMm(3), "h", 4));
        assertEquals("(-3)² - (-4 mm)²", numbers("L = X² - h²", "X", -3, "h", Length.ofMm(-4)));
    }

    @Test
    void anAreaStandsInTheUnitThatResultsAreIn() {
        assertEquals(
                "120 g / (15 cm² · 2 mm)",
                numbers("ρ = m / (A · t)", "m", Mass.ofGrams(120), "A", Area.ofMm2(1500), "t", Length.ofMm(2)));
    }

    @Test
    void aSymbolWithAnIndexIsAnotherThanItsLetter() {
        assertEquals("2 mm + 5 mm", numbers("L = t₁ + t", "t₁", Length.ofMm(2), "t", Length.ofMm(5)));
    }

    @Test
    void aFormulaThatIsItsOwnResultSaysSo() {
        Step step = new Step(Formula.of("f", "k = 0.5", GEOMETRY), 0.5, List.of());
        assertEquals("0.5", FormulaText.result(step, Shop.ENGLISH));
        assertEquals(true, FormulaText.says(step, "0.5", Shop.ENGLISH));
        assertEquals(false, FormulaText.says(step, "0.4", Shop.ENGLISH));
    }
}
