package org.hidewright.fasteners;

import static org.hidewright.fasteners.Fitted.PLAIN;
import static org.hidewright.fasteners.Fitted.between;
import static org.hidewright.fasteners.Fitted.lengths;
import static org.hidewright.fasteners.Fitted.mm;
import static org.hidewright.fasteners.Fitted.punches;
import static org.hidewright.fasteners.Fitted.shank;
import static org.hidewright.fasteners.Fitted.stack;
import static org.hidewright.fasteners.Fitted.working;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a maker can follow with a pocket calculator: each line’s numbers, put into its formula, give its result. */
class WorkingTest {
    private static String text(List<String> lines) {
        return String.join("\n", lines) + "\n";
    }

    @Test
    void aSolidRivetCutByMachineInFirmLeather() {
        assertEquals(
                """
                h = d + c | d 3, c 0.2 | 3.2
                a = d - s | d 3, s 0 | 3
                b = d + C | d 3, C 0.4 | 3.4
                z = h - k | h 3.2, k 0.2 | 3
                e = max(m · h, D / 2, l) | m 3, h 3.2, D 9, l 6 | 9.6
                p = max(3 · d, D) | d 3, D 9 | 9
                hole by iso-273
                L = T + a | T 6, a 2.8 | 8.8
                post by post-habit
                post-from by post-habit
                post-to by post-habit
                c = l - (t + a) | l 12, t 5.5, a 2.8 | 3.7
                """,
                text(working(
                        new Rivet(),
                        new Rivet.Riveted(
                                between(5.5, 6),
                                new RivetKind.Solid(mm(0.8), mm(2)),
                                shank(3, 12, 9),
                                Optional.empty(),
                                Temper.FIRM,
                                new HoleMade.MachineCut(mm(0.2)),
                                new Use(false, false, true)))));
    }

    @Test
    void aTubularRivetInSoftLeather() {
        assertEquals(
                """
                h = d | d 4 | 4
                a = d - s | d 4, s 0.3 | 3.7
                b = d + C | d 4, C 0.5 | 4.5
                e = max(m · h, D / 2, l) | m 2, h 4, D 8, l 0 | 8
                p = max(3 · d, D) | d 4, D 8 | 12
                hole by hole-habit
                L = T + a | T 4.5, a 2 | 6.5
                M = t + b | t 4, b 2.8 | 6.8
                post by roll-over
                post-from by roll-over
                post-to by roll-over
                """,
                text(working(
                        new Rivet(),
                        new Rivet.Riveted(
                                between(4, 4.5),
                                new RivetKind.Tubular(),
                                shank(4, 6.6, 8),
                                Optional.empty(),
                                Temper.SOFT,
                                punches(),
                                PLAIN))));
    }

    @Test
    void aSnapTellsBothHalves() {
        List<String> lines = working(
                new Snap(),
                new Snap.Halves(
                        stack(2),
                        shank(4, 4, 12),
                        between(3, 3.4),
                        shank(4, 4, 10),
                        Optional.of(lengths(5)),
                        Temper.MEDIUM,
                        punches(4),
                        PLAIN));
        assertEquals(
                List.of(
                        "L = T + a | T 2, a 1.5 | 3.5",
                        "M = t + b | t 2, b 2.5 | 4.5",
                        "L = T + a | T 3.4, a 1.5 | 4.9",
                        "M = t + b | t 3, b 2.5 | 5.5"),
                lines.stream()
                        .filter(line -> line.startsWith("L") || line.startsWith("M"))
                        .toList());
        assertEquals(2, lines.stream().filter(line -> line.startsWith("p = ")).count());
    }

    @Test
    void aStud() {
        assertEquals(
                """
                h = d | d 3 | 3
                a = d - s | d 3, s 0.15 | 2.85
                b = d + C | d 3, C 0.4 | 3.4
                e = max(m · h, D / 2, l) | m 2, h 3, D 6, l 0 | 6
                p = max(3 · d, D) | d 3, D 6 | 9
                h = d | d 3.5 | 3.5
                a = d - s | d 3.5, s 0.15 | 3.35
                b = d + C | d 3.5, C 0.4 | 3.9
                e = max(m · h, D / 2, l) | m 3, h 3.5, D 6, l 6 | 10.5
                p = max(3 · d, D) | d 3.5, D 6 | 10.5
                screw-hole by hole-habit
                closing-hole by hole-habit
                l = π · (D - h) / 2 | D 6, h 3.5 | 3.927
                L = T + a | T 2.4, a 1.5 | 3.9
                y = H - T | H 3, T 2.2 | 0.8
                """,
                text(working(
                        new Stud(),
                        new Stud.Closure(
                                stack(2.4),
                                between(2, 2.2),
                                new StudSizes(mm(3), Optional.of(mm(4)), mm(6), mm(3.5), mm(3)),
                                Optional.empty(),
                                mm(1.5),
                                Temper.MEDIUM,
                                punches(),
                                PLAIN))));
    }

    @Test
    void aPlainHoleSaysByWhatItIsWide() {
        assertEquals(
                List.of("hole by iso-273"),
                working(new PlainHole(), new PlainHole.Through(mm(3), Optional.empty(), Temper.FIRM, punches(), false))
                        .stream()
                        .filter(line -> line.contains(" by "))
                        .toList());
    }

    @Test
    void slotsRingsMagnetsAndRows() {
        assertEquals(
                """
                s = b + 2 · t | b 12, t 3 | 18
                w = p + e | p 3, e 1 | 4
                q = (W - w) / 2 | W 25, w 4 | 10.5
                """,
                text(working(
                        new ProngSlot(), new ProngSlot.Prong(mm(12), mm(3), mm(3), mm(25), Optional.empty(), false))));
        assertEquals(
                """
                w = W - e | W 20, e 1 | 19
                x = d / 2 + t + D / 2 | d 3, t 2.4, D 9 | 8.4
                T = 2 · t | t 2.4 | 4.8
                """,
                text(working(
                        new RingHeld(), new RingHeld.Held(new RingHeld.Ring(mm(20), mm(3)), mm(2.4), mm(9), PLAIN))));
        assertEquals(
                """
                s = p + e | p 4, e 0.5 | 4.5
                r = l - t - w | l 8, t 2, w 0.8 | 5.2
                e = D / 2 + m | D 18, m 3 | 12
                """,
                text(working(
                        new MagnetClosure(),
                        new MagnetClosure.Pronged(mm(18), mm(4), mm(9), mm(8), mm(0.8), mm(2), PLAIN))));
        assertEquals("""
                p = (L - 2 · e) / (n - 1) | L 140, e 10, n 5 | 30
                q = 3 · d | d 4 | 12
                """, text(working(new FittingRow(), new FittingRow.Row(mm(140), 5, mm(10), mm(4), mm(9)))));
    }
}
