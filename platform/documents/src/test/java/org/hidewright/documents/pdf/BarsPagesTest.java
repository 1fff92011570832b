package org.hidewright.documents.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.hidewright.api.document.Bars;
import org.hidewright.api.document.Document;
import org.hidewright.api.document.Section;
import org.hidewright.core.paper.Paper;
import org.hidewright.documents.pdf.TracedPaths.Traced;
import org.junit.jupiter.api.Test;

/** Bars on a page as MuPDF and poppler read them. */
class BarsPagesTest {
    private static final List<String> RECTANGLE = List.of("moveto", "lineto", "lineto", "lineto", "closepath");
    private static final double NEAR = 0.02;

    private static byte[] pdf(List<Bars.Bar> bars) {
        Document document = Document.of("Field kit", "Cost sheet")
                .dated(LocalDate.of(2026, 3, 14), "14 March 2026")
                .section(Section.of("s", "Where the money goes", Bars.of("By line", bars)))
                .build();
        return new PdfBoxWriter().write(document, Paper.A4);
    }

    private static List<Traced> drawn(byte[] pdf) {
        return TracedPaths.of(pdf, 1, Paper.A4.heightMm()).stream()
                .filter(path -> path.steps().equals(RECTANGLE))
                .toList();
    }

    private static String text(byte[] pdf) {
        return PrintedWords.of(pdf).pages().get(0).words().stream()
                .map(PrintedWords.Word::text)
                .collect(Collectors.joining(" "));
    }

    private static double width(Traced path) {
        return path.maxX() - path.minX();
    }

    @Test
    void barsAreAsLongAsTheirAmounts() {
        byte[] pdf = pdf(List.of(
                Bars.Bar.of("Leather", 40, "40.00 EUR"),
                Bars.Bar.of("Work", 100, "100.00 EUR"),
                Bars.Bar.of("Thread", 10, "10.00 EUR")));
        List<Traced> bars = drawn(pdf);
        assertEquals(3, bars.size());
        assertEquals(0.4, width(bars.get(0)) / width(bars.get(1)), 1e-3);
        assertEquals(0.1, width(bars.get(2)) / width(bars.get(1)), 1e-3);
        assertEquals(bars.get(0).minX(), bars.get(1).minX(), NEAR);
        assertTrue(width(bars.get(1)) > 80, "as long as the line lets them be: " + width(bars.get(1)));
        String words = text(pdf);
        for (String word : List.of("By line", "Leather", "Work", "Thread", "40.00 EUR", "100.00 EUR", "10.00 EUR")) {
            assertTrue(words.contains(word), word + " in " + words);
        }
    }

    @Test
    void aStretchBeginsWhereTheOneBeforeEnds() {
        List<Traced> bars = drawn(pdf(List.of(
                Bars.Bar.of("Dye", List.of(Bars.Stretch.of(0, 10), Bars.Stretch.faint(10, 40)), "10 min + 30 min"),
                Bars.Bar.of("Rub", List.of(Bars.Stretch.of(40, 50)), "10 min"))));
        assertEquals(3, bars.size());
        assertEquals(bars.get(0).maxX(), bars.get(1).minX(), NEAR);
        assertEquals(bars.get(1).maxX(), bars.get(2).minX(), NEAR);
        assertEquals(3, width(bars.get(1)) / width(bars.get(0)), 1e-2);
    }

    @Test
    void amountsOfNothingAndLongNamesStayOnThePage() {
        byte[] pdf = pdf(List.of(
                Bars.Bar.of(
                        "A name that is much longer than anybody would give to a line of a sheet, and then some",
                        0,
                        "0"),
                Bars.Bar.of("Work", 0, "nothing at all, and said at length so that it has to be parted into lines")));
        for (Traced bar : drawn(pdf)) {
            assertTrue(bar.minX() > 5 && bar.maxX() < Paper.A4.widthMm() - 5, bar.minX() + " to " + bar.maxX());
        }
        assertTrue(text(pdf).contains("then some"));
    }
}
