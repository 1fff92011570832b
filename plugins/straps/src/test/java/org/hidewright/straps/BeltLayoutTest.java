package org.hidewright.straps;

import static org.hidewright.straps.OutsideChecksTest.answers;
import static org.hidewright.straps.Straps.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.straps.slices.Folder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;

class BeltLayoutTest {
    private static BeltLayout.Layout work(Belts belt) {
        return answers(new BeltLayout(), belt.build());
    }

    @ParameterizedTest
    @EnumSource(BeltMeasure.class)
    void theWornHoleLiesAtTheSizeFromWhereItWasMeasured(BeltMeasure datum) {
        Belts belt = new Belts();
        belt.datum = datum;
        BeltLayout.Layout layout = work(belt);
        // fold: half the 5 mm bar and 3.5 mm of leather behind the bar's centre; frame: 30 mm; bar: none
        double behind = datum == BeltMeasure.FOLD ? 2.5 + 3.5 : datum == BeltMeasure.FRAME_END ? 30 : 0;
        double fromContact = 900 - behind - 15;
        assertEquals(layout.turnEnd().mm() + fromContact, layout.wornHolePlace().mm(), 1e-9);
        assertEquals(layout.wornHolePlace(), layout.holes().get(2).fromTurnBackEnd());
    }

    @Test
    void turnAndSlotAreWhereFoldingPutsThem() {
        Belts belt = new Belts();
        belt.turnBackThickness = Optional.of(mm(2));
        BeltLayout.Layout layout = work(belt);
        Folder folder = new Folder()
                .straight("tail", 75 - 15)
                .turnBack("buckle", 5, 15, 2, 3.5, 0.6, true)
                .straight("main", 100);
        assertEquals(folder.flatEnds("buckle")[0], layout.turnStart().mm(), 0.05);
        assertEquals(folder.flatEnds("buckle")[1], layout.turnEnd().mm(), 0.05);
        assertEquals(
                folder.material("buckle", folder.middle("buckle")),
                layout.slotCentre().mm(),
                0.05);
        assertEquals(25, layout.slotEnd().minus(layout.slotStart()).mm(), 1e-9);
        assertEquals(
                layout.slotCentre().mm(),
                (layout.slotStart().mm() + layout.slotEnd().mm()) / 2,
                1e-9);
    }

    @Test
    void holesCountFromBothEndsAndStepBySpacing() {
        BeltLayout.Layout layout = work(new Belts());
        List<BeltLayout.BeltHole> holes = layout.holes();
        for (int i = 0; i < 5; i++) {
            assertEquals(850 + 25 * i, holes.get(i).size().mm(), 1e-9);
            assertEquals(
                    layout.cutLength().mm(),
                    holes.get(i).fromTip().plus(holes.get(i).fromTurnBackEnd()).mm(),
                    1e-9);
            assertEquals(i == 2, holes.get(i).worn());
            assertEquals("hole-" + (i + 1), holes.get(i).id());
        }
        assertEquals(100, holes.get(4).fromTip().mm(), 1e-9);
        assertEquals(850, layout.smallestSize().mm(), 1e-9);
        assertEquals(950, layout.largestSize().mm(), 1e-9);
        assertEquals(layout.cutLength().mm() - 20, layout.tipStart().mm(), 1e-9);
    }

    @Test
    void aWornHoleOutsideTheRowIsStillPlacedAndSaidToBeMissing() {
        Belts belt = new Belts();
        belt.wornHole = Optional.of(7);
        BeltLayout.Layout layout = work(belt);
        assertEquals(900 - 2 * 25, layout.largestSize().mm(), 1e-9);
        assertTrue(layout.holes().stream().noneMatch(BeltLayout.BeltHole::worn));
    }

    @Test
    void anEvenRowIsWornInTheHoleBeforeItsMiddle() {
        assertEquals(2, Belts.belt(900, 4).holes() / 2);
        BeltLayout.Layout layout = answers(new BeltLayout(), Belts.belt(900, 4));
        assertTrue(layout.holes().get(1).worn());
    }

