package org.hidewright.documents.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;
import org.hidewright.api.document.BigAnswer;
import org.hidewright.api.document.Block;
import org.hidewright.api.document.Checks;
import org.hidewright.api.document.Checks.Check;
import org.hidewright.api.document.Document;
import org.hidewright.api.document.Figure;
import org.hidewright.api.document.NoteSpace;
import org.hidewright.api.document.Paragraph;
import org.hidewright.api.document.Section;
import org.hidewright.api.document.Severity;
import org.hidewright.api.document.Sources;
import org.hidewright.api.document.Table;
import org.hidewright.api.document.TickList;
import org.hidewright.api.document.TickList.Step;
import org.hidewright.api.document.Working;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.core.paper.Paper;
import org.hidewright.documents.OutsideTool;
import org.hidewright.documents.pdf.PrintedWords.Page;
import org.hidewright.documents.pdf.PrintedWords.Word;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Documents made to break a page. */
class HardPagesTest {
    private static final String ENDLESS = "Riemenschlaufenlochabstandsmessvorrichtung".repeat(12);

    private static Document.Builder document() {
        return Document.of("Field kit", "Trial")
                .dated(LocalDate.of(2026, 3, 14), "14.03.2026")
                .pageText("Seite {0} von {1}")
                .language(Locale.GERMAN);
    }

    private static Document of(Block... blocks) {
        return document().section(Section.of("s", "Teil", blocks)).build();
    }

    private static PrintedWords held(Document document, Paper paper) {
        return PageChecks.hold(document, paper, new PdfBoxWriter().write(document, paper));
    }

    private static Table longTable(String name, int rows) {
        Table.Builder table =
                Table.builder().column(name + "-Loch").numbers("Maß").column("Bemerkung");
        IntStream.rangeClosed(1, rows)
                .forEach(i -> table.row(
                        name + "a" + i, "12.5", "erste Zeile " + name + "b" + i + "\nzweite Zeile " + name + "c" + i));
        return table.build();
    }

    @ParameterizedTest
    @EnumSource(names = {"A4", "LETTER"})
    void aLongTableRepeatsItsHeadingsAndKeepsEachRowWhole(Paper paper) {
        PrintedWords words = held(of(longTable("X", 90), longTable("Y", 90)), paper);
        assertTrue(words.pages().size() >= 10, "pages: " + words.pages().size());
        int rows = 0;
        for (Page page : words.pages()) {
            List<String> texts = page.words().stream().map(Word::text).toList();
            for (String table : List.of("X", "Y")) {
                List<String> begun =
                        texts.stream().filter(t -> t.matches(table + "a\\d+")).toList();
                assertEquals(begun.isEmpty() ? 0 : 1, Collections.frequency(texts, table + "-Loch"), "headings");
                for (String row : begun) {
                    assertTrue(texts.contains(row.replace('a', 'b')) && texts.contains(row.replace('a', 'c')), row);
                    rows++;
                }
            }
        }
        assertEquals(180, rows);
    }

    @ParameterizedTest
    @EnumSource(names = {"A4", "LETTER"})
    void aHeadingIsNeverTheLastThingOnAPage(Paper paper) {
        Set<Integer> counts = new HashSet<>();
        for (int before = 29; before < 46; before++) {
            Document document = document()
                    .section(Section.of(
                            "a", "", Paragraph.of("Zeile\n".repeat(before).strip())))
                    .section(Section.of("b", "Überschrift", TickList.of(Step.of("Erstes"), Step.of("Zweites"))))
                    .build();
            List<Page> pages =
                    PrintedWords.of(new PdfBoxWriter().write(document, paper)).pages();
            counts.add(pages.size());
            for (Page page : pages) {
                List<String> texts = page.words().stream().map(Word::text).toList();
                assertEquals(texts.contains("Überschrift"), texts.contains("Erstes"), "after " + before + " lines");
            }
        }
        assertEquals(Set.of(1, 2), counts, "the page must end somewhere between");
    }

    @ParameterizedTest
    @EnumSource(names = {"A4", "LETTER"})
    void noLineOfAParagraphStandsAloneOnAPage(Paper paper) {
        Set<Integer> counts = new HashSet<>();
        for (int before = 29; before < 46; before++) {
            Document document =
                    of(Paragraph.of("Zeile\n".repeat(before).strip()), Paragraph.of("eins\nzwei\ndrei\nvier\nfünf"));
            List<Page> pages =
                    PrintedWords.of(new PdfBoxWriter().write(document, paper)).pages();
            counts.add(pages.size());
            for (Page page : pages) {
                List<String> texts = page.words().stream().map(Word::text).toList();
                assertEquals(texts.contains("eins"), texts.contains("zwei"));
                assertEquals(texts.contains("vier"), texts.contains("fünf"));
            }
        }
        assertEquals(Set.of(1, 2), counts, "the page must end somewhere between");
    }

