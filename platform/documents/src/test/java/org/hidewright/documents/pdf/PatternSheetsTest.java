package org.hidewright.documents.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hidewright.api.document.Document;
import org.hidewright.api.document.PatternSheets;
import org.hidewright.api.document.PatternSheets.Pattern;
import org.hidewright.api.document.Section;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.core.paper.Paper;
import org.hidewright.documents.OutsideTool;
import org.hidewright.documents.SamplePattern;
import org.hidewright.documents.pdf.TracedPaths.Traced;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Patterns on sheets as MuPDF and poppler read them. */
class PatternSheetsTest {
    private static final double NEAR = 0.02;
    private static final double CUT_WEIGHT = 0.5;
    private static final double CROSS_WEIGHT = 0.2;
    private static final String BEHIND = "squares stand pale";

    private static byte[] pdf(Paper paper, Drawing... drawings) {
        List<Pattern> patterns = new ArrayList<>();
        for (Drawing drawing : drawings) {
            patterns.add(new Pattern("Front", drawing));
        }
        Document document = Document.of("Field kit", "Patterns")
                .dated(LocalDate.of(2026, 3, 14), "14 March 2026")
                .section(Section.of(
                        "s",
                        "",
                        PatternSheets.of(
                                patterns,
                                "measure both squares",
                                BEHIND,
                                "{0}: sheet {1} of {2}, row {3}, column {4}")))
                .build();
        return new PdfBoxWriter().write(document, paper);
    }

    private static int pages(byte[] pdf) {
        return PrintedWords.of(pdf).pages().size();
    }

    private static List<Traced> weighing(List<Traced> paths, double mm) {
        return paths.stream()
                .filter(path -> Math.abs(path.lineWidth() - mm) < 1e-6)
                .toList();
    }

    private static Drawing plate(double width, double height) {
        return Drawing.of(List.of(Path.rectangle(Role.CUT, Point.of(0, 0), width, height)));
    }

    private static List<Traced> squares(List<Traced> paths, double side) {
        return paths.stream()
                .filter(path -> path.steps().equals(List.of("moveto", "lineto", "lineto", "lineto", "closepath")))
                .filter(path -> Math.abs(path.maxX() - path.minX() - side) < NEAR
                        && Math.abs(path.maxY() - path.minY() - side) < NEAR)
                .toList();
    }

    /** One of several sheets: where its crosses and its frame stand from the lower left corner of the part. */
    private record Sheet(List<double[]> crosses, double[] frame) {
        static Sheet of(byte[] pdf, int page, Paper paper) {
            List<Traced> paths = TracedPaths.of(pdf, page, paper.heightMm());
            Traced part = weighing(paths, CUT_WEIGHT).get(0);
            List<double[]> crosses = weighing(paths, CROSS_WEIGHT).stream()
                    .filter(path -> path.steps().equals(List.of("moveto", "lineto", "moveto", "lineto")))
                    .map(path -> new double[] {
                        (path.minX() + path.maxX()) / 2 - part.minX(), (path.minY() + path.maxY()) / 2 - part.minY()
                    })
                    .toList();
            Traced frame = weighing(paths, 0.12).stream()
                    .filter(path -> path.steps().size() == 5)
                    .max(Comparator.comparingDouble(path -> path.maxX() - path.minX()))
                    .orElseThrow();
            return new Sheet(crosses, new double[] {
                frame.minX() - part.minX(),
                frame.minY() - part.minY(),
                frame.maxX() - part.minX(),
                frame.maxY() - part.minY()
            });
        }

        boolean holds(double x, double y) {
            return x >= frame[0] - NEAR && x <= frame[2] + NEAR && y >= frame[1] - NEAR && y <= frame[3] + NEAR;
        }

        long sharedCrosses(Sheet other) {
            return crosses.stream()
                    .filter(one ->
                            other.crosses.stream().anyMatch(two -> Math.hypot(one[0] - two[0], one[1] - two[1]) < NEAR))
                    .count();
        }
    }

    private static List<Sheet> sheets(byte[] pdf, Paper paper) {
        List<Sheet> sheets = new ArrayList<>();
        for (int page = 2; page <= pages(pdf); page++) {
            sheets.add(Sheet.of(pdf, page, paper));
        }
        return sheets;
    }

    @ParameterizedTest
    @EnumSource(names = {"A4", "LETTER", "A3"})
    void sheetsLaidCrossOnCrossGiveThePartBack(Paper paper) {
        double width = 380;
        double height = 600;
        byte[] pdf = pdf(paper, plate(width, height));
        List<Sheet> sheets = sheets(pdf, paper);
        assertTrue(sheets.size() >= 4, "as many as " + sheets.size());
        for (Sheet sheet : sheets) {
            assertEquals(4, sheet.crosses().size());
            long neighbours = sheets.stream()
                    .filter(other -> other != sheet && sheet.sharedCrosses(other) == 2)
                    .count();
            assertTrue(neighbours >= 2, "a sheet shares two crosses with each beside, above and below it");
        }
        Traced part =
                weighing(TracedPaths.of(pdf, 2, paper.heightMm()), CUT_WEIGHT).get(0); // perhaps turned to save sheets
        assertEquals(width + height, part.maxX() - part.minX() + part.maxY() - part.minY(), NEAR);
        for (double x = 0; x <= part.maxX() - part.minX(); x += 2) {
            for (double y = 0; y <= part.maxY() - part.minY(); y += 2) {
                double px = x;
                double py = y;
                assertTrue(sheets.stream().anyMatch(sheet -> sheet.holds(px, py)), px + ", " + py + " is on no sheet");
            }
        }
    }

