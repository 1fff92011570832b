package org.hidewright.foldingwallet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.item.Face;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.Seam;
import org.hidewright.api.measure.Length;
import org.hidewright.testkit.CalculatorRun;
import org.junit.jupiter.api.Test;

class FoldingWalletTest {
    private static FoldingWallet.Asking asked(int pockets, double step, double noteWidth, Optional<Length> lining) {
        return new FoldingWallet.Asking(
                new FoldingWallet.Cards(Length.ofMm(85.72), Length.ofMm(54.03), Length.ofMm(0.84)),
                Length.ofMm(noteWidth),
                Length.ofMm(82),
                pockets,
                Length.ofMm(step),
                Length.ofMm(4),
                Length.ofMm(1.2),
                Length.ofMm(0.9),
                Length.ofMm(0.8),
                lining,
                Length.ofMm(3));
    }

    private static Outcome<FoldingWallet.Made> outcome(FoldingWallet.Asking asked) {
        return new FoldingWallet().calculate(asked, Working.NONE);
    }

    private static FoldingWallet.Made made(FoldingWallet.Asking asked) {
        return outcome(asked).answers().orElseThrow();
    }

    private static List<String> told(FoldingWallet.Asking asked) {
        return outcome(asked).notices().stream()
                .map(notice -> notice.kind().key())
                .toList();
    }

    @Test
    void theInnerIsShorterByAHalfTurnBetweenTheMiddles() {
        FoldingWallet.Made plain = made(asked(3, 12, 160, Optional.empty()));
        assertEquals(Math.PI * (0.6 + 0.45), plain.innerShorter().mm(), 1e-9);
        FoldingWallet.Made lined = made(asked(3, 12, 160, Optional.of(Length.ofMm(0.5))));
        assertEquals(Math.PI * (0.6 + 0.5 + 0.45), lined.innerShorter().mm(), 1e-9);
        Item item = lined.item();
        double outer = width(item, "outer");
        assertEquals(lined.innerShorter().mm(), outer - width(item, "inner"), 1e-9);
        assertEquals(Math.PI * (1.2 + 0.5) / 2, outer - width(item, "lining"), 1e-3);
    }

    private static double width(Item item, String part) {
        return item.part(part).orElseThrow().outline().bounds().width();
    }

    @Test
    void notesAndCardsOfTheirGreatestSizeGoIn() {
        // longest euro note: 160 x 82 mm (European Central Bank); ID-1 of ISO/IEC 7810 at its largest
        Item item = made(asked(3, 12, 160, Optional.empty())).item();
        List<Point> left =
                item.stitchLine(new OnPart("inner", "left-rim")).orElseThrow().holes();
        List<Point> right =
                item.stitchLine(new OnPart("inner", "right-rim")).orElseThrow().holes();
        assertTrue(right.get(right.size() - 1).x() - left.get(0).x() >= 160 + 4);
        double bottom = item.stitchLine(new OnPart("inner", "bottom-rim"))
                .orElseThrow()
                .holes()
                .get(5)
                .y();
        assertTrue(made(asked(3, 12, 160, Optional.empty())).height().mm() - bottom >= 82);
        List<Point> pocket =
                item.stitchLine(new OnPart("left-front", "rim")).orElseThrow().holes();
        double between = pocket.get(pocket.size() - 1).x() - pocket.get(0).x();
        assertEquals(85.72 + 0.84 + 4, between, 1e-6);
    }

    @Test
    void everySeamHasTheSameHolesOnEveryLayer() {
        Item item = made(asked(4, 11, 160, Optional.of(Length.ofMm(0.5)))).item();
        for (Seam seam : item.seams()) {
            assertEquals(
                    1,
                    seam.lines().stream()
                            .map(on -> item.stitchLine(on).orElseThrow().holes().size())
                            .distinct()
                            .count(),
                    seam.id());
        }
        assertEquals("[outer.bottom-rim, lining.bottom-rim, inner.bottom-rim]", lines(item, "bottom-rim"));
        List<Point> outer =
                item.stitchLine(new OnPart("outer", "left-rim")).orElseThrow().holes();
        List<Point> inner =
                item.stitchLine(new OnPart("inner", "left-rim")).orElseThrow().holes();
        for (int i = 0; i < outer.size(); i++) {
            assertEquals(outer.get(i).x(), inner.get(i).x(), 1e-4, "the sides lie on each other");
            assertEquals(outer.get(i).y(), inner.get(i).y(), 1e-4);
        }
    }

    private static String lines(Item item, String seam) {
        return item.seams().stream()
                .filter(one -> one.id().equals(seam))
                .findFirst()
                .orElseThrow()
                .lines()
                .toString();
    }

    @Test
    void pocketBottomsDoNotPileUp() {
        Item item = made(asked(4, 12, 160, Optional.empty())).item();
        double[] bottoms = new double[3];
        for (int nth = 1; nth <= 3; nth++) {
            bottoms[nth - 1] = item.stitchLine(new OnPart("inner", "left-" + nth + "-bottom"))
                    .orElseThrow()
                    .holes()
                    .get(0)
                    .y();
        }
        assertEquals(12, bottoms[0] - bottoms[1], 1e-9);
        assertEquals(12, bottoms[1] - bottoms[2], 1e-9);
        Box left = item.part("left-1").orElseThrow().outline().bounds();
        assertTrue(2 * (left.width() + 6.5) < width(item, "inner"), "and the fold stays free of pockets");
    }