    @ParameterizedTest
    @EnumSource(names = {"A4", "LETTER"})
    void wordsWithoutEndAreBrokenEverywhere(Paper paper) {
        Document document = Document.of(ENDLESS, ENDLESS)
                .meta(ENDLESS)
                .dated(LocalDate.of(2026, 3, 14), "14." + "März".repeat(30))
                .pageText("Seitennummernangabe".repeat(5) + "{0}/{1}")
                .section(Section.of(
                        "s",
                        ENDLESS,
                        BigAnswer.of(ENDLESS, "1".repeat(90), ENDLESS)
                                .fromTo(ENDLESS)
                                .because(ENDLESS),
                        BigAnswer.of("b", "1", ENDLESS),
                        Paragraph.of(ENDLESS),
                        Paragraph.quiet(ENDLESS),
                        Table.builder()
                                .column(ENDLESS)
                                .numbers(ENDLESS)
                                .row(ENDLESS, "9".repeat(200))
                                .build(),
                        Checks.of(Check.of(Severity.STOP, ENDLESS, ENDLESS, ENDLESS, ENDLESS)),
                        TickList.of(Step.of(ENDLESS, ENDLESS)),
                        Working.of(Working.Line.of(ENDLESS, ENDLESS, ENDLESS, ENDLESS, ENDLESS)),
                        Sources.of(Sources.Entry.of(ENDLESS, ENDLESS)),
                        NoteSpace.of(ENDLESS, 3)))
                .build();
        String printed = String.join(
                "",
                PrintedWords.of(new PdfBoxWriter().write(document, paper)).pages().get(0).words().stream()
                        .map(Word::text)
                        .toList());
        assertTrue(printed.contains("14.März"));
        insideAndApart(document, paper);
    }

    /** With heads of many lines the fixed body of {@link PageChecks} does not hold; boxes and ink must. */
    private static void insideAndApart(Document document, Paper paper) {
        byte[] pdf = new PdfBoxWriter().write(document, paper);
        PrintedWords words = PrintedWords.of(pdf);
        for (int page = 1; page <= words.pages().size(); page++) {
            PageChecks.tidy(paper, pdf, words.pages().get(page - 1), page);
        }
    }

    @ParameterizedTest
    @EnumSource(names = {"A4", "LETTER"})
    void aTableOfManyColumnsIsPartedAndEveryPartBeginsWithTheFirstColumn(Paper paper) {
        Table.Builder table = Table.builder().column("Größe");
        List<String> cells = new ArrayList<>(List.of("Zeile1"));
        for (int i = 1; i <= 60; i++) {
            table.numbers("Spalte" + i);
            cells.add("Z" + i);
        }
        PrintedWords words = held(of(table.row(cells).build()), paper);
        List<String> texts = words.pages().stream()
                .flatMap(page -> page.words().stream())
                .map(Word::text)
                .toList();
        int parts = Collections.frequency(texts, "Größe");
        assertTrue(parts > 1);
        assertEquals(parts, Collections.frequency(texts, "Zeile1"));
        assertEquals(60, texts.stream().filter(text -> text.matches("Z\\d+")).count());
    }

    @ParameterizedTest
    @EnumSource(names = {"A4", "LETTER"})
    void aCellHigherThanAPageGoesOnOverleaf(Paper paper) {
        String tall = String.join(
                "\n", IntStream.range(0, 200).mapToObj(i -> "Zeile" + i).toList());
        Document document = of(
                Table.builder().column("Kopf").column("Text").row("a", tall).build(),
                Checks.of(Check.of(Severity.CAUTION, "Vorsicht", tall, tall, tall)),
                NoteSpace.of("Platz", 90));
        assertTrue(held(document, paper).pages().size() > 10);
    }

    @Test
    void lettersTheTypefaceLacksAreShownAsBoxes() {
        Document document = of(Paragraph.of("Gurt 革 \ud83d\udc5c \u05d0\u0000\u0007 \u200fEnde e\u0301 \u2300 5"));
        byte[] pdf = new PdfBoxWriter().write(document, Paper.A4);
        String text = OutsideTool.text(pdf, "pdftotext", "-raw", "FILE", "-");
        assertTrue(text.contains("Gurt □ □ □ Ende é Ø 5"), text);
    }

