package org.hidewright.straps;

import static org.hidewright.straps.Straps.DRY;
import static org.hidewright.straps.Straps.bend;
import static org.hidewright.straps.Straps.flatFold;
import static org.hidewright.straps.Straps.glued;
import static org.hidewright.straps.Straps.mm;
import static org.hidewright.straps.Straps.overlap;
import static org.hidewright.straps.Straps.roundBar;
import static org.hidewright.straps.Straps.straight;
import static org.hidewright.straps.Straps.strap;
import static org.hidewright.straps.Straps.turnBack;
import static org.hidewright.straps.Straps.work;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.geometry.Face;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Straps that could only be folded by one section going through another, each worked by hand. */
class ThroughEachOtherTest {
    private static final double EXACT = 1e-6;

    private static Section.Bend corner(String id, double radius) {
        return bend(id, new Core.Radius(mm(radius)), 90, Face.GRAIN, DRY);
    }

    /**
     * Front, bottom, back, top and flap of a pouch, all folded over 3 mm: front and back are 16 + 6 = 22 mm apart inside,
     * and the flap hangs 18 + 6 = 24 mm from the back, over the front, which reaches to 22 mm and its thickness.
     */
    static StrapLayout.Strap pouch(double thickness) {
        return pouch(thickness, straight("flap", 34));
    }

    private static StrapLayout.Strap pouch(double thickness, Section flap) {
        return strap(
                thickness,
                List.of(
                        straight("front", 56),
                        corner("front-bottom", 3),
                        straight("bottom", 16),
                        corner("bottom-back", 3),
                        straight("back", 60),
                        corner("back-top", 3),
                        straight("top", 18),
                        corner("top-flap", 3),
                        flap));
    }

    /** Legs of 60 mm, 5 mm apart; the second is turned flat upon itself once more and comes back between them. */
    private static StrapLayout.Strap betweenLegs(double thickness) {
        return strap(
                thickness,
                List.of(
                        straight("a", 60),
                        bend("u", new Core.Radius(mm(2.5)), 180, Face.GRAIN, DRY),
                        straight("b", 60),
                        flatFold("hem", Face.GRAIN),
                        straight("c", 40)));
    }

    /** Three corners of 2 mm bring the end of d up against the flesh of a, 20 + 2 · 2 mm above c. */
    private static StrapLayout.Strap upAgainst(double thickness, double length) {
        return strap(
                thickness,
                List.of(
                        straight("a", 60),
                        corner("ab", 2),
                        straight("b", 20),
                        corner("bc", 2),
                        straight("c", 26),
                        corner("cd", 2),
                        straight("d", length)));
    }

    private static List<Notice> told(StrapLayout.Strap strap, String key) {
        return work(strap).notices().stream()
                .filter(notice -> notice.kind().key().equals(key))
                .toList();
    }

    private static List<Notice> told(StrapLayout.Strap strap) {
        return told(strap, "sections-through-each-other");
    }

    private static void tells(StrapLayout.Strap strap, String one, String other, double deep, Phrase room) {
        List<Notice> told = told(strap);
        assertEquals(1, told.size(), () -> told.toString());
        assertEquals("sections[" + other + "]", told.get(0).place());
        List<Object> args = new ArrayList<>(told.get(0).args());
        assertEquals(deep, ((Length) args.remove(2)).mm(), EXACT);
        assertEquals(List.of(one, other, room), args);
    }

    @ParameterizedTest(name = "{0} mm leather: {1} mm deep")
    @CsvSource({"2.6, 0.6", "3, 1", "3.8, 1.8", "6, 4"})
    void aFlapWithoutRoomOverTheFrontGoesThroughIt(double thickness, double deep) {
        tells(pouch(thickness), "front", "flap", deep, Phrase.of("another-length-of", "bottom, back, top"));
    }

    @ParameterizedTest(name = "{0} mm leather")
    @CsvSource({"1", "2", "2.08", "2.49"})
    void aFlapThatLiesOnTheFrontOrIsPressedOnItIsNotTold(double thickness) {
        assertEquals(List.of(), told(pouch(thickness)));
    }

