package org.hidewright.fasteners;

import static org.hidewright.fasteners.Fitted.PLAIN;
import static org.hidewright.fasteners.Fitted.answers;
import static org.hidewright.fasteners.Fitted.between;
import static org.hidewright.fasteners.Fitted.lengths;
import static org.hidewright.fasteners.Fitted.mm;
import static org.hidewright.fasteners.Fitted.notice;
import static org.hidewright.fasteners.Fitted.punches;
import static org.hidewright.fasteners.Fitted.shank;
import static org.hidewright.fasteners.Fitted.stack;
import static org.hidewright.fasteners.Fitted.told;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.drawing.Circle;
import org.junit.jupiter.api.Test;

/** Rivets, screw posts, eyelets and snaps worked by hand on paper. */
class FittingsTest {
    private static Rivet.Riveted riveted(Stack stack, RivetKind kind, Shank rivet, HoleMade made, Use use) {
        return new Rivet.Riveted(stack, kind, rivet, Optional.empty(), Temper.FIRM, made, use);
    }

    private static Rivet.Riveted capped(HoleMade made, Use use) {
        return riveted(stack(4.5), new RivetKind.Capped(), shank(3, 7, 9), made, use);
    }

    /** Firm leather: 3 mm shank, fine hole 3.2; pulled three holes, so 9.6 to the edge; cap 9, so 9 apart. */
    @Test
    void aCappedRivetWithTheNearestPunch() {
        Posted set = answers(new Rivet(), capped(punches(2, 3.1, 4), new Use(false, false, true)));
        assertEquals(mm(3.2), set.hole());
        assertEquals(Optional.of(mm(7)), set.post());
        assertEquals(mm(6.5), set.postFrom());
        assertEquals(Optional.of(mm(7.5)), set.postTo());
        assertEquals(Optional.empty(), set.clippedOff());
        HoleRow hole = set.holes().get(0);
        assertEquals("rivet", hole.id());
        assertEquals(mm(3.1), hole.cut());
        assertEquals(9.6, hole.fromEdge().mm(), 1e-9);
        assertEquals(mm(9), hole.between());
        assertEquals(
                lengths(2, 3.1, 4), set.tests().stream().map(TestHole::hole).toList());
    }

    @Test
    void aMachineDrawsTheCircleOneKerfNarrower() {
        Posted set = answers(new Rivet(), capped(new HoleMade.MachineCut(mm(0.2)), PLAIN));
        assertEquals(3.0, set.holes().get(0).cut().mm(), 1e-9);
        assertEquals(6.4, set.holes().get(0).fromEdge().mm(), 1e-9); // two holes, more than half the cap
        assertEquals(
                List.of(28L, 30L, 32L, 34L, 36L),
                set.tests().stream()
                        .map(test -> Math.round(10 * test.hole().mm()))
                        .toList());
        assertEquals(
                "kerf-too-wide at made.machine-cut.kerf [3.2, 3.2]",
                notice(new Rivet(), capped(new HoleMade.MachineCut(mm(3.2)), PLAIN), "kerf-too-wide"));
    }

    @Test
    void aCapWiderThanTwoHolesKeepsItsHalfFromTheEdge() {
        Posted set =
                answers(new Rivet(), riveted(stack(4.5), new RivetKind.Capped(), shank(2, 7, 13), punches(), PLAIN));
        assertEquals(mm(6.5), set.holes().get(0).fromEdge());
        assertEquals(mm(13), set.holes().get(0).between());
        assertEquals(set.hole(), set.holes().get(0).cut());
    }

    /** From memory: half to seven tenths of 4 mm, so 2 to 2.8 mm out. */
    @Test
    void aTubularRivetRollsOver() {
        Posted set = answers(
                new Rivet(), riveted(between(4, 4.5), new RivetKind.Tubular(), shank(4, 6.6, 8), punches(), PLAIN));
        assertEquals(mm(6.5), set.postFrom());
        assertEquals(6.8, set.postTo().orElseThrow().mm(), 1e-9);
        assertEquals(Optional.of(mm(6.6)), set.post());
    }

