package org.hidewright.straps;

import static org.hidewright.straps.Straps.DRY;
import static org.hidewright.straps.Straps.flatFold;
import static org.hidewright.straps.Straps.glued;
import static org.hidewright.straps.Straps.hole;
import static org.hidewright.straps.Straps.layout;
import static org.hidewright.straps.Straps.mm;
import static org.hidewright.straps.Straps.overlap;
import static org.hidewright.straps.Straps.roundBar;
import static org.hidewright.straps.Straps.straight;
import static org.hidewright.straps.Straps.strap;
import static org.hidewright.straps.Straps.turnBack;
import static org.hidewright.straps.Straps.work;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.geometry.Face;
import org.junit.jupiter.api.Test;

class FittingsTest {
    private static final double EXACT = 1e-9;

    private static StrapLayout.Strap roundARing(Feature... features) {
        return strap(3, List.of(straight("leg", 100), roundBar("ring", 4), straight("tip", 50)), features);
    }

    private static double thickest(StrapLayout.Strap strap) {
        return layout(strap).stackThickness().mm();
    }

    private static List<Notice> drawn(StrapLayout.Strap strap) {
        return work(strap).notices().stream()
                .filter(notice -> notice.kind().equals(Fittings.LAYERS_APART))
                .toList();
    }

    @Test
    void aRivetThroughBothLegsMakesTheThickestPlaceAlthoughTheBarHoldsThemApart() {
        assertEquals(3, thickest(roundARing()), EXACT);
        StrapLayout.Strap riveted = roundARing(hole("rivet", "leg", From.END, 15, "tip"));
        assertEquals(6, thickest(riveted), EXACT);
        assertEquals(6.2, thickest(glued(riveted, 0.2)), EXACT);
    }

    @Test
    void aHoleThroughOneLegDrawsNothingTogether() {
        StrapLayout.Strap pierced = roundARing(hole("hole", "leg", From.END, 15));
        assertEquals(3, thickest(pierced), EXACT);
        assertEquals(List.of(), drawn(pierced));
    }

    @Test
    void stitchesThroughBothLegsDrawThemTogetherAtEitherEndOfTheRow() {
        Feature row = new Feature.StitchRow(
                "row", "leg", From.END, mm(40), "leg", From.END, mm(10), mm(3), Optional.of(List.of("tip")));
        assertEquals(6, thickest(roundARing(row)), EXACT);
        assertEquals(1, drawn(roundARing(row)).size());
    }

    @Test
    void aMarkOnBothLegsDrawsNothingTogether() {
        Feature mark = new Feature.Mark("centre", "leg", From.END, mm(20), Optional.of(List.of("tip")));
        assertEquals(3, thickest(roundARing(mark)), EXACT);
        assertEquals(List.of(), drawn(roundARing(mark)));
    }

    @Test
    void theNoteNamesTheFittingWhatItJoinsAndTheGapItHasToClose() {
        Notice note =
                drawn(roundARing(hole("rivet", "leg", From.END, 15, "tip"))).get(0);
        assertEquals("features[rivet]", note.place());
        assertEquals(List.of("rivet", "tip", "leg"), note.args().subList(0, 3));
        assertEquals(4, ((Length) note.args().get(3)).mm(), EXACT);
    }

    @Test
    void legsThatMeetBehindTheBarNeedNoDrawingTogether() {
        StrapLayout.Strap turnedBack = strap(
                3,
                List.of(straight("leg", 100), turnBack("buckle", 4, 12, Face.GRAIN, DRY), straight("tip", 50)),
                hole("rivet", "leg", From.END, 15, "tip"));
        assertEquals(6, thickest(turnedBack), EXACT);
        assertEquals(List.of(), drawn(turnedBack));
    }

    @Test
    void whatLiesAgainstAPiercedLayerIsPressedWithIt() {
        StrapLayout.Strap three = strap(
                2,
                List.of(
                        straight("leg", 100),
                        roundBar("ring", 6),
                        straight("back", 60),
                        flatFold("fold", Face.FLESH),
                        overlap("tip", "back", 60)),
                hole("rivet", "leg", From.END, 20, "back"));
        assertEquals(6, thickest(three), EXACT);
        assertEquals(6, ((Length) drawn(three).get(0).args().get(3)).mm(), EXACT);
    }
}
