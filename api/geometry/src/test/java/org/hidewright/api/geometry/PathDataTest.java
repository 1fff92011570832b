package org.hidewright.api.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Path data of SVG 1.1, section 8.3; y runs up here, which turns the sweep of an arc over with it. */
class PathDataTest {

    @Test
    void linesByPlaceAndByStepAreTheSame() throws PathData.Unreadable {
        Curve absolute = PathData.read("M 10,10 L 60,10 L 60,40 L 10,40 Z");
        assertTrue(absolute.isClosed());
        assertEquals(1500, absolute.area(), 1e-9);
        assertEquals(absolute, PathData.read("m10 10h50v30h-50z"));
        assertEquals(absolute, PathData.read("M10 10H60V40H10Z"));
        assertEquals(absolute, PathData.read("M10 10 60 10 60 40 10 40 10 10Z"), "places go on without a letter");
        assertFalse(PathData.read("M0 0L5 5").isClosed());
    }

    /** The four arcs between two places, as in the figure of section 8.3.8; true means the same in a system turned over. */
    @ParameterizedTest
    @CsvSource({"0,0,false", "0,1,false", "1,0,true", "1,1,true"})
    void arcsAreLargeOrSmallAndTurnLeftOrRight(int large, int left, boolean more) throws PathData.Unreadable {
        Segment.Arc arc = (Segment.Arc) PathData.read("M0 0 A 50 50 0 " + large + " " + left + " 60 0")
                .segments()
                .get(0);
        assertEquals(50, arc.radius(), 1e-9);
        assertEquals(left == 1, arc.sweep() > 0);
        assertEquals(more, Math.abs(arc.sweep()) > Math.PI);
        assertEquals(0, arc.end().distanceTo(Point.of(60, 0)), 1e-9);
    }

    @Test
    void aRadiusTooSmallGrowsToHalfTheChord() throws PathData.Unreadable {
        Segment.Arc arc =
                (Segment.Arc) PathData.read("M0 0A5 5 0 0160 0").segments().get(0);
        assertEquals(30, arc.radius(), 1e-9);
    }

    @Test
    void curvesGoOnSmoothly() throws PathData.Unreadable {
        Curve wave = PathData.read("M0 0C10 20 20 20 30 0S50 -20 60 0");
        assertEquals(0, wave.corners().size());
        Curve bows = PathData.read("M0 0Q10 20 20 0T40 0");
        assertEquals(0, bows.corners().size());
        assertEquals(
                10,
                bows.at(PathData.read("M0 0Q10 20 20 0").length() / 2).point().y(),
                1e-9,
                "half its height");
        assertEquals(PathData.read("M5 5c10 20 20 20 30 0"), PathData.read("M5 5C15 25 25 25 35 5"));
        assertEquals(
                PathData.read("M0 0C0 0 20 20 30 0"), PathData.read("M0 0S20 20 30 0"), "nothing before to go on from");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "L 10 10|10 10|one curve begins with one M",
                "M 0 0 L 10|''|a number is missing",
                "M 0 0 L 10 x|x|a number is missing",
                "M 0 0 L 10 1e999|1e999|a number is too large",
                "M 0 0 B 10 10|B 10 10|no letter or number",
                "M 0 0 L 5 5 M 6 6|6 6|one curve begins with one M",
                "M 0 0 L 5 5 Z L 4 4|4 4|one curve ends with Z",
                "M 0 0 A 5 6 0 0 0 10 0|''|an arc is part of a circle: both radii are the same",
                "M 0 0 A 5 5 0 2 0 10 0|2 0 10 0|0 or 1 is missing",
                "M 0 0|''|there is no line",
                "''|''|there is no line",
                "10 10|10 10|a letter comes first"
            })
    void whatCannotBeReadIsToldWithItsPlace(String text, String near, String why) {
        PathData.Unreadable trouble = assertThrows(PathData.Unreadable.class, () -> PathData.read(text));
        assertEquals(why, trouble.getMessage());
        assertEquals(near, trouble.near());
    }

    @Test
    void aQuadraticCurveGoesOnWithItsControlTurnedRound() throws PathData.Unreadable {
        List<Segment> bows = PathData.read("M5 7Q15 27 25 7T45 9t3 4").segments();
        assertEquals(3, bows.size());
        // the control 15, 27 turned round 25, 7 is 35, -13; that one round 45, 9 is 55, 31
        Segment.Cubic second = (Segment.Cubic) bows.get(1);
        assertEquals(0, second.control1().distanceTo(Point.of(25 + 10 * 2 / 3.0, 7 - 20 * 2 / 3.0)), 1e-9);
        assertEquals(0, second.control2().distanceTo(Point.of(45 - 10 * 2 / 3.0, 9 - 22 * 2 / 3.0)), 1e-9);
        Segment.Cubic third = (Segment.Cubic) bows.get(2);
        assertEquals(0, third.control1().distanceTo(Point.of(45 + 10 * 2 / 3.0, 9 + 22 * 2 / 3.0)), 1e-9);
        assertEquals(0, third.end().distanceTo(Point.of(48, 13)), 1e-9);
    }

    /** Each of the four arcs over one chord by its middle, worked by hand: radius 50, chord 60, so 40 from centre to chord. */
    @Test
    void anArcRisesToItsSide() throws PathData.Unreadable {
        assertMiddle(-10, "M0 0A50 50 0 0 1 60 0");
        assertMiddle(10, "M0 0A50 50 0 0 0 60 0");
        assertMiddle(-90, "M0 0A50 50 0 1 1 60 0");
        assertMiddle(90, "M0 0A50 50 0 1 0 60 0");
        assertEquals(60, PathData.read("M0 0A0 0 0 0 1 60 0").length(), 1e-9, "without a radius it is a line");
    }

    private static void assertMiddle(double y, String text) throws PathData.Unreadable {
        Curve arc = PathData.read(text);
        assertEquals(0, arc.at(arc.length() / 2).point().distanceTo(Point.of(30, y)), 1e-9, text);
    }
}