    /** 6 mm of leather, burr 0.8 and 2 to peen: 8.8 at least; of 12 mm 3.7 is clipped where the leather is 5.5. */
    @Test
    void aSolidRivetIsClippedOverItsBurr() {
        RivetKind solid = new RivetKind.Solid(mm(0.8), mm(2));
        Rivet.Riveted asked = riveted(between(5.5, 6), solid, shank(3.2, 12, 9), punches(), PLAIN);
        Posted set = answers(new Rivet(), asked);
        assertEquals(8.8, set.postFrom().mm(), 1e-9);
        assertEquals(Optional.empty(), set.postTo());
        assertEquals(3.7, set.clippedOff().orElseThrow().mm(), 1e-9);
        assertEquals(Optional.empty(), set.posts().get(0).stackFrom());
        assertEquals(9.2, set.posts().get(0).stackTo().mm(), 1e-9);
        assertEquals(
                "post-too-short at rivet.post-length [8.5, 6.0, 8.8]",
                notice(
                        new Rivet(),
                        riveted(between(5.5, 6), solid, shank(3.2, 8.5, 9), punches(), PLAIN),
                        "post-too-short"));
    }

    @Test
    void theOwnLengthAndThoseThatCanBeHadAreTriedTogether() {
        Rivet.Riveted asked = new Rivet.Riveted(
                stack(4.5),
                new RivetKind.Capped(),
                shank(3, 9, 9),
                Optional.of(lengths(6, 7)),
                Temper.MEDIUM,
                punches(),
                PLAIN);
        Posted set = answers(new Rivet(), asked);
        assertEquals(Optional.of(mm(7)), set.post());
        assertEquals(lengths(6, 7, 9), set.posts().stream().map(PostRow::post).toList());
    }

    @Test
    void aFittingWithoutItsSetterAPunchThatDoesNotSuitAndNumbersForSizesAreCaught() {
        Shank bare = new Shank(mm(3), Optional.empty(), Optional.of(mm(20)), Optional.empty());
        Rivet.Riveted asked = riveted(stack(4.5), new RivetKind.Capped(), bare, punches(1, 2, 4, 5), PLAIN);
        assertEquals("no-punch-fits at made [3.0, 3.0, 3.4, 4.0]", notice(new Rivet(), asked, "no-punch-fits"));
        assertEquals("no-setter at rivet.setter []", notice(new Rivet(), asked, "no-setter"));
        assertEquals(
                "lines-for-size at rivet.head-diameter [20.0, 20, 12.7]", notice(new Rivet(), asked, "lines-for-size"));
        assertEquals(List.of("no-punch-fits", "no-setter", "lines-for-size", "struck-tools"), told(new Rivet(), asked));
        assertEquals(Optional.empty(), answers(new Rivet(), asked).post());
        assertEquals(
                mm(3.2), answers(new Rivet(), asked).holes().get(0).cut(), "without a punch the wanted hole is told");
    }

    @Test
    void aHeadOfSeventeenMillimetresOrWithATenthIsASize() {
        for (double head : new double[] {17, 18.5, 12.7}) {
            assertFalse(
                    told(new Rivet(), riveted(stack(4.5), new RivetKind.Capped(), shank(3, 7, head), punches(), PLAIN))
                            .contains("lines-for-size"),
                    () -> "head " + head);
        }
        assertTrue(told(new Rivet(), riveted(stack(4.5), new RivetKind.Capped(), shank(3, 7, 18), punches(), PLAIN))
                .contains("lines-for-size"));
    }

    @Test
    void punchesInARowOfWholeNumbersLookLikeNumbers() {
        assertTrue(told(new Rivet(), capped(punches(1, 2, 3, 4), PLAIN)).contains("punch-numbers"));
        assertTrue(told(new Rivet(), capped(punches(4, 3, 2, 5, 6), PLAIN)).contains("punch-numbers"));
        // every number of the table of punch numbers (04f, common practice), taken for millimetres
        assertTrue(told(new Rivet(), capped(punches(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12), PLAIN))
                .contains("punch-numbers"));
        assertFalse(
                told(new Rivet(), capped(punches(1, 2, 3, 4, 5, 6, 8), PLAIN)).contains("punch-numbers"));
        assertFalse(told(new Rivet(), capped(punches(1, 2, 3, 4, 5, 6, 7, 8, 10, 12), PLAIN))
                .contains("punch-numbers"));
        // and what those punches cut is no row of numbers
        assertFalse(
                told(new Rivet(), capped(punches(1.6, 2, 2.4, 2.8, 3.2, 3.6, 4, 4.8, 5.2, 5.6, 6.4, 7.1, 8.7), PLAIN))
                        .contains("punch-numbers"));
        assertFalse(told(new Rivet(), capped(punches(2, 3, 4), PLAIN)).contains("punch-numbers"));
        assertFalse(told(new Rivet(), capped(punches(2, 3, 4, 6), PLAIN)).contains("punch-numbers"));
        assertFalse(told(new Rivet(), capped(punches(2, 3, 4, 5.5), PLAIN)).contains("punch-numbers"));
        assertFalse(told(new Rivet(), capped(punches(3, 3, 3, 3), PLAIN)).contains("punch-numbers"));
    }

