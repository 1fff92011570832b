package org.hidewright.fasteners;

import static org.hidewright.fasteners.Fitted.PLAIN;
import static org.hidewright.fasteners.Fitted.answers;
import static org.hidewright.fasteners.Fitted.lengths;
import static org.hidewright.fasteners.Fitted.mm;
import static org.hidewright.fasteners.Fitted.punches;
import static org.hidewright.fasteners.Fitted.stack;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleSupplier;
import org.hidewright.api.measure.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Against tables and worked examples from outside; each row names its source and whether it was read. */
class OutsideChecksTest {
    private static final Map<String, DoubleSupplier> WORKED = Map.of(
            "F.03", () -> 16 / Cautions.lines(1).mm(),
            "F.06", () -> hole(3, Temper.FIRM).between().mm(),
            "F.08", () -> hole(3.1, Temper.SOFT).fromEdge().mm(),
            "F.09", () -> hole(3.1, Temper.SOFT).between().mm(),
            "F.10", () -> (hole(4, Temper.FIRM).atMost().mm() - 4) / 2,
            "F.15",
                    () -> answers(new FittingRow(), new FittingRow.Row(mm(140), 5, mm(10), mm(3), mm(9)))
                            .pitch()
                            .mm());

    private static PlainHole.Made hole(double shank, Temper temper) {
        return answers(new PlainHole(), new PlainHole.Through(mm(shank), Optional.empty(), temper, punches(), false));
    }

    /** The rows for steel are minima that leather is never asked to be content with. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(resources = "worked-examples.csv")
    void agreesWithTheWorkedExample(String id, String description, String inputs, String form, double expected) {
        DoubleSupplier worked = WORKED.get(id);
        assertNotNull(worked, () -> "nothing works " + id);
        if (description.startsWith("EN 1993-1-8")) {
            assertTrue(worked.getAsDouble() > expected, description + ": " + worked.getAsDouble());
        } else {
            assertEquals(expected, worked.getAsDouble(), 1e-9 * expected, description);
        }
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "clearance-holes-iso-273.csv")
    void firmLeatherTakesTheFineHoleAndNeverMoreThanTheMediumOne(String thread, double fine, double medium) {
        double shank = Double.parseDouble(thread.substring(1));
        assertEquals(fine, hole(shank, Temper.FIRM).hole().mm(), 1e-9);
        for (Temper temper : Temper.values()) {
            assertEquals(medium, hole(shank, temper).atMost().mm(), 1e-9);
        }
        assertEquals(shank, hole(shank, Temper.MEDIUM).hole().mm(), 1e-9);
    }

    /** Shanks are up to 0.24 mm thinner than their nominal size; the hole for the nominal size lets them through. */
    @ParameterizedTest(name = "{0} mm")
    @CsvFileSource(resources = "solid-rivets-din-660.csv")
    void aSolidRivetGoesThroughItsHole(double nominal, double head, double shankLeast) {
        PlainHole.Made hole = hole(nominal, Temper.FIRM);
        assertTrue(hole.atLeast().mm() >= shankLeast, "the narrowest hole lets the thinnest shank through");
        assertTrue(hole.atMost().mm() < head, "the head stays on the leather");
    }

    /** From memory: the holes of rivets in metal lie between the shank and the widest hole here. */
    @ParameterizedTest(name = "{0} mm")
    @CsvFileSource(resources = "rivet-holes.csv")
    void theHolesOfRivetsInMetalAreWithinTheEnds(double rivet, double hole) {
        PlainHole.Made ours = hole(rivet, Temper.FIRM);
        assertTrue(ours.atLeast().mm() <= hole && hole <= ours.atMost().mm() + 1e-9, ours + " for " + hole);
    }

    /** DIN 7338, forms B and C, read: the head of a tubular rivet stays on the leather, whatever hole it sits in. */
    @ParameterizedTest(name = "{0} mm")
    @CsvFileSource(resources = "tubular-rivets.csv")
    void aTubularRivetsHeadCoversItsHole(double shank, double head) {
        PlainHole.Made hole = hole(shank, Temper.FIRM);
        assertTrue(hole.atMost().mm() < head, hole + " under " + head);
    }

