package org.hidewright.core.item;

import static org.hidewright.core.bench.Shop.json;
import static org.hidewright.core.bench.Shop.slip;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.hidewright.api.document.Block;
import org.hidewright.api.document.Document;
import org.hidewright.api.document.Figure;
import org.hidewright.api.document.Paragraph;
import org.hidewright.api.document.PatternSheets;
import org.hidewright.api.document.Section;
import org.hidewright.api.document.Table;
import org.hidewright.api.document.TickList;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.item.Item;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Length;
import org.hidewright.core.bench.Plate;
import org.hidewright.core.bench.Relay;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.bench.Tally;
import org.hidewright.core.jobcard.JobCardJson;
import org.hidewright.core.jobcard.Packet;
import org.hidewright.core.paper.DrawingWriter;
import org.hidewright.core.range.Spread;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;
import org.junit.jupiter.api.Test;

/** Slips take lengths, areas and counts from an item that another slip answers. */
class ItemOnABenchTest {
    private final Shop shop = new Shop(new Plate(), new Relay());

    private WorkedProject taking(String width, String questions) {
        return shop.work(
                slip("plate", "plate", json("'width': '" + width + "'")), slip("taker", "relay", json(questions)));
    }

    private static Object taken(WorkedProject worked, String question) {
        WorkedSlip slip = worked.slips().get("taker");
        return slip.questions()
                .orElseThrow(() -> new AssertionError(slip.remarks().toString()))
                .get(question)
                .orElseThrow();
    }

    private static String fact(String row, String column) {
        return "{'from': 'plate', 'answer': 'item', 'row': '" + row + "', 'column': '" + column + "'}";
    }

    @Test
    void aLengthOfAnEdgeIsTaken() {
        WorkedProject worked = taking("100 mm", "'take': " + fact("front.foot", "length"));
        assertEquals(Length.ofMm(100), taken(worked, "take"));
        assertEquals(
                "plate.item[front.foot].length",
                worked.slips().get("taker").asked().get(0).text());
    }

    @Test
    void aCountAndAnAreaAreTaken() {
        WorkedProject worked =
                taking("100 mm", "'times': " + fact("all", "count") + ", 'any': " + fact("front", "area"));
        assertEquals(1, taken(worked, "times"));
        assertEquals(Area.ofMm2(6000), taken(worked, "any"));
    }

    @Test
    void aRowOrColumnThatIsNotThereIsToldWithWhatThereIs() {
        WorkedSlip misspelt = taking("100 mm", "'take': " + fact("front.food", "length"))
                .slips()
                .get("taker");
        String told = Shop.ENGLISH.what(misspelt.remarks().get(0))
                + Shop.ENGLISH.next(misspelt.remarks().get(0));
        assertTrue(told.contains("front.foot"), told);
        WorkedSlip column = taking("100 mm", "'take': " + fact("front.foot", "wide"))
                .slips()
                .get("taker");
        String columns = Shop.ENGLISH.what(column.remarks().get(0))
                + Shop.ENGLISH.why(column.remarks().get(0))
                + Shop.ENGLISH.next(column.remarks().get(0));
        assertTrue(columns.contains("length"), columns);
        WorkedSlip without = taking("100 mm", "'take': " + fact("front.foot", "area"))
                .slips()
                .get("taker");
        assertEquals(WorkedSlip.State.REFUSED, without.state(), "an edge has no area");
    }

    @Test
    void aRangeGoesThroughTheItemIntoWhatIsTakenFromIt() {
        WorkedProject worked = taking("90-110 mm", "'take': " + fact("front.foot", "length"));
        Spread foot = worked.ranges("plate").orElseThrow().study().spreads().get("item[front.foot].length");
        assertEquals(90, foot.low());
        assertEquals(110, foot.high());
        Spread given = worked.ranges("taker").orElseThrow().study().spreads().get("give");
        assertEquals(90, given.low());
        assertEquals(110, given.high());
    }

