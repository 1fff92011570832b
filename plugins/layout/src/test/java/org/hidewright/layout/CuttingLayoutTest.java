package org.hidewright.layout;

import static org.hidewright.layout.Cuts.at;
import static org.hidewright.layout.Cuts.hide;
import static org.hidewright.layout.Cuts.panel;
import static org.hidewright.layout.Cuts.priced;
import static org.hidewright.layout.Cuts.rectangle;
import static org.hidewright.layout.Cuts.upwards;
import static org.hidewright.layout.Outcomes.answers;
import static org.hidewright.layout.Outcomes.assertRefused;
import static org.hidewright.layout.Outcomes.outcome;
import static org.hidewright.layout.Outcomes.refusal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.Part;
import org.hidewright.api.measure.Length;
import org.hidewright.layout.CuttingLayout.Hide;
import org.hidewright.layout.CuttingLayout.LaidOut;
import org.hidewright.layout.CuttingLayout.LeftOver;
import org.hidewright.layout.CuttingLayout.LiesAt;
import org.hidewright.layout.CuttingLayout.PartRule;
import org.hidewright.layout.CuttingLayout.Placed;
import org.hidewright.layout.CuttingLayout.SheetUsed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A layout that stands there: counted, and refused where it cannot be cut. */
class CuttingLayoutTest {
    private final Cuts twoOnA4 = Cuts.of(rectangle("front", 100, 80), rectangle("back", 100, 90))
            .on(panel("panel", 210, 297, 1))
            .laid(at("front", "panel", 52, 42, 0), at("back", "panel", 52, 129, 0));

    @Test
    void areasAndSharesAreThoseOfTheParts() {
        LaidOut answers = answers(twoOnA4);
        assertEquals(2, answers.laid());
        assertEquals(2, answers.toCut());
        assertEquals(1, answers.sheetsUsed());
        double share = 17000.0 / (210 * 297);
        assertEquals(share, answers.yield().orElseThrow(), 1e-12);
        assertEquals(1 - share, answers.waste().orElseThrow(), 1e-12);
        assertEquals(17000, answers.partsArea().mm2(), 1e-9);
        assertEquals(210 * 297, answers.taken().orElseThrow().mm2(), 1e-9);
        SheetUsed used = answers.sheets().get(0);
        assertEquals("panel", used.id());
        assertEquals(2, used.laid());
        assertEquals(210 * 297 - 17000, used.left().mm2(), 1e-9);
        assertEquals(List.of(), answers.leftOver());
        assertEquals(Optional.empty(), answers.cost());
    }

    @Test
    void beforeAnythingIsLaidThePartsAreCounted() {
        LaidOut answers = answers(twoOnA4.laid().times(3));
        assertEquals(0, answers.laid());
        assertEquals(6, answers.toCut());
        assertEquals(List.of(new LeftOver("front", 3), new LeftOver("back", 3)), answers.leftOver());
        assertEquals(Optional.empty(), answers.yield());
        assertEquals(Optional.empty(), answers.drawing());
        assertEquals(List.of(), outcome(twoOnA4.laid()).notices());
    }

    @Test
    void whatHasNoPlaceIsCountedAndTold() {
        Cuts three = twoOnA4.times(2).laid(at("front-1", "panel", 52, 42, 0), at("back-2", "panel", 52, 129, 0));
        assertEquals(
                List.of(new LeftOver("front", 1), new LeftOver("back", 1)),
                answers(three).leftOver());
        assertEquals("layout-left-over", outcome(three).notices().get(0).kind().key());
    }

    @Test
    void onlySheetsThatAreCutFromCost() {
        Cuts priced = twoOnA4.on(priced(panel("panel", 210, 297, 4), 12.5), priced(panel("side", 900, 500, 1), 90))
                .laid(at("front", "panel-2", 52, 42, 0), at("back", "side", 52, 129, 0));
        assertEquals("102.50", answers(priced).cost().orElseThrow().amount().toPlainString());
        assertEquals(
                List.of("panel-2", "side"),
                answers(priced).sheets().stream().map(SheetUsed::id).toList());
    }