    @Test
    void cautionsStandWhereTheRiskIs() {
        assertEquals(List.of("struck-tools"), told(new Rivet(), capped(punches(3.1), PLAIN)));
        assertEquals(
                List.of("struck-tools", "nickel", "small-parts", "fitting-no-load"),
                told(new Rivet(), capped(punches(3.1), new Use(true, true, true))));
        assertEquals(
                List.of("nickel"),
                told(new Rivet(), capped(new HoleMade.MachineCut(mm(0.2)), new Use(true, false, false))));
    }

    /** A screw post needs no setter; 6.2 mm of leather takes a barrel of 5.7 to 6.2. */
    @Test
    void aScrewPostMayEndInsideAndNeedsNoSetter() {
        Shank barrel = new Shank(mm(5), Optional.of(mm(6)), Optional.of(mm(10)), Optional.empty());
        ScrewPost.Screwed asked =
                new ScrewPost.Screwed(stack(6.2), barrel, Optional.empty(), Temper.SOFT, punches(5), PLAIN);
        Posted closed = answers(new ScrewPost(), asked);
        assertEquals(Optional.of(mm(6)), closed.post());
        assertEquals(5.7, closed.postFrom().mm(), 1e-9);
        assertEquals(List.of("struck-tools"), told(new ScrewPost(), asked));
    }

    @Test
    void anEyeletWantsItsHoleNoWiderThanItself() {
        Eyelet.Rolled asked = new Eyelet.Rolled(stack(3), shank(5, 5, 9), Optional.empty(), punches(4.8, 5.2), PLAIN);
        Posted rolled = answers(new Eyelet(), asked);
        assertEquals(mm(4.8), rolled.holes().get(0).cut());
        assertEquals(Optional.of(mm(5)), rolled.post());
    }

    @Test
    void aSnapHasAPostForEachOfItsHalves() {
        Snap.Halves asked = new Snap.Halves(
                stack(2),
                shank(4, 4, 12.7),
                between(3, 3.4),
                shank(4, 4, 10),
                Optional.of(lengths(5)),
                Temper.MEDIUM,
                punches(4),
                PLAIN);
        Snap.Set set = answers(new Snap(), asked);
        assertEquals(Optional.of(mm(4)), set.capPost());
        assertEquals(Optional.of(mm(5)), set.studPost());
        assertEquals(
                List.of(
                        new Snap.Half("cap", mm(3.5), Optional.of(mm(4.5)), Optional.of(mm(4))),
                        new Snap.Half("stud", mm(4.9), Optional.of(mm(5.5)), Optional.of(mm(5)))),
                set.halves());
        assertEquals(
                List.of("cap", "stud"), set.holes().stream().map(HoleRow::id).toList());
        assertEquals(List.of("struck-tools"), told(new Snap(), asked));
    }

    @Test
    void whatIsWrongWithAHalfIsToldThere() {
        Shank bare = new Shank(mm(4), Optional.of(mm(9)), Optional.of(mm(24)), Optional.empty());
        Snap.Halves asked = new Snap.Halves(
                stack(2), shank(4, 4, 12.7), stack(3), bare, Optional.empty(), Temper.MEDIUM, punches(4), PLAIN);
        assertEquals("post-too-long at stud.post-length [9.0, 3.0, 5.5]", notice(new Snap(), asked, "post-too-long"));
        assertEquals("no-setter at stud.setter []", notice(new Snap(), asked, "no-setter"));
        assertEquals(
                "lines-for-size at stud.head-diameter [24.0, 24, 15.24]", notice(new Snap(), asked, "lines-for-size"));
    }