    /**
     * Rules for metal, read: leather is never asked less than the lower bound of what a sheet or a steel part needs, and more
     * where the table says that leather differs. Distances are counted in hole diameters where the row counts in them.
     */
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "edge-distances.csv")
    void leatherIsNeverAskedLessThanMetal(String rule, String of, double diameters) {
        for (double shank : new double[] {1.6, 2, 3, 4, 5, 8}) {
            PlainHole.Made hole = answers(
                    new PlainHole(), new PlainHole.Through(mm(shank), Optional.empty(), Temper.SOFT, punches(), true));
            double least = diameters * hole.hole().mm();
            double asked =
                    of.equals("edge") ? hole.fromEdge().mm() : hole.between().mm();
            assertTrue(asked >= least - 1e-9, rule + ": " + asked + " against " + least);
        }
    }

    /** Common practice: a buckle’s slot is as long as the base of its prong and twice the thickness. */
    @ParameterizedTest(name = "prong {0}, leather {1}")
    @CsvSource({"19, 3, 25", "12, 3.5, 19", "6, 1.5, 9"})
    void aSlotIsAsLongAsTheProngAndTwiceTheThickness(double base, double leather, double slot) {
        ProngSlot.Slot made = answers(
                new ProngSlot(), new ProngSlot.Prong(mm(base), mm(3), mm(leather), mm(40), Optional.empty(), false));
        assertEquals(slot, made.length().mm(), 1e-9);
    }

    @ParameterizedTest(name = "{0} lines")
    @CsvFileSource(resources = "lines.csv")
    void aLineIsAFortiethOfAnInch(double count, double mm, double inch) {
        assertEquals(mm, Cautions.lines(count).mm(), 1e-9);
        assertEquals(inch, Cautions.lines(count).mm() / 25.4, 1e-12);
    }

    /** Common practice, as the table of edge distances has it. */
    @ParameterizedTest(name = "shank {0}, pulled {1}")
    @CsvSource({"2, false, 4", "4, false, 8", "1.5, true, 6", "2, true, 6", "4, true, 12"})
    void leatherIsAskedTwoToThreeDiametersAndSixMillimetresWhereItIsPulled(double shank, boolean pulled, double edge) {
        PlainHole.Made hole = answers(
                new PlainHole(), new PlainHole.Through(mm(shank), Optional.empty(), Temper.MEDIUM, punches(), pulled));
        assertEquals(edge, hole.fromEdge().mm(), 1e-9);
    }

    /** Common practice: rivets 2 to 3 mm proud, snaps and eyelets 1.5 to 2.5 mm, screw posts flush to 0.5 mm short. */
    @ParameterizedTest(name = "stack {0}")
    @CsvSource({"2", "3.5", "7.14375"})
    void postsStandOutAsTheTradeHasIt(double stack) {
        Posted rivet = answers(
                new Rivet(),
                new Rivet.Riveted(
                        stack(stack),
                        new RivetKind.Capped(),
                        Fitted.shank(3, 7, 9),
                        Optional.empty(),
                        Temper.MEDIUM,
                        punches(),
                        PLAIN));
        assertEnds(stack + 2, stack + 3, rivet.postFrom(), rivet.postTo().orElseThrow());
        Posted screw = answers(
                new ScrewPost(),
                new ScrewPost.Screwed(
                        stack(stack),
                        Fitted.shank(5, 7, 9),
                        Optional.of(lengths(4, 5)),
                        Temper.MEDIUM,
                        punches(),
                        PLAIN));
        assertEnds(stack - 0.5, stack, screw.postFrom(), screw.postTo().orElseThrow());
        Posted eyelet = answers(
                new Eyelet(),
                new Eyelet.Rolled(stack(stack), Fitted.shank(5, 7, 9), Optional.empty(), punches(), PLAIN));
        assertEnds(stack + 1.5, stack + 2.5, eyelet.postFrom(), eyelet.postTo().orElseThrow());
    }

    private static void assertEnds(double from, double to, Length least, Length most) {
        assertEquals(from, least.mm(), 1e-9);
        assertEquals(to, most.mm(), 1e-9);
    }
}
