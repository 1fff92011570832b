package org.hidewright.stitching;

import static org.hidewright.stitching.Sewn.answers;
import static org.hidewright.stitching.Sewn.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleSupplier;
import org.hidewright.api.geometry.AtCorners;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Against tables and worked examples from outside; each row names its source and whether it was read. */
class OutsideChecksTest {
    private static final double INCH = 25.4;

    private static final Map<String, DoubleSupplier> WORKED = Map.ofEntries(
            Map.entry("T.02", () -> linen(1, 1).tex()),
            Map.entry("T.08.30", () -> ticket(30).tex()),
            Map.entry("T.08.40", () -> ticket(40).tex()),
            Map.entry("T.08.60", () -> ticket(60).tex()),
            Map.entry("T.08.75", () -> ticket(75).tex()),
            Map.entry("T.08.120", () -> ticket(120).tex()),
            Map.entry("T.11", () -> linen(18, 3).tex()),
            Map.entry("T.12", () -> linen(25, 3).tex()),
            Map.entry("T.13", () -> linen(18, 3).metricTicket()),
            Map.entry(
                    "T.14",
                    () -> size(new ThreadCount.Denier(1260, 3), Fibre.NYLON, 0.6)
                            .tex()),
            Map.entry(
                    "T.15",
                    () -> size(new ThreadCount.Tex(1), Fibre.NYLON, 1)
                                    .diameter()
                                    .mm()
                            * Math.sqrt(1.14)),
            Map.entry("T.16", () -> diameter(135, Fibre.POLYESTER)),
            Map.entry("T.17", () -> diameter(135, Fibre.NYLON)),
            Map.entry("T.18", () -> linen(18, 3).diameter().mm()),
            Map.entry(
                    "T.23",
                    () -> answers(
                                    new StitchMarks(),
                                    new StitchMarks.Line(
                                            new SewnLine.Straight(mm(300)),
                                            mm(3),
                                            AtCorners.MARK,
                                            Optional.empty(),
                                            mm(1)))
                            .holes()),
            Map.entry("T.25", () -> ratio(INCH / 6, 0.125 * INCH)),
            Map.entry("T.26", () -> ratio(INCH / 10, 0.01 * INCH)),
            Map.entry("T.30", () -> ratio(4, 4)),
            Map.entry("T.32", () -> thread(500, 3.85, 5, 1e-9, 0)),
            Map.entry("T.33", () -> thread(500, 3.85, 5, 150, 3)),
            Map.entry(
                    "T.36",
                    () -> MachineNeedle.taking(0.56).get(0).thickestThread().mm()));

    private static ThreadSize.Sized size(ThreadCount thread, Fibre fibre, double packing) {
        return answers(new ThreadSize(), new ThreadSize.Label(thread, fibre, packing, mm(3.85), Optional.empty()));
    }

    private static ThreadSize.Sized linen(double lea, int plies) {
        return size(new ThreadCount.Linen(lea, plies), Fibre.LINEN, 0.6);
    }

    private static ThreadSize.Sized ticket(double ticket) {
        return size(new ThreadCount.MetricTicket(ticket), Fibre.POLYESTER, 0.6);
    }

    private static double diameter(double tex, Fibre fibre) {
        return size(new ThreadCount.Tex(tex), fibre, 0.6).diameter().mm();
    }

    private static ThreadLength.Cut cut(double length, double pitch, double stack, double tail, int backstitches) {
        return answers(
                new ThreadLength(),
                new ThreadLength.Sewn(
                        new Seamed.Measured(mm(length), mm(pitch), mm(stack)),
                        mm(tail),
                        backstitches,
                        mm(2000),
                        ThreadLength.ThreadKind.PLANT));
    }

    private static double thread(double length, double pitch, double stack, double tail, int backstitches) {
        return cut(length, pitch, stack, tail, backstitches).thread().mm();
    }

