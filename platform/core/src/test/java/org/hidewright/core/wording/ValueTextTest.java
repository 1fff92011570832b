package org.hidewright.core.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.OptionalDouble;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ValueTextTest {
    private static final char NO_BREAK = '\u00A0';

    record Asks(@Asked(preset = "1") int none) {}

    record Gives(
            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.UP)
            Length up,

            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.DOWN)
            Length down,

            @Answered(unit = "mm", step = "0.1 mm") Length nearest,

            @Answered(unit = "mm", step = "0.5 mm", round = Rounding.UP)
            Length half,

            @Answered(unit = "mm", step = "5 mm") Length five,
            @Answered(unit = "mm") Length free,
            @Answered(unit = "mm", round = Rounding.UP) Length freeUp,

            @Answered(unit = "mm", keepUnit = true, step = "0.1 mm")
            Length inMillimetres,

            @Answered(unit = "oz", step = "0.5 oz") Length ounces,
            @Answered(unit = "deg", step = "1 deg") Angle degrees,

            @Answered(unit = "dm²", step = "0.1 dm²", round = Rounding.UP)
            Area area,

            @Answered(unit = "%", step = "1 %") double share,
            @Answered(step = "0.01") double factor) {}

    @Calculates("shown")
    static final class Showing implements Calculator<Asks, Gives> {
        @Override
        public Outcome<Gives> calculate(Asks asks, Working working) {
            throw new UnsupportedOperationException();
        }
    }

    private final ValueText metric = new ValueText(Locale.ENGLISH, UnitSystem.METRIC);
    private final ValueText inches = new ValueText(Locale.ENGLISH, UnitSystem.INCH);

    private static Answer answer(String key) {
        return RecordCalculator.of(new Showing()).declaration().answer(key).orElseThrow();
    }

    @ParameterizedTest(name = "{1} mm as {0} is {2}")
    @CsvSource({
        "up,146.1,146.1",
        "up,146.1000000000001,146.1",
        "up,146.10001,146.2",
        "up,146.0999999999999,146.1",
        "up,146,146.0",
        "up,-1.25,-1.2",
        "up,0.00001,0.1",
        "down,146.19,146.1",
        "down,146.1999999999999,146.2",
        "down,146.2000000000001,146.2",
        "down,-1.25,-1.3",
        "down,0.04,0.0",
        "nearest,2.25,2.3",
        "nearest,2.2499999999999999,2.3",
        "nearest,2.24,2.2",
        "nearest,-2.25,-2.3",
        "half,10.1,10.5",
        "half,10.5000000000001,10.5",
        "half,10.6,11.0",
        "five,12.4,10",
        "five,12.5,15",
        "free,3.1754,3.175",
        "free,3.1755,3.176",
        "free,3,3",
        "free,3.10,3.1",
        "free,3.1000000000001,3.1",
        "free,3.1001,3.100",
        "free,0,0",
        "free,0.00012345,0.00012",
        "free,-0.0004,-0.0004",
        "freeUp,3.1751,3.176",
        "freeUp,3.1750000000001,3.175",
        "nearest,12345678.94,12345678.9"
    })
    void anAnswerIsRoundedOnceInItsDirection(String key, double mm, String shown) {
        String answer = key.equals("freeUp") ? "free-up" : key;
        assertEquals(shown, metric.answer(answer(answer), mm).number());
        assertEquals(shown + NO_BREAK + "mm", metric.answer(answer(answer), mm).inline());
    }

    @Test
    void everySumOfTenthsIsShownWithoutNoiseInEveryDirection() {
        double sum = 0;
        for (int i = 1; i <= 2000; i++) {
            sum += 0.1;
            String tenths = i / 10 + "." + i % 10;
            for (String key : new String[] {"up", "down", "nearest"}) {
                assertEquals(tenths, metric.answer(answer(key), sum).number(), key);
            }
        }
    }

    @Test
    void otherUnitsAreRoundedInTheirOwnSteps() {
        assertEquals("8.0\u00A0oz", metric.answer(answer("ounces"), 3.175).inline());
        assertEquals("180\u00A0deg", metric.answer(answer("degrees"), Math.PI).inline());
        assertEquals("1.3\u00A0dm²", metric.answer(answer("area"), 12001).inline());
        assertEquals("35\u202F%", metric.answer(answer("share"), 0.35).inline());
        assertEquals("0.67", metric.answer(answer("factor"), 2.0 / 3).inline());
    }

    @ParameterizedTest(name = "{1} mm as {0} is {2} in, {3}")
    @CsvSource({
        "nearest,25.4,1.000,1",
        "nearest,146.1,5.752,5 3/4",
        "nearest,3.175,0.125,1/8",
        "up,146.1,5.752,5 49/64",
        "up,146.05,5.750,5 3/4",
        "up,25.4000000000001,1.000,1",
        "down,146.4,5.763,5 3/4",
        "down,146.05,5.750,5 3/4",
        "down,-15.7,-0.619,-5/8",
        "up,-15.7,-0.618,-39/64"
    })
    void inInchesAFractionStandsBesideRoundedInTheSameDirection(String key, double mm, String number, String fraction) {
        ValueText.Shown shown = inches.answer(answer(key), mm);
        assertEquals(number, shown.number());
        assertEquals("in", shown.unit());
        assertEquals(fraction + " in", shown.beside());
    }

    @Test
    void noFractionStandsBesideWhatIsNoneAtSixtyFourths() {
        assertEquals("0.005", inches.answer(answer("nearest"), 0.13).number());
        assertEquals("", inches.answer(answer("nearest"), 0.13).beside());
        assertEquals("", inches.answer(answer("nearest"), 0).beside());
    }

    /** A sixty-fourth is 0.396875 mm: 1/32 in is 0.79375 mm, and 0.756 mm is 4.99 % under it, 0.755 mm 5.1 %. */
    @ParameterizedTest(name = "beside {1} mm as {0} stands {2}")
    @CsvSource({
        "up,0.61,", // a thread of 0.024 in is no 1/32 in of 0.031 in
        "up,0.755,",
        "up,0.756,1/32 in",
        "nearest,0.836,",
        "nearest,0.835,1/32 in",
        "nearest,-0.755,",
        "nearest,-0.756,-1/32 in",
        "down,0.836,",
        "down,0.835,1/32 in",
        "up,0.13,",
        "up,0.39,1/64 in"
    })
    void aFractionThatIsAnotherSizeIsNotShown(String key, double mm, String beside) {
        assertEquals(
                beside == null ? "" : beside, inches.answer(answer(key), mm).beside());
    }

    @Test
    void anAnswerWhosePointIsItsUnitKeepsItInInches() {
        assertEquals(
                "25.4\u00A0mm", inches.answer(answer("in-millimetres"), 25.4).inline());
        assertEquals("", inches.answer(answer("in-millimetres"), 25.4).beside());
    }

    @Test
    void inInchesAreasTurnIntoInchesAndTradeUnitsStay() {
        assertEquals("8.0\u00A0oz", inches.answer(answer("ounces"), 3.175).inline());
        assertEquals("", inches.answer(answer("ounces"), 3.175).beside());
        assertEquals("1\u00A0ft²", inches.of(92_903.04, Units.DM2).inline());
        assertEquals("180\u00A0deg", inches.answer(answer("degrees"), Math.PI).inline());
    }

    @ParameterizedTest
    @CsvSource({"de,'146,1'", "fr,'146,1'", "en,146.1", "en-XA,146.1", "sv,'146,1'"})
    void theDecimalMarkIsThatOfTheLanguage(String language, String shown) {
        ValueText values = new ValueText(Locale.forLanguageTag(language), UnitSystem.METRIC);
        assertEquals(shown, values.answer(answer("nearest"), 146.1).number());
        assertEquals(shown, values.plain(146.1));
    }

    @ParameterizedTest(name = "{0} mm typed is {1} in")
    @CsvSource({"25.4,1", "3.175,0.125", "12.7,0.5", "1.7859375,0.070", "139.7001,5.500", "139.7,5.5"})
    void zerosAtTheEndOfWhatWasTypedStandOnlyWhereItIsRounded(double mm, String inch) {
        assertEquals(inch, inches.of(mm, Units.MM).number());
    }

    @Test
    void plainNumbersKeepFourDecimalsAtMost() {
        assertEquals("7", metric.plain(7));
        assertEquals("0.3333", metric.plain(1.0 / 3));
        assertEquals("0.5", metric.plain(0.50));
        assertEquals("1500000", metric.plain(1.5e6));
        assertEquals("0", metric.plain(0.0));
        assertEquals("0.3", metric.plain(0.1 + 0.2));
        assertEquals("0.0630", metric.plain(0.062992));
    }

    @Test
    void aNumberInAFormulaHasFiveDigitsAndItsUnit() {
        assertEquals("3.1416\u00A0rad", metric.inFormula(Math.PI, Units.RADIAN));
        assertEquals("146.1\u00A0mm", metric.inFormula(146.1, Units.MM));
        assertEquals("1\u00A0in", inches.inFormula(25.4, Units.MM));
        assertEquals("1.0630\u00A0in", inches.inFormula(27, Units.MM)); // 1.062992
        assertEquals("12346\u00A0mm", metric.inFormula(12345.6, Units.MM));
        assertEquals("0.5\u00A0cm²", metric.inFormula(50, Units.CM2));
    }

    @Test
    void aValueWithoutDeclarationIsShownInItsUnit() {
        assertEquals("2.5\u00A0oz", metric.of(0.9921875, Units.OUNCE).inline());
        assertEquals(OptionalDouble.empty(), answer("free").step());
    }

    @ParameterizedTest
    @CsvSource({
        "37.4, EUR, 37.40 EUR",
        "0.158228, EUR, 0.15823 EUR",
        "0.125, EUR, 0.125 EUR",
        "1234567.891, EUR, 1234567.89 EUR",
        "1500, JPY, 1500 JPY",
        "12.3456, JPY, 12.346 JPY",
        "0.5, KWD, 0.500 KWD",
    })
    void moneyInAFormulaKeepsWhatTheNextLineIsWorkedWith(String amount, String currency, String told) {
        ValueText values = new ValueText(Locale.ENGLISH, UnitSystem.METRIC);
        Money money = Money.of(new BigDecimal(amount), Units.currency(currency));
        assertEquals(told.replace(' ', '\u00A0'), values.moneyInFormula(money));
    }
}
