package org.hidewright.straps;

import static org.hidewright.straps.Straps.DRY;
import static org.hidewright.straps.Straps.bend;
import static org.hidewright.straps.Straps.hole;
import static org.hidewright.straps.Straps.layout;
import static org.hidewright.straps.Straps.mm;
import static org.hidewright.straps.Straps.place;
import static org.hidewright.straps.Straps.straight;
import static org.hidewright.straps.Straps.strap;
import static org.hidewright.straps.Straps.turnBack;
import static org.hidewright.straps.Straps.work;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.geometry.Face;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A turn-back thinner than the strap, described as a belt and as a strap. */
class SkivedTurnBackTest {
    private static final double EXACT = 1e-9;

    private static Preparation skived(double left, double ramp) {
        return new Preparation.Skived(mm(left), mm(ramp));
    }

    private static Outcome<BeltLayout.Layout> belted(Belts belt) {
        return new BeltLayout().calculate(belt.build(), Working.NONE);
    }

    private static List<Notice> notices(Outcome<?> outcome, String key) {
        return outcome.notices().stream()
                .filter(notice -> notice.kind().key().equals(key))
                .toList();
    }

    /** 3.5 mm leather round a bar of 5 mm, the legs meeting 15 mm from it, 60 mm of turned-back end beyond. */
    private static StrapLayout.Strap sameStrap(double mainMm, double tailThickness, Preparation preparation) {
        return strap(
                3.5,
                List.of(
                        straight("turn-back", 60, tailThickness, 0),
                        turnBack("buckle", 5, 15, Face.GRAIN, preparation),
                        straight("belt", mainMm)),
                hole("worn", 4.5, "belt", From.START, 855));
    }

