package org.hidewright.core.expression;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.hidewright.api.measure.Dimension;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExpressionTest {
    private static final Measure LENGTH = new Measure(1, 0, 0, 0);

    private static Worth.Amount mm(double mm) {
        return new Worth.Amount(LENGTH, mm);
    }

    private static final Map<String, Worth> NAMES = Map.of(
            "held.width", mm(85.6),
            "held.thickness", mm(0.76),
            "cards", Worth.number(4),
            "closure", new Worth.Word("snap"),
            "lined", new Worth.Truth(true));

    private static double number(String text) throws ExpressionTrouble {
        return ((Worth.Amount) Expression.read(text).worth(NAMES)).number();
    }

    private static boolean yes(String text) throws ExpressionTrouble {
        return ((Worth.Truth) Expression.read(text).worth(NAMES)).yes();
    }

    /** What can be said of an expression before anything is answered, where a question has options. */
    private static String choosing(String text) {
        Map<String, Sort> names =
                Map.of("closure", new Sort.OneOf(Set.of("snap", "strap")), "engraved", Sort.Plain.WORD);
        try {
            return Expression.read(text).sort(names).toString();
        } catch (ExpressionTrouble e) {
            return e.place() + " " + e.notice().kind().key() + " " + e.notice().args();
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "closure is 'snap'|TRUTH",
                "closure is not 'strap'|TRUTH",
                "engraved is 'anything'|TRUTH",
                "closure is engraved|TRUTH",
                "(if closure is 'snap' then 'x' else 'y') is 'y'|TRUTH",
                "if closure is 'snap' then engraved else 'plain'|WORD",
                "if closure is 'snap' then closure else 'none'|OneOf[options=[none, snap, strap]]",
                "closure is 'snpa'|1:12 expression-no-such-word-nearest [snpa, snap]",
                "'none' is closure|1:1 expression-no-such-word [none, snap, strap]",
                "1 + (if closure is not 'none' then 1 else 2)|1:24 expression-no-such-word [none, snap, strap]",
                "(if closure is 'snap' then 'x' else 'y') is 'other'|1:45 expression-no-such-word [other, x, y]",
                "closure is 3|1:9 expression-not-alike [is, sort-word[], sort-number[]]"
            })
    void aWordIsOneOfItsChoice(String text, String said) {
        assertEquals(said, choosing(text));
    }

    /** Place and kind of the trouble, and what it was told with. */
    private static String trouble(String text) {
        ExpressionTrouble trouble = assertThrows(
                ExpressionTrouble.class, () -> Expression.read(text).worth(NAMES), text);
        return trouble.place() + " " + trouble.notice().kind().key() + " "
                + trouble.notice().args();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1 + 2 * 3|7",
                "(1 + 2) * 3|9",
                "10 - 4 - 3|3",
                "24 / 4 / 3|2",
                "-2 * -3|6",
                "2 - -3|5",
                "2.5 * .4|1",
                "3 mm + 2 cm|23",
                "3/8 in|9.525",
                "1 1/2 in|38.1",
                "3 / 8|0.375",
                "1/2|0.5",
                "5 oz|1.984375",
                "2 in + 1 mm|51.8",
                "held.width + 2 * held.thickness|87.12",
                "held.width * cards|342.4",
                "cards -1|3",
                "90 deg / 180 deg|0.5",
                "20 mm * (90 deg / 1 rad) / pi|10",
                "sin(30 deg)|0.5",
                "atan(3 mm, 3 mm) / 1 turn|0.125",
                "sqrt(9 mm * 4 mm)|6",
                "sqrt(25 mm²)|5",
                "max(3 mm, 1/8 in, 2 mm)|3.175",
                "min(cards, 3)|3",
                "abs(2 - cards)|2",
                "up(10.2 mm, 0.5 mm)|10.5",
                "up(3 * 0.1 mm, 0.1 mm)|0.3",
                "down(10.7 mm, 0.5 mm)|10.5",
                "if lined then 2 mm else 0 mm|2",
                "if closure is 'stud' then 1 else if cards > 3 then 2 else 3|2",
                "10 % * 30 mm|3",
                "2 dm² / 40 cm|50",
                "1 l / 1 m²|1",
            })
    void amountsAreWorkedInMillimetresGramsAndSeconds(String text, double wanted) throws Exception {
        assertEquals(wanted, number(text), 1e-9);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "cards > 3|true",
                "cards >= 4|true",
                "cards < 4|false",
                "cards <= 4|true",
                "0.1 + 0.2 is 0.3|true",
                "0.1 + 0.2 > 0.3|false",
                "1 in is 25.4 mm|true",
                "closure is 'snap'|true",
                "closure is not 'snap'|false",
                "not closure is 'snap'|false",
                "lined and cards < 2|false",
                "lined or cards < 2|true",
                "no or lined and no|false",
                "lined is yes|true",
                "cards < 3 or cards > 3 and lined|true",
            })
    void comparisonsAreYesOrNo(String text, boolean wanted) throws Exception {
        assertEquals(wanted, yes(text));
    }

    @Test
    void whatItGivesIsKnownBeforeItsNamesHaveValues() throws Exception {
        Map<String, Sort> sorts = Map.of("w", LENGTH, "n", Measure.NUMBER, "closure", Sort.Plain.WORD);
        assertEquals(new Measure(2, 0, 0, 0), Expression.read("w * w + 3 cm²").sort(sorts));
        assertEquals(Measure.NUMBER, Expression.read("w / 3 mm").sort(sorts));
        assertEquals(
                new Measure(-3, 1, 0, 0), Expression.read("5 g / (w * w * w)").sort(sorts));
        assertEquals(Sort.Plain.TRUTH, Expression.read("closure is 'stud'").sort(sorts));
        assertEquals(
                Sort.Plain.WORD,
                Expression.read("if n > 2 then 'stud' else closure").sort(sorts));
        assertEquals(
                Set.of("n", "closure"),
                Expression.read("if n > 2 then 'stud' else closure").names());
    }

    @Test
    void densitiesAndVolumesComeBackInTheirOwnUnits() throws Exception {
        Worth.Amount weight =
                (Worth.Amount) Expression.read("0.9 g/cm³ * 2 dm² * 2 mm").worth(Map.of());
        assertEquals(36, weight.inBase(Dimension.MASS), 1e-9); // 0.9 g/cm³ · 200 cm² · 0.2 cm
        Worth.Amount room =
                (Worth.Amount) Expression.read("10 cm * 10 cm * 10 cm").worth(Map.of());
        assertEquals(1000, room.inBase(Dimension.VOLUME), 1e-9);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "held.widht + 1 mm|1:1 expression-unknown-name-nearest [held.widht, held.width]",
                "1 mm + pocket|1:8 expression-unknown-name [pocket, cards, closure, held.thickness, held.width, lined]",
                "cards-1|1:1 expression-unknown-name-nearest [cards-1, cards]",
                "3 mmm|1:3 expression-unknown-unit [mmm, mm]",
                "3 apples|1:3 expression-unknown-unit [apples, mm]",
                "held.width + 3|1:12 expression-not-alike [+, sort-length[], sort-number[]]",
                "cards < 3 mm|1:7 expression-not-alike [<, sort-number[], sort-length[]]",
                "max(3 mm, 2)|1:1 expression-not-alike [max, sort-length[], sort-number[]]",
                "if lined then 3 mm else 3 mm²|1:1 expression-not-alike [if, sort-length[], sort-area[]]",
                "closure + 1|1:1 expression-wrong-sort [+, sort-amount[], sort-word[]]",
                "not cards|1:5 expression-wrong-sort [not, sort-truth[], sort-number[]]",
                "lined and 3 mm * 2|1:16 expression-wrong-sort [and, sort-truth[], sort-length[]]",
                "sqrt(3 mm)|1:1 expression-no-root [sort-length[]]",
                "sin(3 mm)|1:1 expression-not-alike [sin, sort-angle[], sort-length[]]",
                "90 deg + 1|1:8 expression-not-alike [+, sort-angle[], sort-number[]]",
                "sin(1)|1:1 expression-not-alike [sin, sort-angle[], sort-number[]]",
                "min(3)|1:1 expression-how-many [min, 2-20, 1]",
                "abs(1, 2)|1:1 expression-how-many [abs, 1, 2]",
                "sqr(4)|1:1 expression-unknown-name-nearest [sqr, sqrt]",
                "9^9^9^9|1:2 expression-no-power []",
                "1 / (cards - 4)|1:12 expression-divides-by-nothing [1 / (cards - 4)]",
                "sqrt(1 - cards)|1:1 expression-no-amount [sqrt, sqrt(1 - cards)]",
                "up(3, 0)|1:1 expression-no-amount [up, up(3, 0)]",
                "1000000000 * 1000000000|1:12 expression-no-amount [*, 1000000000 * 1000000000]",
                "(1 + 2|1:7 expression-unexpected [expression-end[], expression-sign[)]]",
                "1 + 2)|1:6 expression-unexpected [), expression-sign-or-end[]]",
                "1 + * 2|1:5 expression-unexpected [*, expression-value[]]",
                "if lined 3 else 4|1:10 expression-unexpected [3, expression-sign[then]]",
                "1 h 30 min|1:5 expression-unexpected [30 min, expression-sign-or-end[]]",
                "cards 3|1:7 expression-unexpected [3, expression-sign-or-end[]]",
                "lined closure 'snap'|1:7 expression-unexpected [closure, expression-sign-or-end[]]",
                "closure 'snap'|1:9 expression-missing-is ['snap']",
                "if closure 'snap' then 1 else 2|1:12 expression-missing-is ['snap']",
                "3 $ 4|1:3 expression-unexpected [$, expression-any[]]",
                "1 < 2 < 3|1:7 expression-unexpected [<, expression-sign-or-end[]]",
                "is 3|1:1 expression-unexpected [is, expression-value[]]",
                "3 mm * π|1:8 expression-unexpected [π, expression-any[]]",
                "''|1:1 expression-unexpected [expression-end[], expression-value[]]",
            })
    void whatCannotBeIsToldWithItsPlace(String text, String told) {
        assertEquals(told, trouble(text));
    }

    @Test
    void placesAreCountedInLinesAndColumns() {
        assertEquals("2:8 expression-unknown-name-nearest [crads, cards]", trouble("1 mm *\n  3 *  crads"));
    }

    @Test
    void whatIsTooLongOrTooDeepIsNotRead() {
        assertEquals("1:1001 expression-too-long [1201, 1000]", trouble("1" + " + 1".repeat(300)));
        assertTrue(trouble("(".repeat(60) + "1" + ")".repeat(60)).contains("expression-too-deep [50]"));
        assertTrue(trouble("not ".repeat(60) + "lined").contains("expression-too-deep [50]"));
        assertTrue(trouble("if lined then ".repeat(60) + "1").contains("expression-too-deep [50]"));
        assertTrue(trouble("-".repeat(900)).contains("expression-unexpected"));
        assertTrue(trouble("9".repeat(900)).contains("expression-no-amount"), trouble("9".repeat(900)));
    }

    /** Trees made up from a seed, written down and read again, against what the tree itself comes to. */
    @Test
    void whatWasWrittenDownIsReadAsItWasMeant() throws Exception {
        for (long seed = 0; seed < 3000; seed++) {
            Random random = new Random(seed);
            Made made = made(random, 5);
            if (Double.isFinite(made.number) && Math.abs(made.number) < 1e12) {
                double read = ((Worth.Amount) Expression.read(made.text).worth(Map.of())).number();
                assertEquals(made.number, read, 1e-9 * Math.max(1, Math.abs(made.number)), made.text);
            }
        }
    }

    /** Ranks: 0 a sum, 1 a product, 2 what needs no brackets. */
    private record Made(String text, double number, int rank) {
        String within(int least) {
            return rank >= least ? text : "(" + text + ")";
        }
    }

    private static Made made(Random random, int depth) {
        if (depth == 0 || random.nextInt(5) == 0) {
            int whole = 1 + random.nextInt(9);
            return new Made(String.valueOf(whole), whole, 2);
        }
        Made one = made(random, depth - 1);
        Made other = made(random, depth - 1);
        return switch (random.nextInt(5)) {
            case 0 -> new Made(one.within(0) + "+" + other.within(1), one.number + other.number, 0);
            case 1 -> new Made(one.within(0) + " - " + other.within(1), one.number - other.number, 0);
            case 2 -> new Made(one.within(1) + " * " + other.within(2), one.number * other.number, 1);
            case 3 ->
                new Made(
                        one.within(1) + " / " + other.within(2),
                        other.number == 0 ? Double.NaN : one.number / other.number,
                        1);
            default -> new Made("-" + one.within(2), -one.number, 2);
        };
    }

    /** Whatever is typed, it is worked or told; nothing else happens, and the words of what is told are there. */
    @Test
    void nonsenseIsToldAndNeverThrown() {
        List<String> pieces = List.of(
                "1",
                "2.5",
                "3/8 in",
                "mm",
                " ",
                "(",
                ")",
                "+",
                "-",
                "*",
                "/",
                "<",
                ">=",
                "is",
                "not",
                "and",
                "or",
                "if",
                "then",
                "else",
                "cards",
                "closure",
                "lined",
                "held.width",
                "'snap'",
                "min(",
                ",",
                "sqrt",
                "^",
                "§",
                "'",
                "\n",
                "yes",
                "pi",
                "..",
                "e9",
                "Ω",
                "\uD83D\uDE00");
        int worked = 0;
        for (long seed = 0; seed < 20_000; seed++) {
            Random random = new Random(seed);
            StringBuilder text = new StringBuilder();
            for (int i = random.nextInt(12); i >= 0; i--) {
                text.append(pieces.get(random.nextInt(pieces.size()))).append(random.nextBoolean() ? " " : "");
            }
            try {
                Expression.read(text.toString()).worth(NAMES);
                worked++;
            } catch (ExpressionTrouble e) {
                assertTrue(ExpressionNotices.all().contains(e.notice().kind()), () -> text + ": " + e.getMessage());
            }
        }
        assertTrue(worked > 100, "some are sound: " + worked);
    }
}