    @Test
    void theThickestPlaceCountsLayersThatWouldLieInEachOther() {
        double before = 0;
        for (double thickness = 1; thickness < 8; thickness += 0.1) {
            double thickest = work(pouch(thickness))
                    .answers()
                    .orElseThrow()
                    .stackThickness()
                    .mm();
            assertTrue(thickest > before, thickness + " mm leather: " + thickest + " after " + before);
            before = thickest;
        }
        assertEquals(6, work(pouch(3)).answers().orElseThrow().stackThickness().mm(), EXACT);
        assertEquals(1, work(pouch(1)).answers().orElseThrow().stackThickness().mm(), EXACT, "they lie 1 mm apart");
    }

    /** 2 mm leaves 3 mm beside it; 6 mm needs a millimetre more than the 5 mm there are. */
    @Test
    void aLayerTurnedInBetweenLegsHasToFindRoomThere() {
        assertEquals(List.of(), told(betweenLegs(2)));
        assertEquals(List.of(), told(betweenLegs(5)));
        assertEquals(List.of(), told(betweenLegs(5.5)));
        tells(betweenLegs(6), "a", "c", 1, Phrase.of("another-length-of", "b"));
    }

    /** The first fold leaves no room at all, so the layer turned in would lie wholly in the first. */
    @Test
    void aStripFoldedFlatUponItselfTwiceIsInItselfAllThrough() {
        StrapLayout.Strap rolled = strap(
                2,
                List.of(
                        straight("a", 60),
                        flatFold("fold", Face.GRAIN),
                        straight("b", 30),
                        flatFold("again", Face.GRAIN),
                        straight("c", 20)));
        tells(rolled, "a", "c", 2, Phrase.of("another-length-of", "b"));
        StrapLayout.Strap zigzag = strap(
                2,
                List.of(
                        straight("a", 60),
                        flatFold("fold", Face.GRAIN),
                        straight("b", 30),
                        flatFold("again", Face.FLESH),
                        straight("c", 20)));
        assertEquals(List.of(), told(zigzag));
    }

    /** d ends 2 mm and its length above c, and a’s flesh is 24 mm above it. */
    @Test
    void anEndThatRunsIntoALayerIsInItAsFarAsItRunsUntilItIsThrough() {
        Phrase room = Phrase.of("another-length-of", "b, c");
        assertEquals(List.of(), told(upAgainst(2, 22)));
        assertEquals(List.of(), told(upAgainst(2, 22.49)));
        tells(upAgainst(2, 22.6), "a", "d", 0.6, room);
        tells(upAgainst(2, 23.2), "a", "d", 1.2, room);
        tells(upAgainst(2, 30), "a", "d", 2, room);
    }

    /** Half of the thickness counts where it is less than the half millimetre that is pressed. */
    @Test
    void thinLeatherIsNotPressedThroughThinLeather() {
        assertEquals(List.of(), told(upAgainst(0.4, 22.19)));
        tells(upAgainst(0.4, 22.21), "a", "d", 0.21, Phrase.of("another-length-of", "b, c"));
        tells(upAgainst(0.4, 40), "a", "d", 0.4, Phrase.of("another-length-of", "b, c"));
        StrapLayout.Strap thinEnd = strap(
                2,
                Stream.concat(upAgainst(2, 1).sections().stream().limit(6), Stream.of(straight("d", 22.21, 0.4, 0)))
                        .toList());
        tells(thinEnd, "a", "d", 0.21, Phrase.of("another-length-of", "b, c"));
    }

    /** Past three quarters and a bit a bend comes round to the run it began at: at acos(r / (r + t)) before a full turn. */
    @Test
    void aBendThatComesRoundToItsOwnLegIsToldToRunStraightBetween() {
        assertEquals(List.of(), told(ring(270)));
        assertEquals(List.of(), told(ring(300))); // acos(2 / 4) is 60 degrees
        tells(ring(360), "leg", "ring", 2, Phrase.of("straight-run-between"));
    }

    private static StrapLayout.Strap ring(double turn) {
        return strap(2, List.of(straight("leg", 40), bend("ring", new Core.RoundBar(mm(4)), turn, Face.GRAIN, DRY)));
    }

