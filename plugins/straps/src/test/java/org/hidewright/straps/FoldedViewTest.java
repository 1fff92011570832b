package org.hidewright.straps;

import static org.hidewright.straps.DrawnLines.holes;
import static org.hidewright.straps.DrawnLines.paths;
import static org.hidewright.straps.Straps.DRY;
import static org.hidewright.straps.Straps.bend;
import static org.hidewright.straps.Straps.flatFold;
import static org.hidewright.straps.Straps.hole;
import static org.hidewright.straps.Straps.layout;
import static org.hidewright.straps.Straps.mm;
import static org.hidewright.straps.Straps.roundBar;
import static org.hidewright.straps.Straps.straight;
import static org.hidewright.straps.Straps.strap;
import static org.hidewright.straps.Straps.turnBack;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Role;
import org.hidewright.straps.geometry.Face;
import org.junit.jupiter.api.Test;

/**
 * What the folded strap shows and where, worked by hand. Every strap starts at 0, 0 and runs to the right, its grain up; a
 * fold with the grain outside turns down, one with the flesh outside up.
 */
class FoldedViewTest {
    /** Names without the legend, each with the side of its place that it hangs on. */
    private static List<String> names(Drawing drawing) {
        return drawing.shapes().stream()
                .filter(Label.class::isInstance)
                .map(Label.class::cast)
                .filter(label -> label.words() instanceof String)
                .map(label -> label.words() + " at " + DrawnLines.place(label.at()) + " " + label.anchor())
                .toList();
    }

    /** Paths of a role without the legend. */
    private static List<String> leather(Drawing drawing, Role face) {
        List<String> all = paths(drawing, face);
        return all.subList(0, all.size() - 1);
    }

    @Test
    void aStrapRoundABarShowsItsLeatherItsBarAndItsAxes() {
        Drawing folded = layout(strap(
                        3,
                        List.of(straight("leg", 60), roundBar("ring", 4), straight("tip", 60)),
                        hole("rivet", "leg", From.START, 10, "tip"),
                        new Feature.StitchRow(
                                "row", "leg", From.START, mm(5), "leg", From.END, mm(15), mm(3), Optional.empty()),
                        new Feature.FoldLine("line", "tip", From.END, mm(5), Optional.empty()),
                        new Feature.Mark("notch", "ring", From.MIDDLE, mm(0), Optional.empty())))
                .foldedView();
        // the bar's middle 2 + 3 mm under the grain of the leg
        assertEquals(List.of("60.00 -5.00 ⌀ 4.0"), holes(folded));
        assertEquals(
                List.of("0.00 0.00, 60.00 0.00, round 60.00 -5.00 to 60.00 -10.00, 0.00 -10.00"),
                leather(folded, Role.GRAIN));
        assertEquals(
                List.of("0.00 -3.00, 60.00 -3.00, round 60.00 -5.00 to 60.00 -7.00, 0.00 -7.00"),
                leather(folded, Role.FLESH));
        assertEquals(
                List.of("0.00 0.00, 60.00 0.00, round 60.00 -5.00 to 60.00 -10.00, 0.00 -10.00, "
                        + "0.00 -7.00, 60.00 -7.00, round 60.00 -5.00 to 60.00 -3.00, 0.00 -3.00, 0.00 0.00"),
                paths(folded, Role.SECTION));
        // 2.5 mm beyond either face
        assertEquals(
                List.of("10.00 2.50, 10.00 -5.50", "10.00 -12.50, 10.00 -4.50", "67.50 -5.00, 59.50 -5.00"),
                paths(folded, Role.MARK));
        assertEquals(List.of("5.00 -12.50, 5.00 -4.50"), paths(folded, Role.FOLD));
        assertEquals(List.of("5.00 0.00, 5.00 -3.00", "45.00 0.00, 45.00 -3.00"), paths(folded, Role.STITCH));
        assertEquals(
                List.of(
                        "rivet at 10.00 2.50 BOTTOM",
                        "line at 5.00 -12.50 TOP",
                        "notch at 67.50 -5.00 LEFT",
                        "leg at 30.00 1.50 BOTTOM",
                        "tip at 30.00 -11.50 TOP"),
                names(folded));
        assertEquals(List.of(), paths(folded, Role.NOTE));
    }