    @Test
    void aBeltDescribedFromAnyDatumIsCutTheSame() {
        Random random = new Random(20);
        for (int i = 0; i < 200; i++) {
            Belts belt = new Belts();
            belt.bar = 2 + random.nextDouble() * 6;
            belt.thickness = 2 + random.nextDouble() * 3;
            belt.frame = 15 + random.nextDouble() * 30;
            belt.contact = random.nextBoolean() ? 0 : 20;
            double fromBar = 700 + random.nextDouble() * 600;
            belt.datum = BeltMeasure.BAR;
            belt.size = fromBar;
            BeltLayout.Layout bar = work(belt);
            belt.datum = BeltMeasure.FOLD;
            belt.size = fromBar + belt.bar / 2 + belt.thickness;
            BeltLayout.Layout fold = work(belt);
            belt.datum = BeltMeasure.FRAME_END;
            belt.size = fromBar + belt.frame;
            BeltLayout.Layout frame = work(belt);
            for (BeltLayout.Layout other : List.of(fold, frame)) {
                assertEquals(bar.cutLength().mm(), other.cutLength().mm(), 1e-9);
                assertEquals(bar.foldToTip().mm(), other.foldToTip().mm(), 1e-9);
                for (int hole = 0; hole < 5; hole++) {
                    assertEquals(
                            bar.holes().get(hole).fromTurnBackEnd().mm(),
                            other.holes().get(hole).fromTurnBackEnd().mm(),
                            1e-9);
                }
            }
        }
    }

    @Test
    void aBeltAMillimetreLargerIsCutAMillimetreLonger() {
        Belts belt = new Belts();
        double before = work(belt).cutLength().mm();
        for (int size = 901; size < 1300; size += 7) {
            belt.size = size;
            assertEquals(before + size - 900, work(belt).cutLength().mm(), 1e-9);
        }
    }

    @Test
    void parallelLegsTakeHalfATurnRoundTheBar() {
        Belts belt = new Belts();
        belt.contact = 0;
        belt.datum = BeltMeasure.BAR;
        BeltLayout.Layout layout = work(belt);
        // by hand: pi (2.5 + 0.6 * 3.5) = 14.451326; turn-back 75, bar to last hole 950, tip 100
        assertEquals(75, layout.turnStart().mm(), 1e-9);
        assertEquals(75 + 14.451326 / 2, layout.slotCentre().mm(), 1e-6);
        assertEquals(75 + 14.451326, layout.turnEnd().mm(), 1e-6);
        assertEquals(75 + 14.451326 + 950 + 100, layout.cutLength().mm(), 1e-6);
        assertEquals(6 + 950 + 100, layout.foldToTip().mm(), 1e-9);
        // with the turned-back leg at 2 mm the slot lies on the middle of the bar: pi/2 (2.5 + 0.6 * 2) = 5.811946
        belt.turnBackThickness = Optional.of(mm(2));
        assertEquals(75 + 5.811946, work(belt).slotCentre().mm(), 1e-6);
        assertEquals(75 + 5.811946 + 14.451326 / 2, work(belt).turnEnd().mm(), 1e-6);
    }

    @Test
    void aPreparedTurnFollowsItsNeutralLine() {
        Belts belt = new Belts();
        belt.contact = 0;
        belt.preparation = new Preparation.Cased();
        assertEquals(0.5, work(belt).neutralLine());
        assertEquals(Math.PI * (2.5 + 0.5 * 3.5), turn(belt), 1e-9);
        belt.preparation = new Preparation.Grooved(mm(1.4));
        assertEquals(0.8, work(belt).neutralLine(), 1e-12); // 1 - 1.4 / (2 * 3.5)
        belt.preparation = new Preparation.Skived(mm(2), mm(12));
        assertEquals(Math.PI * (2.5 + 0.6 * 2), turn(belt), 1e-9);
        assertEquals(75 - 12, work(belt).skiveStart().orElseThrow().mm(), 1e-9);
        assertEquals(
                work(belt).turnEnd().mm() + 12,
                work(belt).skiveEnd().orElseThrow().mm(),
                1e-9);
        belt.datum = BeltMeasure.FOLD;
        belt.size = 900;
        // the outside of a fold skived to 2 mm lies 4.5 mm behind the bar
        assertEquals(
                work(belt).turnEnd().mm() + 900 - 4.5,
                work(belt).wornHolePlace().mm(),
                1e-9);
        // a turned-back end thinner than the fold stays as thin in its half of the turn
        belt.turnBackThickness = Optional.of(mm(1.5));
        assertEquals(Math.PI / 2 * (2.5 + 0.6 * 1.5) + Math.PI / 2 * (2.5 + 0.6 * 2), turn(belt), 1e-9);
    }

