package org.hidewright.bookcover;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hidewright.api.benchwork.HeldSize;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Part;
import org.hidewright.api.item.Seam;
import org.hidewright.api.measure.Length;
import org.hidewright.testkit.CalculatorRun;
import org.junit.jupiter.api.Test;

class BookCoverTest {
    private static final BookCover.Edge CUT = new BookCover.Edge.Cut();
    private static final BookCover.Edge TURNED = new BookCover.Edge.Turned(Length.ofMm(10), Length.ofMm(0.6));

    private static BookCover.Asking asked(
            double w, double h, double t, double sleeve, BookCover.Edge edge, Optional<Length> lining) {
        return new BookCover.Asking(
                new HeldSize(Length.ofMm(w), Length.ofMm(h), Length.ofMm(t)),
                Length.ofMm(3),
                sleeve,
                Length.ofMm(1.8),
                Length.ofMm(1.1),
                lining,
                edge,
                Length.ofMm(3.85));
    }

    private static Outcome<BookCover.Made> outcome(BookCover.Asking asked) {
        return new BookCover().calculate(asked, Working.NONE);
    }

    private static BookCover.Made made(BookCover.Asking asked) {
        return outcome(asked).answers().orElseThrow();
    }

    private static List<String> told(BookCover.Asking asked) {
        return outcome(asked).notices().stream()
                .map(notice -> notice.kind().key())
                .toList();
    }

    private static double reach(Part sleeve, boolean down) {
        return sleeve.stitchLines().get(0).holes().stream()
                .mapToDouble(Point::y)
                .reduce(down ? Math::min : Math::max)
                .orElseThrow();
    }

    @Test
    void booksOfTheirStandardsGreatestSizeGoIn() {
        // ID-3 of ISO/IEC 7810 (a passport, B7): 88 x 125 mm, 5 mm thick; A5 of ISO 216: 148 + 1.5 x 210 + 2 mm
        for (double[] book : new double[][] {{88, 125, 5}, {149.5, 212, 14}}) {
            BookCover.Made made = made(asked(book[0], book[1], book[2], 0.4, CUT, Optional.empty()));
            Part left = made.item().part("left").orElseThrow();
            assertTrue(reach(left, false) - reach(left, true) >= book[1] + 2.9, "between the seams above and below");
            // from seam to seam: both boards and round the back
            assertTrue(made.coverWidth().mm() - 2 * 3.5 >= 2 * book[0] + book[2]);
        }
    }

    @Test
    void theBackTakesTheThicknessAndTwoBends() {
        BookCover.Made made = made(asked(105, 148, 12, 0.43, CUT, Optional.empty()));
        assertEquals(12 + Math.PI * (0.6 + 0.9), made.spine().mm(), 1e-9);
        assertEquals(
                2 * (105 + 3.5 + 1.5) + made.spine().mm(), made.coverWidth().mm(), 1e-9);
        assertEquals(148 + 3 + 7, made.coverHeight().mm(), 1e-9);
        Part outer = made.item().part("outer").orElseThrow();
        double first = outer.folds().get(0).line().segments().get(0).start().x();
        double second = outer.folds().get(1).line().segments().get(0).start().x();
        // the folds are in the middle of their bends
        assertEquals(made.spine().mm() - Math.PI / 2 * 1.5, second - first, 1e-9);
        assertEquals(made.coverWidth().mm(), first + second, 1e-9, "in the middle");
    }

    @Test
    void bothSleevesAreSewnThroughTheCover() {
        Item item = made(asked(105, 148, 12, 0.43, CUT, Optional.empty())).item();
        assertEquals(2, item.seams().size());
        for (Seam seam : item.seams()) {
            List<Point> on = item.stitchLine(seam.lines().get(0)).orElseThrow().holes();
            List<Point> under =
                    item.stitchLine(seam.lines().get(1)).orElseThrow().holes();
            double shift = under.get(0).x() - on.get(0).x();
            for (int i = 0; i < on.size(); i++) {
                assertEquals(on.get(i).plus(shift, 0), under.get(i));
            }
        }
        assertEquals(3, item.parts().size());
    }

    @Test
    void aTurnedEdgeIsWiderAllRoundAndCoversItsCorners() {
        BookCover.Made made = made(asked(105, 148, 12, 0.43, TURNED, Optional.empty()));
        Part outer = made.item().part("outer").orElseThrow();
        Box box = outer.outline().bounds();
        assertEquals(made.coverWidth().mm() + 20, box.width(), 1e-6);
        assertEquals(made.coverHeight().mm() + 20, box.height(), 1e-6);
        assertEquals(1.5 * 0.6, Curve.of(outer.outline()).distanceTo(Point.of(0, 0)), 1e-4);
        assertEquals(2, outer.folds().size());
        assertEquals(4, outer.marks().size());
        assertTrue(made.item().operations().stream()
                .anyMatch(operation -> operation.id().equals("skive")));
    }

    @Test
    void aLiningIsShorterThanTheCover() {
        BookCover.Made made = made(asked(105, 148, 12, 0.43, CUT, Optional.of(Length.ofMm(0.6))));
        assertEquals(
                Math.PI * (1.8 + 0.6) / 2, made.liningShorter().orElseThrow().mm(), 1e-9);
        Box lining = made.item().part("lining").orElseThrow().outline().bounds();
        assertEquals(made.coverWidth().mm() - made.liningShorter().orElseThrow().mm(), lining.width(), 1e-3);
        assertEquals(made.coverHeight().mm(), lining.height(), 1e-6);
        BookCover.Made turned = made(asked(105, 148, 12, 0.43, TURNED, Optional.of(Length.ofMm(0.6))));
        assertEquals(
                turned.coverHeight().mm() - 4,
                turned.item().part("lining").orElseThrow().outline().bounds().height(),
                1e-6);
        assertEquals(
                Optional.empty(),
                made(asked(105, 148, 12, 0.43, CUT, Optional.empty())).liningShorter());
    }

