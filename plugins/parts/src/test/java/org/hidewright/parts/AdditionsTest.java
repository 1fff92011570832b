package org.hidewright.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.benchwork.Closing;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.item.Fitting;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.Part;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Length;
import org.junit.jupiter.api.Test;

/** Parts of bench work on a front of 100 x 80 mm and a back of 100 x 180 mm, folded at 90 mm, with a hole. */
class AdditionsTest {
    private static final double EXACT = 1e-6;
    private static final Angle UP = Angle.ofRadians(Math.PI / 2);

    private static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    private static DrawnPart part(String id, double width, double height) {
        return part(id, width, height, Optional.of(mm(2)));
    }

    private static DrawnPart part(String id, double width, double height, Optional<Length> thickness) {
        return new DrawnPart(
                id,
                Optional.empty(),
                new Shape.Rectangle(mm(width), mm(height), mm(0)),
                Optional.empty(),
                thickness,
                1,
                0,
                mm(0),
                mm(0),
                Shows.GRAIN,
                Optional.empty());
    }

    private static Outcome<Parts.Made> worked(Addition... additions) {
        DrawnOpening stud = new DrawnOpening(
                "front.stud", Optional.of(mm(50)), Optional.of(mm(40)), mm(3), mm(0), Angle.ofRadians(0));
        DrawnFold lid = new DrawnFold(
                "back.lid", new Along.Between(mm(100), mm(90), mm(0), mm(90)), mm(2), DrawnFold.Outside.GRAIN);
        return new Parts()
                .calculate(
                        new Parts.Drawn(
                                List.of(part("front", 100, 80), part("back", 100, 180)),
                                Optional.empty(),
                                Optional.of(List.of(stud)),
                                Optional.empty(),
                                Optional.of(List.of(lid)),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.of(List.of(new DrawnOperation(
                                        "all",
                                        "Look",
                                        Optional.of(new ArrayList<>(ids(additions))),
                                        Optional.empty(),
                                        Optional.empty(),
                                        Optional.empty(),
                                        Optional.empty(),
                                        Optional.empty()))),
                                Optional.of(List.of(additions))),
                        Working.NONE);
    }

    /** Work can be on what is added as a part of its own. */
    private static List<String> ids(Addition... additions) {
        return List.of(additions).stream()
                .filter(addition -> addition instanceof Addition.Welted
                        || addition instanceof Addition.Bound
                        || addition instanceof Addition.Lined
                        || addition instanceof Addition.Patched)
                .map(Addition::id)
                .toList();
    }

    private static Item item(Addition... additions) {
        Outcome<Parts.Made> outcome = worked(additions);
        return outcome.answers()
                .orElseThrow(() -> new AssertionError(outcome.notices()))
                .item();
    }

    private static String refused(Addition... additions) {
        Notice notice = worked(additions).notices().get(0);
        return notice.kind().key() + " at " + notice.place() + " " + notice.args();
    }

    private static Addition closed(Closing by, double topY) {
        return new Addition.Closed("closure", "back", mm(50), mm(topY), UP, " front ", mm(50), mm(60), by);
    }

    @Test
    void aClosureGoesThroughBothParts() {
        Item item = item(closed(new Closing.Snap(mm(4.5), mm(4), mm(12.5)), 150));
        assertEquals(
                "[back.closure, front.closure]", item.fittings().get(0).holes().toString());
        assertEquals(
                Point.of(50, 150),
                item.hole(new OnPart("back", "closure")).orElseThrow().centre());
        assertEquals(
                Point.of(50, 60),
                item.hole(new OnPart("front", "closure")).orElseThrow().centre());
        Item stud = item(closed(new Closing.Stud(mm(3), mm(4), mm(7)), 150));
        assertEquals(
                157, stud.part("back").orElseThrow().cutOuts().get(0).bounds().maxY(), EXACT, "towards its end");
        assertEquals(0, item(closed(new Closing.Open(mm(10)), 150)).fittings().size());
        assertEquals(
                "addition-no-room at additions[closure] [closure, back]",
                refused(closed(new Closing.Snap(mm(4.5), mm(4), mm(12.5)), 179)));
    }

