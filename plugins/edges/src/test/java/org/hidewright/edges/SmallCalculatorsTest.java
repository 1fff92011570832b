package org.hidewright.edges;

import static org.hidewright.edges.Finished.answers;
import static org.hidewright.edges.Finished.beveler;
import static org.hidewright.edges.Finished.mm;
import static org.hidewright.edges.Finished.paper;
import static org.hidewright.edges.Finished.told;
import static org.hidewright.edges.Finished.working;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Units;
import org.hidewright.api.measure.Volume;
import org.junit.jupiter.api.Test;

/** One question at a time: a bevel, a ladder of grades, a liquid, a wait. */
class SmallCalculatorsTest {
    private static EdgeBevel.Corner corner(double thickness, int corners, EdgeTool... tools) {
        return new EdgeBevel.Corner(
                mm(thickness), corners, tools.length == 0 ? Optional.empty() : Optional.of(List.of(tools)));
    }

    @Test
    void aBevelLeavesAFlat() {
        EdgeBevel.Cut both = answers(new EdgeBevel(), corner(3.6, 2));
        assertEquals(1.2, both.bevel().orElseThrow().mm(), 1e-12);
        assertEquals(Optional.empty(), both.beveler());
        assertEquals(3.6 - 2 * 1.2 * Math.sqrt(0.5), both.flatLeft().mm(), 1e-12);
        EdgeBevel.Cut one = answers(new EdgeBevel(), corner(3.6, 1, beveler("one", 1), beveler("half", 0.6)));
        assertEquals(Optional.of("one"), one.beveler());
        assertEquals(3.6 - Math.sqrt(0.5), one.flatLeft().mm(), 1e-12);
        assertEquals(
                List.of(
                        "b = min(t / 3, m) | t 3.6 mm, m 1.5 mm | 1.2 mm",
                        "r = t - n · w / √2 | t 3.6 mm, n 1, w 1 mm | 2.8929 mm"),
                working(new EdgeBevel(), corner(3.6, 1, beveler("one", 1))));
    }

    @Test
    void aThinEdgeIsLeftSquare() {
        EdgeBevel.Cut thin = answers(new EdgeBevel(), corner(1, 2, beveler("one", 1)));
        assertEquals(new EdgeBevel.Cut(Optional.empty(), Optional.empty(), mm(1)), thin);
        assertEquals(List.of("too-thin-to-bevel at thickness [1.0 mm, 1.2 mm]"), told(new EdgeBevel(), corner(1, 2)));
    }

    @Test
    void aBevelIsCutWithABlade() {
        assertEquals(List.of("blade at []"), told(new EdgeBevel(), corner(3.6, 2, beveler("one", 1))));
        assertEquals(
                List.of("no-beveler-fits at edge-tools [3.6 mm, 1.2 mm]", "blade at []"),
                told(new EdgeBevel(), corner(3.6, 2, beveler("wide", 2))));
    }

    private static GritLadder.Ends ends(int coarsest, int finest, GritScale system, Abrasive... owned) {
        return new GritLadder.Ends(
                coarsest, finest, system, owned.length == 0 ? Optional.empty() : Optional.of(List.of(owned)));
    }

    @Test
    void aLadderGoesByGrains() {
        GritLadder.Rungs rungs = answers(new GritLadder(), ends(180, 800, GritScale.P));
        assertEquals(4, rungs.grades());
        assertEquals(Optional.of("P320"), rungs.furthestNext());
        assertEquals(
                List.of(
                        new GritLadder.Rung("P180", 82, "P180", Optional.empty()),
                        new GritLadder.Rung("P240", 58.5, "P240", Optional.of(82 / 58.5)),
                        new GritLadder.Rung("P400", 35, "P400", Optional.of(58.5 / 35)),
                        new GritLadder.Rung("P800", 21.8, "P800", Optional.of(35 / 21.8))),
                rungs.ladder());
        assertEquals(
                List.of("r = d / e | d 82, e 46.2 | 1.7749"), working(new GritLadder(), ends(180, 320, GritScale.P)));
        assertEquals(
                "P800",
                answers(
                                new GritLadder(),
                                ends(220, 400, GritScale.CAMI, new Abrasive("us", 400, GritScale.CAMI), paper(220)))
                        .ladder()
                        .get(1)
                        .nearestP());
    }

    @Test
    void endsThatCannotBeAreRefused() {
        assertEquals(
                List.of("grit-ends-swapped at finest [P800, P180]"),
                told(new GritLadder(), ends(800, 180, GritScale.P)));
        assertEquals(
                List.of("grit-unknown at coarsest [185, P, P180]"),
                told(new GritLadder(), ends(185, 800, GritScale.P)));
        assertEquals(
                List.of("grit-unknown at finest [810, P, P800]"), told(new GritLadder(), ends(180, 810, GritScale.P)));
        assertEquals(
                List.of("grit-unknown at abrasives[odd].grit [390, P, P400]"),
                told(new GritLadder(), ends(180, 800, GritScale.P, new Abrasive("odd", 390, GritScale.P))));
    }