    @Test
    void aStackWithItsEndsSwappedIsRefused() {
        assertEquals(
                "stack-ends-swapped at stack [5.0, 4.0]",
                notice(
                        new Rivet(),
                        riveted(between(5, 4), new RivetKind.Capped(), shank(3, 7, 9), punches(), PLAIN),
                        "stack-ends-swapped"));
        Snap.Halves flap = new Snap.Halves(
                between(2, 1),
                shank(4, 4, 9),
                stack(3),
                shank(4, 5, 9),
                Optional.empty(),
                Temper.SOFT,
                punches(),
                PLAIN);
        assertEquals("stack-ends-swapped at flap-stack [2.0, 1.0]", notice(new Snap(), flap, "stack-ends-swapped"));
        Snap.Halves body = new Snap.Halves(
                stack(2),
                shank(4, 4, 9),
                between(3, 2),
                shank(4, 5, 9),
                Optional.empty(),
                Temper.SOFT,
                punches(),
                PLAIN);
        assertEquals("stack-ends-swapped at body-stack [3.0, 2.0]", notice(new Snap(), body, "stack-ends-swapped"));
        Snap.Halves kerf = new Snap.Halves(
                stack(2),
                shank(4, 4, 9),
                stack(3),
                shank(2, 5, 9),
                Optional.empty(),
                Temper.SOFT,
                new HoleMade.MachineCut(mm(2)),
                PLAIN);
        assertEquals("kerf-too-wide at made.machine-cut.kerf [2.0, 2.0]", notice(new Snap(), kerf, "kerf-too-wide"));
    }

    @Test
    void aPlainHoleForACord() {
        PlainHole.Through asked =
                new PlainHole.Through(mm(6), Optional.of(mm(14)), Temper.MEDIUM, punches(5, 5.9, 6.4), true);
        PlainHole.Made made = answers(new PlainHole(), asked);
        assertEquals(mm(6), made.hole());
        assertEquals(mm(5.9), made.cut());
        assertEquals(5.85, made.atLeast().mm(), 1e-9);
        assertEquals(6.6, made.atMost().mm(), 1e-9);
        assertEquals(mm(18), made.fromEdge());
        assertEquals(mm(18), made.between());
        assertEquals(List.of("struck-tools", "fitting-no-load"), told(new PlainHole(), asked));
        assertEquals(3, made.tests().size());
        PlainHole.Through tiny = new PlainHole.Through(
                mm(0.6), Optional.empty(), Temper.MEDIUM, new HoleMade.MachineCut(mm(0.2)), false);
        assertEquals(
                List.of(4L, 6L, 8L, 10L),
                answers(new PlainHole(), tiny).tests().stream()
                        .map(test -> Math.round(10 * test.hole().mm()))
                        .toList());
        assertEquals(List.of(), told(new PlainHole(), tiny));
        assertEquals(
                "kerf-too-wide at made.machine-cut.kerf [0.6, 0.6]",
                notice(
                        new PlainHole(),
                        new PlainHole.Through(
                                mm(0.6), Optional.empty(), Temper.MEDIUM, new HoleMade.MachineCut(mm(0.6)), false),
                        "kerf-too-wide"));
    }

    /** Of more than five punches the five nearest are tried, in order. */
    @Test
    void theTestRowHasTheFiveNearestPunches() {
        List<TestHole> row =
                TestHole.around(ShankHole.of(mm(4), Temper.MEDIUM), lengths(1, 2, 3.5, 3.9, 4.2, 4.4, 4.4, 5, 9));
        assertEquals(
                lengths(3.5, 3.9, 4.2, 4.4, 5), row.stream().map(TestHole::hole).toList());
        assertEquals("t1", row.get(0).id());
        assertEquals("t5", row.get(4).id());
        List<Circle> drawn = TestHole.drawn(row).shapes().stream()
                .filter(Circle.class::isInstance)
                .map(Circle.class::cast)
                .toList();
        assertEquals(
                List.of(3.5, 3.9, 4.2, 4.4, 5.0),
                drawn.stream().map(Circle::diameter).toList());
        for (int i = 0; i < 5; i++) {
            assertEquals(18 * (i + 0.5), drawn.get(i).centre().x(), 1e-9, "as far apart as their sizes are long");
        }
        List<TestHole> wide = TestHole.around(ShankHole.of(mm(9), Temper.MEDIUM), lengths(8, 9));
        assertTrue(
                TestHole.drawn(wide).shapes().stream()
                        .filter(Circle.class::isInstance)
                        .map(Circle.class::cast)
                        .anyMatch(circle -> Math.abs(circle.centre().x() - 27 * 1.5) < 1e-9),
                "three of the widest apart");
    }
}
