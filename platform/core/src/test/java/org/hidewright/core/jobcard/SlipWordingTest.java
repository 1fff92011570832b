package org.hidewright.core.jobcard;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.DimensionLine;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Shape;
import org.hidewright.api.measure.Length;
import org.hidewright.core.bench.Plate;
import org.hidewright.core.bench.Relay;
import org.hidewright.core.bench.Sampler;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.project.Link;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.AskedLine;
import org.hidewright.core.work.WorkedSlip;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

    private static final Wording INCHES = new Wording(Locale.ENGLISH, UnitSystem.INCH);

    /** What stands beside a drawn length in a slip whose cut length is 2.42 mm, shown up to the next tenth. */
    private static String drawn(double mm, Wording wording) {
        WorkedSlip slip = new Shop(new Sampler()).one("sampler", "'thickness': '1.21 mm'");
        Drawing drawing = Drawing.builder()
                .dimension(Point.of(0, 0), Point.of(mm, 0), -4, Length.ofMm(mm), 3)
                .build();
        Shape only = new SlipWording(slip, wording).drawn(drawing).shapes().get(0);
        return ((DimensionLine) only).text().replace('\u00A0', ' ');
    }

    /** Ranges ask by the place of an answer, also of one that is no table. */
    @Test
    void whatIsNoTableHasNoRowToName() {
        WorkedSlip slip = new Shop(new Relay()).one("relay", "'take': '5 mm'");
        assertEquals("second one", new SlipWording(slip, Shop.ENGLISH).rowName("give", "second-one"));
    }

    @Test
    void aDrawingSaysOfALengthWhatTheTableSays() {
        assertEquals("2.5 mm", drawn(2.42, Shop.ENGLISH));
        assertEquals("0.096 in", drawn(2.42, INCHES)); // 0.09528 upwards, as the answer
    }

    /**
     * A width of 12.24 mm is answered up to the next half millimetre: nobody cuts by a drawing of a slip. But a length that is also
     * answered to the next tenth is told so, whichever else is as long by chance.
     */
    @ParameterizedTest(name = "{0} mm round: {1}")
    @CsvSource({"75.54, 12.5 mm", "12.24, 12.3 mm"})
    void alsoOfALengthThatIsToldRoundedFar(String round, String told) {
        WorkedSlip slip = new Shop(new CutListTest.Loop()).one("loop", "'round': '" + round + " mm'");
        Drawing drawing = Drawing.builder()
                .dimension(Point.of(0, 0), Point.of(0, 12.24), -4, Length.ofMm(12.24), 3)
                .build();
        Shape only = new SlipWording(slip, Shop.ENGLISH).drawn(drawing).shapes().get(0);
        assertEquals(told, ((DimensionLine) only).text().replace('\u00A0', ' '));
    }

    @Test
    void aLengthThatIsNoAnswerIsDrawnToATenth() {
        assertEquals("7.3 mm", drawn(7.26, Shop.ENGLISH));
        assertEquals("0.286 in", drawn(7.26, INCHES));
    }

    /** A plate of 100 x 60 mm: its foot is 100 mm long, and round the plate it is 320 mm. */
    @Test
    void theLengthOfAPartIsCalledTheWayRoundIt() {
        WorkedSlip plate = new Shop(new Plate()).one("plate", "'width': '100 mm'");
        SlipWording words = new SlipWording(plate, Shop.ENGLISH);
        Answer item = plate.installed()
                .orElseThrow()
                .calculator()
                .declaration()
                .answer("item")
                .orElseThrow();
        AnswerTable table = AnswerTable.of(
                        item, plate.answers().orElseThrow().get("item").orElseThrow(), words)
                .orElseThrow();
        assertEquals(
                List.of("Length, of parts all round", "Area", "Area as cut", "Count", "Hands-on"),
                table.columns().stream().map(words::heading).toList());
        assertEquals("320.0 mm", table.rows().get(0).get(1).replace('\u00A0', ' '));
        assertEquals("Way round", words.columnLabel(new Link("plate", "item", "front", "length")));
        assertEquals("Length", words.columnLabel(new Link("plate", "item", "front.foot", "length")));
    }

    /** A calculator that tells rows apart by a count, and by a length. */
    @Calculates("batches")
    public static final class Batches implements Calculator<Batches.Asks, Batches.Gives> {
        public record Asks(
                @Asked(unit = "mm", example = "2 mm") Length each) {}

        public record Line(
                @RowId String id,
                @Answered int pieces,
                @Answered(unit = "mm") Length together) {}

        public record Gives(@Answered List<Line> lines) {}

        @Override
        public Outcome<Gives> calculate(Asks asks, Working working) {
            return Outcome.of(new Gives(List.of(
                    new Line("of-1", 1, asks.each()),
                    new Line("of-5", 5, asks.each().times(5)))));
        }
    }

    /** An id is English; a count has a label in every language. */
    @Test
    void aRowThatBeginsWithACountIsCalledByIt() {
        WorkedSlip slip = new Shop(new Batches()).one("batches", "'each': '2 mm'");
        assertEquals("«line.pieces» 5", new SlipWording(slip, Shop.ENGLISH).rowName("lines", "of-5"));
    }

    @Test
    void aTypedIdIsReadInADrawingAsItIsInTables() {
        WorkedSlip slip = new Shop(new Sampler())
                .one("sampler", "'thickness': 2, 'layers': [{'id': 'left-leg', 'thickness': 3}]");
        Drawing drawing = Drawing.builder()
                .label("left-leg", Point.of(0, 0), Anchor.TOP, 3)
                .label("other-name", Point.of(0, 9), Anchor.TOP, 3)
                .build();
        assertEquals(
                List.of("left leg", "other-name"),
                new SlipWording(slip, Shop.ENGLISH)
                        .drawn(drawing).shapes().stream()
                                .map(shape -> ((Label) shape).text())
                                .toList());
    }

    @Test
    void rowsAreCountedInWords() {
        assertEquals("none", layers(""));
        assertEquals("1 row", layers("{'thickness': 1}"));
        assertEquals("2 rows", layers("{'thickness': 1}, {'thickness': 1}"));
    }
}
