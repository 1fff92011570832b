package org.hidewright.api.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.junit.jupiter.api.Test;

class SpacingTest {
    private static final Point ORIGIN = Point.of(0, 0);
    private static final Curve LINE = Curve.open(List.of(Segment.line(ORIGIN, Point.of(100, 0))));
    private static final Curve PLATE = Outlines.rectangle(ORIGIN, 40, 30);

    private static List<Double> along(Spacing spacing) {
        return spacing.marks().stream()
                .map(mark -> Math.round(mark.along() * 1e6) / 1e6)
                .toList();
    }

    @Test
    void anOpenLineHasAMarkOnBothEndsAndEqualGapsBetween() {
        Spacing spacing = Spacing.of(LINE, 3.85, AtCorners.MARK);
        assertEquals(27, spacing.count()); // 100 / 3.85 = 25.97, so 26 gaps
        assertEquals(100.0 / 26, spacing.smallestGap(), 1e-9);
        assertEquals(spacing.smallestGap(), spacing.largestGap());
        assertEquals(27, spacing.marks().size());
        assertEquals(0, spacing.marks().get(0).along());
        assertEquals(100, spacing.marks().get(26).along(), 1e-9);
        assertEquals(100.0 / 26 * 11, spacing.marks().get(11).point().x(), 1e-9);
    }

    @Test
    void aLineShorterThanThePitchKeepsItsTwoEnds() {
        Curve shorter = Curve.open(List.of(Segment.line(ORIGIN, Point.of(1, 0))));
        assertEquals(List.of(0.0, 1.0), along(Spacing.of(shorter, 4, AtCorners.MARK)));
    }

    @Test
    void aClosedLineWithoutCornersHasAsManyMarksAsGaps() {
        Curve circle = Outlines.circle(ORIGIN, 100 / Math.PI);
        Spacing spacing = Spacing.of(circle, 9.9, AtCorners.MARK);
        assertEquals(10, spacing.count());
        assertEquals(10, spacing.largestGap(), 1e-9);
    }

    @Test
    void everyCornerCanHaveAMark() {
        Spacing spacing = Spacing.of(PLATE, 10, AtCorners.MARK);
        assertEquals(
                List.of(0.0, 10.0, 20.0, 30.0, 40.0, 50.0, 60.0, 70.0, 80.0, 90.0, 100.0, 110.0, 120.0, 130.0),
                along(spacing));
    }

    @Test
    void everyCornerCanBeSpanned() {
        Spacing spacing = Spacing.of(PLATE, 10, AtCorners.SPAN);
        assertEquals(
                List.of(5.0, 15.0, 25.0, 35.0, 45.0, 55.0, 65.0, 75.0, 85.0, 95.0, 105.0, 115.0, 125.0, 135.0),
                along(spacing));
    }

    @Test
    void cornersCanBePassedOver() {
        assertEquals(List.of(0.0, 35.0, 70.0, 105.0), along(Spacing.of(PLATE, 33, AtCorners.PASS)));
    }

    @Test
    void anOpenLineCanSpanItsCornerAndStillEndsOnMarks() {
        Curve bent = Curve.open(
                List.of(Segment.line(ORIGIN, Point.of(35, 0)), Segment.line(Point.of(35, 0), Point.of(35, 25))));
        assertEquals(List.of(0.0, 10.0, 20.0, 30.0, 40.0, 50.0, 60.0), along(Spacing.of(bent, 10, AtCorners.SPAN)));
        assertEquals(
                List.of(0.0, 11.666667, 23.333333, 35.0, 47.5, 60.0), along(Spacing.of(bent, 10.5, AtCorners.MARK)));
    }

    /** A gusset is longer or shorter than the edge it is sewn to, and yet has hole on hole. */
    @Test
    void aMateOfAnotherLengthHasTheSameCount() {
        Spacing edge = Spacing.of(PLATE.between(40, 140), 3.4, AtCorners.MARK);
        Curve longer = Outlines.rectangle(ORIGIN, 41, 31).between(41, 144);
        Spacing gusset = edge.on(longer, AtCorners.MARK);
        assertEquals(edge.count(), gusset.count());
        assertTrue(gusset.smallestGap() > edge.smallestGap());
        assertEquals(longer.length(), gusset.marks().get(gusset.count() - 1).along(), 1e-9);
        assertThrows(IllegalArgumentException.class, () -> edge.on(LINE, AtCorners.MARK));
        assertThrows(IllegalArgumentException.class, () -> edge.on(PLATE, AtCorners.MARK));
    }

    @Test
    void marksOnAnyOutlineAreAsFarApartAlongItAsTold() {
        for (long seed = 0; seed < Seeds.count(100, 100); seed++) {
            Curve outline = SeededOutlines.outline(seed);
            for (AtCorners atCorners : AtCorners.values()) {
                Spacing spacing = Spacing.of(outline, 3.85, atCorners);
                List<Spot> marks = spacing.marks();
                assertEquals(spacing.count(), marks.size());
                double first = marks.get(0).along();
                for (int i = 0; i < marks.size(); i++) {
                    double next = i + 1 < marks.size() ? marks.get(i + 1).along() : first + outline.length();
                    double gap = outline.between(marks.get(i).along(), next % outline.length())
                            .length();
                    assertTrue(gap > spacing.smallestGap() - 1e-6, "seed " + seed + " " + atCorners + " " + gap);
                    assertTrue(gap < spacing.largestGap() + 1e-6, "seed " + seed + " " + atCorners + " " + gap);
                }
            }
        }
    }