    @Test
    void theJobCardShowsThePartsAndWhatCanBeTaken() {
        WorkedProject worked = taking("100 mm", "'take': " + fact("front.foot", "length"));
        Section section = new Packet(worked, Shop.ENGLISH)
                .documents(LocalDate.of(2026, 3, 1), List.of(), fault -> {}).get(Packet.JOB_CARD).sections().stream()
                        .filter(candidate -> candidate.id().equals("plate"))
                        .findFirst()
                        .orElseThrow();
        List<Block> blocks = section.blocks();
        Figure figure = (Figure)
                blocks.stream().filter(Figure.class::isInstance).findFirst().orElseThrow();
        assertEquals(100, figure.drawing().bounds().width(), 0.5);
        List<Table> tables = blocks.stream()
                .filter(Table.class::isInstance)
                .map(Table.class::cast)
                .toList();
        assertEquals(
                "[[Front, , 1, 100.0 mm × 60.0 mm]]",
                tables.get(0).rows().toString().replace('\u00a0', ' '),
                "what is to be cut stands first, below the drawing");
        assertEquals(
                List.of("Front", "Front, foot", "Edges: rim", "Skive the foot", "Everything together"),
                tables.get(1).rows().stream().map(row -> row.get(0)).toList(),
                "by their names, not by the ids that links use");
        assertTrue(JobCardJson.write(worked, Shop.ENGLISH, LocalDate.of(2026, 3, 1), List.of(), List.of())
                .contains("\"front.foot\""));
    }

    private static Packet packet(WorkedProject worked) {
        return new Packet(worked, Shop.ENGLISH);
    }

    private static Document patterns(WorkedProject worked) {
        return packet(worked)
                .documents(LocalDate.of(2026, 3, 1), List.of(), fault -> {
                    throw new AssertionError(fault);
                })
                .get("patterns");
    }

    @Test
    void thePatternsOfAnItemAreADocumentAndDrawings() {
        WorkedProject worked = taking("100 mm", "'take': " + fact("front.foot", "length"));
        Section section = patterns(worked).sections().get(1);
        assertEquals("plate", section.id());
        assertEquals(
                List.of(List.of("Front", "", "1", "0", "100.0 mm × 60.0 mm")),
                ((Table) section.blocks().get(0))
                        .rows().stream()
                                .map(row -> row.stream()
                                        .map(cell -> cell.replace('\u00A0', ' '))
                                        .toList())
                                .toList());
        PatternSheets sheets =
                (PatternSheets) patterns(worked).sections().get(2).blocks().get(0);
        assertEquals(
                List.of("Front"),
                sheets.patterns().stream().map(PatternSheets.Pattern::name).toList());
        assertEquals(
                "Front: sheet 2 of 6, row 1, column 2",
                sheets.tileText(sheets.patterns().get(0).name(), 2, 6, 1, 2));
        assertEquals(
                List.of("front"),
                packet(worked).drawings().get("patterns-plate").stream()
                        .map(DrawingWriter.Named::id)
                        .toList());
    }

    @Test
    void aPartThatNobodyPrintsIsToldAndStillADrawing() {
        WorkedProject worked = taking("100 m", "'take': " + fact("front.foot", "length"));
        Section section = patterns(worked).sections().get(1);
        Paragraph told = (Paragraph) section.blocks().get(1);
        assertTrue(told.text().contains("more sheets than anybody pastes together"), told.text());
        assertTrue(((PatternSheets) patterns(worked).sections().get(2).blocks().get(0))
                .patterns()
                .isEmpty());
        assertEquals(1, packet(worked).drawings().get("patterns-plate").size());
    }