    @Test
    void aWeltIsAPartOfItsOwn() {
        Part welt = item(new Addition.Welted("welt", "front", mm(10), mm(90), mm(8), mm(3), 2))
                .part("welt")
                .orElseThrow();
        assertEquals(80 * 8, Curve.of(welt.outline()).area(), EXACT);
        assertEquals(2, welt.pieces());
        assertEquals(3, welt.thickness().orElseThrow());
        Part round = item(new Addition.Welted("welt", "front", mm(150), mm(999), mm(8), mm(3), 1))
                .part("welt")
                .orElseThrow();
        // from 30 mm below the right upper corner to the start: 30, 100 and 80 mm, less what two corners share
        assertEquals(8 * (30 + 100 + 80) - 2 * 64, Curve.of(round.outline()).area(), EXACT);
    }

    @Test
    void aBindingHasRowsOnBothSides() {
        Item item = item(new Addition.Bound("binding", mm(200), mm(10), mm(6), mm(4), mm(1), mm(4)));
        Box box = item.part("binding").orElseThrow().outline().bounds();
        assertEquals(210, box.width(), EXACT);
        assertEquals(2 * 6 + 4 + Math.PI / 2, box.height(), EXACT);
        assertEquals(
                "[binding.over, binding.under]", item.seams().get(0).lines().toString());
        assertEquals(
                3,
                item.stitchLine(new OnPart("binding", "under"))
                        .orElseThrow()
                        .holes()
                        .get(0)
                        .y(),
                EXACT);
        assertEquals(
                3,
                item.stitchLine(new OnPart("binding", "under"))
                        .orElseThrow()
                        .holes()
                        .get(0)
                        .x(),
                EXACT);
    }

    private static Addition zip(double tape) {
        return new Addition.Zipped(
                "zip", "front", mm(50), mm(20), Angle.ofRadians(0), mm(60), mm(5), mm(tape), mm(3.5));
    }

    @Test
    void aZipHasAWindowAndItsStitches() {
        Item item = item(zip(30));
        Box window = item.part("front").orElseThrow().cutOuts().get(0).bounds();
        assertEquals(60, window.width(), EXACT);
        assertEquals(8, window.height(), EXACT);
        assertEquals(20, (window.minX() + window.maxX()) / 2 - 30, EXACT);
        assertTrue(item.stitchLine(new OnPart("front", "zip")).isPresent());
        assertEquals(List.of(Fitting.of("zip-zip", "Zip", List.of())), item.fittings(), "it has to be bought");
        // the window of 8 mm, and 5 mm on either side
        assertEquals("tape-too-narrow at additions[zip].zipped.tape [17.9 mm, 18.0 mm]", refused(zip(17.9)));
        assertEquals(1, item(zip(18)).part("front").orElseThrow().cutOuts().size());
    }

    @Test
    void aTabIsSewnOn() {
        Item item = item(new Addition.Tabbed(
                "tab", "back", mm(50), mm(70), Angle.ofRadians(-Math.PI / 2), mm(20), mm(3), mm(25), mm(2), mm(4)));
        assertEquals(
                "[tab.top, tab.under, back.tab-box]",
                item.seams().get(0).lines().toString());
        assertEquals(19.5, item.part("tab").orElseThrow().outline().bounds().height(), EXACT);
        assertEquals(List.of(Fitting.of("tab-ring", "Ring", List.of())), item.fittings(), "it has to be bought");
        double top = item.stitchLine(new OnPart("back", "tab-box")).orElseThrow().holes().stream()
                .mapToDouble(Point::y)
                .max()
                .orElseThrow();
        assertEquals(65, top, EXACT, "5 mm below the ring");
    }

    private static Addition buckle(double spacing) {
        return new Addition.Buckled(
                "buckle",
                "back",
                mm(50),
                mm(70),
                Angle.ofRadians(Math.PI / 2),
                mm(3),
                3,
                mm(spacing),
                "front",
                mm(50),
                mm(70),
                Angle.ofRadians(-Math.PI / 2),
                mm(20),
                mm(3),
                mm(18),
                mm(5),
                mm(30),
                mm(2),
                mm(4));
    }

    @Test
    void aBuckleHasATabOnOnePartAndHolesInTheOther() {
        Item item = item(buckle(10));
        assertEquals(
                "[buckle.top, buckle.under, front.buckle-box]",
                item.seams().get(0).lines().toString());
        assertEquals(
                "[back.buckle-prong-1, back.buckle-prong-2, back.buckle-prong-3]",
                item.fittings().get(0).holes().toString());
        Part tab = item.part("buckle").orElseThrow();
        assertEquals(19.5, tab.outline().bounds().height(), EXACT);
        assertEquals(18, tab.cutOuts().get(0).bounds().width(), EXACT);
        assertEquals(
                List.of(60.0, 70.0, 80.0),
                item.part("back").orElseThrow().holes().stream()
                        .map(hole -> (double) Math.round(hole.centre().y()))
                        .toList());
        assertEquals("addition-no-room at additions[buckle] [buckle, back]", refused(buckle(5.9)));
    }

