package org.hidewright.costing;

import static org.hidewright.costing.Worked.eur;
import static org.hidewright.costing.Worked.hours;
import static org.hidewright.costing.Worked.working;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Units;
import org.junit.jupiter.api.Test;

/** What a maker can follow with a pocket calculator: each line’s numbers, put into its formula, give its result. */
class WorkingTest {
    private static String text(List<String> lines) {
        return String.join("\n", lines) + "\n";
    }

    @Test
    void aCostSheet() {
        assertEquals(
                """
                G = N / (1 - w) | N 2 ft², w 0.2 | 2.5 ft²
                m = n · G · P / A | n 8, G 2.5 ft², P 100.00, A 20 ft² | 100.00
                T = n · t · n^(lg(q) / lg(2)) | n 8, t 2 h, q 0.8 | 8.192 h
                hands-on-together by wright-1936
                W = T · r / h | T 8.192 h, r 30.00 | 245.76
                O = o · (W + X) | o 0.1, W 245.76, X 4.80 | 25.06
                Z = (M + W + X + O) · s / (1 - s) | M 134.08, W 245.76, X 4.80, O 25.06, s 0.2 | 102.42
                C = M + W + X + E + O + Z + K | M 134.08, W 245.76, X 4.80, E 75.00, O 25.06, Z 102.42, K 12.00 | 599.12
                c = C / n | C 599.12, n 8 | 74.89
                y = r · (1 + o) / (1 - s) | r 30.00, o 0.1, s 0.2 | 41.25
                u = V / (1 - s) | V 0.16, s 0.2 | 0.20
                k = ceil(n · N / ((1 - s) · V)) | n 8, N 2.5 ft², s 0.2, V 20 ft² | 2
                k = ceil(n · N / ((1 - s) · V)) | n 8, N 2, s 0.2, V 1 | 20
                k = ceil(n · N / ((1 - s) · V)) | n 8, N 5000.0 mm, s 0.2, V 25000.0 mm | 2
                k = ceil(n · N / ((1 - s) · V)) | n 8, N 10.0 ml, s 0.2, V 250.0 ml | 1
                """,
                text(working(
                        new PieceCost(),
                        PieceCostTest.piece(
                                8,
                                new Learning.CumulativeAverage(0.8),
                                0.1,
                                0.2,
                                PieceCostTest.leather(0.2, WasteOf.BOUGHT)))));
    }

    /** Of two hours, half an hour is cutting: 8.192 h of the batch are parted like that, and W is the sum of the lines. */
    @Test
    void eachKindOfWorkInTurn() {
        PieceCost.Piece all = PieceCostTest.piece(
                8, new Learning.CumulativeAverage(0.8), 0.1, 0.2, PieceCostTest.leather(0.2, WasteOf.BOUGHT));
        assertEquals(
                """
                T = n · t · n^(lg(q) / lg(2)) | n 8, t 2 h, q 0.8 | 8.192 h
                hands-on-together by wright-1936
                W = T · r / h | T 2.048 h, r 30.00 | 61.44
                W = T · r / h | T 0 h, r 30.00 | 0.00
                W = T · r / h | T 6.144 h, r 30.00 | 184.32
                O = o · (W + X) | o 0.1, W 245.76, X 4.80 | 25.06
                """,
                text(working(new PieceCost(), PieceCostTest.working(all, PieceCostTest.PARTED))
                        .subList(2, 8)));
    }

    @Test
    void leatherByWasteOfThePiece() {
        List<String> lines = working(
                new PieceCost(),
                PieceCostTest.piece(1, new Learning.Steady(), 0, 0, PieceCostTest.leather(0.25, WasteOf.USED)));
        assertEquals("G = N · (1 + w) | N 2 ft², w 0.25 | 2.5 ft²", lines.get(0));
        assertEquals("m = n · G · P / A | n 1, G 2.5 ft², P 100.00, A 20 ft² | 12.50", lines.get(1));
    }

    @Test
    void aPrice() {
        assertEquals(
                """
                k = c / (1 - m) | c 40.00, m 0.5 | 80.00
                p = (k + F) / (1 - f · (1 + t)) | k 80.00, F 1.00, f 0.1, t 0.2 | 92.05
                x = g · t / (1 + t) | g 110.45, t 0.2 | 18.41
                y = g · f + F | g 110.45, f 0.1, F 1.00 | 12.04
                tax by tax-fraction
                z = k - c | k 80.00, c 40.00 | 40.00
                m = (k - c) / k | k 80.00, c 40.00 | 0.5
                u = (k - c) / c | k 80.00, c 40.00 | 1
                q = p · (1 - d) | p 92.04, d 0.5 | 46.02
                S = n · g | n 3, g 110.45 | 331.35
                D = S · a | S 331.35, a 0.3 | 99.40
                c = k · (1 - m) | k 80.00, m 0.5 | 40.00
                """,
                text(working(
                        new PiecePrice(),
                        Sales.of(eur(40), new PriceBy.Margin(0.5))
                                .fees(0.1, eur(1))
                                .tax(0.2, TaxShown.INSIDE)
                                .order(3, 0.3)
                                .sale())));
        assertEquals(
                """
                k = c · (1 + u) | c 40.00, u 1.5 | 100.00
                p = (k + F) / (1 - f · (1 + t)) | k 100.00, F 0.00, f 0, t 0.2 | 100.00
                x = p · t | p 100.00, t 0.2 | 20.00
                y = g · f + F | g 120.00, f 0, F 0.00 | 0.00
                tax by tax-fraction
                z = k - c | k 100.00, c 40.00 | 60.00
                m = (k - c) / k | k 100.00, c 40.00 | 0.6
                u = (k - c) / c | k 100.00, c 40.00 | 1.5
                q = p · (1 - d) | p 100.00, d 0.5 | 50.00
                S = n · g | n 1, g 120.00 | 120.00
                D = S · a | S 120.00, a 0.5 | 60.00
                c = k · (1 - m) | k 100.00, m 0.6 | 40.00
                """,
                text(working(
                        new PiecePrice(),
                        Sales.of(eur(40), new PriceBy.Markup(1.5))
                                .tax(0.2, TaxShown.ON_TOP)
                                .sale())));
        assertEquals(
                """
                x = g · t / (1 + t) | g 50.00, t 0 | 0.00
                y = g · f + F | g 50.00, f 0, F 0.00 | 0.00
                tax by tax-fraction
                z = k - c | k 50.00, c 40.00 | 10.00
                m = (k - c) / k | k 50.00, c 40.00 | 0.2
                u = (k - c) / c | k 50.00, c 40.00 | 0.25
                q = p · (1 - d) | p 50.00, d 0.5 | 25.00
                S = n · g | n 1, g 50.00 | 50.00
                D = S · a | S 50.00, a 0.5 | 25.00
                c = k · (1 - m) | k 50.00, m 0 | 50.00
                """,
                text(working(
                        new PiecePrice(),
                        Sales.of(eur(40), new PriceBy.Target(eur(50))).sale())));
    }