    @Test
    void theLegendLiesBelowEverything() {
        Drawing folded = layout(strap(2, List.of(straight("leg", 60)))).foldedView();
        // the flesh at -2 is the lowest thing drawn
        assertEquals("0.00 -8.00, 10.00 -8.00", paths(folded, Role.GRAIN).get(1));
        assertEquals("30.00 -8.00, 40.00 -8.00", paths(folded, Role.FLESH).get(1));
        assertEquals(
                List.of("leg at 30.00 1.50", "grain-face[] at 11.50 -8.00", "flesh-face[] at 41.50 -8.00"),
                DrawnLines.labels(folded));
    }

    @Test
    void aFlatBarLiesInItsFoldWithItsCorners() {
        Drawing folded = layout(strap(
                        3,
                        List.of(
                                straight("leg", 60),
                                bend("ring", new Core.FlatBar(mm(4), mm(9), mm(0.5)), 180, Face.GRAIN, DRY),
                                straight("tip", 40))))
                .foldedView();
        // grain round corners of 3.5 mm, flesh of 0.5 mm, 4 - 2 · 0.5 mm straight between
        assertEquals(
                List.of("0.00 0.00, 60.00 0.00, round 60.00 -3.50 to 63.50 -3.50, 63.50 -6.50, "
                        + "round 60.00 -6.50 to 60.00 -10.00, 20.00 -10.00"),
                leather(folded, Role.GRAIN));
        assertEquals(
                List.of("0.00 -3.00, 60.00 -3.00, round 60.00 -3.50 to 60.50 -3.50, 60.50 -6.50, "
                        + "round 60.00 -6.50 to 60.00 -7.00, 20.00 -7.00"),
                leather(folded, Role.FLESH));
        // 4 mm from leg to leg, 9 mm from the fold back
        assertEquals(
                List.of("60.00 -3.00, round 60.00 -3.50 to 60.50 -3.50, 60.50 -6.50, round 60.00 -6.50 to 60.00 -7.00, "
                        + "52.00 -7.00, round 52.00 -6.50 to 51.50 -6.50, 51.50 -3.50, "
                        + "round 52.00 -3.50 to 52.00 -3.00, 60.00 -3.00"),
                paths(folded, Role.HARDWARE));
    }

    @Test
    void aSharpBarWithTheFleshOutsideHasItsNamesOutside() {
        Drawing folded = layout(strap(
                        3,
                        List.of(
                                straight("leg", 60),
                                bend("ring", new Core.FlatBar(mm(4), mm(9), mm(0)), 180, Face.FLESH, DRY),
                                straight("tip", 40)),
                        new Feature.Mark("notch", "ring", From.MIDDLE, mm(0), Optional.empty())))
                .foldedView();
        assertEquals(
                List.of("0.00 0.00, 60.00 0.00, 60.00 4.00, 20.00 4.00"),
                leather(folded, Role.GRAIN),
                "a corner without a radius");
        assertEquals(
                List.of("0.00 -3.00, 60.00 -3.00, round 60.00 0.00 to 63.00 0.00, 63.00 4.00, "
                        + "round 60.00 4.00 to 60.00 7.00, 20.00 7.00"),
                leather(folded, Role.FLESH));
        assertEquals(
                List.of("60.00 0.00, 60.00 4.00, 51.00 4.00, 51.00 0.00, 60.00 0.00"), paths(folded, Role.HARDWARE));
        assertEquals(List.of("57.50 2.00, 65.50 2.00"), paths(folded, Role.MARK));
        assertEquals(
                List.of("notch at 65.50 2.00 LEFT", "leg at 30.00 -4.50 TOP", "tip at 40.00 8.50 BOTTOM"),
                names(folded));
    }

    @Test
    void theLegsOfATurnBackMeetBehindTheirBar() {
        Drawing grainOut = layout(strap(
                        3,
                        List.of(straight("leg", 60), turnBack("ring", 4, 12, Face.GRAIN, DRY), straight("tip", 40)),
                        new Feature.Mark("notch", "ring", From.MIDDLE, mm(0), Optional.empty())))
                .foldedView();
        // the flesh of both legs meets at 60, 12 mm behind the bar's middle
        assertEquals(List.of("72.00 -3.00 ⌀ 4.0"), holes(grainOut));
        String flesh = leather(grainOut, Role.FLESH).get(0);
        assertEquals("0.00 -3.00, 60.00 -3.00, ", flesh.substring(0, 25));
        assertEquals(", 60.00 -3.00, 20.00 -3.00", flesh.substring(flesh.length() - 26));
        assertEquals(List.of("79.50 -3.00, 71.50 -3.00"), paths(grainOut, Role.MARK));
        assertEquals(
                List.of("notch at 79.50 -3.00 LEFT", "leg at 30.00 1.50 BOTTOM", "tip at 40.00 -7.50 TOP"),
                names(grainOut));
        Drawing fleshOut = layout(strap(
                        3,
                        List.of(straight("leg", 60), turnBack("ring", 4, 12, Face.FLESH, DRY), straight("tip", 40)),
                        new Feature.Mark("notch", "ring", From.MIDDLE, mm(0), Optional.empty())))
                .foldedView();
        assertEquals(List.of("72.00 0.00 ⌀ 4.0"), holes(fleshOut));
        assertEquals(List.of("71.50 0.00, 79.50 0.00"), paths(fleshOut, Role.MARK));
        assertEquals(
                List.of("notch at 79.50 0.00 LEFT", "leg at 30.00 -4.50 TOP", "tip at 40.00 4.50 BOTTOM"),
                names(fleshOut));
    }