    private static double turn(Belts belt) {
        return work(belt).turnEnd().minus(work(belt).turnStart()).mm();
    }

    @Test
    void theWorkingShowsHowThePlacesCame() {
        Belts belt = new Belts();
        belt.contact = 0;
        belt.datum = BeltMeasure.FOLD;
        Steps steps = new Steps(new BeltLayout());
        BeltLayout.Layout layout =
                new BeltLayout().calculate(belt.build(), steps).answers().orElseThrow();
        assertEquals(List.of(0.6), steps.of("neutral-line-grain-outside"));
        double quarter = Math.PI / 2 * (2.5 + 0.6 * 3.5);
        assertEquals(List.of(quarter, quarter), steps.of("bend-allowance"));
        assertEquals(List.of(), steps.of("teardrop-leg"));
        assertEquals(List.of(850.0, 900.0, 950.0), steps.of("belt-hole-size"));
        assertEquals(List.of(layout.wornHolePlace().mm()), steps.of("belt-flat-hole"));
        assertEquals(List.of(layout.cutLength().mm()), steps.of("belt-cut-length"));
        assertEquals(List.of(layout.foldToTip().mm()), steps.of("belt-fold-to-tip"));
        assertEquals(List.of(layout.netWidthFactor()), steps.of("net-width"));
        for (String answer : List.of("neutral-line", "cut-length", "worn-hole-place")) {
            assertEquals(Origins.NEUTRAL_HABIT, steps.source(answer));
        }
        belt.contact = 15;
        belt.measured = Optional.of(0.55);
        steps = new Steps(new BeltLayout());
        layout = new BeltLayout().calculate(belt.build(), steps).answers().orElseThrow();
        assertEquals(List.of(), steps.of("bend-allowance"));
        assertEquals(2, steps.of("teardrop-leg").size());
        assertEquals(
                layout.turnEnd().minus(layout.turnStart()).mm(),
                steps.of("teardrop-leg").get(0) + steps.of("teardrop-leg").get(1),
                1e-9);
        assertEquals(Origins.NEUTRAL_MEASURED, steps.source("cut-length"));
    }

    @Test
    void aNoticeCarriesTheNumbersItSpeaksOf() {
        Belts belt = new Belts();
        belt.size = 97;
        // first hole 97 - 50 - 30 = 17 mm from the bar; the turn ends 15 mm from it, half a hole is 2.25 mm
        assertEquals("[47.0 mm, 17.0 mm, 17.25 mm]", args(belt, "belt-size-too-small"));
        belt = new Belts();
        belt.contact = 3;
        assertEquals("[this-turn-back[], 3.0 mm, 4.6 mm]", args(belt, "contact-too-near"));
        belt = new Belts();
        belt.contact = 0;
        belt.turnBack = 10;
        belt.slot = 40;
        belt.bar = 4;
        // the bar’s middle at 10 + π/2 (2 + 0.6 · 3.5) = 16.440 on the flat belt
        assertEquals(
                "[40.0 mm, " + mm(2 * (10 + Math.PI / 2 * (2 + 0.6 * 3.5))) + "]", args(belt, "belt-slot-runs-out"));
        belt = new Belts();
        belt.bar = 1;
        assertEquals("[this-turn-back[], 0.5 mm, 3.5 mm]", args(belt, "fold-too-tight"));
        belt = new Belts();
        belt.width = 16;
        assertEquals("[8.0 mm, 9.0 mm]", args(belt, "holes-near-edge"));
        belt = new Belts();
        belt.keeper = Optional.of(mm(30));
        belt.tipBeyond = 190;
        // worn: 190 + 2 · 25 - 30 = 210 past the bar; the keeper ends at 30 + 6
        assertEquals("[174.0 mm]", args(belt, "belt-tip-hangs-out"));
        belt.tipBeyond = 40;
        belt.keeper = Optional.of(mm(90));
        assertEquals("[60.0 mm, 96.0 mm]", args(belt, "belt-tip-misses-keeper"));
        belt.frame = 200;
        assertEquals("[0.0 mm, 96.0 mm]", args(belt, "belt-tip-misses-keeper"));
        belt = new Belts();
        belt.slot = 5;
        assertEquals("[5.0 mm, 12.0 mm]", args(belt, "belt-slot-short"));
    }

