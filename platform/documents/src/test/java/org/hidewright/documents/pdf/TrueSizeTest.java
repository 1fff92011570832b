package org.hidewright.documents.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.hidewright.api.document.Document;
import org.hidewright.api.document.Figure;
import org.hidewright.api.document.Section;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.core.paper.Paper;
import org.hidewright.documents.OutsideTool;
import org.hidewright.documents.pdf.TracedPaths.Traced;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Coordinates on paper against coordinates in the drawing; 0.05 mm is a quarter of the finest line a knife follows. */
class TrueSizeTest {
    private static final double NEAR = 0.05;
    private static final double CUT_WEIGHT = 0.5;

    private static byte[] pdf(Paper paper, Figure... figures) {
        Document document = Document.of("Field kit", "Trial")
                .dated(LocalDate.of(2026, 3, 14), "14 March 2026")
                .section(Section.of("s", "Patterns", figures))
                .build();
        return new PdfBoxWriter().write(document, paper);
    }

    private static Figure trueSize(Drawing drawing) {
        return Figure.trueSize(drawing, "caption", "true size: measure both squares", "smaller than life");
    }

    /** The one path inked as an outer edge; every other place is measured from its lower left corner. */
    private static Traced cut(List<Traced> paths) {
        List<Traced> cuts = paths.stream()
                .filter(path -> Math.abs(path.lineWidth() - CUT_WEIGHT) < 1e-6)
                .toList();
        assertEquals(1, cuts.size());
        return cuts.get(0);
    }

    private static void stands(List<Traced> paths, Traced datum, double x, double y) {
        boolean found = paths.stream()
                .flatMap(path -> path.points().stream())
                .anyMatch(p -> Math.hypot(p[0] - datum.minX() - x, p[1] - datum.minY() - y) <= NEAR);
        assertTrue(found, () -> "nothing is drawn at " + x + ", " + y);
    }

    /** What is drawn on the last page: a large figure does not stand under the title. */
    private static List<Traced> trace(byte[] pdf, Paper paper) {
        return TracedPaths.of(pdf, PrintedWords.of(pdf).pages().size(), paper.heightMm());
    }

    @ParameterizedTest
    @EnumSource(names = {"A4", "LETTER"})
    void everyKindOfLineStandsWhereItWasDrawn(Paper paper) {
        Drawing drawing = Drawing.builder()
                .rectangle(Role.CUT, Point.of(-20, -10), 150, 60)
                .hole(Point.of(0, 0), 5)
                .add(Circle.of(Role.HARDWARE, Point.of(100, 20), 30))
                .add(Path.from(Point.of(40, 0))
                        .arcAround(Point.of(40, 20), Math.PI / 2)
                        .open(Role.STITCH))
                .add(Path.from(Point.of(0, 10))
                        .cubicTo(Point.of(10, 45), Point.of(30, -5), Point.of(38, 33.3))
                        .open(Role.MARK))
                .label("corner", Point.of(-20, -10), Anchor.TOP_LEFT, 2.5)
                .dimension(Point.of(-20, -10), Point.of(130, -10), -10, "150 mm", 2.5)
                .build();
        List<Traced> paths = trace(pdf(paper, trueSize(drawing)), paper);
        Traced edge = cut(paths);
        assertEquals(150, edge.maxX() - edge.minX(), NEAR);
        assertEquals(60, edge.maxY() - edge.minY(), NEAR);
        for (double[] place : new double[][] {
            {22.5, 10},
            {17.5, 10},
            {20, 12.5},
            {20, 7.5}, // the hole: right, left, top, bottom
            {135, 30},
            {105, 30},
            {120, 45},
            {120, 15}, // the bar
            {60, 10},
            {80, 30},
            {60 + 20 * Math.sin(Math.PI / 4), 30 - 20 * Math.cos(Math.PI / 4)}, // the arc
            {20, 20},
            {30, 55},
            {50, 5},
            {58, 43.3} // the cubic curve with its control points
        }) {
            stands(paths, edge, place[0], place[1]);
        }
    }

