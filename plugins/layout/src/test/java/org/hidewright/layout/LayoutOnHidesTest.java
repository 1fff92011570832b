package org.hidewright.layout;

import static org.hidewright.layout.Cuts.at;
import static org.hidewright.layout.Cuts.hide;
import static org.hidewright.layout.Cuts.only;
import static org.hidewright.layout.Cuts.panel;
import static org.hidewright.layout.Cuts.rectangle;
import static org.hidewright.layout.Outcomes.answers;
import static org.hidewright.layout.Outcomes.assertRefused;
import static org.hidewright.layout.Outcomes.outcome;
import static org.hidewright.layout.Outcomes.refusal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.item.Face;
import org.hidewright.layout.CuttingLayout.LaidOut;
import org.hidewright.layout.CuttingLayout.PartRule;
import org.junit.jupiter.api.Test;

/** A layout that stands on a hide: its rim, its flaws and its regions are kept. */
class LayoutOnHidesTest {
    @Test
    void onAHideRimHolesAndFlawsAreLeftOut() {
        String hole = "hole 300,300 340,300 340,340 300,340";
        String scar = "marked 600,300 640,300 640,340 600,340";
        Cuts cuts = Cuts.of(rectangle("front", 100, 80).shows(Face.GRAIN))
                .on(hide("0,0 1000,0 1000,600 0,600", 10, hole, scar));
        assertEquals(1, answers(cuts.laid(at("front", "hide", 62, 52, 0))).laid());
        assertRefused("layout-off-sheet", "layout.pieces[front]", cuts.laid(at("front", "hide", 61.9, 52, 0)));
        assertRefused("layout-over-hole", "layout.pieces[front]", cuts.laid(at("front", "hide", 391.9, 320, 0)));
        assertEquals(1, answers(cuts.laid(at("front", "hide", 392, 320, 0))).laid());
        assertRefused("layout-on-flaw", "layout.pieces[front]", cuts.laid(at("front", "hide", 620, 320, 0)));
        assertEquals(
                1,
                answers(cuts.rules(takes(Leather.SOUND)).laid(at("front", "hide", 620, 320, 0)))
                        .laid());
    }

    private static PartRule takes(Leather leather) {
        return Cuts.rule("front", null, leather, null, null, null);
    }

    private static PartRule hidden(double rim) {
        return Cuts.rule("front", null, null, rim, null, null);
    }

    private static PartRule never(String regions) {
        return Cuts.rule("front", null, null, null, regions, null);
    }

    /** The part is 100 by 80; a rim of 8 mm is turned in. */
    @Test
    void onAHiddenRimMarksMayLieButNothingWeak() {
        Cuts cuts = Cuts.of(rectangle("front", 100, 80))
                .on(hide("0,0 1000,0 1000,600 0,600", 0, "marked 300,0 310,0 310,600 300,600"));
        assertRefused("layout-on-flaw", "layout.pieces[front]", cuts.laid(at("front", "hide", 352, 300, 0)));
        assertEquals(
                1,
                answers(cuts.rules(hidden(8)).laid(at("front", "hide", 352.1, 300, 0)))
                        .laid());
        assertRefused(
                "layout-on-flaw",
                "layout.pieces[front]",
                cuts.rules(hidden(8)).laid(at("front", "hide", 351.9, 300, 0)));
        Cuts weak = cuts.on(hide("0,0 1000,0 1000,600 0,600", 0, "Weak 300,0 310,0 310,600 300,600"));
        assertRefused(
                "layout-on-flaw",
                "layout.pieces[front]",
                weak.rules(hidden(8)).laid(at("front", "hide", 352.1, 300, 0)));
    }

