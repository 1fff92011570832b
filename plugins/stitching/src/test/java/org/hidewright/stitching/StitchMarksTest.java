package org.hidewright.stitching;

import static org.hidewright.stitching.Sewn.answers;
import static org.hidewright.stitching.Sewn.drawn;
import static org.hidewright.stitching.Sewn.mm;
import static org.hidewright.stitching.Sewn.plates;
import static org.hidewright.stitching.Sewn.shown;
import static org.hidewright.stitching.Sewn.straight;
import static org.hidewright.stitching.Sewn.told;
import static org.hidewright.stitching.Sewn.working;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.geometry.AtCorners;
import org.hidewright.api.measure.Length;
import org.hidewright.stitching.BuriedEdge.Thinner;
import org.junit.jupiter.api.Test;

class StitchMarksTest {
    private final StitchMarks marks = new StitchMarks();

    private static StitchMarks.Line line(SewnLine line, double pitch, AtCorners corners, BuriedEdge... steps) {
        return new StitchMarks.Line(
                line, mm(pitch), corners, steps.length == 0 ? Optional.empty() : Optional.of(List.of(steps)), mm(1));
    }

    @Test
    void aStraightLineHasAHoleOnBothEndsAndEvenGaps() {
        StitchMarks.Made made = answers(marks, line(straight(20), 3.8, AtCorners.MARK));
        assertEquals(6, made.holes());
        assertEquals(List.of("0", "4", "8", "12", "16", "20"), shown(made.places()));
        assertEquals("4", shown(made.smallestGap()));
        assertEquals("4", shown(made.largestGap()));
        assertEquals("20", shown(made.length()));
        assertEquals(
                6,
                made.marks().shapes().stream()
                        .filter(shape -> shape.role() == Role.STITCH_HOLE)
                        .count());
        assertEquals(
                List.of("p = L / g | L 20, g 5 | 4", "N = g + 1 | g 5 | 6"),
                working(marks, line(straight(20), 3.8, AtCorners.MARK)));
    }

    @Test
    void aClosedLineHasAsManyHolesAsGaps() {
        StitchMarks.Line square = line(drawn("M 0 0 H 20 V 20 H 0 Z"), 4, AtCorners.MARK);
        assertEquals(20, answers(marks, square).holes());
        assertTrue(working(marks, square).contains("N = g | g 20 | 20"));
        assertEquals(
                20,
                answers(marks, line(drawn("M 0 0 H 20 V 20 H 0 Z"), 4, AtCorners.SPAN))
                        .holes());
    }

    @Test
    void aHoleLandsJustOutsideABuriedEdge() {
        StitchMarks.Line after =
                line(straight(100), 4, AtCorners.MARK, new BuriedEdge("pocket", mm(42), Thinner.AFTER));
        assertTrue(shown(answers(marks, after).places()).contains("43"));
        StitchMarks.Line before =
                line(straight(100), 4, AtCorners.MARK, new BuriedEdge("pocket", mm(42), Thinner.BEFORE));
        assertTrue(shown(answers(marks, before).places()).contains("41"));
        assertEquals(
                List.of("step-off-line at steps[pocket].at [pocket, 100.5, 100]"),
                told(marks, line(straight(100), 4, AtCorners.MARK, new BuriedEdge("pocket", mm(99.5), Thinner.AFTER))));
        assertEquals(
                List.of("step-off-line at steps[pocket].at [pocket, -0.5, 100]"),
                told(marks, line(straight(100), 4, AtCorners.MARK, new BuriedEdge("pocket", mm(0.5), Thinner.BEFORE))));
    }

    /** Steps at seeded places: no hole on an edge but where it is told, and a hole just outside each. */
    @Test
    void noHoleIsOnABuriedEdgeWithoutBeingTold() {
        Random random = new Random(5);
        for (int i = 0; i < 2000; i++) {
            double length = 40 + 200 * random.nextDouble();
            double pitch = 2.5 + 3 * random.nextDouble();
            double at = 2 + (length - 4) * random.nextDouble();
            Thinner thinner = random.nextBoolean() ? Thinner.AFTER : Thinner.BEFORE;
            StitchMarks.Line asked =
                    line(straight(length), pitch, AtCorners.MARK, new BuriedEdge("e", mm(at), thinner));
            List<Length> places = answers(marks, asked).places();
            double nearest = places.stream()
                    .mapToDouble(place -> Math.abs(place.mm() - at))
                    .min()
                    .orElseThrow();
            boolean told = told(marks, asked).stream().anyMatch(text -> text.startsWith("step-too-near"));
            assertEquals(nearest < 1 - 1e-6, told, "nearest " + nearest);
            double wanted = at + (thinner == Thinner.AFTER ? 1 : -1);
            assertTrue(places.stream().anyMatch(place -> Math.abs(place.mm() - wanted) < 1e-6));
        }
    }

    @Test
    void anIronThatWouldWalkOffIsTold() {
        // 32 gaps of 3.80625 where the iron has 3.85: 1.4 mm in all
        assertEquals(
                List.of("iron-walks at pitch [3.806, 3.85, 1.4]"),
                told(marks, line(straight(121.8), 3.85, AtCorners.MARK)));
        assertEquals(List.of(), told(marks, line(straight(38.5), 3.85, AtCorners.MARK)));
        assertEquals(List.of(), told(marks, line(straight(39.4), 3.85, AtCorners.MARK)), "less than a quarter");
    }

    @Test
    void aLineOfAnItemIsFoundByItsName() {
        SewnLine.OfItem rim = new SewnLine.OfItem(plates(Optional.empty()), " front.rim ");
        StitchMarks.Made made = answers(marks, line(rim, 4, AtCorners.MARK));
        assertEquals(6, made.holes(), "spaced anew at the pitch asked");
        Circle first = (Circle) made.marks().shapes().get(1);
        assertEquals(5, first.centre().x(), 1e-9);
        assertEquals(
                List.of("line-not-on-item at line [front.hem, back.rim, front.bare, front.rim]"),
                told(marks, line(new SewnLine.OfItem(plates(Optional.empty()), "front.hem"), 4, AtCorners.MARK)));
    }

    @Test
    void aPathThatIsNoneIsTold() {
        assertTrue(told(marks, line(drawn("M 0 0 X"), 4, AtCorners.MARK)).get(0).startsWith("line-unreadable at line"));
        assertEquals(
                List.of("line-faulty at line [5, 0]"),
                told(marks, line(drawn("M 0 0 H 10 V 5 H 5 V -5"), 4, AtCorners.MARK)));
    }
}
