package org.hidewright.stitching;

import static org.hidewright.stitching.Sewn.answers;
import static org.hidewright.stitching.Sewn.drawn;
import static org.hidewright.stitching.Sewn.mm;
import static org.hidewright.stitching.Sewn.plates;
import static org.hidewright.stitching.Sewn.shown;
import static org.hidewright.stitching.Sewn.straight;
import static org.hidewright.stitching.Sewn.told;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.geometry.AtCorners;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.geometry.Spacing;
import org.junit.jupiter.api.Test;

class StrikePlanTest {
    private final StrikePlan plan = new StrikePlan();

    private static StrikePlan.Line line(SewnLine line, List<Integer> prongs, double most) {
        return new StrikePlan.Line(line, mm(4), prongs, mm(most), AtCorners.MARK);
    }

    private static List<String> blows(StrikePlan.Planned planned) {
        return planned.strikes().stream()
                .map(strike -> strike.prongs() + ": " + strike.first() + "-" + strike.last())
                .toList();
    }

    @Test
    void theLargestIronGoesAlongAStraightLineAndItsFirstProngStandsInTheLastHole() {
        StrikePlan.Planned planned = answers(plan, line(straight(64), List.of(2, 6, 1), 0.3));
        assertEquals(17, planned.holes());
        assertEquals(List.of("6: 1-6", "6: 6-11", "6: 11-16", "2: 16-17"), blows(planned));
        assertEquals(4, planned.blows());
        assertEquals("0", shown(planned.off()));
        assertEquals(List.of("irons-struck at  []"), told(plan, line(straight(64), List.of(2, 6, 1), 0.3)));
        assertEquals(
                4,
                planned.plan().shapes().stream()
                        .filter(shape -> shape.role() == Role.NOTE)
                        .count());
    }

    /** Six prongs at 4 mm on a circle of radius 20: the chord of 5 steps rises 20 - 20 cos(atan(10 / 20)) and more. */
    @Test
    void onACurveAnIronThatWouldLeaveTheLineIsNotTaken() {
        SewnLine round = drawn("M 20 0 A 20 20 0 1 1 -20 0 A 20 20 0 1 1 20 0 Z");
        StrikePlan.Planned fine = answers(plan, line(round, List.of(1, 2, 3, 6), 0.3));
        assertTrue(fine.off().mm() <= 0.3);
        assertTrue(fine.strikes().stream().noneMatch(strike -> strike.prongs() == 6));
        StrikePlan.Planned coarse = answers(plan, line(round, List.of(1, 2, 3, 6), 3));
        assertTrue(coarse.strikes().stream().anyMatch(strike -> strike.prongs() == 6));
        int last = coarse.strikes().get(coarse.blows() - 1).last();
        assertTrue(last == coarse.holes() || last == 1, "a closed line ends where it began or just before: " + last);
    }

    @Test
    void aCornerIsTurnedWithAHoleOnIt() {
        StrikePlan.Planned planned = answers(plan, line(drawn("M 0 0 H 20 V 20"), List.of(6, 2), 0.1));
        assertEquals(List.of("6: 1-6", "6: 6-11"), blows(planned));
        assertEquals(
                List.of("no-strike-plan at prongs [6, 4, 0.1]"),
                told(plan, line(drawn("M 0 0 H 20 V 22"), List.of(6, 4), 0.1)));
    }

    @Test
    void withASingleProngEveryHoleIsMadeAlone() {
        StrikePlan.Planned planned = answers(plan, line(straight(12), List.of(1), 0.3));
        assertEquals(List.of("1: 1-1", "1: 2-2", "1: 3-3", "1: 4-4"), blows(planned));
        assertTrue(planned.plan().shapes().stream().noneMatch(shape -> shape.role() == Role.NOTE));
    }

    @Test
    void aLineOfAnItemKeepsItsHoles() {
        SewnLine rim = new SewnLine.OfItem(plates(Optional.empty()), "front.rim");
        assertEquals(5, answers(plan, line(rim, List.of(2), 1)).holes());
        SewnLine bare = new SewnLine.OfItem(plates(Optional.empty()), "front.bare");
        assertEquals(6, answers(plan, line(bare, List.of(2), 1)).holes(), "20 mm spaced at 4");
        assertEquals(
                List.of("line-not-on-item at line [x.y, back.rim, front.bare, front.rim]"),
                told(plan, line(new SewnLine.OfItem(plates(Optional.empty()), "x.y"), List.of(2), 1)));
    }

    /** All plans tried, one blow after another: none has fewer, and each prong of the one found keeps to the line. */
    @Test
    void noPlanHasFewerBlows() {
        Random random = new Random(11);
        int without = 0;
        for (int i = 0; i < 400; i++) {
            Curve curve = curve(random);
            Marks marks = Marks.of(Spacing.of(curve, 4, AtCorners.MARK));
            List<Integer> irons = irons(random);
            double most = 0.05 + 0.6 * random.nextDouble();
            Optional<List<Strikes.Blow>> found = new Strikes(marks, 4, irons, most).fewest();
            int fewest = bySearch(marks, irons, most);
            assertEquals(fewest, found.map(List::size).orElse(-1), marks.count() + " holes, irons " + irons);
            found.ifPresent(blows -> assertMakesAll(blows, marks, most));
            without += fewest < 0 ? 1 : 0;
        }
        assertTrue(without > 20 && without < 300, "both happen: " + without);
    }

