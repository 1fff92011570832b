package org.hidewright.core.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.document.Bars;
import org.hidewright.api.document.BigAnswer;
import org.hidewright.api.document.Block;
import org.hidewright.api.document.Checks;
import org.hidewright.api.document.Figure;
import org.hidewright.api.document.NoteSpace;
import org.hidewright.api.document.Paragraph;
import org.hidewright.api.document.PatternSheets;
import org.hidewright.api.document.Section;
import org.hidewright.api.document.Severity;
import org.hidewright.api.document.Sources;
import org.hidewright.api.document.Table;
import org.hidewright.api.document.TickList;
import org.hidewright.api.document.Working;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.DimensionLine;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.drawing.Shape;
import org.hidewright.api.measure.Length;
import org.hidewright.core.catalogue.BundleFault;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class GivenSectionsTest {
    private static final Point HERE = Point.of(10, 10);

    private static Section with(Block... blocks) {
        return Section.of("org.example.list", "List", blocks);
    }

    private static Phrase fault(List<?> given) {
        return (Phrase)
                assertThrows(BundleFault.class, () -> GivenSections.of(given)).words();
    }

    private static Phrase fault(Block block) {
        return fault(List.of(with(block)));
    }

    private static void taken(Block block) {
        List<Section> given = List.of(with(block));
        assertEquals(given, GivenSections.of(given));
    }

    private static Drawing drawing(Shape... shapes) {
        return Drawing.of(List.of(shapes));
    }

    private static Drawing square(double side) {
        return drawing(Path.rectangle(Role.CUT, Point.of(0, 0), side, side));
    }

    private static Drawing saying(String text) {
        return drawing(Label.of(text, HERE, Anchor.CENTRE, 3));
    }

    private static PatternSheets sheets(String trueSize, String behind, String tile, String name, Drawing drawing) {
        return PatternSheets.of(List.of(new PatternSheets.Pattern(name, drawing)), trueSize, behind, tile);
    }

    /** A kind of block by its texts. */
    private record Kind(String name, int texts, Function<String[], Block> of) {}

    private static final List<Kind> KINDS = List.of(
            new Kind("paragraph", 1, text -> Paragraph.of(text[0])),
            new Kind(
                    "large answer",
                    5,
                    text -> BigAnswer.of(text[0], text[1], text[2])
                            .fromTo(text[3])
                            .because(text[4])),
            new Kind(
                    "table",
                    3,
                    text -> Table.builder()
                            .caption(text[0])
                            .column("First")
                            .column(text[1])
                            .row("1", text[2])
                            .build()),
            new Kind("bars", 3, text -> Bars.of(text[0], List.of(Bars.Bar.of(text[1], 2, text[2])))),
            new Kind("working", 5, text -> Working.of(Working.Line.of(text[0], text[1], text[2], text[3], text[4]))),
            new Kind(
                    "checks",
                    4,
                    text -> Checks.of(Checks.Check.of(Severity.CAUTION, text[0], text[1], text[2], text[3]))),
            new Kind("sources", 2, text -> Sources.of(Sources.Entry.of(text[0], text[1]))),
            new Kind("list to tick", 2, text -> TickList.of(TickList.Step.of(text[0], text[1]))),
            new Kind("room for notes", 1, text -> NoteSpace.of(text[0], 3)),
            new Kind("figure at true size", 3, text -> Figure.trueSize(square(5), text[0], text[1], text[2])),
            new Kind("words of a figure", 1, text -> Figure.fitted(saying(text[0]), "F")),
            new Kind(
                    "measure of a figure",
                    1,
                    text -> Figure.fitted(drawing(DimensionLine.of(HERE, Point.of(30, 10), 4, text[0], 3)), "F")),
            new Kind("pattern", 4, text -> sheets(text[0], text[1], text[2], text[3], square(5))));

    @TestFactory
    Stream<DynamicTest> noTextIsTooLong() {
        return KINDS.stream()
                .flatMap(kind -> Stream.iterate(0, at -> at < kind.texts(), at -> at + 1)
                        .map(at -> dynamicTest(kind.name() + ", text " + (at + 1), () -> {
                            String[] texts = new String[kind.texts()];
                            Arrays.fill(texts, "a");
                            texts[at] = "a".repeat(Sayable.LONGEST_TEXT - 20);
                            taken(kind.of().apply(texts));
                            texts[at] = "a".repeat(Sayable.LONGEST_TEXT + 1);
                            assertEquals(
                                    "nonsense-section-text",
                                    keyOfText(fault(kind.of().apply(texts))));
                        })));
    }

    /** Words of a drawing are looked at as those of answers are, too. */
    private static String keyOfText(Phrase fault) {
        return fault.key().equals("nonsense-long-words") ? "nonsense-section-text" : fault.key();
    }

    @Test
    void aTextMayBeAsLongAsCanBeShown() {
        taken(Paragraph.of("a".repeat(Sayable.LONGEST_TEXT)));
        assertEquals(
                Phrase.of("nonsense-section-text", Sayable.LONGEST_TEXT + 1, Sayable.LONGEST_TEXT),
                fault(Paragraph.of("a".repeat(Sayable.LONGEST_TEXT + 1))));
        assertEquals(
                "nonsense-section-text",
                fault(List.of(Section.of("a", "t".repeat(Sayable.LONGEST_TEXT + 1))))
                        .key());
    }

    @Test
    void allTextsTogetherMayBeAsLongAsCanBeShown() {
        Block half = Paragraph.of("a".repeat(Sayable.LONGEST_TEXT));
        int blocks = GivenSections.MOST_CHARACTERS / Sayable.LONGEST_TEXT;
        List<Block> most = Collections.nCopies(blocks - 1, half);
        List<Section> given = List.of(
                Section.of("a", "", most), Section.of("", "", Paragraph.of("a".repeat(Sayable.LONGEST_TEXT - 1))));
        assertEquals(given, GivenSections.of(given));
        List<Section> more = new ArrayList<>(given);
        more.add(Section.of("", "b"));
        assertEquals(Phrase.of("nonsense-section-characters", GivenSections.MOST_CHARACTERS), fault(more));
    }

    @TestFactory
    Stream<DynamicTest> thereAreNoMoreLinesThanCanBeShown() {
        record Lines(String name, IntFunction<Block> of) {}
        return Stream.of(
                        new Lines("table", many -> {
                            Table.Builder table = Table.builder().column("A");
                            for (int row = 0; row < many; row++) {
                                table.row("1");
                            }
                            return table.build();
                        }),
                        new Lines("bars", many -> Bars.of("", Collections.nCopies(many / 2, Bars.Bar.of("", 1, "")))),
                        new Lines(
                                "working",
                                many -> Working.of(Collections.nCopies(many, Working.Line.of("", "", "", "", "")))),
                        new Lines(
                                "checks",
                                many -> Checks.of(
                                        Collections.nCopies(many, Checks.Check.of(Severity.CAUTION, "", "", "", "")))),
                        new Lines("sources", many -> Sources.of(Collections.nCopies(many, Sources.Entry.of("", "")))),
                        new Lines("list to tick", many -> TickList.of(Collections.nCopies(many, TickList.Step.of("")))),
                        new Lines("room for notes", many -> NoteSpace.of("", many)))
                .map(kind -> dynamicTest(kind.name(), () -> {
                    int rest = GivenSections.MOST_LINES - 2; // the section is one, and so is the block
                    taken(kind.of().apply(rest));
                    assertEquals(
                            Phrase.of("nonsense-section-lines", GivenSections.MOST_LINES),
                            fault(kind.of().apply(rest + 2)));
                }));
    }

    @Test
    void sectionsAndBlocksAreLinesToo() {
        List<Section> most = Collections.nCopies(GivenSections.MOST_LINES / 2, Section.of("a", "", Paragraph.of("")));
        assertEquals(most, GivenSections.of(most));
        List<Section> more = new ArrayList<>(most);
        more.add(Section.of("b", ""));
        assertEquals("nonsense-section-lines", fault(more).key());
    }

    @Test
    void aFigureCountsAsManyLines() {
        Block figure = Figure.fitted(square(5), "");
        List<Block> most = Collections.nCopies(19, figure);
        GivenSections.of(List.of(with(most.toArray(Block[]::new))));
        List<Block> more = Collections.nCopies(20, figure);
        assertEquals(
                "nonsense-section-lines",
                fault(List.of(with(more.toArray(Block[]::new)))).key());
    }

    @Test
    void aTableHasNoMoreColumnsThanCanBeShown() {
        Table.Builder table = Table.builder();
        for (int column = 0; column < GivenSections.MOST_COLUMNS; column++) {
            table.column("A");
        }
        taken(table.build());
        assertEquals(
                Phrase.of("nonsense-section-columns", GivenSections.MOST_COLUMNS + 1, GivenSections.MOST_COLUMNS),
                fault(table.column("A").build()));
    }

    @Test
    void aPatternIsNoLargerThanSomebodyPrints() {
        taken(sheets("", "", "", "Floor", square(2000)));
        assertEquals(
                Phrase.of("nonsense-section-pattern", "Floor", 4.0), fault(sheets("", "", "", "Floor", square(2001))));
        taken(sheets("", "", "", "Strap", drawing(Path.rectangle(Role.CUT, Point.of(0, 0), 40_000, 50))));
    }

    @Test
    void drawingsAreSuchAsCanBeLaidOut() {
        Shape dot = Path.line(Role.CUT, HERE, Point.of(11, 10));
        taken(Figure.fitted(Drawing.of(Collections.nCopies(Drawable.MOST_SHAPES, dot)), "Dots"));
        assertEquals(
                Phrase.of("nonsense-shapes", "Dots", Drawable.MOST_SHAPES + 1, Drawable.MOST_SHAPES),
                fault(Figure.fitted(Drawing.of(Collections.nCopies(Drawable.MOST_SHAPES + 1, dot)), "Dots")));
        Shape word = Label.of("a", HERE, Anchor.CENTRE, 3);
        taken(Figure.fitted(Drawing.of(Collections.nCopies(Drawable.MOST_TEXTS, word)), "Words"));
        assertEquals(
                Phrase.of("nonsense-labels", "Words", Drawable.MOST_TEXTS + 1, Drawable.MOST_TEXTS),
                fault(Figure.fitted(Drawing.of(Collections.nCopies(Drawable.MOST_TEXTS + 1, word)), "Words")));
        Shape measure = DimensionLine.of(HERE, Point.of(20, 10), 4, "a", 3);
        assertEquals(
                "nonsense-labels",
                fault(Figure.fitted(Drawing.of(Collections.nCopies(Drawable.MOST_TEXTS + 1, measure)), "Measures"))
                        .key());
        assertEquals(
                Phrase.of("nonsense-letters", "Large", 1000.0),
                fault(Figure.fitted(drawing(Label.of("a", HERE, Anchor.CENTRE, 1001)), "Large")));
        assertEquals(
                "nonsense-letters",
                fault(Figure.fitted(drawing(DimensionLine.of(HERE, Point.of(20, 10), 4, "a", 1001)), "Large"))
                        .key());
        for (Point far :
                List.of(Point.of(1e6 + 1, 0), Point.of(-1e6 - 1, 0), Point.of(0, 1e6 + 1), Point.of(0, -1e6 - 1))) {
            assertEquals(
                    Phrase.of("nonsense-far", "Far", 1000.0),
                    fault(Figure.fitted(drawing(Path.line(Role.CUT, Point.of(0, 0), far)), "Far")));
        }
        taken(Figure.fitted(drawing(Path.line(Role.CUT, Point.of(0, 0), Point.of(1e6, -1e6))), "Far"));
    }

    @Test
    void wordsOfADrawingAreReadyToPrint() {
        assertEquals(
                Phrase.of("nonsense-section-words", "F"),
                fault(Figure.fitted(drawing(Label.of(Phrase.of("a.key"), HERE, Anchor.CENTRE, 3)), "F")));
        assertEquals(
                Phrase.of("nonsense-section-words", "F"),
                fault(Figure.fitted(drawing(DimensionLine.of(HERE, Point.of(20, 10), 4, Length.ofMm(10), 3)), "F")));
    }

    @Test
    void whatStandsApartCanNameAFile() {
        for (String id : List.of("org.example.list", "list", "a.long-list-2", "org.example.x.kit")) {
            List<Section> given = List.of(Section.of(id, "A").apart());
            assertEquals(given, GivenSections.of(given), id);
        }
        for (String id : List.of("org.example.", "a/b", "org.example.Long", "list-", "-list", "", "a b")) {
            assertEquals(
                    Phrase.of("nonsense-section-apart", id),
                    fault(List.of(Section.of(id, "A").apart())));
            assertEquals(1, GivenSections.of(List.of(Section.of(id, "A"))).size(), "in a card any id does: " + id);
        }
    }

    @Test
    void whatIsNoSectionIsNone() {
        assertEquals(Phrase.of("nonsense-section-none"), fault((List<?>) null));
        assertEquals(Phrase.of("nonsense-section", "null"), fault(Collections.singletonList(null)));
        assertEquals(Phrase.of("nonsense-section", "java.lang.String"), fault(List.of("a section")));
    }
}
