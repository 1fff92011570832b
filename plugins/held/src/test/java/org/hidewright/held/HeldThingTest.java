package org.hidewright.held;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class HeldThingTest {
    private static Outcome<HeldThing.Given> outcome(Thing thing) {
        return new HeldThing().calculate(new HeldThing.Asking(thing), Working.NONE);
    }

    private static String size(Thing thing) {
        HeldThing.Given given = outcome(thing).answers().orElseThrow();
        return tenth(given.width()) + " x " + tenth(given.height()) + " x " + tenth(given.thickness())
                + (given.round() ? " round" : "");
    }

    private static double tenth(Length length) {
        return Math.round(length.mm() * 100) / 100.0;
    }

    private static List<String> told(Thing thing) {
        return outcome(thing).notices().stream()
                .map(notice -> notice.kind().key())
                .toList();
    }

    /** Every size of the tables; each line names its source. */
    @ParameterizedTest
    @CsvFileSource(resources = "sizes.csv", numLinesToSkip = 2)
    void sizesAreThoseOfTheirTables(String table, String name, double one, double other, String source, String status) {
        double[] own = switch (table) {
            case "Paper" ->
                new double[] {Paper.valueOf(name).width(), Paper.valueOf(name).height()};
            case "Cell" ->
                new double[] {Cell.valueOf(name).diameter(), Cell.valueOf(name).height()};
            default ->
                new double[] {Coin.valueOf(name).diameter(), Coin.valueOf(name).thickness()};
        };
        assertEquals(one, own[0], source);
        assertEquals(other, own[1], source);
        assertTrue(List.of("checked", "from memory").contains(status));
    }

    @Test
    void everySizeIsInTheTables() throws IOException {
        try (BufferedReader rows = new BufferedReader(
                new InputStreamReader(HeldThingTest.class.getResourceAsStream("sizes.csv"), StandardCharsets.UTF_8))) {
            assertEquals(
                    Paper.values().length + Cell.values().length + Coin.values().length,
                    rows.lines().skip(2).count());
        }
    }

    @Test
    void cardsLieOnEachOther() {
        // ISO/IEC 7810: ID-1 is 85.60 x 53.98 mm, 0.76 mm with 0.08 mm of tolerance
        assertEquals("85.72 x 54.03 x 3.36", size(new Thing.Cards(Card.ID_1, 4)));
        assertEquals("105.1 x 74.1 x 0.84", size(new Thing.Cards(Card.ID_2, 1)));
        assertTrue(Card.ID_1.width() > 85.60 && Card.ID_1.height() > 53.98);
    }

    @Test
    void sheetsMayBeLargerThanTheirName() {
        assertEquals("106.5 x 149.5 x 8.0", size(new Thing.Sheets(Paper.A6, Length.ofMm(8))));
        assertEquals("149.5 x 212.0 x 5.0", size(new Thing.Sheets(Paper.A5, Length.ofMm(5))));
        assertEquals("299.0 x 422.0 x 1.0", size(new Thing.Sheets(Paper.A3, Length.ofMm(1))));
    }

    @Test
    void cellsLieSideBySideAndButtonsOnEachOther() {
        assertEquals("29.0 x 50.5 x 14.5", size(new Thing.Cells(Cell.R6, 2)));
        assertEquals("20.0 x 20.0 x 6.4 round", size(new Thing.Cells(Cell.CR2032, 2)));
        assertEquals(List.of("button-cells"), told(new Thing.Cells(Cell.CR2032, 2)));
        assertEquals(List.of("small-things"), told(new Thing.Cells(Cell.R6, 2)));
        assertEquals(List.of(), told(new Thing.Cells(Cell.R6, 3)));
    }

    @Test
    void coinsLieOnEachOther() {
        assertEquals("23.25 x 23.25 x 11.65 round", size(new Thing.Coins(Coin.EURO_1, 5)));
        assertEquals(List.of("small-things"), told(new Thing.Coins(Coin.EURO_1, 5)));
    }

    @Test
    void whatIsMeasuredIsAnswered() {
        Thing book = new Thing.Measured(Length.ofMm(120), Length.ofMm(180), Length.ofMm(18));
        assertEquals("120.0 x 180.0 x 18.0", size(book));
        assertEquals(List.of("own-use"), told(book));
        Thing lens = new Thing.MeasuredRound(Length.ofMm(60), Length.ofMm(14));
        assertEquals("60.0 x 60.0 x 14.0 round", size(lens));
        assertEquals(List.of("own-use"), told(lens));
    }

    /** Which source each answer is said to stand on. */
    private static String sources(Thing thing) {
        Map<String, String> said = new TreeMap<>();
        new HeldThing().calculate(new HeldThing.Asking(thing), new Working() {
            @Override
            public void step(Formula formula, Object result, Object... symbolsAndValues) {
                throw new AssertionError("nothing is worked out");
            }

            @Override
            public void source(String answer, Source source) {
                said.put(answer, source.key());
            }
        });
        return said.keySet() + " " + Set.copyOf(said.values());
    }

    @Test
    void everySizeSaysWhereItIsFrom() {
        String all = "[height, thickness, width] ";
        assertEquals(all + "[iso-7810]", sources(new Thing.Cards(Card.ID_1, 1)));
        assertEquals(all + "[iso-216]", sources(new Thing.Sheets(Paper.A6, Length.ofMm(1))));
        assertEquals(all + "[iec-60086]", sources(new Thing.Cells(Cell.R6, 1)));
        assertEquals(all + "[coins]", sources(new Thing.Coins(Coin.EURO_2, 1)));
        assertEquals(all + "[the-thing-itself]", sources(new Thing.MeasuredRound(Length.ofMm(60), Length.ofMm(14))));
    }

    @Test
    void whatGoesIntoTheCylinderOfSmallPartsIsTold() {
        // 31.7 mm across and up to 57.1 mm deep (ISO 8124-1, from memory); here: below 31.7 in two ways and 63.4 mm
        // long
        assertEquals(List.of("small-things", "own-use"), told(thing(31.6, 63.3, 31.6)));
        assertEquals(List.of("own-use"), told(thing(31.7, 63.3, 31.6)));
        assertEquals(List.of("own-use"), told(thing(31.6, 63.4, 31.6)));
        assertEquals(List.of("small-things", "own-use"), told(thing(63.3, 20, 2)), "whichever way it is turned");
        assertEquals(List.of("own-use"), told(thing(31.6, 63.3, 31.7)));
    }

    private static Thing thing(double width, double height, double thickness) {
        return new Thing.Measured(Length.ofMm(width), Length.ofMm(height), Length.ofMm(thickness));
    }

    @Test
    void theToleranceOfPaperGrowsWithItsSides() {
        // A7 74 x 105, A6 105 x 148, B6 125 x 176: 1.5 mm up to 150, 2 mm up to 600 (ISO 216, from memory)
        assertEquals("75.5 x 106.5 x 1.0", size(new Thing.Sheets(Paper.A7, Length.ofMm(1))));
        assertEquals("126.5 x 178.0 x 1.0", size(new Thing.Sheets(Paper.B6, Length.ofMm(1))));
    }
}
