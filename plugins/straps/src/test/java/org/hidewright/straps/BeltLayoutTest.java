package org.hidewright.straps;

import static org.hidewright.straps.OutsideChecksTest.answers;
import static org.hidewright.straps.Straps.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.drawing.Circle;
import org.hidewright.straps.slices.Folder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
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

    @ParameterizedTest
    @EnumSource(BeltTip.class)
    void theFlatViewShowsEveryHoleInsideTheOutline(BeltTip tip) {
        Belts belt = new Belts();
        belt.tip = tip;
        BeltLayout.Layout layout = work(belt);
        List<Circle> holes = layout.flatView().shapes().stream()
                .filter(Circle.class::isInstance)
                .map(Circle.class::cast)
                .toList();
        assertEquals(5, holes.size());
        assertEquals(
                layout.holes().get(0).fromTurnBackEnd().mm(),
                holes.get(0).centre().x(),
                1e-9);
        assertEquals(19, holes.get(0).centre().y(), 1e-9);
        assertEquals(
                layout.cutLength().mm(),
                layout.flatView().shapes().get(0).bounds().maxX(),
                1e-6);
        assertEquals(38, layout.flatView().shapes().get(0).bounds().height(), 1e-6);
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