    @Test
    void whatDoesNotWorkIsTold() {
        assertEquals(List.of("sleeves-meet"), told(asked(105, 148, 12, 1.02, CUT, Optional.empty())));
        assertEquals(List.of("short-sleeve", "knife"), told(asked(105, 148, 12, 0.2, CUT, Optional.empty())));
        BookCover.Edge thick = new BookCover.Edge.Turned(Length.ofMm(10), Length.ofMm(1.2));
        assertEquals(List.of("thick-turn", "knife"), told(asked(105, 148, 12, 0.43, thick, Optional.empty())));
    }

    private static List<String> working(BookCover.Asking asked) {
        return CalculatorRun.of(new BookCover(), asked)
                .working(value -> value instanceof Length length
                        ? String.format(Locale.ROOT, "%.3f", length.mm())
                        : String.valueOf(value));
    }

    @Test
    void everyAllowanceIsExplained() {
        assertEquals(
                List.of(
                        "S = t + π · (q / 3 + q / 2) | t 12.000, q 1.800 | 16.712",
                        "W = 2 · (w + m + e / 2) + S | w 105.000, m 3.500, e 3.000, S 16.712 | 236.712",
                        "H = h + e + 2 · m | h 148.000, e 3.000, m 3.500 | 158.000",
                        "d = π · (q + n) / 2 | q 1.800, n 0.600 | 3.770"),
                working(asked(105, 148, 12, 0.43, CUT, Optional.of(Length.ofMm(0.6)))));
        assertEquals(
                3, working(asked(105, 148, 12, 0.43, CUT, Optional.empty())).size());
        assertEquals(2, new BookCover().sources().size());
    }

    @Test
    void sleevesReachInByTheirShareOfTheBoard() {
        Item item = made(asked(100, 148, 12, 0.43, CUT, Optional.empty())).item();
        Part left = item.part("left").orElseThrow();
        assertEquals(43 + 3.5, left.outline().bounds().width(), 1e-9);
        Part right = item.part("right").orElseThrow();
        double round = 2 * 46.5 + 158;
        assertEquals(round, left.edges().get(0).from(), 1e-9);
        assertEquals(round + 158, left.edges().get(0).to(), 1e-9);
        List<Point> on = right.stitchLines().get(0).holes();
        assertEquals(Point.of(2.5, 3.5), on.get(0));
        assertEquals(2.5, on.get(on.size() - 1).x(), 1e-9);
        assertEquals(154.5, on.get(on.size() - 1).y(), 1e-9);
        // a thick cover has a wider margin
        BookCover.Asking thick = new BookCover.Asking(
                new HeldSize(Length.ofMm(100), Length.ofMm(148), Length.ofMm(12)),
                Length.ofMm(3),
                0.43,
                Length.ofMm(3),
                Length.ofMm(1.1),
                Optional.empty(),
                CUT,
                Length.ofMm(3.85));
        assertEquals(148 + 3 + 9, made(thick).coverHeight().mm(), 1e-9);
    }

    @Test
    void stepsAreThoseOfTheEdgeAndLining() {
        assertEquals(List.of("mouths", "glue", "stitch", "edges"), steps(CUT, Optional.empty()));
        assertEquals(List.of("mouths", "line", "glue", "stitch", "edges"), steps(CUT, Optional.of(Length.ofMm(0.6))));
        assertEquals(
                List.of("mouths", "skive", "line", "turn", "glue", "stitch"),
                steps(TURNED, Optional.of(Length.ofMm(0.6))));
        assertEquals(List.of("mouths", "skive", "turn", "glue", "stitch"), steps(TURNED, Optional.empty()));
        assertEquals(
                1.5,
                made(asked(105, 148, 12, 0.43, CUT, Optional.of(Length.ofMm(0.6))))
                        .item()
                        .part("lining")
                        .orElseThrow()
                        .oversize());
    }

    private static List<String> steps(BookCover.Edge edge, Optional<Length> lining) {
        return made(asked(105, 148, 12, 0.43, edge, lining)).item().operations().stream()
                .map(operation -> operation.id())
                .toList();
    }

    @Test
    void limitsOfWhatIsToldAreExact() {
        assertEquals(List.of("knife"), told(asked(105, 148, 12, 0.25, CUT, Optional.empty())));
        BookCover.Edge half = new BookCover.Edge.Turned(Length.ofMm(10), Length.ofMm(0.9));
        assertEquals(List.of("knife"), told(asked(105, 148, 12, 0.43, half, Optional.empty())));
        BookCover.Asking tight = new BookCover.Asking(
                new HeldSize(Length.ofMm(100), Length.ofMm(148), Length.ofMm(12)),
                Length.ofMm(1.4),
                0.43,
                Length.ofMm(1.8),
                Length.ofMm(1.1),
                Optional.empty(),
                CUT,
                Length.ofMm(3.85));
        assertEquals(List.of("tight", "knife"), told(tight));
    }
}
