package org.hidewright.layout;

import static org.hidewright.layout.Cuts.at;
import static org.hidewright.layout.Cuts.hide;
import static org.hidewright.layout.Cuts.panel;
import static org.hidewright.layout.Cuts.rectangle;
import static org.hidewright.layout.Cuts.upwards;
import static org.hidewright.layout.Outcomes.answers;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.hidewright.layout.CuttingLayout.LaidOut;
import org.junit.jupiter.api.Test;

/** Areas beyond straight cuts, worked by hand. */
class InOnePieceTest {
    private static double inOnePiece(Cuts cuts) {
        return answers(cuts).sheets().get(0).inOnePiece().mm2();
    }

    private static final Cuts TAB =
            Cuts.of(rectangle("tab", 60, 20)).rules(Cuts.rule("tab", Lies.AS_DRAWN, null, null, null, null));

    /** Whichever side is the largest, and whichever way the backbone runs. */
    @Test
    void theLargestOfFourSidesCounts() {
        Cuts across = TAB.on(panel("panel", 300, 200, 1));
        assertEquals(300 * 150, inOnePiece(across.laid(at("tab", "panel", 150, 40, 0))), 1e-6);
        assertEquals(300 * 150, inOnePiece(across.laid(at("tab", "panel", 150, 160, 0))), 1e-6);
        assertEquals(210 * 200, inOnePiece(across.laid(at("tab", "panel", 60, 100, 0))), 1e-6);
        assertEquals(210 * 200, inOnePiece(across.laid(at("tab", "panel", 240, 100, 0))), 1e-6);
        Cuts up = TAB.on(upwards(panel("panel", 300, 200, 1)))
                .rules(Cuts.rule("tab", Lies.AT_ANY_ANGLE, null, null, null, null));
        assertEquals(300 * 150, inOnePiece(up.laid(at("tab", "panel", 150, 40, 0))), 1e-6);
        assertEquals(210 * 200, inOnePiece(up.laid(at("tab", "panel", 60, 100, 0))), 1e-6);
    }

    /**
     * A right triangle of 600 and 400: above 50 lie 600 · 350² / 800 = 91,875 mm², right of 90 lie 400 · 510² / 1200 = 86,700. Of the 120,000
     * the tab uses up what is below: 1 - 1,200 / 28,125 of that is waste.
     */
    @Test
    void aSlantedEdgeIsCutOff() {
        LaidOut answers = answers(TAB.on(hide("0,0 600,0 0,400", 0)).laid(at("tab", "hide", 60, 40, 0)));
        assertEquals(91_875, answers.sheets().get(0).inOnePiece().mm2(), 1e-6);
        assertEquals(1 - 1_200 / 28_125.0, answers.wasteRestKept().orElseThrow(), 1e-12);
    }

    @Test
    void holesAreNoLeather() {
        String hole = "hole 100,100 200,100 200,200 100,200";
        assertEquals(
                81_875, inOnePiece(TAB.on(hide("0,0 600,0 0,400", 0, hole)).laid(at("tab", "hide", 60, 40, 0))), 1e-6);
    }

    /** Of two that carry as much the first: the other one is bought whole, or there would be too few. */
    @Test
    void ofSeveralSheetsTheOneThatCarriesLeastIsKept() {
        Cuts cuts = TAB.times(2)
                .on(panel("panel", 300, 200, 2))
                .laid(at("tab-1", "panel-1", 150, 40, 0), at("tab-2", "panel-2", 60, 100, 0));
        assertEquals(
                1 - 2_400 / (120_000.0 - 45_000), answers(cuts).wasteRestKept().orElseThrow(), 1e-12);
    }

    @Test
    void aFullSheetLeavesNothing() {
        Cuts cuts = TAB.apart(0).on(panel("panel", 60, 20, 1)).laid(at("tab", "panel", 30, 10, 0));
        assertEquals(0, inOnePiece(cuts), 1e-9);
        assertEquals(0, answers(cuts).wasteRestKept().orElseThrow(), 1e-12);
    }
}
