package org.hidewright.straps;

import static org.hidewright.straps.Straps.DRY;
import static org.hidewright.straps.Straps.bend;
import static org.hidewright.straps.Straps.flatFold;
import static org.hidewright.straps.Straps.glued;
import static org.hidewright.straps.Straps.hole;
import static org.hidewright.straps.Straps.layout;
import static org.hidewright.straps.Straps.measured;
import static org.hidewright.straps.Straps.mm;
import static org.hidewright.straps.Straps.overlap;
import static org.hidewright.straps.Straps.place;
import static org.hidewright.straps.Straps.roundBar;
import static org.hidewright.straps.Straps.straight;
import static org.hidewright.straps.Straps.strap;
import static org.hidewright.straps.Straps.turnBack;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.geometry.Face;
import org.junit.jupiter.api.Test;

class StrapLayoutTest {
    private static final double EXACT = 1e-9;

    private static StrapLayout.FlatSection section(StrapLayout.Layout layout, String id) {
        return layout.sections().stream()
                .filter(row -> row.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aTurnRoundABarTakesHalfTheCircleOfItsNeutralLine() {
        StrapLayout.Layout layout = layout(Straps.ring());
        double turn = Math.PI * (2 + 0.6 * 3); // π (r + k t)
        assertEquals(150 + turn, layout.cutLength().mm(), EXACT);
        assertEquals(100, section(layout, "ring").start().mm(), EXACT);
        assertEquals(100 + turn, section(layout, "ring").end().mm(), EXACT);
        assertEquals(turn, section(layout, "ring").length().mm(), EXACT);
        assertEquals(2, section(layout, "ring").insideRadius().orElseThrow().mm(), EXACT);
        assertEquals(Math.PI, section(layout, "ring").turn().orElseThrow().radians(), EXACT);
        assertEquals(Optional.of(0.6), section(layout, "ring").neutralLine());
        assertEquals(Optional.empty(), section(layout, "leg").neutralLine());
    }

    @Test
    void faceAndPreparationSetWhereTheNeutralLineStarts() {
        assertEquals(0.6, neutralLine(Face.GRAIN, DRY));
        assertEquals(0.4, neutralLine(Face.FLESH, DRY));
        assertEquals(0.5, neutralLine(Face.GRAIN, new Preparation.Cased()));
        assertEquals(0.5, neutralLine(Face.FLESH, new Preparation.Cased()));
        assertEquals(1 - 1.2 / 6, neutralLine(Face.GRAIN, new Preparation.Grooved(mm(1.2))), EXACT);
        assertEquals(0.6, neutralLine(Face.GRAIN, new Preparation.Skived(mm(1.5), mm(5))));
    }

    private static double neutralLine(Face outside, Preparation preparation) {
        Section.Bend bend = bend("ring", new Core.RoundBar(mm(4)), 180, outside, preparation);
        StrapLayout.Layout layout = layout(strap(3, List.of(straight("a", 40), bend, straight("b", 40))));
        return section(layout, "ring").neutralLine().orElseThrow();
    }

    @Test
    void aStripMeasuredHereGoesBeforeEveryRuleAndIsCredited() {
        List<String> credited = new ArrayList<>();
        Working working = new Working() {
            @Override
            public void step(Formula formula, Object result, Object... symbolsAndValues) {}

            @Override
            public void source(String answer, Source source) {
                credited.add(answer + " " + source);
            }
        };
        StrapLayout.Strap asked = measured(Straps.ring(), 0.55);
        StrapLayout.Layout layout =
                new StrapLayout().calculate(asked, working).answers().orElseThrow();
        assertEquals(150 + Math.PI * (2 + 0.55 * 3), layout.cutLength().mm(), EXACT);
        assertEquals(List.of("cut-length MEASURED_HERE neutral-line-measured"), credited);
        credited.clear();
        new StrapLayout().calculate(Straps.ring(), working);
        assertEquals(List.of("cut-length COMMON_PRACTICE neutral-line-habit"), credited);
    }

    @Test
    void theMeasureOfOneFoldGoesBeforeThatOfTheStrap() {
        Section.Bend own = new Section.Bend(
                "ring",
                new Core.RoundBar(mm(4)),
                Straps.deg(180),
                Face.GRAIN,
                DRY,
                Optional.of(mm(2)),
                Optional.of(0.5));
        StrapLayout.Layout layout = layout(measured(strap(3, List.of(straight("a", 40), own, straight("b", 40))), 0.7));
        assertEquals(80 + Math.PI * (2 + 0.5 * 2), layout.cutLength().mm(), EXACT);
        assertEquals(2, section(layout, "ring").thickness().mm());
    }

    @Test
    void aHoleThroughBothLegsIsAsFarFromTheBendOnEach() {
        StrapLayout.Layout layout = layout(Straps.ring(hole("rivet", "leg", From.END, 15, "tip")));
        assertEquals(85, place(layout, "rivet"), EXACT);
        assertEquals(100 + Math.PI * 3.8 + 15, place(layout, "rivet-on-tip"), EXACT);
        StrapLayout.FlatFeature mate = Straps.feature(layout, "rivet-on-tip");
        assertEquals("tip", mate.section());
        assertEquals(2, mate.layer());
        assertEquals(1, Straps.feature(layout, "rivet").layer());
        assertEquals(35, mate.fromOtherEnd().mm(), EXACT);
        assertEquals(Optional.of(mm(4)), mate.across());
        assertEquals(Face.GRAIN, mate.markOn());
    }

    @Test
    void onABendADistanceIsMeasuredOnItsOutsideFace() {
        StrapLayout.Layout layout = layout(Straps.ring(
                hole("start", "ring", From.START, 5),
                hole("middle", "ring", From.MIDDLE, 2),
                hole("end", "ring", From.END, 5)));
        double perMm = 3.8 / 5; // neutral radius 2 + 0.6 · 3, outside radius 2 + 3
        assertEquals(100 + 5 * perMm, place(layout, "start"), EXACT);
        assertEquals(100 + Math.PI * 3.8 / 2 + 2 * perMm, place(layout, "middle"), EXACT);
        assertEquals(100 + Math.PI * 3.8 - 5 * perMm, place(layout, "end"), EXACT);
    }

    @Test
    void slotsLinesAndMarksAreMappedWithTheirSizes() {
        StrapLayout.Layout layout = layout(Straps.ring(
                new Feature.Slot("slot", mm(20), mm(5), "ring", From.MIDDLE, Length.ZERO, Optional.empty()),
                new Feature.FoldLine("crease", "leg", From.START, mm(30), Optional.empty()),
                new Feature.Mark("centre", "tip", From.MIDDLE, mm(1), Optional.of(List.of("leg")))));
        StrapLayout.FlatFeature slot = Straps.feature(layout, "slot");
        assertEquals(StrapLayout.FlatKind.SLOT, slot.what());
        assertEquals(100 + Math.PI * 1.9, slot.fromStart().mm(), EXACT);
        assertEquals(Optional.of(mm(20)), slot.lengthwise());
        assertEquals(Optional.of(mm(5)), slot.across());
        assertEquals(
                StrapLayout.FlatKind.FOLD_LINE, Straps.feature(layout, "crease").what());
        assertEquals(Face.FLESH, Straps.feature(layout, "crease").markOn());
        assertEquals(StrapLayout.FlatKind.MARK, Straps.feature(layout, "centre").what());
        assertEquals(100 - 26, place(layout, "centre-on-leg"), EXACT);
    }

    @Test
    void foldsAreMarkedInsideFromTheirStartOverTheMiddleToTheirEnd() {
        StrapLayout.FoldZone fold = layout(Straps.ring()).folds().get(0);
        assertEquals("ring", fold.id());
        assertEquals(100, fold.start().mm(), EXACT);
        assertEquals(100 + Math.PI * 1.9, fold.middle().mm(), EXACT);
        assertEquals(100 + Math.PI * 3.8, fold.end().mm(), EXACT);
        assertEquals(Face.FLESH, fold.markOn());
    }

    @Test
    void stitchRowsAreMappedOnEveryLayerAndRunForwards() {
        Feature row = new Feature.StitchRow(
                "row", "leg", From.END, mm(5), "leg", From.END, mm(40), mm(3), Optional.of(List.of("tip")));
        StrapLayout.Layout layout = layout(Straps.ring(row));
        assertEquals(
                List.of("row", "row-on-tip"),
                layout.stitchRows().stream().map(StrapLayout.FlatStitchRow::id).toList());
        StrapLayout.FlatStitchRow own = layout.stitchRows().get(0);
        assertEquals(60, own.start().mm(), EXACT);
        assertEquals(95, own.end().mm(), EXACT);
        assertEquals(layout.cutLength().mm() - 95, own.fromOtherEnd().mm(), EXACT);
        StrapLayout.FlatStitchRow mate = layout.stitchRows().get(1);
        assertEquals(100 + Math.PI * 3.8 + 5, mate.start().mm(), EXACT);
        assertEquals(35, mate.end().minus(mate.start()).mm(), EXACT);
        assertEquals(3, mate.margin().mm());
        assertEquals(Face.GRAIN, own.markOn());
    }

    @Test
    void skivesJoinWhereThinSectionsFollowEachOtherAndRampIntoThickOnes() {
        Preparation skived = new Preparation.Skived(mm(1.5), mm(8));
        List<Section> sections = List.of(
                straight("leg", 100),
                bend("fold", new Core.OwnLayers(0, Optional.empty(), Optional.empty()), 180, Face.GRAIN, skived),
                straight("flap", 30, 1.5, 6),
                straight("tip", 50));
        StrapLayout.Layout layout = layout(strap(3, sections));
        double fold = Math.PI * 0.6 * 1.5;
        assertEquals(1, layout.skives().size());
        StrapLayout.SkiveZone skive = layout.skives().get(0);
        assertEquals(92, skive.rampStart().mm(), EXACT);
        assertEquals(100, skive.fullStart().mm(), EXACT);
        assertEquals(130 + fold, skive.fullEnd().mm(), EXACT);
        assertEquals(136 + fold, skive.rampEnd().mm(), EXACT);
        assertEquals(1.5, skive.thicknessLeft().mm());
        assertEquals(Face.FLESH, skive.markOn());
        assertEquals("fold", skive.id());
    }

    @Test
    void aSkiveAtTheEndOfTheStrapHasNoRampThere() {
        StrapLayout.Layout layout = layout(strap(3, List.of(straight("end", 30, 1, 10), straight("rest", 80))));
        StrapLayout.SkiveZone skive = layout.skives().get(0);
        assertEquals(0, skive.rampStart().mm());
        assertEquals(0, skive.fullStart().mm());
        assertEquals(40, skive.rampEnd().mm(), EXACT);
    }

    @Test
    void thinnerStretchesNextToThinnerOnesAreTwoSkives() {
        StrapLayout.Layout layout = layout(strap(
                3,
                List.of(straight("a", 30), straight("b", 30, 2, 4), straight("c", 30, 1, 5), straight("d", 40, 2, 3))));
        assertEquals(
                List.of("b", "c", "d"),
                layout.skives().stream().map(StrapLayout.SkiveZone::id).toList());
        assertEquals(26, layout.skives().get(0).rampStart().mm(), EXACT);
        assertEquals(60, layout.skives().get(0).rampEnd().mm(), EXACT);
        assertEquals(55, layout.skives().get(1).rampStart().mm(), EXACT);
        assertEquals(95, layout.skives().get(1).rampEnd().mm(), EXACT);
        assertEquals(90, layout.skives().get(2).rampStart().mm(), EXACT);
    }

    @Test
    void nestedBendsAddThicknessAndGlueToTheRadiusInside() {
        List<Section> sections = List.of(
                straight("upper", 60),
                bend("over", new Core.AroundBend("under"), 180, Face.GRAIN, DRY),
                straight("back", 45),
                flatFold("end", Face.GRAIN),
                straight("inner-back", 45),
                bend("under", new Core.RoundBar(mm(6)), 180, Face.FLESH, DRY),
                straight("inner", 60));
        StrapLayout.Layout layout = layout(glued(strap(2, sections), 0.1));
        assertEquals(
                3 + 2 + 0.1,
                section(layout, "over").insideRadius().orElseThrow().mm(),
                EXACT);
        assertEquals(0, section(layout, "end").insideRadius().orElseThrow().mm());
        assertEquals(Showing.NEITHER, section(layout, "under").shows());
        assertEquals(Showing.GRAIN, section(layout, "over").shows());
    }

    @Test
    void aFoldRoundItsOwnLayersHasHalfOfThemAndTheirGlueInside() {
        Section.Bend fold =
                bend("fold", new Core.OwnLayers(2, Optional.empty(), Optional.empty()), 180, Face.GRAIN, DRY);
        StrapLayout.Layout layout = layout(glued(strap(3, List.of(straight("a", 40), fold, straight("b", 40))), 0.2));
        assertEquals(
                (2 * 3 + 3 * 0.2) / 2,
                section(layout, "fold").insideRadius().orElseThrow().mm(),
                EXACT);
        Section.Bend thin =
                bend("fold", new Core.OwnLayers(2, Optional.of(mm(1)), Optional.empty()), 180, Face.GRAIN, DRY);
        layout = layout(strap(3, List.of(straight("a", 40), thin, straight("b", 40))));
        assertEquals(1, section(layout, "fold").insideRadius().orElseThrow().mm(), EXACT);
        Section.Bend given =
                bend("fold", new Core.OwnLayers(0, Optional.empty(), Optional.of(mm(0.7))), 180, Face.GRAIN, DRY);
        layout = layout(strap(3, List.of(straight("a", 40), given, straight("b", 40))));
        assertEquals(0.7, section(layout, "fold").insideRadius().orElseThrow().mm(), EXACT);
    }

    @Test
    void aClosingStrapFoldedFleshToFleshShowsItsGrainWhereItIsDouble() {
        List<Section> sections =
                List.of(straight("outer", 120), flatFold("fold", Face.GRAIN), overlap("inner", "outer", 40));
        StrapLayout.Layout layout = layout(glued(strap(2, sections), 0.1));
        assertEquals(Showing.BOTH, section(layout, "outer").shows());
        assertEquals(Showing.GRAIN, section(layout, "fold").shows());
        assertEquals(Showing.GRAIN, section(layout, "inner").shows());
        assertEquals(4.1, layout.stackThickness().mm(), EXACT);
        assertEquals(
                layout(glued(
                                strap(
                                        2,
                                        List.of(
                                                straight("outer", 40),
                                                flatFold("fold", Face.FLESH),
                                                overlap("inner", "outer", 40))),
                                0))
                        .sections()
                        .get(0)
                        .shows(),
                Showing.FLESH);
    }

    @Test
    void aTeardropTakesTwoLegsAndItsStackIsTheThickestPlace() {
        StrapLayout.Layout layout = layout(strap(
                3.2,
                List.of(
                        straight("strap", 100),
                        turnBack("buckle", 6, 12, Face.GRAIN, new Preparation.Cased()),
                        straight("leg", 30))));
        assertEquals(39.2141148579131, section(layout, "buckle").length().mm(), 1e-9); // worked example B.24
        assertEquals(6.4, layout.stackThickness().mm(), EXACT);
    }

    @Test
    void aStrapOfOneBendIsAsThickAsItsLeather() {
        assertEquals(
                3,
                layout(strap(3, List.of(roundBar("ring", 8)))).stackThickness().mm());
    }

    @Test
    void describedFromItsOtherEndTheSamePlacesAreMirrored() {
        Random random = new Random(2);
        for (int i = 0; i < 60; i++) {
            List<Section> sections = List.of(
                    straight("a", 30 + random.nextInt(90)),
                    bend("one", new Core.RoundBar(mm(1 + random.nextInt(8))), 180, face(random), DRY),
                    straight("b", 30 + random.nextInt(60)),
                    i % 2 == 0
                            ? bend(
                                    "two",
                                    new Core.FlatBar(mm(3), mm(8), mm(1)),
                                    180,
                                    face(random),
                                    new Preparation.Cased())
                            : turnBack("two", 4, 16, face(random), DRY),
                    straight("c", 30 + random.nextInt(60)));
            double at = 4 + random.nextInt(10);
            Feature[] features = {
                hole("h", "a", From.END, at, "b"),
                hole("m", "b", From.MIDDLE, at / 2),
                hole("f", "two", From.START, 1),
                hole("g", "c", From.START, at, "b")
            };
            Feature[] mirrored = {
                hole("h", "a", From.START, at, "b"),
                hole("m", "b", From.MIDDLE, -at / 2),
                hole("f", "two", From.END, 1),
                hole("g", "c", From.END, at, "b")
            };
            List<Section> reversed = new ArrayList<>(sections);
            Collections.reverse(reversed);
            StrapLayout.Layout one = layout(strap(2.5, sections, features));
            StrapLayout.Layout other = layout(strap(2.5, reversed, mirrored));
            assertEquals(one.cutLength().mm(), other.cutLength().mm(), EXACT);
            assertEquals(6, one.features().size());
            for (StrapLayout.FlatFeature feature : one.features()) {
                assertEquals(feature.fromOtherEnd().mm(), place(other, feature.id()), 1e-8, feature.id());
            }
        }
    }

    private static Face face(Random random) {
        return random.nextBoolean() ? Face.GRAIN : Face.FLESH;
    }
}
