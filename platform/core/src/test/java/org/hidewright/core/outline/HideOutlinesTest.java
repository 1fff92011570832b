package org.hidewright.core.outline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.hidewright.api.drawing.Point;
import org.hidewright.core.json.Place;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Worked by hand: outlines of plain numbers, and curves whose distance from their chords is known. */
class HideOutlinesTest {
    private static final DrawnLine HIDE = line("hide", 100, 50, 500, 50, 500, 350, 100, 350);

    private static DrawnLine line(String name, double... numbers) {
        return line(name, true, numbers);
    }

    private static DrawnLine line(String name, boolean closed, double... numbers) {
        List<Point> places = new ArrayList<>();
        for (int i = 0; i < numbers.length; i += 2) {
            places.add(Point.of(numbers[i], numbers[i + 1]));
        }
        return new DrawnLine("path", new Place(7, 1), List.of(name.split(" ")), places, closed);
    }

    private static HideOutlines of(DrawnLine... lines) {
        return new HideOutlines(new ReadDrawing(Arrays.asList(lines), List.of()));
    }

    private static List<String> told(HideOutlines outlines) {
        return outlines.remarks().stream()
                .map(Remark::key)
                .map(key -> key.substring("notice.".length()))
                .toList();
    }

    /** A bow tie, whose halves are equal: by the shoelace formula it has no area at all. */
    @Test
    void aHideThatCrossesItselfInItsMiddleIsToldAsOne() {
        HideOutlines outlines = of(line("hide", 50, 50, 900, 700, 900, 50, 50, 700));
        assertTrue(outlines.hide().isEmpty());
        assertEquals(List.of("hide-crosses-itself"), told(outlines));
    }