    private static Curve curve(Random random) {
        double size = 10 + 25 * random.nextDouble();
        return switch (random.nextInt(4)) {
            case 0 -> Outlines.circle(Point.of(0, 0), size);
            case 1 -> Outlines.roundedRectangle(Point.of(0, 0), 2 * size, size, size / 4);
            case 2 ->
                Curve.open(List.of(Segment.cubic(
                        Point.of(0, 0), Point.of(size, size), Point.of(2 * size, -size), Point.of(3 * size, 0))));
            default ->
                Curve.open(List.of(
                        Segment.line(Point.of(0, 0), Point.of(size, 0)),
                        Segment.line(Point.of(size, 0), Point.of(size, size))));
        };
    }

    private static List<Integer> irons(Random random) {
        List<Integer> irons = new ArrayList<>();
        for (int prongs : new int[] {1, 2, 3, 5}) {
            if (random.nextInt(prongs == 1 ? 3 : 2) == 0) {
                irons.add(prongs);
            }
        }
        return irons.isEmpty() ? List.of(4) : irons;
    }

    /** Widening search over how many holes are made; prongs are placed here by hand. */
    private static int bySearch(Marks marks, List<Integer> irons, double most) {
        boolean closed = marks.line().isClosed();
        int holes = marks.count();
        BitSet made = new BitSet();
        made.set(0); // none
        for (int blows = 0; blows < 200 && !made.isEmpty(); blows++) {
            if (!made.get(holes, holes + 2).isEmpty()) {
                return blows;
            }
            BitSet more = new BitSet();
            for (int n = made.nextSetBit(0); n >= 0; n = made.nextSetBit(n + 1)) {
                for (int prongs : irons) {
                    int from = n == 0 || prongs == 1 ? n : n - 1;
                    int end = from + prongs; // holes made then
                    if (end <= (closed ? holes + 1 : holes) && end > n && keeps(marks, from, prongs, most)) {
                        more.set(end);
                    }
                }
            }
            made = more;
        }
        return -1;
    }

    private static boolean keeps(Marks marks, int from, int prongs, double most) {
        Point start = marks.point(from % marks.count());
        Point end = marks.point((from + prongs - 1) % marks.count());
        double length = start.distanceTo(end);
        for (int i = 0; i < prongs; i++) {
            double along = length / 2 + (i - (prongs - 1) / 2.0) * 4;
            double share = length == 0 ? 0 : along / length;
            Point prong =
                    Point.of(start.x() + share * (end.x() - start.x()), start.y() + share * (end.y() - start.y()));
            if (prongs > 1 && length == 0) {
                prong = start.plus((i - (prongs - 1) / 2.0) * 4, 0);
            }
            if (marks.point((from + i) % marks.count()).distanceTo(prong) > most) {
                return false;
            }
        }
        return true;
    }

    private static void assertMakesAll(List<Strikes.Blow> blows, Marks marks, double most) {
        BitSet made = new BitSet();
        for (Strikes.Blow blow : blows) {
            assertTrue(blow.off() <= most);
            assertFalse(!made.isEmpty() && blow.prongs() > 1 && !made.get(blow.from()), "starts in the last hole");
            for (int i = blow.from(); i <= blow.to(); i++) {
                made.set(i);
            }
        }
        assertEquals(marks.count(), made.get(0, marks.count()).cardinality());
    }

    /** Two prongs 4 mm apart over holes 5 mm apart stand half a millimetre from each, though both are on the line. */
    @Test
    void anIronOfAnotherPitchDoesNotPassThoughItKeepsToTheLine() {
        SewnLine rim = new SewnLine.OfItem(plates(Optional.empty()), "front.rim");
        assertEquals(List.of("no-strike-plan at prongs [2, 6, 0.3]"), told(plan, line(rim, List.of(2, 6), 0.3)));
        assertEquals("0.5", shown(answers(plan, line(rim, List.of(2, 6), 0.5)).off()));
    }

    /** One number that stands on a page twice reads the same in both places. */
    @Test
    void theWorstBlowIsRoundedAsInItsRow() {
        Declaration declaration = RecordCalculator.of(plan).declaration();
        Answer worst = declaration.answer("off").orElseThrow();
        Answer ofRow = declaration.answer("strikes").orElseThrow().columns().stream()
                .filter(column -> column.key().equals("off"))
                .findFirst()
                .orElseThrow();
        assertEquals(worst.step(), ofRow.step());
        assertEquals(worst.rounding(), ofRow.rounding());
    }
}