    static Stream<Arguments> belts() {
        return Stream.of(
                Arguments.of("of one thickness", 3.5, DRY),
                Arguments.of("skived fold between thick legs", 3.5, skived(2, 10)),
                Arguments.of("turned-back end skived to the middle of the bar", 2, DRY),
                Arguments.of("turned-back end and fold skived alike", 2, skived(2, 10)),
                Arguments.of("fold thinner than its thin end", 2, skived(1.5, 8)),
                Arguments.of("cased", 3.5, new Preparation.Cased()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("belts")
    void aBeltAndTheSameStrapAreCutAlike(String name, double tailThickness, Preparation preparation) {
        Belts belt = new Belts();
        belt.preparation = preparation;
        belt.turnBackThickness = tailThickness < 3.5 ? Optional.of(mm(tailThickness)) : Optional.empty();
        BeltLayout.Layout cut = belted(belt).answers().orElseThrow();
        // worn at 900 mm from the frame end, 30 mm behind the bar: 855 mm from where the legs meet; tip 150 mm on
        StrapLayout.Layout strap = layout(sameStrap(855 + 150, tailThickness, preparation));
        assertEquals(cut.cutLength().mm(), strap.cutLength().mm(), EXACT);
        assertEquals(cut.wornHolePlace().mm(), place(strap, "worn"), EXACT);
        assertEquals(cut.slotCentre().mm(), strap.folds().get(0).middle().mm(), EXACT);
    }

    @Test
    void thickLegsLieOnEachOtherBehindASkivedFoldTheRampsLeadingThere() {
        Outcome<StrapLayout.Layout> outcome = work(strap(
                3.5,
                List.of(
                        straight("leg", 100),
                        turnBack("buckle", 5, 15, Face.GRAIN, skived(2, 10)),
                        straight("tip", 60)),
                hole("rivet", "leg", From.END, 20, "tip")));
        assertEquals(List.of(), notices(outcome, "layers-in-each-other"));
        assertEquals(List.of(), notices(outcome, "thickness-step"));
        assertEquals(List.of(), notices(outcome, "fitting-draws-together"));
        StrapLayout.Layout layout = outcome.answers().orElseThrow();
        assertEquals(7, layout.stackThickness().mm(), EXACT);
        assertEquals(layout.sections().get(2).start().mm() + 20, place(layout, "rivet-on-tip"), EXACT);
        assertEquals(Showing.GRAIN, layout.sections().get(2).shows());
    }

    @Test
    void aFlatFoldSkivedWithALongRampCloses() {
        Outcome<StrapLayout.Layout> outcome = work(strap(
                3,
                List.of(
                        straight("a", 60),
                        bend("fold", new Core.Radius(mm(0.5)), 180, Face.GRAIN, skived(1, 6)),
                        straight("b", 40, 2, 6))));
        assertEquals(List.of(), notices(outcome, "layers-in-each-other"));
        assertEquals(5, outcome.answers().orElseThrow().stackThickness().mm(), EXACT);
    }

    @Test
    void aRampTooSteepForItsRiseIsToldHowLongItHasToBe() {
        Outcome<StrapLayout.Layout> outcome = work(strap(
                3,
                List.of(
                        straight("a", 60),
                        bend("fold", new Core.Radius(mm(0)), 180, Face.GRAIN, skived(1, 5.9)),
                        straight("b", 40))));
        Notice notice = notices(outcome, "layers-in-each-other").get(0);
        assertEquals(List.of("a", "b", "fold", mm(4), mm(6)), rounded(notice));
    }

    private static List<Object> rounded(Notice notice) {
        return notice.args().stream()
                .map(arg -> arg instanceof Length length ? mm(Math.round(length.mm() * 1e6) / 1e6) : arg)
                .toList();
    }

    @Test
    void aThicknessThatJumpsIsCaughtInAStrapAndInABelt() {
        List<Notice> strap = notices(work(sameStrap(900, 2, DRY)), "thickness-step");
        assertEquals(1, strap.size());
        assertEquals("sections[buckle]", strap.get(0).place());
        assertEquals(List.of("buckle", mm(2), mm(3.5), mm(4.5)), rounded(strap.get(0)));
        Belts belt = new Belts();
        belt.turnBackThickness = Optional.of(mm(2));
        List<Notice> notices = notices(belted(belt), "thickness-step");
        assertEquals("turn-back-thickness", notices.get(0).place());
        assertEquals(1, notices.size());
    }

    @Test
    void aRampOrAStepNoGaugeFindsIsNoJump() {
        assertEquals(List.of(), notices(work(sameStrap(900, 2, skived(2, 10))), "thickness-step"));
        assertEquals(List.of(), notices(work(sameStrap(900, 3.45, DRY)), "thickness-step"));
        Belts belt = new Belts();
        belt.turnBackThickness = Optional.of(mm(2));
        belt.preparation = skived(2, 10);
        assertEquals(List.of(), notices(belted(belt), "thickness-step"));
    }

    @Test
    void aRampTooShortForItsRiseIsAJumpInABeltAsWell() {
        Belts belt = new Belts();
        belt.preparation = skived(2, 4.4);
        Notice notice = notices(belted(belt), "thickness-step").get(0);
        assertEquals("preparation", notice.place());
        assertEquals(mm(4.5), rounded(notice).get(3));
        belt.preparation = skived(2, 4.5);
        assertEquals(List.of(), notices(belted(belt), "thickness-step"));
    }

    @Test
    void thePictureOfASkivedBeltHasLegsAsThickAsTheBelt() {
        Belts belt = new Belts();
        belt.preparation = skived(2, 10);
        Box leather = belted(belt).answers().orElseThrow().sizePicture().shapes().stream()
                .filter(shape -> shape.role() == Role.SECTION)
                .findFirst()
                .orElseThrow()
                .bounds();
        // legs of 3.5 mm on each other; round the bar 2.5 + 2 mm
        assertEquals(4.5, leather.maxY(), 0.1);
        assertEquals(-4.5, leather.minY(), 0.1);
        List<String> ends = belted(belt).answers().orElseThrow().sizePicture().shapes().stream()
                .filter(shape -> shape.role() == Role.INNER_CUT)
                .map(shape -> shape.bounds().minY() + " " + shape.bounds().maxY())
                .distinct()
                .toList();
        assertEquals(List.of("0.0 3.5"), ends);
    }

    @Test
    void aBeltsSkiveRunsFromItsThinEndToWhereTheLastRampIsOut() {
        Belts belt = new Belts();
        belt.turnBackThickness = Optional.of(mm(2));
        BeltLayout.Layout layout = belted(belt).answers().orElseThrow();
        assertEquals(0, layout.skiveStart().orElseThrow().mm(), EXACT);
        assertEquals(layout.slotCentre().mm(), layout.skiveEnd().orElseThrow().mm(), EXACT);
        belt.preparation = skived(2, 10);
        layout = belted(belt).answers().orElseThrow();
        assertEquals(0, layout.skiveStart().orElseThrow().mm(), EXACT);
        assertEquals(layout.turnEnd().mm() + 10, layout.skiveEnd().orElseThrow().mm(), EXACT);
        assertTrue(belted(new Belts()).answers().orElseThrow().skiveStart().isEmpty());
    }
}
