package org.hidewright.stitching;

import static org.hidewright.stitching.Sewn.answers;
import static org.hidewright.stitching.Sewn.mm;
import static org.hidewright.stitching.Sewn.plates;
import static org.hidewright.stitching.Sewn.shown;
import static org.hidewright.stitching.Sewn.told;
import static org.hidewright.stitching.Sewn.working;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.hidewright.stitching.ThreadLength.ThreadKind;
import org.junit.jupiter.api.Test;

class ThreadLengthTest {
    private final ThreadLength thread = new ThreadLength();

    private static ThreadLength.Sewn sewn(Seamed seam, double longest, ThreadKind kind) {
        return new ThreadLength.Sewn(seam, mm(200), 3, mm(longest), kind);
    }

    private static Seamed measured(double length, double pitch, double stack) {
        return new Seamed.Measured(mm(length), mm(pitch), mm(stack));
    }

    private static List<String> cuts(ThreadLength.Cut cut) {
        return cut.cuts().stream()
                .map(piece -> piece.stitches() + " stitches " + shown(piece.cut()))
                .toList();
    }

    /** 100 stitches of 4 mm through 4 mm: 16 mm each, two tails of 200 and three backstitches of 16. */
    @Test
    void aSeamTakesItsStitchesTailsAndBackstitches() {
        ThreadLength.Sewn asked = sewn(measured(400, 4, 4), 2000, ThreadKind.PLANT);
        ThreadLength.Cut cut = answers(thread, asked);
        assertEquals("2048", shown(cut.thread()));
        assertEquals(4, cut.ratio(), 1e-12);
        assertEquals(100, cut.stitches());
        assertEquals(1, cut.pieces());
        assertEquals("joining-row", cut.row().key());
        assertEquals("1400", shown(cut.habitLeast()));
        assertEquals("1600", shown(cut.habitMost()));
        assertEquals(
                List.of(
                        "R = 2 · (1 + T / p) | T 4, p 4 | 4",
                        "C = R · L + 2 · e + b · 2 · (p + T) | R 4, L 400, e 200, b 3, p 4, T 4 | 2048"),
                working(thread, asked));
        assertEquals(List.of("ends-glued at thread []"), told(thread, asked), "four times is just what it takes");
        assertEquals(
                List.of("habit-short at seam [1600, 860]", "ends-glued at thread []"),
                told(thread, sewn(measured(400, 4, 6), 2000, ThreadKind.PLANT)));
    }

    @Test
    void whereTheHabitSufficesNothingIsSaidOfIt() {
        ThreadLength.Sewn asked = sewn(measured(1900, 5, 1.2), 2000, ThreadKind.SYNTHETIC);
        assertEquals(List.of("ends-melted at thread []"), told(thread, asked));
    }

    @Test
    void aLongSeamIsSewnInPiecesAsEvenAsCanBe() {
        ThreadLength.Sewn asked = sewn(measured(4400, 4, 4), 2000, ThreadKind.SYNTHETIC);
        ThreadLength.Cut cut = answers(thread, asked);
        assertEquals(3, cut.pieces());
        assertEquals(List.of("367 stitches 6320", "367 stitches 6320", "366 stitches 6304"), cuts(cut));
        assertEquals("18944", shown(cut.thread()));
        assertTrue(told(thread, asked).contains("thread-joins at longest-sewn [2, 2000]"));
    }

    /** As few pieces as sew all stitches: one fewer would have to sew more than the longest stretch. */
    @Test
    void thereAreNoMorePiecesThanNeeded() {
        for (int stitches = 1; stitches < 700; stitches += 7) {
            for (double longest : new double[] {300, 411, 2000}) {
                ThreadLength.Cut cut = answers(thread, sewn(measured(stitches * 3.0, 3, 4), longest, ThreadKind.PLANT));
                int most = cut.cuts().stream()
                        .mapToInt(ThreadPiece::stitches)
                        .max()
                        .orElseThrow();
                int sum = cut.cuts().stream().mapToInt(ThreadPiece::stitches).sum();
                assertEquals(stitches, sum);
                assertTrue(most * 3 <= longest);
                assertTrue(cut.pieces() == 1 || (cut.pieces() - 1) * Math.floor(longest / 3) < stitches);
            }
        }
    }

    @Test
    void aStitchLongerThanAnyPieceIsRefused() {
        assertEquals(
                List.of("one-stitch-too-long at longest-sewn [15, 10]"),
                told(thread, sewn(measured(400, 15, 4), 10, ThreadKind.PLANT)));
    }

    @Test
    void aSeamOfAnItemBringsItsLengthHolesAndStack() {
        ThreadLength.Cut side = answers(thread, sewn(ofItem("side", Optional.of(1.5), null), 2000, ThreadKind.PLANT));
        assertEquals(4, side.stitches());
        assertEquals(2 * (1 + 3.5 / 5), side.ratio(), 1e-12);
        assertEquals("joining-row", side.row().key());
        ThreadLength.Cut row = answers(thread, sewn(ofItem("row", Optional.of(1.5), null), 2000, ThreadKind.PLANT));
        assertEquals("decorative-row", row.row().key());
        assertEquals(2 * (1 + 2.0 / 5), row.ratio(), 1e-12);
        ThreadLength.Cut typed = answers(thread, sewn(ofItem("side", Optional.empty(), 6.0), 2000, ThreadKind.PLANT));
        assertEquals(2 * (1 + 6.0 / 5), typed.ratio(), 1e-12);
    }

    private static Seamed ofItem(String seam, Optional<Double> backThickness, Double stack) {
        return new Seamed.OfItem(
                plates(backThickness), seam, Optional.ofNullable(stack).map(Sewn::mm));
    }

    @Test
    void whatTheItemDoesNotSayIsAskedFor() {
        assertEquals(
                List.of("no-such-seam at seam [hem, plain, row, side]"),
                told(thread, sewn(ofItem("hem", Optional.of(1.5), null), 2000, ThreadKind.PLANT)));
        assertEquals(
                List.of("seam-without-holes at seam [plain]"),
                told(thread, sewn(ofItem("plain", Optional.of(1.5), null), 2000, ThreadKind.PLANT)));
        assertEquals(
                List.of("seam-without-stack at seam [side, Plate back]"),
                told(thread, sewn(ofItem("side", Optional.empty(), null), 2000, ThreadKind.PLANT)));
    }
}