    @Test
    void whatAnOwnedLadderLacksIsTold() {
        assertEquals(
                List.of("grit-gap at abrasives [P240, P800, P400]", "leather-dust at []"),
                told(new GritLadder(), ends(180, 800, GritScale.P, paper(180), paper(240), paper(800))));
        assertEquals(
                List.of("grit-ends-missed at abrasives [P180, P800]", "leather-dust at []"),
                told(new GritLadder(), ends(180, 800, GritScale.P, paper(180), paper(240), paper(400))));
        assertEquals(
                List.of("grit-ends-missed at abrasives [P180, P800]", "leather-dust at []"),
                told(new GritLadder(), ends(180, 800, GritScale.P, paper(500), paper(800))));
        assertEquals(List.of("leather-dust at []"), told(new GritLadder(), ends(180, 180, GritScale.P)));
    }

    @Test
    void americanNumbersAreTold() {
        assertEquals(
                List.of("grit-two-charts at finest [CAMI 400]", "leather-dust at []"),
                told(new GritLadder(), ends(180, 400, GritScale.CAMI)));
        assertEquals(List.of("leather-dust at []"), told(new GritLadder(), ends(120, 220, GritScale.CAMI)));
        assertEquals(
                List.of("grit-two-charts at abrasives[us].grit [ANSI 240]", "leather-dust at []"),
                told(
                        new GritLadder(),
                        ends(180, 400, GritScale.P, paper(180), new Abrasive("us", 240, GritScale.ANSI), paper(400))));
    }

    private static LiquidNeeded.Coats coats(Liquid liquid, LiquidNeeded.LaidOn on, Optional<LiquidNeeded.Label> label) {
        return new LiquidNeeded.Coats(liquid, on, 2, label, 0.3);
    }

    @Test
    void aLiquidGoesByAreaAndCoats() {
        LiquidNeeded.LaidOn faces = new LiquidNeeded.LaidOn.Faces(Area.of(6, Units.DM2), 2);
        LiquidNeeded.Amounts amounts = answers(new LiquidNeeded(), coats(Liquid.DYE, faces, Optional.empty()));
        assertEquals(24, amounts.covered().in(Units.DM2), 1e-12);
        assertEquals(0.24 * 120 * 1.3, amounts.used().ml(), 1e-12);
        LiquidNeeded.LaidOn edges = new LiquidNeeded.LaidOn.Edges(mm(1000), mm(3));
        LiquidNeeded.Label label = new LiquidNeeded.Label(Volume.ofMl(50), Area.of(0.5, Units.M2));
        assertEquals(
                0.006 * 100 * 1.3,
                answers(new LiquidNeeded(), coats(Liquid.OTHER, edges, Optional.of(label)))
                        .used()
                        .ml(),
                1e-12);
    }

    @Test
    void aLiquidSaysWhereItsRateComesFrom() {
        LiquidNeeded.LaidOn faces = new LiquidNeeded.LaidOn.Faces(Area.of(6, Units.DM2), 1);
        assertEquals(
                List.of("V = S · q · (1 + l) | S 12 dm², q 120, l 0.3 | 18.72 ml", "used by coverage"),
                working(new LiquidNeeded(), coats(Liquid.DYE, faces, Optional.empty())));
        LiquidNeeded.Label label = new LiquidNeeded.Label(Volume.ofMl(250), Area.of(2, Units.M2));
        assertEquals(
                List.of("V = S · q · (1 + l) | S 12 dm², q 125, l 0.3 | 19.5 ml"),
                working(new LiquidNeeded(), coats(Liquid.DYE, faces, Optional.of(label))));
        assertEquals(
                List.of("dyes-and-finishes at []"),
                told(new LiquidNeeded(), coats(Liquid.DYE, faces, Optional.empty())));
        assertEquals(
                List.of("liquid-without-label at label [THINNER]"),
                told(new LiquidNeeded(), coats(Liquid.THINNER, faces, Optional.empty())));
    }

    @Test
    void waitsOfSeveralCoatsAddUp() {
        WaitingTime.Waits waits =
                answers(new WaitingTime(), new WaitingTime.Coats(Coat.EDGE_PAINT, 3, Room.COLD_OR_DAMP));
        assertEquals(28, waits.togetherAtLeast().in(Units.HOUR), 1e-9);
        assertEquals(64, waits.togetherAtMost().in(Units.HOUR), 1e-9);
        assertEquals(2, waits.betweenAtLeast().in(Units.HOUR), 1e-9);
        assertEquals(8, waits.betweenAtMost().in(Units.HOUR), 1e-9);
        assertEquals(24, waits.lastAtLeast().in(Units.HOUR), 1e-9);
        assertEquals(48, waits.lastAtMost().in(Units.HOUR), 1e-9);
        assertEquals(
                List.of(
                        "W = ((n - 1) · b + c) · s | n 2, b 30 min, c 240 min, s 1 | 270 min",
                        "W = ((n - 1) · b + c) · s | n 2, b 120 min, c 1440 min, s 1 | 1560 min"),
                working(new WaitingTime(), new WaitingTime.Coats(Coat.WATER_DYE, 2, Room.USUAL)));
        assertEquals(
                List.of("times-can-double at room []"),
                told(new WaitingTime(), new WaitingTime.Coats(Coat.WATER_DYE, 2, Room.USUAL)));
    }
}