    @Test
    void hoursMachinesLeatherAndBreakEven() {
        assertEquals("""
                c = h · b | h 1600 h, b 0.6 | 960 h
                r = (p + o) / c | p 24000.00, o 6000.00, c 960 h | 31.25
                """, text(working(new BenchHour(), new BenchHour.Year(eur(24000), eur(6000), hours(1600), 0.6))));
        assertEquals(
                """
                w = (P + I - S) / L | P 1000.00, I 100.00, S 300.00, L 400 h | 2.00
                r = w + R | w 2.00, R 0.75 | 2.75
                """,
                text(working(
                        new MachineHour(),
                        new MachineHour.Machine(
                                eur(1000),
                                Optional.of(eur(100)),
                                Optional.of(eur(300)),
                                hours(400),
                                Optional.of(List.of(new MachineHour.Running("power", eur(0.75))))))));
        assertEquals(
                """
                G = N / (1 - w) | N 12 ft², w 0.25 | 16 ft²
                taken by waste-share
                k = ceil(G / A) | G 16 ft², A 10 ft² | 2
                B = k · P | k 2, P 80.00 | 160.00
                V = P · G / A | P 80.00, G 16 ft², A 10 ft² | 128.00
                """,
                text(working(
                        new LeatherBought(),
                        new LeatherBought.Need(
                                Area.of(12, Units.FT2), 0.25, WasteOf.BOUGHT, Area.of(10, Units.FT2), eur(80)))));
        assertEquals(
                """
                G = N · (1 + w) | N 12 ft², w 0.25 | 15 ft²
                taken by waste-share
                k = ceil(G / A) | G 15 ft², A 10 ft² | 2
                B = k · P | k 2, P 80.00 | 160.00
                V = P · G / A | P 80.00, G 15 ft², A 10 ft² | 120.00
                """,
                text(working(
                        new LeatherBought(),
                        new LeatherBought.Need(
                                Area.of(12, Units.FT2), 0.25, WasteOf.USED, Area.of(10, Units.FT2), eur(80)))));
        assertEquals(
                """
                d = p - v | p 85.00, v 37.00 | 48.00
                n = ceil((F + T) / d) | F 1200.00, T 500.00, d 48.00 | 36
                """,
                text(working(new BreakEven(), new BreakEven.Plan(eur(1200), eur(85), eur(37), Optional.of(eur(500))))));
    }

    @Test
    void batches() {
        assertEquals(
                """
                T = n · t · n^(lg(q) / lg(2)) | n 2, t 3 h, q 0.8 | 4.8 h
                together by wright-1936
                a = T / n | T 4.8 h, n 2 | 2.4 h
                l = T - V | T 4.8 h, V 3 h | 1.8 h
                """,
                text(working(new BatchTime(), new BatchTime.Batch(hours(3), 2, new Learning.CumulativeAverage(0.8)))));
        assertEquals(
                """
                T = t · Σ(k = 1 … n) k^(lg(q) / lg(2)) | t 3 h, n 2, q 0.8 | 5.4 h
                together by unit-curve
                a = T / n | T 5.4 h, n 2 | 2.7 h
                l = T - V | T 5.4 h, V 3 h | 2.4 h
                """, text(working(new BatchTime(), new BatchTime.Batch(hours(3), 2, new Learning.EachPiece(0.8)))));
        assertEquals("""
                T = n · t | n 2, t 3 h | 6 h
                together by money-arithmetic
                a = T / n | T 6 h, n 2 | 3 h
                l = T - V | T 6 h, V 3 h | 3 h
                """, text(working(new BatchTime(), new BatchTime.Batch(hours(3), 2, new Learning.Steady()))));
    }

    @Test
    void sourcesThatBelongToNoFormula() {
        assertEquals(List.of(Origins.COST_SHEET), new PieceCost().sources());
        assertEquals(List.of(Origins.TAX, Origins.MULTIPLES), new PiecePrice().sources());
    }
}