    /** Three layers of 2 mm on each other: a from 0 to 60, b back to 10, c forward again to 60. */
    @Test
    void aLayerBetweenOthersIsNamedOutsideWithALineToIt() {
        Drawing folded = layout(strap(
                        2,
                        List.of(
                                straight("a", 60),
                                flatFold("ab", Face.GRAIN),
                                straight("b", 50),
                                flatFold("bc", Face.FLESH),
                                straight("c", 50)),
                        hole("stud", "b", From.START, 20, "c")))
                .foldedView();
        assertEquals(List.of("40.00 -6.50, 40.00 0.50", "40.00 -1.50, 40.00 -8.50"), paths(folded, Role.MARK));
        // from the middle of b, at -3, past c, at -6
        assertEquals(List.of("40.00 -3.00, 40.00 -8.50", "27.50 -3.00, 27.50 -7.50"), paths(folded, Role.NOTE));
        // a letter is 1.3 mm wide; a name of one and ten more want 7.15 mm of room: in the middle of b, at 35, the stud
        // is
        // nearer; 35 % along is nearer still (42.5), 65 % is far enough; c's middle is 5.1 mm from the stud's name, its
        // 35 % (27.5) taken by b, so 20 % stands freest
        assertEquals(
                List.of(
                        "stud at 40.00 -8.50 TOP",
                        "a at 30.00 1.50 BOTTOM",
                        "b at 27.50 -7.50 TOP",
                        "c at 20.00 -7.50 TOP"),
                names(folded));
    }

    @Test
    void theFleshFollowsTheRampsOfSkives() {
        Drawing fold = layout(Straps.skivedRing()).foldedView();
        // legs of 3 mm meet at -3, the bar's middle; round it 2 mm of radius and 1 mm of leather
        assertEquals(
                List.of(
                        "0.00 -3.00, 51.00 -3.00, 60.00 -1.00, round 60.00 -3.00 to 60.00 -5.00, 51.00 -3.00, 0.00 -3.00"),
                leather(fold, Role.FLESH));
        Drawing thinMiddle = layout(strap(3, List.of(straight("a", 60), straight("b", 40, 1, 6), straight("c", 50))))
                .foldedView();
        assertEquals(
                List.of("0.00 -3.00, 54.00 -3.00, 60.00 -1.00, 100.00 -1.00, 106.00 -3.00, 150.00 -3.00"),
                leather(thinMiddle, Role.FLESH));
        assertEquals(List.of("0.00 0.00, 60.00 0.00, 100.00 0.00, 150.00 0.00"), leather(thinMiddle, Role.GRAIN));
        Drawing twoZones = layout(
                        strap(4, List.of(straight("a", 30, 1, 9), straight("b", 40), straight("c", 30, 2, 6))))
                .foldedView();
        assertEquals(
                List.of("0.00 -1.00, 30.00 -1.00, 39.00 -4.00, 64.00 -4.00, 70.00 -2.00, 100.00 -2.00"),
                leather(twoZones, Role.FLESH));
        Drawing step = layout(strap(3, List.of(straight("a", 60), straight("b", 40, 1, 0))))
                .foldedView();
        assertEquals(
                List.of("0.00 -3.00, 60.00 -3.00, 60.00 -1.00, 100.00 -1.00"),
                leather(step, Role.FLESH),
                "without a ramp");
    }