    @Test
    void theLargestOutlineIsTheHideAndTheOthersAreSeenFromItsLowerLeftCorner() {
        HideOutlines outlines = of(
                line("hole-1", 200, 100, 210, 100, 205, 108.126),
                HIDE,
                line("region-belly", 100, 50, 500, 50, 500, 90));
        assertEquals("0,0 400,0 400,300 0,300", outlines.hide().orElseThrow().corners());
        assertEquals(120_000, outlines.hide().get().region().area(), 1e-6);
        assertEquals(2, outlines.flaws().size());
        assertEquals("hole", outlines.flaws().get(0).kind());
        assertEquals("100,50 110,50 105,58.13", outlines.flaws().get(0).corners());
        assertEquals("region belly", outlines.flaws().get(1).kind());
        assertEquals(List.of(), told(outlines));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "hole-3|hole",
                "HOLES|hole",
                "p12 c4 weak_2 hole|weak",
                "marked|marked",
                "region-belly|region belly",
                "Region_Belly.left|region belly-left",
                "REGION:Flämme|region flämme",
                "region1 region-neck-2|region neck-2"
            })
    void theNearestNameThatSaysWhatItIsCounts(String names, String kind) {
        HideOutlines outlines = of(HIDE, line(names, 200, 100, 210, 100, 205, 108));
        assertEquals(kind, outlines.flaws().get(0).kind());
        assertEquals(List.of(), told(outlines));
    }

    @ParameterizedTest
    @ValueSource(strings = {"p12", "whole", "region", "region-7", "a-hole"})
    void oneThatNoNameExplainsIsTakenAsMarkedAndThatIsTold(String names) {
        HideOutlines outlines = of(HIDE, line(names, 200, 100, 210, 100, 205, 108));
        assertEquals("marked", outlines.flaws().get(0).kind());
        assertEquals(List.of("taken-as-marked"), told(outlines));
        String what = new Wording(Locale.ENGLISH, UnitSystem.METRIC)
                .what(outlines.remarks().get(0));
        assertTrue(what.contains("path (7)"), what);
    }

    @Test
    void whatIsNoFlawOfTheHideIsToldAndLeftOut() {
        assertEquals(List.of("flaw-outside"), told(of(HIDE, line("hole", 600, 0, 620, 0, 600, 20))));
        assertEquals(
                List.of("flaw-crosses-itself"), told(of(HIDE, line("weak", 200, 100, 220, 120, 220, 100, 200, 120))));
        assertEquals(List.of("hide-twice"), told(of(HIDE, line("hide", 100, 50, 100, 350, 500, 350, 500, 50))));
        assertEquals(List.of("specks"), told(of(HIDE, line("hole", 200, 100, 201, 100, 200, 101))));
        assertEquals(List.of("open-lines"), told(of(HIDE, line("hole", false, 200, 100, 220, 120, 220, 100))));
        assertEquals(0, of(HIDE, line("hole", 600, 0, 620, 0, 600, 20)).flaws().size());
    }

    /** By hand: of a triangle of 20 by 20 mm whose middle lies on the edge, 150 mm² are on the hide; a belly drawn 4 mm too far stays a belly. */
    @Test
    void ofAFlawThatReachesOverTheEdgeWhatLiesOnTheHideIsTaken() {
        HideOutlines outlines = of(
                HIDE,
                line("hole", 490, 100, 510, 100, 490, 120),
                line("region-belly", 96, 46, 504, 46, 504, 90, 96, 90));
        assertEquals(List.of("flaw-crosses-edge", "flaw-crosses-edge"), told(outlines));
        assertEquals("hole", outlines.flaws().get(0).kind());
        assertEquals(150, outlines.flaws().get(0).region().area(), 0.1);
        assertEquals("region belly", outlines.flaws().get(1).kind());
        assertEquals(400 * 40, outlines.flaws().get(1).region().area(), 1e-6);
    }

    /** A flaw to which the hide reaches in by a notch lies half beside it, though all its corners are on leather. */
    @Test
    void aNotchOfTheHideInAFlawIsSeen() {
        DrawnLine notched = line("hide", 0, 0, 400, 0, 400, 300, 205, 300, 200, 100, 195, 300, 0, 300);
        assertEquals(List.of("flaw-crosses-edge"), told(of(notched, line("weak", 150, 200, 250, 200, 200, 220))));
        assertEquals(List.of(), told(of(notched, line("weak", 150, 50, 250, 50, 200, 90))));
    }

    @Test
    void endsThatLieOnEachOtherCloseALine() {
        assertEquals(
                1,
                of(HIDE, line("hole", false, 200, 100, 210, 100, 205, 108, 200.006, 100.007))
                        .flaws()
                        .size());
        assertEquals(
                0,
                of(HIDE, line("hole", false, 200, 100, 210, 100, 205, 108, 200.02, 100))
                        .flaws()
                        .size());
    }

    @Test
    void withoutAHideThereIsNothing() {
        assertEquals(List.of("no-outline"), told(of()));
        assertEquals(List.of("no-outline", "open-lines"), told(of(line("hide", false, 0, 0, 100, 0, 100, 100))));
        HideOutlines crossed = of(line("hide", 0, 0, 100, 100, 100, 0, 0, 80));
        assertEquals(List.of("hide-crosses-itself"), told(crossed));
        assertTrue(crossed.hide().isEmpty());
    }

    /** Of an open line, the longest is told with how far its ends lie apart. */
    @Test
    void anOutlineThatWasLeftOpenIsFound() {
        String what = new Wording(Locale.ENGLISH, UnitSystem.METRIC)
                .what(of(line("hide", false, 0, 0, 100, 0, 100, 50, 0, 0.5), line("x", false, 0, 0, 3, 3))
                        .remarks()
                        .get(1));
        assertTrue(what.contains("left out: 2") && what.contains("its ends 0.5\u00a0mm apart"), what);
    }

    /** A region drawn along the edge of the hide follows it only as near as the two were drawn and rounded. */
    @Test
    void aRegionMayFollowTheEdge() {
        Random chance = new Random(5);
        for (int round = 0; round < 200; round++) {
            List<Point> hide = blob(chance, 300 + chance.nextInt(300));
            List<Point> belly = new ArrayList<>(hide.subList(40, 140).stream()
                    .map(place -> place.plus(0.02 * (chance.nextDouble() - 0.5), 0.02 * (chance.nextDouble() - 0.5)))
                    .toList());
            belly.add(Point.of(0, 0));
            HideOutlines outlines = of(
                    new DrawnLine("hide", Place.START, List.of("hide"), hide, true),
                    new DrawnLine("belly", Place.START, List.of("region-belly"), belly, true));
            assertEquals(List.of(), told(outlines), "round " + round);
            assertEquals(1, outlines.flaws().size());
        }
    }

    private static List<Point> blob(Random chance, double radius) {
        double wave = chance.nextDouble() * 6;
        List<Point> places = new ArrayList<>();
        for (int i = 0; i < 720; i++) {
            double turn = Math.PI * 2 * i / 720;
            places.add(Point.of(0, 0).towards(turn, radius * (1 + 0.1 * Math.sin(3 * turn + wave))));
        }
        return places;
    }

    /** No corner lies on a straight line, and no place of a circle is farther than 0.02 mm from the stretches. */
    @Test
    void cornersAreAsFewAsTheyCanBe() {
        assertEquals(
                4,
                Corners.of(line("x", 5, 0, 10, 0, 10, 10, 4, 10, 0, 10, 0, 5, 0, 0, 2.5, 0)
                                .places())
                        .corners()
                        .size());
        List<Point> slanted = new ArrayList<>();
        for (int i = 0; i <= 100; i++) {
            slanted.add(Point.of(i * Math.PI, i * Math.E));
        }
        slanted.add(Point.of(0, 300));
        assertEquals(3, Corners.of(slanted).corners().size(), "rounding bends no line");
        for (double radius : new double[] {3, 7, 20, 33, 90, 250, 400, 700, 1100}) {
            List<Point> circle = new ArrayList<>();
            for (int i = 0; i < 6000; i++) {
                circle.add(Point.of(0, 0).towards(Math.PI * i / 3000, radius));
            }
            Corners corners = Corners.of(circle);
            double fewest = Math.PI / Math.acos(1 - 0.02 / radius);
            assertTrue(
                    corners.corners().size() < 2.5 * fewest, corners.corners().size() + " beside " + fewest);
            // what the reading may spend of the 0.02 mm is left to it
            circle.forEach(place ->
                    assertTrue(corners.curve().distanceTo(place) < 0.02 - DrawingReader.NEAR_MM, place::toString));
        }
    }
}
