package org.hidewright.edges;

import static org.hidewright.edges.Finished.BURNISHED;
import static org.hidewright.edges.Finished.MOUTH;
import static org.hidewright.edges.Finished.answers;
import static org.hidewright.edges.Finished.beveler;
import static org.hidewright.edges.Finished.edge;
import static org.hidewright.edges.Finished.keys;
import static org.hidewright.edges.Finished.mm;
import static org.hidewright.edges.Finished.outcome;
import static org.hidewright.edges.Finished.owning;
import static org.hidewright.edges.Finished.paper;
import static org.hidewright.edges.Finished.piece;
import static org.hidewright.edges.Finished.told;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Bevelers and abrasives that a maker owns: which are named for an edge, and what is missing among them. */
class OwnedToolsTest {
    private static final Edge RIM = edge("rim", 400, 3.6, EdgePlace.SEWN_TOGETHER, BURNISHED);

    @Test
    void theBevelerNearestToTheBevelIsNamed() {
        Finishing.Piece owning = owning(
                piece(RIM),
                List.of(beveler("small", 0.8), beveler("right", 1.1), beveler("wide", 2)),
                List.of(),
                List.of());
        assertEquals(Optional.of("right"), answers(owning).edges().get(0).beveler());
        assertEquals(1.2, answers(owning).edges().get(0).bevel().orElseThrow().mm(), 1e-12);
        assertEquals(
                List.of("no-beveler-fits at edge-tools [1.5 mm, 0.5 mm]"),
                told(new Finishing(), owning(piece(MOUTH), List.of(beveler("wide", 2)), List.of(), List.of())).stream()
                        .filter(line -> line.startsWith("no-beveler"))
                        .toList());
        EdgeTool slicker = new EdgeTool("slicker", EdgeTool.Kind.SLICKER, Optional.of(mm(1.2)));
        EdgeTool unmeasured = new EdgeTool("unmeasured", EdgeTool.Kind.BEVELER, Optional.empty());
        Finishing.Piece others = owning(piece(RIM), List.of(slicker, unmeasured), List.of(), List.of());
        assertEquals(Optional.empty(), answers(others).edges().get(0).beveler());
        assertFalse(keys(others).contains("no-beveler-fits"));
    }

    /** Between a sixth of the thickness and what leaves a third of it flat; 1.5 mm is enough for any edge. */
    @Test
    void bevelersThatLeaveTheCornerOrEatTheEdgeAreNotNamed() {
        assertEquals(Optional.of("a"), nearest(6, beveler("a", 1)));
        assertEquals(Optional.empty(), nearest(6, beveler("a", 0.99)));
        assertEquals(Optional.of("a"), nearest(12, beveler("a", 1.5)));
        assertEquals(Optional.empty(), nearest(12, beveler("a", 1.49)));
        assertEquals(Optional.of("a"), nearest(3, beveler("a", Math.sqrt(2))));
        assertEquals(Optional.empty(), nearest(3, beveler("a", 1.42)));
        assertEquals(Optional.of("narrow"), nearest(3, beveler("wide", 1.25), beveler("narrow", 0.75)));
    }

    private static Optional<String> nearest(double thickness, EdgeTool... tools) {
        return Bevel.beveler(
                        List.of(tools), mm(thickness), Bevel.of(mm(thickness)).orElseThrow())
                .map(EdgeTool::id);
    }

    @Test
    void gritsAreThoseOwned() {
        Finishing.Piece owning =
                owning(piece(RIM), List.of(), List.of(paper(180), paper(320), paper(600), paper(800)), List.of());
        assertEquals("P180, P320, P600, P800", answers(owning).edges().get(0).grits());
        assertFalse(keys(owning).stream().anyMatch(key -> key.startsWith("grit")));
    }

    @Test
    void whatIsMissingBetweenGradesIsTold() {
        assertEquals(List.of("grit-gap at abrasives [P240, P800, P400]"), grits(paper(180), paper(240), paper(800)));
        assertEquals(
                List.of("grit-not-fine-enough at abrasives [P400, P800]"), grits(paper(180), paper(240), paper(400)));
        assertEquals(List.of("grit-not-coarse-enough at abrasives [P500, P180]"), grits(paper(500), paper(800)));
        assertEquals(
                List.of("grit-two-charts at abrasives[us].grit [CAMI 320]"),
                grits(
                        paper(180),
                        new Abrasive("us", 320, GritScale.CAMI),
                        paper(320),
                        paper(800),
                        new Abrasive("coarse", 220, GritScale.ANSI)));
    }

    private static List<String> grits(Abrasive... owned) {
        return told(new Finishing(), owning(piece(RIM), List.of(), List.of(owned), List.of())).stream()
                .filter(line -> line.startsWith("grit"))
                .toList();
    }

    @Test
    void aGradeThatIsNotListedIsRefused() {
        assertEquals(
                List.of("grit-unknown at abrasives[odd].grit [350, P, P360]"),
                told(
                        new Finishing(),
                        owning(
                                piece(RIM),
                                List.of(),
                                List.of(paper(240), new Abrasive("odd", 350, GritScale.P)),
                                List.of())));
        assertEquals(
                List.of("grit-unknown at abrasives[odd].grit [5, P, P12]"),
                told(
                        new Finishing(),
                        owning(piece(RIM), List.of(), List.of(new Abrasive("odd", 5, GritScale.P)), List.of())));
        assertEquals(
                List.of("grit-unknown at abrasives[odd].grit [9000, CAMI, CAMI 1000]"),
                told(
                        new Finishing(),
                        owning(piece(RIM), List.of(), List.of(new Abrasive("odd", 9000, GritScale.CAMI)), List.of())));
        assertTrue(outcome(
                        new Finishing(),
                        owning(piece(RIM), List.of(), List.of(new Abrasive("odd", 350, GritScale.P)), List.of()))
                .refused());
        assertFalse(outcome(
                        new Finishing(),
                        owning(piece(RIM), List.of(), List.of(new Abrasive("film", 350, GritScale.MICRON)), List.of()))
                .refused());
    }
}