    @Test
    void whatDoesNotWorkIsTold() {
        assertEquals(List.of("step-too-large"), told(asked(3, 28, 160, Optional.empty())));
        assertEquals(List.of("step-too-small"), told(asked(3, 7, 160, Optional.empty())));
        assertEquals(List.of("knife"), told(asked(3, 12, 160, Optional.empty())));
        assertEquals(List.of("thick-wallet", "knife"), told(asked(6, 12, 160, Optional.empty())));
    }

    private static List<String> working(FoldingWallet.Asking asked) {
        return CalculatorRun.of(new FoldingWallet(), asked)
                .working(value -> value instanceof Length length
                        ? String.format(Locale.ROOT, "%.3f", length.mm())
                        : String.valueOf(value));
    }

    @Test
    void everyAllowanceIsExplained() {
        assertEquals(
                List.of(
                        "d = π · (q / 2 + n + i / 2) | q 1.200, n 0.500, i 0.900 | 4.869",
                        "F = 2 · (q + n + i) + 2 · z · (k + c) + v | q 1.200, n 0.500, i 0.900, z 3, k 0.800, c 0.840, v 2.000 | 17.040"),
                working(asked(3, 12, 160, Optional.of(Length.ofMm(0.5)))));
    }

    @Test
    void itIsAsLargeAsCardsOrNotesNeed() {
        FoldingWallet.Made cards = made(asked(3, 12, 160, Optional.empty()));
        double stack = 85.72 + 0.84 + 4 + 7;
        double inner = 2 * (stack + 3.5 + 3) + 6;
        assertEquals(inner, width(cards.item(), "inner"), 1e-9);
        assertEquals(inner + cards.innerShorter().mm(), cards.outerWidth().mm(), 1e-9);
        assertEquals(cards.outerWidth().mm() / 2, cards.closedWidth().mm(), 1e-9);
        // the cards need 3.5 + 0.42 + 54.03 + 24 and the rim below and 2 mm above; the notes 82 + 0.5 + 3.5 - 6 + 4
        double high = 3.5 + 0.42 + 54.03 + 24 + 6.5 + 2;
        assertEquals(high + 6, cards.height().mm(), 1e-9);
        FoldingWallet.Made notes = made(asked(1, 12, 260, Optional.empty()));
        assertEquals(260 + 1 + 4 + 7, width(notes.item(), "inner"), 1e-9);
        assertEquals(82 + 0.5 + 3.5 - 6 + 4 + 6, notes.height().mm(), 1e-9);
    }

    @Test
    void itFoldsInTheMiddleRoundWhatIsInside() {
        Item item = made(asked(3, 12, 160, Optional.of(Length.ofMm(0.5)))).item();
        for (String part : List.of("outer", "inner")) {
            assertEquals(
                    width(item, part) / 2,
                    item.part(part)
                            .orElseThrow()
                            .folds()
                            .get(0)
                            .line()
                            .segments()
                            .get(0)
                            .start()
                            .x(),
                    1e-9);
        }
        assertEquals(0.9 + 0.5, item.part("outer").orElseThrow().folds().get(0).insideRadius(), 1e-9);
        assertEquals(Face.FLESH, item.part("inner").orElseThrow().folds().get(0).outside());
        assertEquals(
                List.of("mouths", "pockets-on", "line", "close", "stitch", "edges"),
                item.operations().stream().map(operation -> operation.id()).toList());
        double left = item.stitchLine(new OnPart("inner", "left-front-rim"))
                .orElseThrow()
                .holes()
                .get(0)
                .x();
        List<Point> right = item.stitchLine(new OnPart("inner", "right-front-rim"))
                .orElseThrow()
                .holes();
        assertEquals(width(item, "inner"), left + right.get(right.size() - 1).x(), 1e-6, "alike on both sides");
    }

    @Test
    void theRunsOfTheRimEndWhereItsCornersEnd() {
        Item item = made(asked(3, 12, 160, Optional.empty())).item();
        List<Point> left =
                item.stitchLine(new OnPart("outer", "left-rim")).orElseThrow().holes();
        List<Point> bottom =
                item.stitchLine(new OnPart("outer", "bottom-rim")).orElseThrow().holes();
        assertEquals(Point.of(6, 3.5).x(), left.get(left.size() - 1).x(), 1e-4);
        assertEquals(3.5, left.get(left.size() - 1).y(), 1e-4);
        assertEquals(0, left.get(left.size() - 1).distanceTo(bottom.get(0)), 1e-4, "one hole is in both");
        double inner = item.part("inner").orElseThrow().outline().bounds().height();
        assertEquals(inner - 2.5, left.get(0).y(), 1e-4);
    }

    @Test
    void limitsOfWhatIsToldAreExact() {
        assertEquals(List.of("knife"), told(asked(3, 27, 160, Optional.empty())));
        assertEquals(List.of("knife"), told(asked(3, 8, 160, Optional.empty())));
        assertTrue(told(new FoldingWallet.Asking(
                        new FoldingWallet.Cards(Length.ofMm(85.72), Length.ofMm(54.03), Length.ofMm(0.84)),
                        Length.ofMm(160),
                        Length.ofMm(82),
                        3,
                        Length.ofMm(12),
                        Length.ofMm(1.9),
                        Length.ofMm(1.2),
                        Length.ofMm(0.9),
                        Length.ofMm(0.8),
                        Optional.empty(),
                        Length.ofMm(3)))
                .contains("tight"));
    }
}
