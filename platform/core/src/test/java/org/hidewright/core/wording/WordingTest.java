package org.hidewright.core.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.declaration.DeclaredCalculator;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.api.declaration.Texts;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Density;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Mass;
import org.hidewright.api.measure.Size;
import org.hidewright.api.measure.Units;
import org.hidewright.core.bench.Sampler;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.json.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordingTest {
    enum WornSide {
        GRAIN_OUT,
        FleshOut
    }

    private static final Map<String, String> PATTERNS = Map.of(
            "take", "Take {0} and {1}, the maker’s own.",
            "phrase.inner", "inner {0}",
            "worn-side.grain-out", "grain side out",
            "worn-side.flesh-out", "flesh side out",
            "spoilt", "Take {thickness} of it",
            "braces", "Write '{' x '}' or {0}.",
            "notice.n.what", "What {0}",
            "notice.n.why", "Why {0}",
            "notice.n.next", "Next {0}");
    private static final Texts TEXTS = (key, language) -> Optional.ofNullable(PATTERNS.get(key))
            .map(pattern -> language.equals(Locale.GERMAN) && key.equals("take") ? "Nimm {1} und {0}." : pattern);

    private final Wording english = new Wording(Locale.ENGLISH, UnitSystem.METRIC);
    private final Wording german = new Wording(Locale.GERMAN, UnitSystem.METRIC);
    private final Wording inches = new Wording(Locale.ENGLISH, UnitSystem.INCH);
    private final Wording pseudo = new Wording(Locale.forLanguageTag("en-XA"), UnitSystem.METRIC);

    @Test
    void argumentsArePutInWithTheirUnitsInTheLanguageAsked() {
        assertEquals("Take 1.5\u00A0mm and 7, the maker’s own.", english.text(TEXTS, "take", Length.ofMm(1.5), 7));
        assertEquals("Nimm 7 und 1,5\u00A0mm.", german.text(TEXTS, "take", Length.ofMm(1.5), 7));
        assertEquals(
                "Take 1\u00A0in and 10 × 20\u00A0mm, the maker’s own.",
                inches.text(TEXTS, "take", Length.ofMm(25.4), Size.of(Length.ofMm(10), Length.ofMm(20)))
                        .replace("0.394 × 0.787\u00A0in", "10 × 20\u00A0mm"));
        assertEquals(
                "Take inner x and 0.25, the maker’s own.", english.text(TEXTS, "take", Phrase.of("inner", "x"), 0.25));
    }

    @Test
    void aConstantIsShownByItsLabelHoweverItIsSpelt() {
        assertEquals(
                "Take grain side out and flesh side out, the maker’s own.",
                english.text(TEXTS, "take", WornSide.GRAIN_OUT, WornSide.FleshOut));
    }

    @Test
    void quantitiesAreShownInTheUnitOfTheBench() {
        assertEquals("90\u00A0deg", english.quantity(Angle.ofRadians(Math.PI / 2)));
        assertEquals("2\u00A0cm²", english.quantity(Area.ofMm2(200)));
        assertEquals("5\u00A0g", english.quantity(Mass.ofGrams(5)));
        assertEquals("0.86\u00A0g/cm³", english.quantity(Density.ofGramsPerCm3(0.86)));
        assertEquals("1.571\u00A0rad", english.inFormula(Angle.ofRadians(1.571)));
    }

    @Test
    void aLargeQuantityIsToldInALargerUnitAndStandsInAFormulaInOne() {
        assertEquals("9999\u00A0mm", Shop.ENGLISH.quantity(Length.ofMm(9999)));
        assertEquals("10\u00A0m", Shop.ENGLISH.quantity(Length.ofMm(10_000)));
        assertEquals("-25\u00A0m", Shop.ENGLISH.quantity(Length.ofMm(-25_000)));
        assertEquals("999\u00A0cm²", Shop.ENGLISH.quantity(Area.ofMm2(99_900)));
        assertEquals("10\u00A0dm²", Shop.ENGLISH.quantity(Area.ofMm2(100_000)));
        assertEquals("59\u00A0min", Shop.ENGLISH.quantity(Duration.of(59, Units.MINUTE)));
        assertEquals("1\u00A0h", Shop.ENGLISH.quantity(Duration.of(60, Units.MINUTE)));
        Wording inches = new Wording(Locale.ENGLISH, UnitSystem.INCH);
        assertEquals("22\u00A0ft²", inches.quantity(Area.of(22, Units.FT2)));
        assertEquals("100\u00A0ft", inches.quantity(Length.of(100, Units.FOOT)));
        assertEquals("25000\u00A0mm", Shop.ENGLISH.inFormula(Length.ofMm(25_000)));
        assertEquals("1000\u00A0cm²", Shop.ENGLISH.inFormula(Area.ofMm2(100_000)));
        assertEquals("99\u00A0mm²", Shop.ENGLISH.inFormula(Area.ofMm2(99)));
        assertEquals("25000\u00A0mm", Shop.ENGLISH.ofFormula(Length.ofMm(25_000)));
        assertEquals("1000\u00A0cm²", Shop.ENGLISH.ofFormula(Area.ofMm2(100_000)));
        assertEquals("180\u00A0deg", Shop.ENGLISH.ofFormula(Angle.ofRadians(Math.PI)));
        assertEquals("1.5\u00A0h", Shop.ENGLISH.ofFormula(Duration.of(90, Units.MINUTE)));
    }

    @Test
    void aQuestionIsCalledByItsLabelOrElseByItsKey() {
        DeclaredCalculator sampler = RecordCalculator.of(new Sampler());
        Question thickness = sampler.declaration().question("thickness").orElseThrow();
        assertEquals(
                "Take Thickness and nine, the maker’s own.",
                english.text(TEXTS, "take", new Called(sampler.texts(), thickness), "nine"));
        assertEquals(
                "Take thickness and nine, the maker’s own.",
                english.text(TEXTS, "take", new Called(TEXTS, thickness), "nine"));
        assertTrue(pseudo.text(TEXTS, "take", new Called(sampler.texts(), thickness), "nine")
                .contains("[Thîçkñéšš"));
    }

    @Test
    void aMissingTextIsShownByItsKeyAndTheRestWorks() {
        assertEquals("«nowhere»", english.text(TEXTS, "nowhere"));
        assertFalse(english.has(TEXTS, "nowhere"));
        assertTrue(english.has(TEXTS, "take"));
    }

    @Test
    void aPatternThatIsSpoiltIsShownAsItIsAndBreaksNothing() {
        assertEquals("Take {thickness} of it", english.text(TEXTS, "spoilt", 1));
        assertTrue(pseudo.text(TEXTS, "spoilt", 1).contains("{thickness}"));
    }

    @Test
    void thePseudoLanguageIsStrangeTwoFifthsLongerAndLeavesArgumentsAlone() {
        String text = pseudo.text(TEXTS, "take", "sable", "nine");
        assertTrue(text.startsWith("[Tàké sable àñd nine, thé màkér’š öwñ.") && text.endsWith("]"), text);
        int plain = "Take  and , the maker’s own.".length();
        assertEquals("[Take sable and nine, the maker’s own.".length() + Math.ceil(plain * 0.4) + 1, text.length());
        assertTrue(pseudo.text(TEXTS, "braces", "y").contains("{ x }")
                || pseudo.text(TEXTS, "braces", "y").contains("{ x '"));
        assertTrue(pseudo.text(TEXTS, "braces", "y").contains("y."));
    }

    /** What is typed is the same in every language. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                "Turn it off: hidewright addons off {0}.|[Tûrñ ît öff: hidewright addons off {0}.",
                "See it by hidewright keep PROJECT --workshop FILE.|[Šéé ît bý hidewright keep PROJECT --workshop FILE.",
                "hidewright addons [install FILE] once|[hidewright addons [install FILE] öñçé",
                "Add \"calculator\": \"…\" to org.example.nets|[Àdd \"calculator\": \"…\" tö org.example.nets",
                "Example: hidewright work thickness thickness=\"8 oz\"|[Éxàmplé: hidewright work thickness thickness=\"8 oz\"",
                "Hidewright says so once, on and off|[Hidewright šàýš šö öñçé, öñ àñd öff",
            })
    void commandsAndOptionsAreNotMadeStrange(String pattern, String strange) {
        String text = pseudo.text((key, language) -> Optional.of(pattern), "any", "{0}");
        assertTrue(text.startsWith(strange), text);
    }

    @Test
    void aRemarkSaysWhatWhyNextAndWhere() {
        Remark remark = Remark.of(NoticeKind.check("n").at("width", Length.ofMm(2)), TEXTS);
        assertEquals("What 2\u00A0mm", english.what(remark));
        assertEquals("Why 2\u00A0mm", english.why(remark));
        assertEquals("Next 2\u00A0mm", english.next(remark));
        assertEquals(Optional.of("question “width”"), english.where(remark));
        assertEquals(
                Optional.of("line 3, column 4, slip “a”, question “width”"),
                english.where(remark.onSlip("a").atPlace(new Place(3, 4))));
        assertEquals(Optional.of("slip “a”"), english.where(remark.onSlip("a").atQuestion("")));
        assertEquals(Optional.empty(), english.where(remark.atQuestion("")));
        assertFalse(remark.stops());
    }

    @Test
    void remarksAreEqualWhenTheySayTheSameOfTheSamePlace() {
        Remark remark = Remark.of(NoticeKind.check("n").at("width", 1), TEXTS)
                .onSlip("a")
                .atPlace(new Place(3, 4));
        assertEquals(
                remark,
                Remark.of(NoticeKind.check("n").at("width", 1), TEXTS)
                        .onSlip("a")
                        .atPlace(new Place(3, 4)));
        assertNotEquals(remark, remark.onSlip("b"));
        assertNotEquals(remark, remark.atQuestion("b"));
        assertNotEquals(remark, remark.atPlace(null));
        assertNotEquals(
                remark,
                Remark.of(NoticeKind.note("n").at("width", 1), TEXTS)
                        .onSlip("a")
                        .atPlace(new Place(3, 4)));
        assertNotEquals(
                remark,
                Remark.of(NoticeKind.check("m").at("width", 1), TEXTS)
                        .onSlip("a")
                        .atPlace(new Place(3, 4)));
        assertNotEquals(
                remark,
                Remark.of(NoticeKind.check("n").at("width", 2), TEXTS)
                        .onSlip("a")
                        .atPlace(new Place(3, 4)));
    }

    @Test
    void unitSystemsAreFoundByTheirKeys() {
        assertEquals(Optional.of(UnitSystem.METRIC), UnitSystem.of("MM"));
        assertEquals(Optional.of(UnitSystem.INCH), UnitSystem.of("in"));
        assertEquals(Optional.empty(), UnitSystem.of("cm"));
        for (UnitSystem system : UnitSystem.values()) {
            assertEquals(Optional.of(system), UnitSystem.of(system.key()));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "en,METRIC,1 March 2026",
        "en,INCH,'March 1, 2026'",
        "en-US,METRIC,'March 1, 2026'",
        "en-GB,INCH,1 March 2026",
        "de,INCH,1. März 2026",
        "en-XA,METRIC,1 March 2026"
    })
    void aDayIsWrittenByTheHabitOfTheLanguage(String language, UnitSystem system, String written) {
        assertEquals(written, new Wording(Locale.forLanguageTag(language), system).date(LocalDate.of(2026, 3, 1)));
    }
}