    /** Two millimetres lie between the parts, and two to the edges. */
    @ParameterizedTest
    @CsvSource({
        "52, 42, front, layout-fits",
        "52, 43.1, front, layout-overlap",
        "51.9, 42, front, layout-off-sheet",
        "52, 41.9, front, layout-off-sheet",
        "157.9, 42, front, layout-fits",
        "158.1, 42, front, layout-off-sheet"
    })
    void theGapIsKeptToPartsAndEdges(double x, double y, String piece, String key) {
        Cuts moved = twoOnA4.laid(at("back", "panel", 52, 129, 0), at(piece, "panel", x, y, 0));
        if (key.equals("layout-fits")) {
            assertEquals(2, answers(moved).laid());
        } else {
            assertRefused(key, "layout.pieces[front]", moved);
        }
    }

    /** Off the panel to the left, and on the other one: each is told once; of very many the first ten, and how many more there are. */
    @Test
    void allThatIsWrongIsTold() {
        Outcome<LaidOut> wrong =
                outcome(twoOnA4.laid(at("back", "panel", 52, 129, 0), at("front", "panel", 40, 43.1, 0)));
        assertEquals(
                List.of("layout-off-sheet layout.pieces[front]", "layout-overlap layout.pieces[front]"),
                wrong.notices().stream()
                        .map(notice -> notice.kind().key() + " " + notice.place())
                        .toList());
        Cuts heap = Cuts.of(rectangle("tab", 60, 20)).times(8).on(panel("panel", 300, 200, 1));
        List<Placed> onOnePlace = IntStream.rangeClosed(1, 8)
                .mapToObj(number -> at("tab-" + number, "panel", 100, 100, 0))
                .toList();
        List<Notice> told = outcome(heap.laid(onOnePlace)).notices();
        assertEquals(11, told.size());
        assertEquals("layout-more-faults", told.get(10).kind().key());
        // 8 on one place overlap in 28 pairs
        assertEquals(List.of(18), told.get(10).args());
    }

    @Test
    void aPieceMayNotLieTwiceOrBeNone() {
        assertRefused("layout-no-such-piece", "layout.pieces[flap]", twoOnA4.laid(at("flap", "panel", 52, 42, 0)));
        assertRefused(
                "layout-no-such-piece",
                "layout.pieces[front]",
                twoOnA4.laid(at("front", "panel", 52, 42, 0), at("front", "panel", 52, 200, 0)));
        assertRefused(
                "layout-no-such-sheet", "layout.pieces[front].sheet", twoOnA4.laid(at("front", "panel-2", 52, 42, 0)));
    }

    @Test
    void onlyPartsOfTheLeatherAreCut() {
        Cuts lined = Cuts.of(
                        rectangle("front", 100, 80).leather("Bridle"),
                        rectangle("lining", 100, 80).leather("Goat"),
                        rectangle("pocket", 90, 60).leather("Goat"))
                .on(panel("panel", 210, 297, 1));
        assertEquals(3, answers(lined).toCut());
        assertEquals(2, answers(lined.from("goat")).toCut());
        assertEquals(2, answers(lined.from("front; pocket")).toCut());
        Notice refused = refusal(lined.from("Calf"));
        assertEquals("layout-no-such-leather", refused.kind().key());
        assertEquals(List.of("Calf", "front, lining, pocket"), refused.args());
    }

    @Test
    void whatIsLeftStandingToBeTrimmedIsCutToo() {
        Cuts oversize = Cuts.of(rectangle("front", 100, 80).oversize(5)).on(panel("panel", 210, 297, 1));
        assertEquals(110 * 90, answers(oversize).partsArea().mm2(), 1e-9);
        assertEquals(1, answers(oversize.laid(at("front", "panel", 57, 47, 0))).laid());
        assertRefused("layout-off-sheet", "layout.pieces[front]", oversize.laid(at("front", "panel", 56.9, 47, 0)));
    }

