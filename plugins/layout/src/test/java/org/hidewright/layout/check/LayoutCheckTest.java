package org.hidewright.layout.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.hidewright.layout.check.LayoutFault.Kind;
import org.hidewright.layout.open.FilledPanels;
import org.hidewright.layout.task.Inner;
import org.hidewright.layout.task.Laid;
import org.hidewright.layout.task.Outline;
import org.hidewright.layout.task.Piece;
import org.hidewright.layout.task.Sheet;
import org.hidewright.layout.task.Turning;
import org.hidewright.layout.task.Zone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LayoutCheckTest {
    private static final Outline SQUARE = Outline.rectangle(0, 0, 10, 10);

    private static List<FilledPanels> filledPanels() {
        return FilledPanels.all().toList();
    }

    /** Published layouts whose pieces touch everywhere (src/test/resources/open/terashima/SOURCE.md). */
    @ParameterizedTest
    @MethodSource("filledPanels")
    void aPublishedLayoutThatFillsItsPanelsCanBeCut(FilledPanels panels) {
        assertEquals(List.of(), LayoutCheck.faults(panels.pieces(), panels.sheets(), panels.layout(), 0));
    }

    /** Where pieces fill a panel exactly, none can be moved or turned without lying over another or off the panel. */
    @Test
    void thousandSpoiltLayoutsAreAllFound() {
        List<FilledPanels> all = filledPanels();
        SplittableRandom random = new SplittableRandom(10);
        for (int round = 0; round < 1000; round++) {
            FilledPanels panels = all.get(random.nextInt(all.size()));
            int piece = random.nextInt(panels.layout().size());
            Laid laid = panels.layout().get(piece);
            // from half a panel down to a billionth of a unit
            double far = 500 * Math.pow(10, -12 * random.nextDouble());
            double way = 2 * Math.PI * random.nextDouble();
            Laid moved = switch (round % 4) {
                case 0 -> new Laid(piece, laid.sheet(), 0, far * Math.cos(way), far * Math.sin(way));
                case 1 -> new Laid(piece, laid.sheet(), 0, random.nextBoolean() ? far : -far, 0);
                case 2 -> about(panels.pieces().get(piece).outline(), laid, 1e-6 + Math.PI * random.nextDouble() / 4);
                default -> new Laid(piece, otherSheet(panels, laid, random), 0, 0, 0);
            };
            List<Laid> spoilt = new ArrayList<>(panels.layout());
            spoilt.set(piece, moved);
            int number = round;
            assertFalse(
                    LayoutCheck.faults(panels.pieces(), panels.sheets(), spoilt, 0)
                            .isEmpty(),
                    () -> panels.name() + ", round " + number + ": " + moved + " was " + laid);
        }
    }

    /** Turned about its first corner. */
    private static Laid about(Outline outline, Laid laid, double angle) {
        Outline turned = outline.moved(angle, 0, 0);
        return new Laid(laid.piece(), laid.sheet(), angle, outline.x(0) - turned.x(0), outline.y(0) - turned.y(0));
    }

    private static int otherSheet(FilledPanels panels, Laid laid, SplittableRandom random) {
        int sheets = panels.sheets().size();
        return sheets == 1 ? -1 : (laid.sheet() + 1 + random.nextInt(sheets - 1)) % sheets;
    }

    @Test
    void eachFaultIsToldByItsKind() {
        Piece any = new Piece("any", SQUARE, Turning.steps(List.of(0.0, 180.0)), 3);
        Sheet hide = new Sheet(
                "hide",
                Outline.rectangle(0, 0, 100, 50),
                List.of(Outline.rectangle(40, 20, 44, 24)),
                List.of(new Zone(Outline.rectangle(60, 0, 70, 50), 1), new Zone(Outline.rectangle(80, 0, 90, 50), 2)),
                1);
        List<Piece> pieces = List.of(any, any);
        List<Sheet> sheets = List.of(hide);
        assertEquals(List.of(), faults(pieces, sheets, new Laid(0, 0, 0, 0, 0), new Laid(1, 0, 0, 10, 0)));
        assertEquals(List.of(), faults(pieces, sheets, new Laid(0, 0, 0, 80, 0), new Laid(1, 0, 0, 30, 10)));
        assertEquals(
                List.of(new LayoutFault(Kind.OVERLAP, 1, 0)),
                faults(pieces, sheets, new Laid(0, 0, 0, 0, 0), new Laid(1, 0, 0, 9, 9)));
        assertEquals(
                List.of(new LayoutFault(Kind.OFF_THE_SHEET, 0, -1)), faults(pieces, sheets, new Laid(0, 0, 0, 91, 0)));
        assertEquals(
                List.of(new LayoutFault(Kind.OVER_A_HOLE, 0, 0)), faults(pieces, sheets, new Laid(0, 0, 0, 38, 18)));
        assertEquals(
                List.of(new LayoutFault(Kind.ON_POOR_LEATHER, 0, 0)), faults(pieces, sheets, new Laid(0, 0, 0, 55, 0)));
        assertEquals(
                List.of(new LayoutFault(Kind.TURNED_WRONG, 0, -1)),
                faults(pieces, sheets, new Laid(0, 0, Math.PI / 2, 20, 0)));
        assertEquals(
                List.of(new LayoutFault(Kind.NO_SUCH_PLACE, 0, -1)),
                faults(pieces, sheets, new Laid(0, 0, 0, 0, 0), new Laid(0, 0, 0, 20, 0)));
        assertEquals(
                List.of(new LayoutFault(Kind.NO_SUCH_PLACE, 0, -1)), faults(pieces, sheets, new Laid(0, 1, 0, 0, 0)));
        assertEquals(
                List.of(new LayoutFault(Kind.NO_SUCH_PLACE, 2, -1)), faults(pieces, sheets, new Laid(2, 0, 0, 0, 0)));
        assertEquals(
                List.of(new LayoutFault(Kind.NO_SUCH_PLACE, 0, -1)),
                faults(pieces, sheets, new Laid(0, 0, 0, Double.NaN, 0)));
    }

    /** A frame 2 wide may lie on the zone, what is within it may not. */
    @Test
    void aPlaceWithinAPieceAvoidsMoreThanThePiece() {
        Outline inside = Outline.rectangle(2, 2, 8, 8);
        Piece framed = new Piece("any", SQUARE, Turning.steps(List.of(0.0, 90.0)), 0, List.of(new Inner(inside, 1)));
        Sheet sheet = new Sheet(
                "side",
                Outline.rectangle(0, 0, 100, 50),
                List.of(),
                List.of(new Zone(Outline.rectangle(50, 0, 60, 50), 0), new Zone(Outline.rectangle(70, 0, 80, 50), 1)),
                1);
        assertEquals(List.of(), faults(List.of(framed), List.of(sheet), new Laid(0, 0, 0, 42, 0)));
        assertEquals(List.of(), faults(List.of(framed), List.of(sheet), new Laid(0, 0, 0, 70, 0)));
        assertEquals(
                List.of(new LayoutFault(Kind.ON_POOR_LEATHER, 0, 0)),
                faults(List.of(framed), List.of(sheet), new Laid(0, 0, 0, 42.1, 0)));
        assertEquals(
                List.of(new LayoutFault(Kind.ON_POOR_LEATHER, 0, 0)),
                faults(List.of(framed), List.of(sheet), new Laid(0, 0, Math.PI / 2, 52.1, 10)));
    }

    @Test
    void theGapIsKeptToPiecesEdgesAndHoles() {
        Piece any = new Piece("any", SQUARE, Turning.free(), 1);
        Sheet hide = new Sheet(
                "hide", Outline.rectangle(0, 0, 100, 50), List.of(Outline.rectangle(40, 20, 44, 24)), List.of(), 1);
        List<Piece> pieces = List.of(any, any);
        List<Sheet> sheets = List.of(hide);
        assertEquals(
                List.of(),
                LayoutCheck.faults(pieces, sheets, List.of(new Laid(0, 0, 0, 2, 2), new Laid(1, 0, 0, 14, 2)), 2));
        assertEquals(
                List.of(new LayoutFault(Kind.OVERLAP, 1, 0)),
                LayoutCheck.faults(pieces, sheets, List.of(new Laid(0, 0, 0, 2, 2), new Laid(1, 0, 0, 13.9, 2)), 2));
        assertEquals(
                List.of(new LayoutFault(Kind.OFF_THE_SHEET, 0, -1)),
                LayoutCheck.faults(pieces, sheets, List.of(new Laid(0, 0, 0, 1.9, 2)), 2));
        assertEquals(
                List.of(new LayoutFault(Kind.OVER_A_HOLE, 0, 0)),
                LayoutCheck.faults(pieces, sheets, List.of(new Laid(0, 0, 0, 28.1, 15)), 2));
        // corner to corner: 6 and 8 apart are 10
        assertTrue(
                LayoutCheck.faults(pieces, sheets, List.of(new Laid(0, 0, 0, 10, 10), new Laid(1, 0, 0, 26, 28)), 10)
                        .stream()
                        .noneMatch(fault -> fault.kind() == Kind.OVERLAP));
        assertTrue(
                LayoutCheck.faults(
                                pieces, sheets, List.of(new Laid(0, 0, 0, 10, 10), new Laid(1, 0, 0, 26, 28)), 10.001)
                        .stream()
                        .anyMatch(fault -> fault.kind() == Kind.OVERLAP));
    }

    /** A hide of 40 by 20 with a bite from x 15 to 25, down to y 8. */
    @Test
    void noPieceLiesInOrAcrossABiteOfTheHide() {
        Sheet hide = Sheet.plain(
                "hide",
                new Outline(new double[] {0, 40, 40, 25, 25, 15, 15, 0}, new double[] {0, 0, 20, 20, 8, 8, 20, 20}));
        List<Piece> pieces = List.of(
                new Piece("strip", Outline.rectangle(0, 0, 30, 5), Turning.free(), 1),
                new Piece("filling", Outline.rectangle(0, 0, 10, 12), Turning.free(), 1));
        List<LayoutFault> strip = List.of(new LayoutFault(Kind.OFF_THE_SHEET, 0, -1));
        List<LayoutFault> filling = List.of(new LayoutFault(Kind.OFF_THE_SHEET, 1, -1));
        // beneath the bite, right up to it; then all four corners on leather and the middle over the bite
        assertEquals(List.of(), faults(pieces, List.of(hide), new Laid(0, 0, 0, 5, 3)));
        assertEquals(strip, faults(pieces, List.of(hide), new Laid(0, 0, 0, 5, 3.1)));
        assertEquals(strip, faults(pieces, List.of(hide), new Laid(0, 0, 0, 5, 15)));
        // beside the bite on either side, along its edge; then just what was bitten off
        assertEquals(List.of(), faults(pieces, List.of(hide), new Laid(1, 0, 0, 5, 8)));
        assertEquals(List.of(), faults(pieces, List.of(hide), new Laid(1, 0, 0, 25, 8)));
        assertEquals(filling, faults(pieces, List.of(hide), new Laid(1, 0, 0, 15, 8)));
        // wholly beside the hide, and around it
        assertEquals(filling, faults(pieces, List.of(hide), new Laid(1, 0, 0, 50, 0)));
        Piece cover = new Piece("cover", Outline.rectangle(0, 0, 42, 22), Turning.free(), 1);
        assertEquals(
                List.of(new LayoutFault(Kind.OFF_THE_SHEET, 0, -1)),
                faults(List.of(cover), List.of(hide), new Laid(0, 0, 0, -1, -1)));
    }

    @Test
    void piecesOverlapOnOneSheetOnly() {
        Piece large = new Piece("large", SQUARE, Turning.free(), 1);
        Piece small = new Piece("small", Outline.rectangle(0, 0, 2, 2), Turning.free(), 1);
        List<Piece> pieces = List.of(large, large, small);
        Sheet panel = Sheet.plain("panel", Outline.rectangle(0, 0, 100, 50));
        List<Sheet> sheets = List.of(panel, panel);
        List<LayoutFault> second = List.of(new LayoutFault(Kind.OVERLAP, 1, 0));
        List<LayoutFault> third = List.of(new LayoutFault(Kind.OVERLAP, 2, 0));
        // the same place: on one panel, on two
        assertEquals(second, faults(pieces, sheets, new Laid(0, 0, 0, 5, 5), new Laid(1, 0, 0, 5, 5)));
        assertEquals(List.of(), faults(pieces, sheets, new Laid(0, 0, 0, 5, 5), new Laid(1, 1, 0, 5, 5)));
        // the one within the other, with no edge near, and along its edges
        assertEquals(third, faults(pieces, sheets, new Laid(0, 0, 0, 5, 5), new Laid(2, 0, 0, 9, 9)));
        assertEquals(third, faults(pieces, sheets, new Laid(0, 0, 0, 5, 5), new Laid(2, 0, 0, 5, 5)));
        assertEquals(List.of(), faults(pieces, sheets, new Laid(0, 0, 0, 5, 5), new Laid(2, 0, 0, 15, 15)));
    }

    /**
     * Two L of 6 by 6, arms 2 wide, the second turned by half so that it ends at (7, 9): its arms are x 1 to 7, y 7 to 9 and x 5 to 7, y 3
     * to 9. So one lies 1 above the upright arm of the first, which ends at y 6, the other 1 above its foot, which ends at y 2.
     */
    @Test
    void piecesThatLieInOneAnotherKeepTheGap() {
        Outline angle = new Outline(new double[] {0, 6, 6, 2, 2, 0}, new double[] {0, 0, 2, 2, 6, 6});
        Piece any = new Piece("angle", angle, Turning.steps(List.of(0.0, 180.0)), 1);
        List<Piece> pieces = List.of(any, any);
        List<Sheet> sheets = List.of(Sheet.plain("panel", Outline.rectangle(-10, -10, 20, 20)));
        List<Laid> within = List.of(new Laid(0, 0, 0, 0, 0), new Laid(1, 0, Math.PI, 7, 9));
        assertEquals(List.of(), LayoutCheck.faults(pieces, sheets, within, 1));
        assertEquals(List.of(new LayoutFault(Kind.OVERLAP, 1, 0)), LayoutCheck.faults(pieces, sheets, within, 1.001));
        // moved down by 1 they touch, and beyond that they overlap
        assertEquals(List.of(), faults(pieces, sheets, new Laid(0, 0, 0, 0, 0), new Laid(1, 0, Math.PI, 7, 8)));
        assertEquals(
                List.of(new LayoutFault(Kind.OVERLAP, 1, 0)),
                faults(pieces, sheets, new Laid(0, 0, 0, 0, 0), new Laid(1, 0, Math.PI, 7, 7.9)));
    }

    @Test
    void aScarAsksForNoGapAndAllThatIsWrongIsTold() {
        Piece any = new Piece("any", SQUARE, Turning.steps(List.of(0.0)), 1);
        Sheet side = new Sheet(
                "side",
                Outline.rectangle(0, 0, 100, 50),
                List.of(),
                List.of(new Zone(Outline.rectangle(20, 0, 21, 50), 0)),
                1);
        assertEquals(List.of(), LayoutCheck.faults(List.of(any), List.of(side), List.of(new Laid(0, 0, 0, 10, 5)), 5));
        // a quarter turn about (21, 45) lays it from (11, 45) to (21, 55): turned, off the upper edge and on the scar
        assertEquals(
                List.of(
                        new LayoutFault(Kind.TURNED_WRONG, 0, -1),
                        new LayoutFault(Kind.OFF_THE_SHEET, 0, -1),
                        new LayoutFault(Kind.ON_POOR_LEATHER, 0, 0)),
                faults(List.of(any), List.of(side), new Laid(0, 0, Math.PI / 2, 21, 45)));
    }

    private static List<LayoutFault> faults(List<Piece> pieces, List<Sheet> sheets, Laid... layout) {
        return LayoutCheck.faults(pieces, sheets, List.of(layout), 0);
    }
}