    @Test
    void theSignsOfFormulasArePrintedAsTheyAre() {
        String signs = "α β γ θ π ρ μ σ Δ ∂ ∑ · × ÷ ± ≥ ≤ ≠ ≈ √ ½ ¼ ¾ ″ ′ ² ³ ° − – — „ß“ ‚ ’ Ä Ö Ü ä ö ü € →";
        Document document = of(Paragraph.of(signs), BigAnswer.of(signs, signs, signs));
        String text = OutsideTool.text(new PdfBoxWriter().write(document, Paper.A4), "pdftotext", "-raw", "FILE", "-");
        assertFalse(text.contains("□"), text);
        assertTrue(text.replace("\n", " ").contains(signs), text);
    }

    @ParameterizedTest
    @EnumSource(names = {"A4", "LETTER"})
    void textsThatFindNoPlaceInADrawingStandBelowIt(Paper paper) {
        Drawing.Builder drawing = Drawing.builder().rectangle(Role.CUT, Point.of(0, 0), 2000, 18);
        for (int i = 0; i < 60; i++) {
            drawing.label("Beschriftung" + i, Point.of(3 * i, 9), Anchor.BOTTOM, 2.5);
        }
        drawing.label("sehr lang ".repeat(40).strip(), Point.of(1000, 9), Anchor.CENTRE, 2.5);
        drawing.dimension(Point.of(500, 0), Point.of(503, 0), -8, "eine schmale Stelle, drei Millimeter", 2.5);
        held(of(Figure.fitted(drawing.build(), "Viel Text")), paper);
    }

    @ParameterizedTest
    @EnumSource(names = {"A4", "LETTER"})
    void aDocumentWithoutSectionsIsOnePage(Paper paper) {
        assertEquals(1, held(document().build(), paper).pages().size());
    }

    @Test
    void theLineAboveAListStandsOnThePageOfItsFirstStep() {
        Set<Integer> pages = new HashSet<>();
        for (int rows = 20; rows < 45; rows++) {
            Table.Builder table = Table.builder().column("Zeile");
            IntStream.rangeClosed(1, rows).forEach(row -> table.row("z" + row));
            Block list = rows % 2 == 0
                    ? TickList.of(Step.of("Schritt-eins"), Step.of("Schritt-zwei"))
                    : Checks.of(Check.of(Severity.CHECK, "Achtung", "Schritt-eins", "weil", "also"));
            PrintedWords words = held(of(table.build(), Paragraph.of("Zuerst"), list), Paper.A4);
            for (int page = 0; page < words.pages().size(); page++) {
                List<String> texts =
                        words.pages().get(page).words().stream().map(Word::text).toList();
                assertEquals(texts.contains("Zuerst"), texts.contains("Schritt-eins"), rows + " rows");
                if (texts.contains("Zuerst")) {
                    pages.add(page);
                }
            }
        }
        assertEquals(Set.of(0, 1), pages, "the line crosses the foot of the page");
    }

    /** Sixty strips on a hide, whose names have no room: under one another their list alone would be longer than the page. */
    @ParameterizedTest
    @EnumSource(names = {"A4", "LETTER"})
    void manyNamesUnderAFigureStandInColumns(Paper paper) {
        Drawing.Builder drawing = Drawing.builder();
        for (int i = 1; i <= 60; i++) {
            drawing.line(Role.CUT, Point.of(20 * i, 0), Point.of(20 * i, 500))
                    .label("Riemen-" + i, Point.of(20 * i, 250), Anchor.CENTRE, 2.2);
        }
        PrintedWords words = held(of(Figure.fitted(drawing.build(), "Haut"), Paragraph.of("Danach")), paper);
        assertEquals(1, words.pages().size());
        List<String> texts =
                words.pages().get(0).words().stream().map(Word::text).toList();
        IntStream.rangeClosed(1, 60).forEach(i -> assertTrue(texts.contains("Riemen-" + i), "Riemen-" + i));
    }

    @Test
    void roomForNotesStandsOnThePageOfTheSourcesAboveIt() {
        Set<Integer> pages = new HashSet<>();
        for (int rows = 20; rows < 45; rows++) {
            Table.Builder table = Table.builder().column("Zeile");
            IntStream.rangeClosed(1, rows).forEach(row -> table.row("z" + row));
            Sources sources = Sources.of(
                    List.of(Sources.Entry.of("Norm", "Quelle-eins"), Sources.Entry.of("Brauch", "Quelle-zwei")));
            PrintedWords words = held(of(table.build(), sources, NoteSpace.of("Notizplatz", 2)), Paper.A4);
            for (Page page : words.pages()) {
                List<String> texts = page.words().stream().map(Word::text).toList();
                assertEquals(texts.contains("Notizplatz"), texts.contains("Quelle-eins"), rows + " rows");
            }
            pages.add(words.pages().size());
        }
        assertEquals(Set.of(1, 2), pages, "the notes cross the foot of the page");
    }
}
