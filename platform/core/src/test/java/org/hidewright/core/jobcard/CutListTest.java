package org.hidewright.core.jobcard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.function.UnaryOperator;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.document.Block;
import org.hidewright.api.document.Document;
import org.hidewright.api.document.Figure;
import org.hidewright.api.document.Section;
import org.hidewright.api.document.Table;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Part;
import org.hidewright.api.measure.Length;
import org.hidewright.core.bench.Plate;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.work.WorkedProject;
import org.junit.jupiter.api.Test;

class CutListTest {
    private static Part part(String id, UnaryOperator<Part.Builder> with) {
        return with.apply(Part.of(id, "The " + id, Path.rectangle(Role.CUT, Point.of(10, 20), 188, 455.5)))
                .build();
    }

    private static Table of(Part... parts) {
        Item.Builder item = Item.builder();
        List.of(parts).forEach(item::part);
        return (Table)
                new CutList(Shop.ENGLISH, Shop.ENGLISH::drawn).of(item.build()).get(0);
    }

    private static List<String> head(Table table) {
        return table.columns().stream().map(Table.Column::title).toList();
    }

    private static List<String> row(Table table, int nth) {
        return table.rows().get(nth).stream()
                .map(cell -> cell.replace('\u00a0', ' '))
                .toList();
    }

    @Test
    void aPartIsListedAsLargeAsItIsCut() {
        Table table = of(
                part("back", part -> part.thickness(1.6).leather("Bridle")), part("pocket", part -> part.pieces(3, 0)));
        assertEquals(List.of("Part", "Leather", "Pieces", "Size to cut"), head(table));
        assertEquals(List.of("The back", "Bridle, 1.6 mm", "1", "188.0 mm × 455.5 mm"), row(table, 0));
        assertEquals(List.of("The pocket", "", "3", "188.0 mm × 455.5 mm"), row(table, 1));
    }

    @Test
    void whatIsLeftStandingToBeTrimmedOrSandedOffIsCutToo() {
        Table table = of(part("back", part -> part.oversize(3).sanded(0.5).pieces(1, 2)));
        assertEquals(
                List.of("Part", "Leather", "Cut as drawn", "Cut turned over", "Size to cut", "Finished size"),
                head(table));
        assertEquals(List.of("The back", "", "1", "2", "195.0 mm × 462.5 mm", "188.0 mm × 455.5 mm"), row(table, 0));
    }

    @Test
    void holesAreListedByTheirPunch() {
        Table table = of(
                part(
                        "back",
                        part -> part.hole(Hole.of("a", Point.of(60, 60), 5))
                                .hole(Hole.of("b", Point.of(60, 90), 8))
                                .hole(Hole.of("c", Point.of(90, 60), 5))
                                .cutOut(Path.rectangle(Role.INNER_CUT, Point.of(100, 200), 20, 30))
                                .cutOut(Path.from(Point.of(120.3, 62.5))
                                        .arcAround(Point.of(120, 60), -1.9 * Math.PI)
                                        .lineTo(120, 52)
                                        .closed(Role.INNER_CUT))),
                part("pocket", part -> part));
        assertEquals("Holes and windows", head(table).get(4));
        assertEquals(
                "2 × hole of 5.0 mm; 1 × hole of 8.0 mm; 1 × window of 20.0 mm × 30.0 mm; "
                        + "1 × hole of 5.0 mm with a slit to 8.0 mm from its middle",
                row(table, 0).get(4));
        assertEquals("", row(table, 1).get(4));
    }

    /** A keeper that is drawn as it is exactly; its length is answered up to the next tenth of a millimetre, its width to the next half. */
    @Calculates("loop")
    public static final class Loop implements Calculator<Loop.Asks, Loop.Gives> {
        public record Asks(
                @Asked(unit = "mm", min = "1 mm", max = "1 m", example = "75.54 mm")
                Length round) {}

        public record Gives(
                @Answered(unit = "mm", step = "0.1 mm", round = Rounding.UP)
                Length cut,

                @Answered(unit = "mm", step = "0.5 mm", round = Rounding.UP)
                Length wide,

                @Answered Item item) {}

        @Override
        public Outcome<Gives> calculate(Asks asks, Working working) {
            Path outline = Path.rectangle(Role.CUT, Point.of(0, 0), asks.round().mm(), 12.24);
            return Outcome.of(new Gives(
                    asks.round(),
                    Length.ofMm(12.24),
                    Item.builder()
                            .part(Part.of("keeper", "Keeper", outline).build())
                            .build()));
        }
    }

    /**
     * One length has one number on a page, on the job card and on the page of patterns. But what is cut is as large as it is drawn: on a
     * strip of 12.5 mm, holes drawn in the middle of 12.24 mm would stand beside it.
     */
    @Test
    void aSizeThatIsAnsweredReadsAsItsAnswerUnlessThatIsCoarserThanTheKnife() {
        WorkedProject worked = new Shop(new Loop()).work(Shop.slip("loop", "loop", Shop.json("'round': '75.54 mm'")));
        Table card = new JobCard(worked, Shop.ENGLISH)
                .document(LocalDate.of(2026, 3, 1), List.of()).sections().get(1).blocks().stream()
                        .filter(Table.class::isInstance)
                        .map(Table.class::cast)
                        .filter(table -> table.caption().equals("To cut"))
                        .findFirst()
                        .orElseThrow();
        assertEquals(List.of("Keeper", "", "1", "75.6 mm × 12.2 mm"), row(card, 0));
        Document patterns = new Patterns(worked, Shop.ENGLISH)
                .document(LocalDate.of(2026, 3, 1))
                .orElseThrow();
        Table sizes = (Table) patterns.sections().get(1).blocks().get(0);
        assertEquals(List.of("Keeper", "", "1", "0", "75.6 mm × 12.2 mm"), row(sizes, 0));
    }

    @Test
    void itStandsOnTheCardBehindTheDrawing() {
        Section section = new JobCard(
                        new Shop(new Plate()).work(Shop.slip("plate", "plate", Shop.json("'width': '80 mm'"))),
                        Shop.ENGLISH)
                .document(LocalDate.of(2026, 3, 1), List.of())
                .sections()
                .get(1);
        List<Block> blocks = section.blocks();
        int drawn = 0;
        while (!(blocks.get(drawn) instanceof Figure)) {
            drawn++;
        }
        assertTrue(
                blocks.get(drawn + 1) instanceof Table table && row(table, 0).contains("80.0 mm × 60.0 mm"),
                () -> blocks.toString());
    }
}