    private static Addition pockets(double step, String id) {
        return new Addition.Stepped(
                id, "back", mm(2), mm(3), 2, mm(80), mm(50), mm(1), mm(step), mm(4), mm(0.9), mm(3));
    }

    @Test
    void pocketsAreSewnOnInSteps() {
        Item item = item(pockets(12, "cards"));
        assertEquals(
                List.of("front", "back", "cards-1", "cards-front"),
                item.parts().stream().map(Part::id).toList());
        assertEquals(4, item.seams().size());
        Point first = item.stitchLine(new OnPart("back", "cards-front-rim"))
                .orElseThrow()
                .holes()
                .get(0);
        assertEquals(2 + 3.5, first.x(), EXACT);
        assertEquals(
                "step-too-large at additions[cards].stepped.step [25.1 mm, 50.0 mm]", refused(pockets(25.1, "cards")));
        assertEquals(4, item(pockets(25, "cards")).parts().size());
    }

    private static Addition lining(double inside, Optional<String> fold) {
        return new Addition.Lined("lining", "back", mm(inside), mm(0.8), mm(1.5), fold);
    }

    @Test
    void aLiningIsSmallerOrShorter() {
        Part flush = item(lining(0, Optional.empty())).part("lining").orElseThrow();
        assertEquals(180, flush.outline().bounds().height(), EXACT);
        assertEquals(1.5, flush.oversize());
        assertEquals(
                176,
                item(lining(2, Optional.empty()))
                        .part("lining")
                        .orElseThrow()
                        .outline()
                        .bounds()
                        .height(),
                EXACT);
        Part shorter = item(lining(0, Optional.of(" lid "))).part("lining").orElseThrow();
        // half a turn between the middles of 2 mm and 0.8 mm
        assertEquals(180 - Math.PI * 1.4, shorter.outline().bounds().height(), 1e-3);
        assertEquals(
                "addition-on-nothing at additions[lining] [lining, flap, lid]",
                refused(lining(0, Optional.of("flap"))));
    }

    @Test
    void aLiningIsNotShorterThanWhatIsNotKnown() {
        DrawnFold lid = new DrawnFold(
                "back.lid", new Along.Between(mm(100), mm(90), mm(0), mm(90)), mm(2), DrawnFold.Outside.GRAIN);
        Outcome<Parts.Made> outcome = new Parts()
                .calculate(
                        new Parts.Drawn(
                                List.of(part("back", 100, 180, Optional.empty())),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.of(List.of(lid)),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.of(List.of(lining(0, Optional.of("lid"))))),
                        Working.NONE);
        assertEquals("thickness-not-said", outcome.notices().get(0).kind().key());
        assertEquals(
                "additions[lining].lined.shorter-at", outcome.notices().get(0).place());
    }

    @Test
    void aPatchIsBehindItsHole() {
        Item item = item(new Addition.Patched("patch", "front.stud", mm(12), mm(1)));
        assertEquals(18, item.part("patch").orElseThrow().outline().bounds().width(), EXACT);
        assertEquals(3, item.hole(new OnPart("patch", "middle")).orElseThrow().diameter());
        assertEquals(
                "addition-on-nothing at additions[patch] [patch, front.rivet, front, back]",
                refused(new Addition.Patched("patch", "front.rivet", mm(12), mm(1))));
    }

    @Test
    void idsStandOnceAndPartsMustBeThere() {
        assertEquals(
                "addition-on-nothing at additions[welt] [welt, side, front, back]",
                refused(new Addition.Welted("welt", "side", mm(10), mm(90), mm(8), mm(3), 1)));
        assertEquals("id-twice at additions [front]", refused(lining("front")));
        assertEquals("id-twice at additions [cards]", refused(pockets(12, "cards"), pockets(12, "cards")));
        assertEquals("id-twice at additions [cards-1]", refused(lining("cards-1"), pockets(12, "cards")));
        assertEquals("id-twice at additions [front]", refused(closed("stud")), "a hole of that name is there");
    }

    private static Addition lining(String id) {
        return new Addition.Lined(id, "back", mm(0), mm(0.8), mm(1.5), Optional.empty());
    }

    private static Addition closed(String id) {
        return new Addition.Closed(
                id, "back", mm(50), mm(150), UP, "front", mm(50), mm(60), new Closing.Snap(mm(4.5), mm(4), mm(12.5)));
    }
}