    private static double ratio(double pitch, double stack) {
        return cut(500, pitch, stack, 100, 0).ratio();
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(resources = "worked-examples.csv")
    void agreesWithTheWorkedExample(String id, String description, String inputs, String form, double expected) {
        DoubleSupplier worked = WORKED.get(id);
        assertNotNull(worked, () -> "nothing works " + id);
        assertEquals(expected, worked.getAsDouble(), 1e-9 * expected, description);
    }

    @ParameterizedTest(name = "tex {0}")
    @CsvFileSource(resources = "tex-equivalents.csv")
    void aTexIsWhatTheTableSays(
            double tex, double denier, double lea, double ticket, double polyester, double nylon, double flax) {
        assertEquals(
                tex, size(new ThreadCount.Denier(denier, 1), Fibre.NYLON, 0.6).tex(), 1e-9 * tex);
        assertEquals(tex, linen(lea, 1).tex(), 1e-9 * tex);
        assertEquals(ticket, size(new ThreadCount.Tex(tex), Fibre.NYLON, 0.6).metricTicket(), 1e-9 * ticket);
        assertEquals(polyester, diameter(tex, Fibre.POLYESTER), 6e-6);
        assertEquals(nylon, diameter(tex, Fibre.NYLON), 6e-6);
        assertEquals(flax, diameter(tex, Fibre.LINEN), 6e-6);
        ThreadSize.Sized back = size(new ThreadCount.Measured(mm(diameter(tex, Fibre.NYLON))), Fibre.NYLON, 0.6);
        assertEquals(tex, back.tex(), 1e-9 * tex);
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "linen-threads.csv")
    void aLinenThreadIsWhatTheTableSays(String name, double lea, int plies, double tex, double diameter) {
        assertEquals(tex, linen(lea, plies).tex(), 1e-9 * tex);
        assertEquals(diameter, linen(lea, plies).diameter().mm(), 6e-6 * 1);
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "needle-sizes.csv")
    void aMachineNeedleIsWhatTheTableSays(String metric, double blade, String number, double thread) {
        MachineNeedle needle = MachineNeedle.taking(thread).get(0);
        assertEquals(metric, needle.id());
        assertEquals(blade, needle.blade().mm(), 1e-9);
        assertEquals(number.replace(" or ", ", "), needle.number());
        assertEquals(thread, needle.thickestThread().mm(), 1e-9);
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "fibre-density.csv")
    void aFibreHasTheDensityOfOneOfTheTables(String name, double density) {
        Map<String, Fibre> known = Map.of(
                "polyester (PET)", Fibre.POLYESTER,
                "nylon 6.6 / 6", Fibre.NYLON,
                "cotton (lumen filled)", Fibre.COTTON,
                "silk", Fibre.SILK,
                "para-aramid", Fibre.ARAMID,
                "flax (linen)", Fibre.LINEN);
        Fibre fibre = known.get(name);
        if (fibre != null) {
            assertEquals(density, fibre.gramsPerCm3());
        } else {
            assertTrue(
                    List.of(
                                    "wool",
                                    "polypropylene",
                                    "polyethylene, high modulus",
                                    "viscose",
                                    "polyester (PET), second source",
                                    "hemp")
                            .contains(name),
                    "a fibre nobody looked at: " + name);
        }
    }

    /** Pitches of the table as even gaps: a line of as many of them comes out whole. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvFileSource(resources = "stitch-pitch.csv")
    void aLineOfWholePitchesIsMarkedAtThePitch(String system, String number, double pitch) {
        StitchMarks.Made made = answers(
                new StitchMarks(),
                new StitchMarks.Line(
                        new SewnLine.Straight(mm(40 * pitch)), mm(pitch), AtCorners.PASS, Optional.empty(), mm(1)));
        assertEquals(41, made.holes());
        assertEquals(pitch, made.smallestGap().mm(), 1e-9);
        assertEquals(pitch, made.largestGap().mm(), 1e-9);
    }
}