    @Test
    void aRegionIsForbiddenByItsName() {
        Cuts cuts = Cuts.of(rectangle("front", 100, 80))
                .on(hide("0,0 1000,0 1000,600 0,600", 0, "region belly 0,0 1000,0 1000,200 0,200"));
        assertEquals(1, answers(cuts.laid(at("front", "hide", 352, 100, 0))).laid());
        assertRefused(
                "layout-on-flaw",
                "layout.pieces[front]",
                cuts.rules(never("neck; belly")).laid(at("front", "hide", 352, 100, 0)));
        assertEquals(
                1,
                answers(cuts.rules(never("belly")).laid(at("front", "hide", 352, 240, 0)))
                        .laid());
        Notice unknown = outcome(cuts.rules(never("neck; belly"))).notices().get(0);
        assertEquals("layout-no-such-region", unknown.kind().key());
        assertEquals(List.of("neck", "belly"), unknown.args());
        Notice none = outcome(Cuts.of(rectangle("front", 100, 80))
                        .on(panel("panel", 300, 200, 1))
                        .rules(never("belly")))
                .notices()
                .get(0);
        assertEquals(List.of("belly", "–"), none.args());
    }

    /** The halves of a bend, on both sides of the backbone at 300: across it a part lies in both, over their outer edge in neither. */
    @Test
    void aPartMayLieOnSomeRegionsAlone() {
        Cuts cuts = Cuts.of(rectangle("strap", 100, 80))
                .on(hide(
                        "0,0 1000,0 1000,600 0,600",
                        0,
                        "region bend 400,100 1000,100 1000,300 400,300",
                        "region bend 400,300 1000,300 1000,500 400,500",
                        "region shoulder 0,100 400,100 400,500 0,500"))
                .rules(only("strap", "bend"));
        assertEquals(1, answers(cuts.laid(at("strap", "hide", 450, 300, 0))).laid());
        assertEquals(1, answers(cuts.laid(at("strap", "hide", 600, 460, 0))).laid());
        assertRefused("layout-off-region", "layout.pieces[strap]", cuts.laid(at("strap", "hide", 600, 461, 0)));
        assertRefused("layout-off-region", "layout.pieces[strap]", cuts.laid(at("strap", "hide", 449, 300, 0)));
        assertRefused("layout-off-region", "layout.pieces[strap]", cuts.laid(at("strap", "hide", 200, 550, 0)));
        Cuts both = cuts.rules(only("strap", "bend ; shoulder"));
        assertEquals(1, answers(both.laid(at("strap", "hide", 400, 300, 0))).laid());
        assertRefused("layout-off-region", "layout.pieces[strap]", both.laid(at("strap", "hide", 400, 545, 0)));
    }

    /** Of a belly 1000 by 200 a piece in its middle leaves most to the left and right; a scar has no name. */
    @Test
    void aRegionIsNamedOnTheDrawingBesideThePieces() {
        LaidOut answers = answers(Cuts.of(rectangle("front", 100, 80))
                .on(hide(
                        "0,0 1000,0 1000,600 0,600",
                        0,
                        "region belly 0,0 1000,0 1000,200 0,200",
                        "marked 700,400 720,400 710,420"))
                .laid(at("front", "hide", 600, 100, 0)));
        List<Label> labels = answers.drawing().orElseThrow().shapes().stream()
                .filter(Label.class::isInstance)
                .map(Label.class::cast)
                .toList();
        assertEquals(
                List.of("hide", "front", "belly"),
                labels.stream().map(Label::text).toList());
        Point place = labels.get(2).at();
        assertTrue(place.y() > 0 && place.y() < 200 && place.x() > 50 && place.x() < 500, place.toString());
    }

    @Test
    void whatAPieceLiesOnIsNamed() {
        Cuts cuts = Cuts.of(rectangle("front", 100, 80))
                .on(hide(
                        "0,0 1000,0 1000,600 0,600",
                        0,
                        "hole 20,20 30,20 30,30",
                        "marked 700,400 720,400 710,420",
                        "region belly 0,0 1000,0 1000,200 0,200"))
                .rules(never("belly"));
        assertEquals(
                List.of("front", "hide", "marked 700,400"),
                refusal(cuts.laid(at("front", "hide", 700, 400, 0))).args());
        assertEquals(
                List.of("front", "hide", "belly"),
                refusal(cuts.laid(at("front", "hide", 352, 150, 0))).args());
        assertEquals(
                List.of("front", "hide", "marked; hide"),
                refusal(cuts.rules(only("front", "marked; hide")).laid(at("front", "hide", 352, 150, 0)))
                        .args());
    }