    /** Two items: both lists come before the first sheet, and each pattern says of which item it is. */
    @Test
    void theListsOfSeveralItemsComeBeforeTheirSheets() {
        WorkedProject worked = shop.work(
                slip("one", "plate", json("'width': '100 mm'")), slip("two", "plate", json("'width': '80 mm'")));
        List<Section> sections = patterns(worked).sections();
        assertEquals(
                List.of("print", "one", "two", "one-sheets", "two-sheets"),
                sections.stream().map(Section::id).toList());
        List<String> labels = ((PatternSheets) sections.get(4).blocks().get(0))
                .patterns().get(0).drawing().shapes().stream()
                        .filter(Label.class::isInstance)
                        .map(label -> ((Label) label).text())
                        .toList();
        assertEquals("Front", labels.get(0));
        assertEquals("Plate “two”", labels.get(1));
    }

    @Test
    void withoutAnItemThereAreNoPatterns() {
        WorkedProject worked = shop.work(slip("taker", "relay", json("'take': '2 mm'")));
        assertEquals(null, patterns(worked));
        assertTrue(packet(worked).drawings().isEmpty());
    }

    private static WorkedSlip tally(String width, String item) {
        return new Shop(new Plate(), new Tally())
                .work(
                        slip("plate", "plate", json("'width': '" + width + "'")),
                        slip("tally", "tally", json("'item': " + item)))
                .slips()
                .get("tally");
    }

    @Test
    void aWholeItemIsTakenByALinkWithoutRowAndColumn() {
        WorkedSlip tally = tally("100 mm", "{'from': 'plate', 'answer': 'item'}");
        assertEquals(
                Length.ofMm(100),
                tally.answers().orElseThrow().get("width").orElseThrow(),
                tally.remarks().toString());
        assertEquals("plate.item", tally.asked().get(0).text());
    }

    @Test
    void aRangeGoesThroughAWholeItem() {
        WorkedProject worked = new Shop(new Plate(), new Tally())
                .work(
                        slip("plate", "plate", json("'width': '99-101 mm'")),
                        slip("tally", "tally", json("'item': {'from': 'plate', 'answer': 'item'}")));
        Spread spread = worked.ranges("tally").orElseThrow().study().spreads().get("width");
        assertEquals(99, spread.low(), 1e-9);
        assertEquals(101, spread.high(), 1e-9);
    }

    @Test
    void anItemIsNeverTyped() {
        WorkedSlip tally = tally("100 mm", "'a box'");
        assertEquals(
                List.of("notice.item-typed"),
                tally.remarks().stream().map(remark -> remark.key()).toList());
    }

    @Test
    void aLengthIsNoItem() {
        WorkedSlip tally = tally("100 mm", fact("front.foot", "length"));
        assertEquals(
                List.of("notice.link-wrong-kind"),
                tally.remarks().stream().map(remark -> remark.key()).toList());
    }

    @Test
    void theJobCardHasTheWorkToTickOff() {
        WorkedProject worked = taking("100 mm", "'take': " + fact("front.foot", "length"));
        Section card = packet(worked)
                .documents(LocalDate.of(2026, 3, 1), List.of(), fault -> {
                    throw new AssertionError(fault);
                })
                .get(Packet.JOB_CARD)
                .sections()
                .get(1);
        TickList work = card.blocks().stream()
                .filter(TickList.class::isInstance)
                .map(TickList.class::cast)
                .findFirst()
                .orElseThrow();
        assertEquals("Skive the foot", work.steps().get(0).text());
        assertEquals(
                "on Front; skiving knife; about 10 min; then at least 2 h; and within 24 h",
                work.steps().get(0).detail().replace('\u00A0', ' '));
    }

    @Test
    void handsOnTimeIsAFact() {
        WorkedProject worked = taking("100 mm", "'take': '1 mm'");
        Item item = (Item)
                worked.slips().get("plate").answers().orElseThrow().get("item").orElseThrow();
        List<Object> times = ItemFacts.rows(item).stream()
                .filter(row -> List.of("skive", "all").contains(row.rowId()))
                .map(row -> row.get("hands-on").orElseThrow())
                .toList();
        assertEquals(List.of(Duration.ofSeconds(600), Duration.ofSeconds(600)), times);
    }
}
