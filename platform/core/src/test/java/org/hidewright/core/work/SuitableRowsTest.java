package org.hidewright.core.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.api.measure.Length;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.work.SuitableRows.Fit;
import org.hidewright.core.workshop.Shelf;
import org.hidewright.core.workshop.Stock;
import org.hidewright.core.workshop.StockLink;
import org.junit.jupiter.api.Test;

/** Which rows of a workshop are offered for a question, and in which order. An invented calculator and workshop. */
class SuitableRowsTest {
    @Calculates("belt")
    static final class Belt implements Calculator<Belt.Asks, Belt.Gives> {
        record Asks(
                @Asked(
                        unit = "mm",
                        min = "20 mm",
                        max = "70 mm",
                        usual = "25-60 mm",
                        example = "40 mm",
                        stock = "hardware.inside-width")
                Length width,

                @Asked(unit = "mm", example = "4 mm", stock = "leather.thickness")
                Length thickness,

                @Asked(unit = "mm", example = "900 mm") Length waist) {}

        record Gives(@Answered(unit = "mm") Length strap) {}

        @Override
        public Outcome<Gives> calculate(Asks asks, Working working) {
            return Outcome.of(new Gives(asks.width()));
        }
    }

    private static final Catalogue CATALOGUE = Catalogue.of("org.example", RecordCalculator.of(new Belt()));

    private static Question question(String key) {
        return CATALOGUE.find("belt").orElseThrow().calculator().declaration().questions().stream()
                .filter(question -> question.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private static SuitableRows in(String tables) {
        return new SuitableRows(Shelf.of(
                Optional.empty(),
                Stock.of(CATALOGUE::tables).with(Shop.workshop("{'workshop': 1, 'tables': {" + tables + "}}"))));
    }

    private static SuitableRows buckles(String... widths) {
        StringBuilder rows = new StringBuilder();
        for (int row = 0; row < widths.length; row++) {
            rows.append(row == 0 ? "" : ", ")
                    .append("{'id': 'b" + row + "', 'name': 'Buckle " + row + "', 'kind': 'buckle', 'inside-width': '"
                            + widths[row] + "'}");
        }
        return in("'hardware': [" + rows + "]");
    }

    private static List<String> texts(SuitableRows rows) {
        return rows.of(question("width")).stream().map(Fit::text).toList();
    }

    @Test
    void whatIsUsualComesFirstElseTheOrderOfTheWorkshopStays() {
        SuitableRows rows = buckles("65 mm", "40 mm", "22 mm", "30 mm");
        assertEquals(List.of("40 mm", "30 mm", "65 mm", "22 mm"), texts(rows));
        assertEquals(
                List.of(true, true, false, false),
                rows.of(question("width")).stream().map(Fit::usual).toList());
    }

    @Test
    void whatIsBeyondTheLimitsIsNotOffered() {
        assertEquals(List.of("20 mm", "70 mm"), texts(buckles("19.9 mm", "20 mm", "70 mm", "70.1 mm")));
    }

    @Test
    void allOfARangeLiesInsideTheLimitsAndItsMiddleInsideWhatIsUsual() {
        SuitableRows rows = buckles("60-69 mm", "58-62 mm", "66-72 mm", "18-30 mm", "23-27 mm");
        assertEquals(List.of("58-62 mm", "23-27 mm", "60-69 mm"), texts(rows));
        assertTrue(rows.of(question("width")).get(1).usual(), "25 mm is the least that is usual");
    }

    @Test
    void whatIsEmptyOrCannotBeReadIsNotOffered() {
        assertEquals(List.of("40 mm"), texts(buckles("a hand", "40 mm", "")));
    }

    @Test
    void aQuestionWithoutLimitsTakesWhateverIsThere() {
        SuitableRows rows = in("'leather': [{'id': 'calf', 'tannage': 'vegetable', 'thickness': '1.2 mm'}]");
        assertEquals(
                List.of(new Fit(new StockLink("leather", "calf", "thickness"), "calf", "1.2 mm", true)),
                rows.of(question("thickness")),
                "called by its id where it has no name");
    }

    @Test
    void aRowIsCalledByItsName() {
        assertEquals("Buckle 0", buckles("40 mm").of(question("width")).get(0).name());
    }

    @Test
    void nothingIsOfferedWhereNoColumnIsNamedOrNoWorkshopIsThere() {
        assertEquals(List.of(), buckles("40 mm").of(question("waist")));
        assertEquals(List.of(), in("").of(question("width")));
        assertEquals(
                List.of(),
                new SuitableRows(Shelf.of(Optional.empty(), Stock.of(CATALOGUE::tables))).of(question("width")));
    }
}