    @Test
    void whatIsOutsideItsFrameIsNotPrinted() {
        byte[] pdf = pdf(Paper.A4, plate(380, 600));
        for (int page = 2; page <= pages(pdf); page++) {
            PageChecks.inkInsideMargins(pdf, page);
        }
        String text = OutsideTool.text(pdf, "pdftotext", "FILE", "-");
        assertTrue(text.contains("Front: sheet 1 of "), text);
        assertTrue(text.contains(", row 2, column 1"), text);
    }

    @ParameterizedTest
    @EnumSource
    void everySheetOfEveryPaperHasBothSquares(Paper paper) {
        byte[] pdf = pdf(paper, plate(380, 600), plate(30, 8), plate(60, 60));
        for (int page = 2; page <= pages(pdf); page++) {
            List<Traced> paths = TracedPaths.of(pdf, page, paper.heightMm());
            assertEquals(1, squares(paths, 100).size(), "page " + page);
            assertEquals(1, squares(paths, 101.6).size(), "page " + page); // 4 in
        }
    }

    @Test
    void squaresStandWhereThePatternIsNotOrPaleBehindIt() {
        byte[] pdf = pdf(Paper.A4, plate(60, 120));
        List<Traced> paths = TracedPaths.of(pdf, 2, Paper.A4.heightMm());
        Traced part = weighing(paths, CUT_WEIGHT).get(0);
        Traced square = squares(paths, 101.6).get(0);
        boolean apart = square.minX() > part.maxX() + 1
                || square.maxX() < part.minX() - 1
                || square.minY() > part.maxY() + 1
                || square.maxY() < part.minY() - 1;
        assertTrue(apart, "nothing of the part crosses the squares");
        assertFalse(OutsideTool.text(pdf, "pdftotext", "FILE", "-").contains(BEHIND));

        Drawing.Builder grid = Drawing.builder();
        for (int i = 0; i <= 8; i++) {
            grid.line(Role.MARK, Point.of(0, 30 * i), Point.of(160, 30 * i));
        }
        byte[] full = pdf(Paper.A4, grid.build());
        assertTrue(OutsideTool.text(full, "pdftotext", "FILE", "-").contains(BEHIND));
        assertEquals(
                0.15,
                squares(TracedPaths.of(full, 2, Paper.A4.heightMm()), 100)
                        .get(0)
                        .lineWidth(),
                1e-6);
    }

    @Test
    void patternsThatShareASheetLieOnNoneOther() {
        byte[] pdf =
                pdf(Paper.A4, plate(80, 50), plate(80, 60), plate(80, 70), plate(160, 40), SamplePattern.drawing());
        int found = 0;
        for (int page = 2; page <= pages(pdf); page++) {
            List<Traced> parts = weighing(TracedPaths.of(pdf, page, Paper.A4.heightMm()), CUT_WEIGHT);
            found += parts.size();
            for (Traced one : parts) {
                for (Traced other : parts) {
                    boolean apart = one == other
                            || one.minX() > other.maxX()
                            || other.minX() > one.maxX()
                            || one.minY() > other.maxY()
                            || other.minY() > one.maxY();
                    assertTrue(apart);
                }
            }
        }
        assertEquals(5, found);
    }

    /** Dots of poppler at 600 to the inch: the middles of the upright sides of the square, 100.00 mm apart. */
    @Test
    void theSquareIsAHundredMillimetresInDots() {
        byte[] pdf = pdf(Paper.A4, plate(60, 40));
        Traced square =
                squares(TracedPaths.of(pdf, 2, Paper.A4.heightMm()), 100).get(0);
        byte[] picture = OutsideTool.run(pdf, "pdftoppm", "-gray", "-r", "600", "-f", "2", "-l", "2", "FILE");
        String[] head = new String(picture, 0, 40, StandardCharsets.ISO_8859_1).split("\\s", 5);
        int width = Integer.parseInt(head[1]);
        int offset = head[0].length() + head[1].length() + head[2].length() + head[3].length() + 4;
        double perMm = 600 / 25.4;
        double clear = square.minY() + 5; // below the words in it
        int row = (int) Math.round((Paper.A4.heightMm() - clear) * perMm);
        double left = middle(picture, offset + row * width, square.minX() * perMm);
        double right = middle(picture, offset + row * width, square.maxX() * perMm);
        assertEquals(100.00, (right - left) / perMm, 0.05);
    }

    /** The middle of the ink within a third of a millimetre of a place in a row. */
    private static double middle(byte[] picture, int row, double near) {
        double weight = 0;
        double sum = 0;
        for (int x = (int) near - 8; x <= near + 8; x++) {
            int ink = 255 - (picture[row + x] & 0xff);
            weight += ink;
            sum += ink * (x + 0.5);
        }
        assertTrue(weight > 0, "no ink where the square should be");
        return sum / weight;
    }
}