    @Test
    void aPitchMustBeAbove0() {
        assertThrows(IllegalArgumentException.class, () -> Spacing.of(LINE, 0, AtCorners.MARK));
        assertThrows(IllegalArgumentException.class, () -> Spacing.of(LINE, Double.NaN, AtCorners.MARK));
    }

    @Test
    void marksAreAlsoWhereTheyAreWanted() {
        Curve line = Curve.open(List.of(Segment.line(Point.of(0, 0), Point.of(100, 0))));
        Spacing spacing = Spacing.of(line, 4, AtCorners.MARK, List.of(33.0, 71.5));
        List<Double> along = spacing.marks().stream().map(Spot::along).toList();
        assertEquals(1 + 8 + 10 + 7, along.size());
        assertEquals(33.0, along.get(8), 1e-9);
        assertEquals(71.5, along.get(18), 1e-9);
        assertEquals(100.0, along.get(25), 1e-9);
        assertEquals(38.5 / 10, spacing.smallestGap(), 1e-9);
        assertEquals(33.0 / 8, spacing.largestGap(), 1e-9);
    }

    @Test
    void aMarkWantedOnACornerThatIsSpannedIsThere() {
        Curve square = Outlines.rectangle(Point.of(0, 0), 40, 40);
        List<Double> along = Spacing.of(square, 4, AtCorners.SPAN, List.of(40.0, 60.0)).marks().stream()
                .map(Spot::along)
                .toList();
        assertTrue(along.stream().anyMatch(at -> Math.abs(at - 40) < 1e-9), along.toString());
        assertTrue(along.stream().anyMatch(at -> Math.abs(at - 60) < 1e-9), along.toString());
        assertTrue(along.stream().noneMatch(at -> Math.abs(at - 80) < 1e-9), along.toString());
        assertEquals(along.size(), along.stream().distinct().count());
    }

    @Test
    void marksWantedAtTheEndsChangeNothing() {
        Curve line = Curve.open(List.of(Segment.line(Point.of(0, 0), Point.of(100, 0))));
        assertEquals(
                Spacing.of(line, 4, AtCorners.PASS).marks(),
                Spacing.of(line, 4, AtCorners.PASS, List.of(0.0, 100.0)).marks());
        assertThrows(IllegalArgumentException.class, () -> Spacing.of(line, 4, AtCorners.PASS, List.of(100.1)));
        assertThrows(IllegalArgumentException.class, () -> Spacing.of(line, 4, AtCorners.PASS, List.of(-0.1)));
    }

    @Test
    void wantedMarksNeedNotBeInOrder() {
        Curve line = Curve.open(List.of(Segment.line(Point.of(0, 0), Point.of(100, 0))));
        Spacing spacing = Spacing.of(line, 4, AtCorners.PASS, List.of(71.5, 33.0, 33.0));
        List<Double> along = spacing.marks().stream().map(Spot::along).toList();
        assertEquals(along.stream().sorted().toList(), along);
        assertEquals(26, along.size());
        assertEquals(line, spacing.line());
    }

    @Test
    void aSpannedRunThatIsShorterThanAGapHasItsOneMark() {
        Curve notched = Outlines.polygon(
                Point.of(0, 0), Point.of(40, 0), Point.of(40, 3), Point.of(80, 3), Point.of(80, 40), Point.of(0, 40));
        Spacing spacing = Spacing.of(notched, 5, AtCorners.SPAN);
        assertEquals(
                1,
                spacing.marks().stream()
                        .filter(mark -> mark.along() > 40 && mark.along() < 43)
                        .count());
    }

    @Test
    void placesAskedForMayComeInAnyOrderAndBesideCorners() {
        Spacing spacing = Spacing.of(PLATE, 10, AtCorners.MARK, List.of(105.0, 25.0, 40.0));
        List<Double> along = along(spacing);
        assertTrue(along.containsAll(List.of(0.0, 25.0, 40.0, 70.0, 105.0, 110.0)), along.toString());
        assertEquals(along.stream().sorted().toList(), along);
        assertEquals(along.stream().distinct().toList(), along);
    }

    /** An outline that starts half-way along a side: its last run goes on over the start. */
    @Test
    void aRunGoesOnOverTheStart() {
        Curve plate =
                Outlines.polygon(Point.of(20, 0), Point.of(40, 0), Point.of(40, 30), Point.of(0, 30), Point.of(0, 0));
        Spacing spacing = Spacing.of(plate, 10, AtCorners.MARK);
        assertEquals(14, spacing.marks().size());
        List<Spot> marks = spacing.marks();
        for (int i = 0; i < marks.size(); i++) {
            double gap = marks.get(i).point().distanceTo(marks.get((i + 1) % 14).point());
            assertEquals(10, gap, 1e-9, "gap " + i);
        }
    }
}