    static Stream<StrapLayout.Strap> lyingAsMeant() {
        return Stream.of(
                Straps.ring(),
                Straps.skivedRing(),
                StrapNoticeCases.flat(),
                glued(StrapNoticeCases.flat(), 0.2),
                StrapNoticeCases.fold(turnBack("buckle", 5, 15, Face.GRAIN, DRY)),
                StrapNoticeCases.fold(turnBack("buckle", 5, 15, Face.FLESH, DRY)),
                StrapNoticeCases.fold(turnBack("buckle", 5, 15, Face.GRAIN, new Preparation.Skived(mm(2), mm(10)))),
                StrapNoticeCases.fold(bend("bar", new Core.FlatBar(mm(3), mm(9), mm(1.5)), 180, Face.FLESH, DRY)),
                StrapNoticeCases.fold(bend("bar", new Core.FlatBar(mm(3), mm(9), mm(1)), 180, Face.GRAIN, DRY)),
                strap(
                        2,
                        List.of(
                                straight("upper", 60),
                                StrapNoticeCases.round("over", "under"),
                                straight("back", 45),
                                flatFold("end", Face.GRAIN),
                                straight("inner-back", 45),
                                bend("under", new Core.RoundBar(mm(6)), 180, Face.FLESH, DRY),
                                straight("inner", 60))));
    }

    @ParameterizedTest
    @MethodSource("lyingAsMeant")
    void layersThatLieOnEachOtherAsMeantAreNotTold(StrapLayout.Strap strap) {
        assertEquals(List.of(), told(strap));
    }

    /** Said before in words of their own: a thinned fold between thick legs, and a nested bend off its centre. */
    @Test
    void whatIsToldInItsOwnWordsIsNotToldAgain() {
        StrapLayout.Strap thickLegs = strap(
                3,
                List.of(
                        straight("a", 40),
                        bend("fold", new Core.Radius(mm(0)), 180, Face.GRAIN, new Preparation.Skived(mm(1), mm(3))),
                        straight("b", 40)));
        assertEquals(1, told(thickLegs, "layers-in-each-other").size());
        assertEquals(List.of(), told(thickLegs));
        StrapLayout.Strap shortBack = strap(
                2,
                List.of(
                        straight("upper", 60),
                        StrapNoticeCases.round("over", "under"),
                        straight("back", 42.5),
                        flatFold("end", Face.GRAIN),
                        straight("inner-back", 45),
                        bend("under", new Core.RoundBar(mm(6)), 180, Face.FLESH, DRY),
                        straight("inner", 60)));
        assertEquals(1, told(shortBack, "nested-bend-apart").size());
        assertEquals(List.of(), told(shortBack));
    }

    @Test
    void anOverlapThatGoesThroughWhatItLiesOnIsNotSaidToBeApart() {
        StrapLayout.Strap through = pouch(3, overlap("flap", "front", 34));
        assertEquals(List.of(), told(through, "overlap-apart"));
        tells(through, "front", "flap", 1, Phrase.of("another-length-of", "bottom, back, top"));
        assertEquals(List.of(), told(pouch(2.3, overlap("flap", "front", 34)), "overlap-apart"));
        assertEquals(
                1, told(pouch(1, overlap("flap", "front", 34)), "overlap-apart").size());
        StrapLayout.Strap apart = strap(2, List.of(straight("a", 60), roundBar("bar", 6), overlap("b", "a", 40)));
        assertEquals(1, told(apart, "overlap-apart").size());
    }

    /** Both ends of a strip folded flat upon themselves twice. */
    @Test
    void everyPlaceIsToldOnce() {
        StrapLayout.Strap rolled = strap(
                2,
                List.of(
                        straight("start", 20),
                        flatFold("one", Face.GRAIN),
                        straight("back", 30),
                        flatFold("two", Face.GRAIN),
                        straight("middle", 200),
                        flatFold("three", Face.GRAIN),
                        straight("forth", 30),
                        flatFold("four", Face.GRAIN),
                        straight("end", 20)));
        assertEquals(
                List.of("sections[middle]", "sections[end]"),
                told(rolled).stream().map(Notice::place).toList());
    }
}