    @Test
    void aFlawOutsideTheHideAndARuleAgainstItselfAreTold() {
        Notice outside = refusal(Cuts.of(rectangle("front", 100, 80))
                .on(hide("0,0 500,0 500,400 0,400", 5, "hole 3000,200 3010,200 3010,210")));
        assertEquals(
                "layout-flaw-outside sheets[hide].hide.flaws", outside.kind().key() + " " + outside.place());
        assertEquals(List.of("hole 3000,200"), outside.args());
        PartRule both = new PartRule(
                "front",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of("belly"),
                Optional.of("belly"),
                Optional.empty());
        List<Notice> told = outcome(Cuts.of(rectangle("front", 100, 80))
                        .on(hide("0,0 500,0 500,400 0,400", 5, "region belly 0,0 500,0 500,100"))
                        .rules(both))
                .notices();
        assertEquals("layout-rule-against-itself", told.get(0).kind().key());
        assertEquals(List.of("front", "belly"), told.get(0).args());
    }

    @Test
    void leatherWithoutTheRegionIsPassedOver() {
        Cuts cuts = Cuts.of(rectangle("strap", 100, 80))
                .on(panel("panel", 300, 200, 1))
                .rules(only("strap", "bend"));
        Notice nowhere = outcome(cuts).notices().get(0);
        assertEquals("layout-only-nowhere rules[strap].only-on", nowhere.kind().key() + " " + nowhere.place());
        assertEquals(List.of("bend", "strap", "–", "bend"), nowhere.args());
        assertRefused("layout-off-region", "layout.pieces[strap]", cuts.laid(at("strap", "panel", 150, 100, 0)));
    }

    @Test
    void anOutlineIsCornersOrPathDataAndMustNotCrossItself() {
        Cuts cuts = Cuts.of(rectangle("front", 100, 80));
        assertFalse(outcome(cuts.on(hide("M 0 0 L 500 0 C 600 200 600 300 500 400 L 0 400 Z", 5)))
                .refused());
        assertFalse(outcome(cuts.on(hide(" 0,0 0,400 500,400 500,0", 5))).refused());
        assertRefused("layout-crosses", "sheets[hide].hide.outline", cuts.on(hide("0,0 500,400 500,0 0,400", 5)));
        Notice unreadable = refusal(cuts.on(hide("0,0 500,400 wide", 5)));
        assertEquals("layout-unreadable", unreadable.kind().key());
        assertEquals(List.of("wide"), unreadable.args());
        for (String spoilt : List.of("0,0 5e999,0 5,5", "5", "")) {
            assertRefused("layout-unreadable", "sheets[hide].hide.outline", cuts.on(hide(spoilt, 5)));
        }
        for (String line : List.of("0,0 5,0 10,0", "0,0 0,0 0,0", "0,0 5,0", "0,0 0.1,0 0.1,0.1")) {
            assertTrue(outcome(cuts.on(hide(line, 5))).refused(), line);
        }
        for (String flaw : List.of("300,300 340,300 340,420", "scar 300,300 340,300 340,420", "region 0,0 900,0 9,9")) {
            Notice told = refusal(cuts.on(hide("0,0 500,0 500,400 0,400", 5, flaw)));
            assertEquals(
                    "layout-no-such-flaw sheets[hide].hide.flaws", told.kind().key() + " " + told.place());
        }
        assertRefused("layout-all-rim", "sheets[hide]", cuts.on(hide("0,0 500,0 500,30 0,30", 20)));
    }
}