    @Test
    void theTipOfAClosedBeltReachesTheKeeperFromTheFrameEndWhereverItsSizeIsMeasuredFrom() {
        for (BeltMeasure datum : BeltMeasure.values()) {
            Belts belt = new Belts();
            belt.datum = datum;
            belt.frame = 40;
            // 100 of tip and two gaps of 25 beyond the worn hole, 40 of them up to the bar: 110 past it
            belt.keeper = Optional.of(mm(105));
            assertEquals("[110.0 mm, 111.0 mm]", args(belt, "belt-tip-misses-keeper"), datum.toString());
            belt.keeper = Optional.of(mm(103));
            assertTrue(
                    new BeltLayout()
                            .calculate(belt.build(), Working.NONE).notices().stream()
                                    .noneMatch(notice -> notice.kind().key().startsWith("belt-tip")),
                    datum.toString());
        }
    }

    private static String args(Belts belt, String key) {
        return new BeltLayout()
                .calculate(belt.build(), Working.NONE).notices().stream()
                        .filter(notice -> notice.kind().key().equals(key))
                        .findFirst()
                        .orElseThrow(() -> new AssertionError(key + " is not raised"))
                        .args()
                        .toString();
    }

    @Test
    void aHoleLeavesTheWidthBesideIt() {
        Belts belt = new Belts();
        belt.width = 25;
        belt.hole = 4;
        assertEquals(21, work(belt).netWidth().mm(), 1e-12);
        // worked example F.13, net-section identity: a 25 mm strap with one 4 mm hole keeps 0.84 of its width
        assertEquals(0.84, work(belt).netWidthFactor(), 1e-12);
    }

    @Test
    void aSquareTipHasNoShaping() {
        Belts belt = new Belts();
        belt.tip = BeltTip.SQUARE;
        assertEquals(work(belt).cutLength(), work(belt).tipStart());
    }

    /** Table 04h of trade habits (common practice): the usual limits of the questions are those of its rows. */
    @ParameterizedTest(name = "{0}: {1} to {2}")
    @CsvFileSource(resources = "/belt-habits.csv", useHeadersInDisplayName = false)
    void theUsualLimitsAreTheHabitsOfTheTrade(String question, double from, double to) {
        var usual = RecordCalculator.of(new BeltLayout())
                .declaration()
                .question(question)
                .orElseThrow()
                .usual()
                .orElseThrow();
        assertEquals(from, usual.low(), 1e-9);
        assertEquals(to, usual.high(), 1e-9);
    }

    @Test
    void aMeasuredNeutralLineGoesBeforeTheHabit() {
        Belts belt = new Belts();
        assertEquals(0.6, work(belt).neutralLine());
        double before = work(belt).cutLength().mm();
        belt.measured = Optional.of(0.5);
        assertEquals(0.5, work(belt).neutralLine());
        assertTrue(work(belt).cutLength().mm() < before - 0.5);
    }
}