    /** A strap 20 wide and 200 long, its direction along it, lies along the backbone within ten degrees either way round. */
    @ParameterizedTest
    @CsvSource({"0, true", "9.9, true", "10.1, false", "90, false", "180, true", "-171, true", "169, false", "360, true"
    })
    void aPartLiesAlongTheBackboneWithinItsAngle(double degrees, boolean fits) {
        Cuts strap = Cuts.of(rectangle("strap", 200, 20).direction(0)).on(panel("panel", 400, 400, 1));
        Cuts laid = strap.laid(at("strap", "panel", 200, 200, degrees));
        assertEquals(fits, !outcome(laid).refused());
        if (!fits) {
            assertRefused("layout-turned", "layout.pieces[strap].turned", laid);
        }
    }

    @Test
    void onASheetWhoseBackboneRunsUpPartsAreTurnedAQuarter() {
        Cuts strap = Cuts.of(rectangle("strap", 200, 20).direction(0)).on(upwards(panel("panel", 250, 400, 1)));
        assertRefused("layout-turned", "layout.pieces[strap].turned", strap.laid(at("strap", "panel", 120, 200, 0)));
        assertEquals(
                1, answers(strap.laid(at("strap", "panel", 120, 297.9, 90))).laid());
        assertEquals(1, answers(strap.laid(at("strap", "panel", 12, 298, -90))).laid());
        assertRefused("layout-off-sheet", "layout.pieces[strap]", strap.laid(at("strap", "panel", 120, 298.1, 90)));
    }

    @Test
    void aRuleHoldsForItsPartAlone() {
        Cuts strap = Cuts.of(rectangle("strap", 200, 20).direction(0)).on(panel("panel", 400, 400, 1));
        PartRule across = lies("strap", Lies.ACROSS_BACKBONE);
        PartRule free = lies("strap", Lies.AT_ANY_ANGLE);
        assertEquals(
                1,
                answers(strap.rules(across).laid(at("strap", "panel", 200, 200, 93)))
                        .laid());
        assertTrue(outcome(strap.rules(across).laid(at("strap", "panel", 200, 200, 0)))
                .refused());
        assertEquals(
                1,
                answers(strap.rules(free).laid(at("strap", "panel", 200, 200, 45)))
                        .laid());
        PartRule none = lies("flap", Lies.AT_ANY_ANGLE);
        assertEquals(
                "layout-no-such-part",
                outcome(strap.rules(none)).notices().get(0).kind().key());
    }

    /** A part with a slanted direction, turned over: the slant goes the other way. */
    @Test
    void theDirectionOfAPieceThatIsTurnedOverIsTurnedOverToo() {
        double slant = Math.toRadians(30);
        Cuts pair = Cuts.of(rectangle("side", 100, 60).direction(slant).pieces(1, 1))
                .on(panel("panel", 400, 400, 1));
        assertEquals(
                2,
                answers(pair.laid(at("side-1", "panel", 100, 100, -30), at("side-2", "panel", 280, 280, 30)))
                        .laid());
        assertTrue(outcome(pair.laid(at("side-2", "panel", 280, 280, -30))).refused());
    }

    private static PartRule lies(String part, Lies lies) {
        return Cuts.rule(part, lies, null, null, null, null);
    }

    /** The parts of this test are rectangles without a direction. */
    @Test
    void whereARuleAsksForADirectionAndNoneIsDrawnItIsFromLeftToRight() {
        Cuts along = Cuts.of(rectangle("strap", 100, 30))
                .on(panel("panel", 300, 200, 1))
                .rules(Cuts.rule("strap", Lies.ALONG_BACKBONE, null, null, null, null));
        Outcome<LaidOut> told = outcome(along.laid(at("strap", "panel", 150, 100, 0)));
        assertEquals(1, told.answers().orElseThrow().laid());
        assertEquals(
                List.of("layout-no-direction rules[strap].lies"),
                told.notices().stream()
                        .map(notice -> notice.kind().key() + " " + notice.place())
                        .toList());
        assertRefused("layout-turned", "layout.pieces[strap].turned", along.laid(at("strap", "panel", 150, 100, 90)));
        Cuts across = along.rules(Cuts.rule("strap", Lies.ACROSS_BACKBONE, null, null, null, null));
        assertEquals(1, answers(across.laid(at("strap", "panel", 150, 100, 90))).laid());
        Cuts drawn = Cuts.of(rectangle("strap", 100, 30).direction(Math.PI / 2))
                .on(panel("panel", 300, 200, 1))
                .rules(Cuts.rule("strap", Lies.ALONG_BACKBONE, null, null, null, null))
                .laid(at("strap", "panel", 150, 100, 90));
        assertEquals(List.of(), outcome(drawn).notices());
    }

