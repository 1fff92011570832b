package org.hidewright.core.work;

import static org.hidewright.core.bench.Shop.json;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.api.measure.Length;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.workshop.Workshop;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is told of a cell that no question which takes its column calls usual. Invented calculators. */
class UsualCellsTest {
    /** A strap through a ring. */
    @Calculates("ring-strap")
    static final class RingStrap implements Calculator<RingStrap.Asks, RingStrap.Gives> {
        record Ring(
                @Asked(unit = "mm", usual = "10-40 mm", example = "20 mm", stock = "hardware.inside-width")
                Length width,

                @Asked(unit = "mm", example = "3 mm", stock = "hardware.bar-diameter")
                Length bar) {}

        record Asks(@Asked Ring ring) {}

        record Gives(@Answered(unit = "mm") Length strap) {}

        @Override
        public Outcome<Gives> calculate(Asks asks, Working working) {
            return Outcome.of(new Gives(asks.ring().width()));
        }
    }

    /** A belt through a buckle. */
    @Calculates("belt")
    static final class Belt implements Calculator<Belt.Asks, Belt.Gives> {
        record Asks(
                @Asked(unit = "mm", usual = "25-60 mm", example = "40 mm", stock = "hardware.inside-width")
                Length width,

                @Asked(unit = "mm", usual = "3-5 mm", example = "4 mm", stock = "leather.thickness")
                Length thickness) {}

        record Gives(@Answered(unit = "mm") Length strap) {}

        @Override
        public Outcome<Gives> calculate(Asks asks, Working working) {
            return Outcome.of(new Gives(asks.width()));
        }
    }

    private static final Catalogue CATALOGUE =
            Catalogue.of("org.example", RecordCalculator.of(new RingStrap()), RecordCalculator.of(new Belt()));

    private static List<String> told(String tables, UsualCells usual) {
        Workshop workshop = Shop.workshop("{'workshop': 1, 'tables': {" + tables + "}}");
        Wording wording = new Wording(Locale.ENGLISH, UnitSystem.METRIC);
        return CATALOGUE.tables().all().stream()
                .flatMap(table -> workshop.rows(table.id()).stream()
                        .flatMap(row -> table.columns().stream()
                                .flatMap(column ->
                                        StockCheck.cell(row, column, Optional.empty(), usual).remarks().stream())))
                .map(remark -> wording.what(remark).replace('\u00A0', ' '))
                .toList();
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                "'inside-width': '12 mm'|",
                "'inside-width': '60 mm'|",
                "'inside-width': '8 mm'|Where it is offered, 10 mm to 60 mm is usual, not 8 mm.",
                "'inside-width': '66 mm'|Where it is offered, 10 mm to 60 mm is usual, not 66 mm.",
                "'inside-width': '3 in'|Where it is offered, 10 mm to 60 mm is usual, not 76.2 mm.",
                "'inside-width': '900 mm'|900 mm is above the most possible, 200 mm.",
                "'bar-diameter': '19 mm'|",
            })
    void whatIsUsualForNoQuestionIsTold(String cell, String said) {
        String row = "'hardware': [{'id': 'a', 'name': 'A', 'kind': 'ring', " + cell + "}]";
        assertEquals(said == null ? List.of() : List.of(said), told(row, UsualCells.of(CATALOGUE)));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"2 mm, 0", "7 mm, 1"})
    void aColumnThatSaysItselfWhatIsUsualIsAskedAlone(String thickness, int remarks) {
        String row = "'leather': [{'id': 'a', 'name': 'A', 'tannage': 'vegetable', 'thickness': '" + thickness + "'}]";
        assertEquals(remarks, told(row, UsualCells.of(CATALOGUE)).size(), json(row));
        assertEquals(remarks, told(row, UsualCells.NONE).size(), json(row));
    }
}