    /** Along the drawn curve, between the points that are written: its distance from the centre is the radius. */
    @Test
    void anArcIsRoundBetweenItsPoints() {
        double radius = 75;
        Path arc = Path.from(Point.of(radius, 0))
                .arcAround(Point.of(0, 0), Math.PI)
                .open(Role.CUT);
        List<Traced> paths = trace(pdf(Paper.A4, trueSize(Drawing.of(List.of(arc)))), Paper.A4);
        Traced drawn = cut(paths);
        double cx = (drawn.minX() + drawn.maxX()) / 2;
        double cy = drawn.points().get(0)[1];
        List<double[]> p = drawn.points();
        assertEquals(13, p.size(), "four curves");
        for (int curve = 0; curve + 3 < p.size(); curve += 3) {
            for (double t = 0; t <= 1; t += 0.05) {
                double u = 1 - t;
                double[] at = new double[2];
                for (int axis = 0; axis < 2; axis++) {
                    at[axis] = u * u * u * p.get(curve)[axis]
                            + 3 * u * u * t * p.get(curve + 1)[axis]
                            + 3 * u * t * t * p.get(curve + 2)[axis]
                            + t * t * t * p.get(curve + 3)[axis];
                }
                assertEquals(radius, Math.hypot(at[0] - cx, at[1] - cy), 0.001);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(names = {"A4", "LETTER"})
    void aTrueSizePageHasOnePairOfCheckSquares(Paper paper) {
        Drawing small =
                Drawing.builder().rectangle(Role.CUT, Point.of(0, 0), 30, 8).build();
        byte[] pdf = pdf(paper, trueSize(small), trueSize(small));
        List<Traced> paths = trace(pdf, paper);
        assertEquals(1, squares(paths, 100));
        assertEquals(1, squares(paths, 101.6)); // 4 in
        String text = OutsideTool.text(pdf, "pdftotext", "FILE", "-");
        assertEquals(2, text.split("measure both squares", -1).length, text);
    }

    private static long squares(List<Traced> paths, double side) {
        return paths.stream()
                .filter(path -> path.steps().equals(List.of("moveto", "lineto", "lineto", "lineto", "closepath")))
                .filter(path -> Math.abs(path.maxX() - path.minX() - side) < NEAR)
                .filter(path -> Math.abs(path.maxY() - path.minY() - side) < NEAR)
                .count();
    }

    @ParameterizedTest
    @EnumSource(names = {"A4", "LETTER"})
    void whatIsTooWideForThePageIsTurnedWithTheSquaresBesideIt(Paper paper) {
        Drawing wide = Drawing.builder()
                .rectangle(Role.CUT, Point.of(0, 0), 195, 20)
                .hole(Point.of(180, 5), 4)
                .dimension(Point.of(0, 20), Point.of(180, 20), 6, "180 mm", 2.5)
                .build();
        byte[] pdf = pdf(paper, trueSize(wide));
        List<Traced> paths = trace(pdf, paper);
        Traced edge = cut(paths);
        assertEquals(20, edge.maxX() - edge.minX(), NEAR);
        assertEquals(195, edge.maxY() - edge.minY(), NEAR);
        stands(paths, edge, 15, 182); // the upper edge is now on the left: 20 - 5 across, 180 + 2 up
        assertEquals(1, squares(paths, 100));
        List<PrintedWords.Page> pages = PrintedWords.of(pdf).pages();
        PageChecks.inkInsideMargins(pdf, pages.size());
        PageChecks.nothingOverlaps(pages.get(pages.size() - 1), pages.size());
    }

    @ParameterizedTest
    @EnumSource(names = {"A4", "LETTER"})
    void whatIsLargerThanThePageSaysThatItIsReducedAndHasNoSquares(Paper paper) {
        Drawing large =
                Drawing.builder().rectangle(Role.CUT, Point.of(0, 0), 300, 300).build();
        byte[] pdf = pdf(paper, trueSize(large));
        List<Traced> paths = trace(pdf, paper);
        Traced edge = cut(paths);
        assertEquals(150, edge.maxX() - edge.minX(), NEAR);
        assertEquals(0, squares(paths, 100));
        String text = OutsideTool.text(pdf, "pdftotext", "FILE", "-");
        assertTrue(text.contains("smaller than life") && text.replace(" ", "").contains("1:2"), text);
        assertFalse(text.contains("measure both squares"), text);
    }
}