    /**
     * Kept are 14 mm round the ends of the sections (0, 300 and the bend to 305; up, 2 and the bend’s depth to 3, 402) and
     * round the stud at 202. Along the paper 14 to 285 is left out, up it 17 to 188 and 216 to 388; gaps are 6 mm.
     */
    @Test
    void aStrapLongBothWaysIsBrokenBothWays() {
        Drawing folded = layout(strap(
                        3,
                        List.of(
                                straight("leg", 300),
                                bend("corner", new Core.Radius(mm(2)), 90, Face.FLESH, DRY),
                                straight("up", 400)),
                        hole("stud", "up", From.START, 200)))
                .foldedView();
        assertEquals(
                List.of(
                        "0.00 0.00, 14.00 0.00",
                        "20.00 0.00, 35.00 0.00, round 35.00 2.00 to 37.00 2.00, 37.00 17.00",
                        "37.00 23.00, 37.00 51.00",
                        "37.00 57.00, 37.00 71.00"),
                leather(folded, Role.GRAIN));
        assertEquals(
                List.of(
                        "0.00 -3.00, 14.00 -3.00",
                        "20.00 -3.00, 35.00 -3.00, round 35.00 2.00 to 40.00 2.00, 40.00 17.00",
                        "40.00 23.00, 40.00 51.00",
                        "40.00 57.00, 40.00 71.00"),
                leather(folded, Role.FLESH));
        // waves reach 1.5 mm beyond either face
        assertEquals(
                List.of(
                        "14.00 1.50, 14.00 -4.50",
                        "20.00 1.50, 20.00 -4.50",
                        "35.50 17.00, 41.50 17.00",
                        "35.50 23.00, 41.50 23.00",
                        "35.50 51.00, 41.50 51.00",
                        "35.50 57.00, 41.50 57.00"),
                paths(folded, Role.NOTE));
        assertEquals(List.of("34.50 37.00, 42.50 37.00"), paths(folded, Role.MARK));
        // the middle of the longest part shown, unless a fitting is there
        assertEquals(
                List.of("stud at 34.50 37.00 RIGHT", "leg at 27.50 1.50 BOTTOM", "up at 35.50 9.50 RIGHT"),
                names(folded));
    }

    /** Left out of both legs are 14 to 86 and 114 to 184: the bend, 5 mm deep with its bar of 4 mm beside, begins at 198. */
    @Test
    void bothLegsOfALongStrapAreBrokenAlike() {
        Drawing folded = layout(strap(
                        3,
                        List.of(straight("leg", 200), roundBar("ring", 4), straight("tip", 200)),
                        hole("rivet", "leg", From.START, 100)))
                .foldedView();
        assertEquals(
                List.of(
                        "0.00 0.00, 14.00 0.00",
                        "20.00 0.00, 48.00 0.00",
                        "54.00 0.00, 70.00 0.00, round 70.00 -5.00 to 70.00 -10.00, 54.00 -10.00",
                        "48.00 -10.00, 20.00 -10.00",
                        "14.00 -10.00, 0.00 -10.00"),
                leather(folded, Role.GRAIN));
        assertEquals(List.of("70.00 -5.00 ⌀ 4.0"), holes(folded));
        assertEquals(
                List.of("rivet at 34.00 2.50 BOTTOM", "leg at 62.00 1.50 BOTTOM", "tip at 34.00 -11.50 TOP"),
                names(folded));
    }

    private static int parts(double length, Feature... features) {
        return paths(
                        layout(strap(2, List.of(straight("leg", length)), features))
                                .foldedView(),
                        Role.SECTION)
                .size();
    }

    @Test
    void whatIsNotWorthLeavingOutIsDrawn() {
        assertEquals(1, parts(150), "150 mm fit beside their names");
        assertEquals(2, parts(150.1));
        assertEquals(3, parts(300, hole("one", "leg", From.START, 100)));
        // between the two 200 - 100 - 2 · 14 mm
        assertEquals(
                3,
                parts(300, hole("one", "leg", From.START, 100), hole("two", "leg", From.START, 158)),
                "30 mm are drawn");
        assertEquals(4, parts(300, hole("one", "leg", From.START, 100), hole("two", "leg", From.START, 158.1)));
    }

    @Test
    void skivesAndEndsOfRowsAreKeptInThePicture() {
        List<Section> thinEnd = List.of(straight("leg", 300), straight("tip", 40, 1, 60));
        // ramp from 240 to 300: kept from 226
        assertEquals(
                List.of("0.00 -2.00, 14.00 -2.00", "20.00 -2.00, 34.00 -2.00, 94.00 -1.00, 134.00 -1.00"),
                leather(layout(strap(2, thinEnd)).foldedView(), Role.FLESH));
        assertEquals(
                3,
                parts(
                        300,
                        new Feature.StitchRow(
                                "row",
                                "leg",
                                From.START,
                                mm(10),
                                "leg",
                                From.START,
                                mm(150),
                                mm(3),
                                Optional.empty())));
    }
}