    /** 100 by 80 turned by a quarter is 80 by 100; the hide begins at 20, 10, and its backbone runs up. */
    @Test
    void eachPieceHasItsPlaceFromTheEndsOfTheSheet() {
        Hide drawn = hide("20,10 1020,10 1020,610 20,610", 0);
        Hide up =
                new Hide(drawn.id(), drawn.outline(), drawn.rim(), Backbone.UP_THE_SHEET, drawn.flaws(), drawn.price());
        LiesAt lies = answers(Cuts.of(rectangle("front", 100, 80)).on(up).laid(at("front", "hide", 320, 210, -90)))
                .lie()
                .get(0);
        assertEquals("front", lies.id());
        assertEquals("hide", lies.sheet());
        assertEquals(320 - 40 - 20, lies.left().mm(), 1e-9);
        assertEquals(210 - 50 - 10, lies.below().mm(), 1e-9);
        assertEquals(-Math.PI / 2, lies.turned().radians(), 1e-9);
    }

    /** 30 to the right of the middle and 10 above it; turned by a quarter to the left, 10 to the left of it and 30 above. */
    @Test
    void holesArePunchedWhereThePieceLies() {
        Part.Builder front = rectangle("front", 100, 80).hole(Hole.of("stud", Point.of(5 + 50 + 30, 7 + 40 + 10), 4));
        Cuts cuts = Cuts.of(front).on(panel("panel", 300, 200, 1));
        LaidOut answers = answers(cuts.laid(at("front", "panel", 150, 100, 90)));
        Circle hole = answers.drawing().orElseThrow().shapes().stream()
                .filter(Circle.class::isInstance)
                .map(Circle.class::cast)
                .findFirst()
                .orElseThrow();
        assertEquals(Role.INNER_CUT, hole.role());
        assertEquals(140, hole.centre().x(), 1e-9);
        assertEquals(130, hole.centre().y(), 1e-9);
        assertEquals(4, hole.diameter(), 1e-9);
    }

    /** An unknown sheet hides no other fault, and a fault hides nothing that is to be looked at in the rules. */
    @Test
    void nothingHidesAnotherFault() {
        Outcome<LaidOut> wrong = outcome(twoOnA4.rules(Cuts.rule("front", null, null, null, "neck", null))
                .laid(at("back", "nosuch", 52, 129, 0), at("front", "panel", 900, 43, 0)));
        assertEquals(
                List.of("layout-no-such-sheet", "layout-off-sheet", "layout-no-such-region"),
                wrong.notices().stream().map(notice -> notice.kind().key()).toList());
    }

    @Test
    void whatCannotBeLaidOutIsRefusedBeforeItIsSearchedFor() {
        Cuts cuts = Cuts.of(rectangle("front", 100, 80));
        assertRefused("layout-no-sheets", "sheets", cuts);
        assertRefused(
                "layout-too-many",
                "pieces",
                cuts.times(1000).on(panel("p", 200, 200, 1)).times(3001));
    }

    @Test
    void theDrawingShowsWhatLiesWhere() {
        var bounds = answers(twoOnA4).drawing().orElseThrow().bounds();
        assertTrue(bounds.width() >= 210 && bounds.height() >= 297, bounds.toString());
        assertEquals(Length.ofMm(52), twoOnA4.placed().get(0).x());
    }

    @Test
    void twoThicknessesOnOneHideAreTold() {
        Cuts cuts = Cuts.of(
                        rectangle("front", 100, 80).thickness(2),
                        rectangle("back", 100, 80).thickness(2.04),
                        rectangle("gusset", 100, 30).thickness(1))
                .on(panel("panel", 210, 297, 1));
        assertEquals(
                List.of("layout-two-thicknesses leather [front, 2.0 mm, gusset, 1.0 mm]"),
                outcome(cuts).notices().stream()
                        .map(told -> told.kind().key() + " " + told.place() + " " + told.args())
                        .toList());
        assertEquals(List.of(), outcome(cuts.from("front; back")).notices());
    }
}
